import type { Advice, CheckAdvice } from '../../judge/advice.js';
import { wrapped } from './layout.js';

/** Cures by check, the least change first, and all together as lines to paste into the sheet. */
export function adviceLines({ checks, together }: Advice, width?: number): string[] {
  if (checks.length === 0) return ['  nothing is open that a change of the sheet could cure'];
  return [...checks.flatMap((one) => checkLines(one, width)), ...(together ? togetherLines(together, width) : [])];
}

function checkLines({ check, cures, none, surer = [], another = [] }: CheckAdvice, width?: number): string[] {
  const first = surer.length === 0 ? [] : wrapped(`measure surer first: ${surer.join(', or ')}`, 6, width);
  const beside =
    another.length === 0 ? [] : ['      or another part, by this sheet:', ...another.map((line) => `        ${line}`)];
  if (none !== undefined) return [`  ${check}`, ...first, ...wrapped(`none: ${none}`, 6, width), ...beside];
  return [
    `  ${check}`,
    ...first,
    ...cures.flatMap(({ set, reaches, costs }) => [
      `      ${Object.entries(set)
        .map(([path, value]) => `${path}: ${value}`)
        .join('   ')}`,
      ...(reaches === 'pass' ? [] : wrapped('which still leaves a caution', 8, width)),
      ...(costs.length === 0 ? [] : wrapped(`at the cost of a caution: ${costs.join(', ')}`, 8, width)),
    ]),
    ...beside,
  ];
}

function togetherLines({ lines, verdict, still }: NonNullable<Advice['together']>, width?: number): string[] {
  const left = still.length === 0 ? '' : `; still open: ${still.join(', ')}`;
  return [
    '',
    ...wrapped(`all together, in place of these lines of the sheet (then: ${verdict}${left})`, 2, width),
    ...lines.map((line) => `    ${line}`),
  ];
}
