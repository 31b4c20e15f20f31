import type { Identification, IdentifiedScrew, Residual } from '../../identify/identify.js';
import { columns, WIDTH, words, wrapped } from './layout.js';

/** Candidates shown: those worth a thought, or the nearest ones where none fits. */
const SHOWN = { least: 2, most: 8, share: 0.005, nearest: 3 } as const;

/** Candidates with what each reading differs from them by: a table, or several where the terminal is narrow. */
export function candidateLines(found: Identification, width = WIDTH): string[] {
  const shown = found.fits ? likely(found) : nearest(found);
  const kinds = found.candidates[0]!.residuals.map(({ what }) => what);
  const further = found.twins.length + 1 - shown.length;
  return [
    ...tables(shown, kinds, found.fits, width),
    ...(further > 0 ? [`  and ${further} more`] : []),
    ...wrapped('mm off the nominal size (standard deviations outside what the standard allows)', 2, width),
  ];
}

function likely({ candidates, twins }: Identification): readonly IdentifiedScrew[] {
  return candidates.filter(
    ({ designation, probability }, place) =>
      place < SHOWN.least || (place < SHOWN.most && (probability >= SHOWN.share || twins.includes(designation))),
  );
}

/** Screws that differ only in what was not read stand for one. */
function nearest({ candidates }: Identification): readonly IdentifiedScrew[] {
  const same = (a: IdentifiedScrew, b: IdentifiedScrew) => JSON.stringify(a.residuals) === JSON.stringify(b.residuals);
  return candidates
    .filter((one, place) => candidates.findIndex((other) => same(one, other)) === place)
    .slice(0, SHOWN.nearest);
}

/** As many readings side by side as there is room for; the chance stands in the first table. */
function tables(
  candidates: readonly IdentifiedScrew[],
  kinds: readonly Residual['what'][],
  withShare: boolean,
  width: number,
): string[] {
  const fits = (lines: readonly string[]) => lines.every(({ length }) => length <= width);
  const counts = kinds.map((_, i) => kinds.length - i);
  const count = counts.find((most) => fits(table(candidates, kinds.slice(0, most), withShare))) ?? 1;
  const rest = kinds.slice(count);
  const first = table(candidates, kinds.slice(0, count), withShare);
  return rest.length === 0 ? first : [...first, ...tables(candidates, rest, false, width)];
}

function table(
  candidates: readonly IdentifiedScrew[],
  kinds: readonly Residual['what'][],
  withShare: boolean,
): string[] {
  const rows = candidates.map(({ designation, probability, residuals }) => [
    `  ${designation}`,
    ...(withShare ? [percent(probability)] : []),
    ...kinds.map((kind) => residualText(residuals.find(({ what }) => what === kind)!)),
  ]);
  const head = ['', ...(withShare ? ['chance'] : []), ...kinds.map(words)];
  return columns([head, ...rows], { right: head.map((_, i) => i).slice(1), gap: 3 });
}

function residualText({ mm, sigma }: Residual): string {
  const off = Math.abs(sigma);
  return `${signed(mm)} (${off.toFixed(off < 9.95 ? 1 : 0)})`;
}

function signed(value: number): string {
  const text = Math.abs(value).toFixed(3);
  return `${value < 0 && Number(text) !== 0 ? '−' : '+'}${text}`;
}

/**
 * A share in whole percent, never rounded to all or nothing.
 * @example percent(0.9991) // '>99 %'
 */
export function percent(share: number): string {
  if (share >= 0.995) return '>99 %';
  return share < 0.005 ? '<1 %' : `${Math.round(100 * share)} %`;
}
