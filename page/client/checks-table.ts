/** Sorting, filtering and opening of the table of checks; each check is a body of two rows. */
export function startChecks(): void {
  const table = document.querySelector<HTMLTableElement>('#checks-table');
  if (!table) return;
  const checks = [...table.tBodies];
  for (const check of checks) foldable(check);
  for (const button of table.querySelectorAll<HTMLButtonElement>('thead button')) {
    button.addEventListener('click', () => sortBy(table, checks, button));
  }
  const verdict = document.querySelector<HTMLSelectElement>('#checks-verdict');
  const words = document.querySelector<HTMLInputElement>('#checks-words');
  const count = document.querySelector('#checks-count');
  const filter = () => {
    const wanted = (words?.value ?? '').trim().toLowerCase();
    let shown = 0;
    for (const check of checks) {
      const fits = verdict?.value === 'all' || check.dataset.verdict === verdict?.value;
      check.hidden = !(fits && (check.textContent ?? '').toLowerCase().includes(wanted));
      if (!check.hidden) shown++;
    }
    if (count) count.textContent = `${shown} of ${checks.length} shown`;
  };
  verdict?.addEventListener('change', filter);
  words?.addEventListener('input', filter);
  document.getElementById('checks-tools')?.removeAttribute('hidden');
  filter();
}

function foldable(check: HTMLTableSectionElement): void {
  const button = check.querySelector<HTMLButtonElement>('button');
  const more = check.rows[1];
  if (!button || !more) return;
  const show = (open: boolean) => {
    more.classList.toggle('folded', !open);
    button.setAttribute('aria-expanded', String(open));
  };
  button.addEventListener('click', () => show(button.getAttribute('aria-expanded') !== 'true'));
  show(check.dataset.verdict !== 'pass');
}

function sortBy(table: HTMLTableElement, checks: readonly HTMLTableSectionElement[], button: HTMLButtonElement): void {
  const header = button.closest('th');
  const key = button.dataset.key ?? 'order';
  const falling = header?.getAttribute('aria-sort') === 'ascending';
  for (const other of table.querySelectorAll('th[aria-sort]')) other.removeAttribute('aria-sort');
  header?.setAttribute('aria-sort', falling ? 'descending' : 'ascending');
  const sorted = [...checks].sort((a, b) => compare(a.dataset[key] ?? '', b.dataset[key] ?? '') * (falling ? -1 : 1));
  table.append(...sorted);
}

/** Numbers by size, names by letter; checks without a figure come last. */
function compare(a: string, b: string): number {
  const [x, y] = [Number(a), Number(b)];
  if (a !== '' && b !== '' && !Number.isNaN(x) && !Number.isNaN(y)) return x - y;
  if ((a === '') !== (b === '')) return a === '' ? 1 : -1;
  return a < b ? -1 : a > b ? 1 : 0;
}
