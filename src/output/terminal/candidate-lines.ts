import type { Identification, IdentifiedScrew, Residual } from '../../identify/identify.js';
import { columns, words } from './layout.js';

/** Readings that stand side by side in one table. */
const SIDE_BY_SIDE = 3;
/** Candidates shown: those worth a thought, or the nearest ones where none fits. */
const SHOWN = { least: 2, most: 8, share: 0.005, nearest: 3 } as const;

/** Candidates with what each reading differs from them by: a table, or two where there are many readings. */
export function candidateLines(found: Identification): string[] {
  const shown = found.fits ? likely(found) : nearest(found);
  const kinds = found.candidates[0]!.residuals.map(({ what }) => what);
  const tables = Array.from({ length: Math.ceil(kinds.length / SIDE_BY_SIDE) }, (_, i) =>
    kinds.slice(i * SIDE_BY_SIDE, (i + 1) * SIDE_BY_SIDE),
  );
  const further = found.twins.length + 1 - shown.length;
  return [
    ...tables.flatMap((some, i) => table(shown, some, found.fits && i === 0)),
    ...(further > 0 ? [`  and ${further} more`] : []),
    '  mm off the nominal size (standard deviations outside what the standard allows)',
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
  return columns([head, ...rows], head.map((_, i) => i).slice(1), 3);
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
