import { plain } from '../../units/format.js';
import { boundsText, figure } from '../figures.js';
import { columns, words, wrapped } from '../terminal/layout.js';
import { type Change, type CheckChange, type Comparison, moved } from './compare-reports.js';

const NONE = '–';

/** A comparison for people: what changed, most telling first. */
export function comparisonText(comparison: Comparison): string {
  const { a, b, same, part, verdict, applied, sizes, checks, bodies, files } = comparison;
  if (same) return `${a} and ${b}: the same sizes, checks, mass and solids.\n`;
  const rows = (of: 'finished' | 'printed') =>
    sizes
      .filter((size) => size.of === of)
      .map((size) => [`  ${words(size.name)}`, number(size.before, 3), number(size.after, 3), by(size, 3)]);
  const sections: [string, string[]][] = [
    ['', [`${a} → ${b}`, ...told('part', part), ...told('verdict', verdict), ...told('applied', applied)]],
    ['Finished sizes, mm', columns(rows('finished'), [1, 2, 3])],
    ['Printed sizes, mm', columns(rows('printed'), [1, 2, 3])],
    ['Checks', checks.flatMap(checkLines)],
    [
      'Mass, g',
      columns(
        bodies.map(({ body, mass }) => [`  ${body}`, number(mass.before, 2), number(mass.after, 2), by(mass, 2)]),
        [1, 2, 3],
      ),
    ],
    ['Files, bytes', columns(files.map(fileRow), [1, 2])],
  ];
  return sections
    .filter(([, lines]) => lines.length > 0)
    .map(([title, lines]) => `${title === '' ? '' : `${title}\n`}${lines.join('\n')}\n`)
    .join('\n');
}

function told(name: string, { before, after }: Change<string>): string[] {
  return before === after ? [] : wrapped(`${name}: ${before ?? NONE} → ${after ?? NONE}`, 2);
}

function checkLines(check: CheckChange): string[] {
  const { id, verdict, value, limit, unit, message } = check;
  const word =
    verdict.before === verdict.after
      ? (verdict.after ?? NONE)
      : `${verdict.before ?? 'absent'} → ${verdict.after ?? 'gone'}`;
  const figures =
    value.before === value.after
      ? ''
      : `   ${value.before === null ? NONE : figure(value.before)} → ${value.after === null ? NONE : figure(value.after)} ${unit}`;
  const limits = [limit.before, limit.after].map((bounds) => (bounds ? boundsText(bounds) : NONE));
  const moved = limits[0] === limits[1] ? '' : `   limit ${limits.join(' → ')}`;
  return [`  ${id}   ${word}${figures}${moved}`.trimEnd(), ...wrapped(message, 6)];
}

function fileRow({ file, bytes, equal }: Comparison['files'][number]): string[] {
  return [`  ${file}`, number(bytes.before, 0), number(bytes.after, 0), equal ? 'same bytes' : 'differs'];
}

function number(value: number | null, places: number): string {
  return value === null ? NONE : value.toFixed(places);
}

function by(change: Change<number>, places: number): string {
  const step = moved(change);
  return step === undefined ? '' : `${step > 0 ? '+' : ''}${plain(step, places)}`.replace('-', '−');
}
