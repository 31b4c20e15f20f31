const PLACES = '#card input[type=checkbox], #hardware input[type=checkbox]';

/**
 * Keeps what was ticked in the workshop card and the hardware list in this browser, so that a refit can be left and
 * taken up again. A part that was made anew with other figures begins with empty boxes.
 */
export function keepTicks(): void {
  const boxes = [...document.querySelectorAll<HTMLInputElement>(PLACES)];
  const key = `leadwright ticks ${fingerprint()}`;
  const ticked = new Set(stored(key));
  for (const box of boxes) {
    box.checked = ticked.has(box.id);
    box.addEventListener('change', () => {
      const now = boxes.filter(({ checked }) => checked).map(({ id }) => id);
      store(key, now);
    });
  }
}

/** 32 bits of the page's title and of the texts that are ticked off (FNV-1a). */
function fingerprint(): string {
  const texts = [document.title, ...['card', 'hardware'].map((id) => document.getElementById(id)?.textContent ?? '')];
  let hash = 0x811c9dc5;
  for (const character of texts.join('\n')) hash = Math.imul(hash ^ character.charCodeAt(0), 0x01000193);
  return (hash >>> 0).toString(16);
}

/** Nothing where the browser keeps nothing for pages from the disk. */
function stored(key: string): string[] {
  try {
    return (localStorage.getItem(key) ?? '').split(' ');
  } catch {
    return [];
  }
}

function store(key: string, ids: readonly string[]): void {
  try {
    if (ids.length > 0) localStorage.setItem(key, ids.join(' '));
    else localStorage.removeItem(key);
  } catch {
    // the boxes work all the same, for as long as the page is open
  }
}
