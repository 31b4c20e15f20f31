import { plain, worked } from '../../units/format.js';
import { wordText } from '../answers/answer.js';
import { boundsText } from '../figures.js';
import { columns, WIDTH, words, wrapped } from '../terminal/layout.js';
import { type Change, type CheckChange, type Comparison, moved } from './compare-reports.js';

const NONE = '–';

/** A comparison for people: what changed, most telling first. */
export function comparisonText(comparison: Comparison, width = WIDTH): string {
  const { a, b, same, part, verdict, applied, sizes, checks, bodies, files } = comparison;
  if (same) return `${a} and ${b}: the same sizes, checks, mass and solids.\n`;
  const rows = (of: 'finished' | 'printed') =>
    sizes
      .filter((size) => size.of === of)
      .map((size) => [`  ${words(size.name)}`, number(size.before, 3), number(size.after, 3), by(size, 3)]);
  const checksThat = (went: CheckChange['went']) =>
    checks.filter((check) => check.went === went).flatMap((check) => checkLines(check, width));
  const sections: [string, string[]][] = [
    [
      '',
      [
        `${a} → ${b}`,
        ...told('part', part, width),
        ...told('verdict', verdict, width),
        ...told('applied', applied, width),
      ],
    ],
    ['Went worse', checksThat('worse')],
    ['Went better', checksThat('better')],
    ['Finished sizes, mm', columns(rows('finished'), { right: [1, 2, 3], width })],
    ['Printed sizes, mm', columns(rows('printed'), { right: [1, 2, 3], width })],
    ['Checks whose figures moved', checksThat('neither')],
    [
      'Mass, g',
      columns(
        bodies.map(({ body, mass }) => [`  ${body}`, number(mass.before, 2), number(mass.after, 2), by(mass, 2)]),
        { right: [1, 2, 3], width },
      ),
    ],
    ['Files that differ, bytes', columns(files.filter(({ equal }) => !equal).map(fileRow), { right: [1, 2], width })],
  ];
  return sections
    .filter(([, lines]) => lines.length > 0)
    .map(([title, lines]) => `${title === '' ? '' : `${title}\n`}${lines.join('\n')}\n`)
    .join('\n');
}

function told(name: string, { before, after }: Change<string>, width?: number): string[] {
  return before === after ? [] : wrapped(`${name}: ${before ?? NONE} → ${after ?? NONE}`, 2, width);
}

function checkLines(check: CheckChange, width?: number): string[] {
  const { title, id, message } = check;
  return [
    ...wrapped(`${wordChange(check)} · ${title}${figureChange(check)} (${id})`, 2, width),
    ...wrapped(message, 6, width),
  ];
}

/** `yes → perhaps`; one word where it is the same. */
export function wordChange({ word: { before, after } }: Pick<CheckChange, 'word'>): string {
  if (before === after) return after === null ? NONE : wordText({ word: after });
  return `${before === null ? 'not asked' : wordText({ word: before })} → ${after === null ? 'not asked' : wordText({ word: after })}`;
}

/** `: 0.2 → 0.31 mm, limit at most 0.3 → at most 0.4`; what is the same is told once or not at all. */
export function figureChange({ value, unit, limit }: Pick<CheckChange, 'value' | 'unit' | 'limit'>): string {
  const figures = [value.before, value.after].map((one) => (one === null ? NONE : worked(one, unit)));
  const limits = [limit.before, limit.after].map((bounds) => (bounds ? boundsText(bounds) : NONE));
  return [
    figures[0] === figures[1] ? '' : `: ${figures.join(' → ')} ${unit}`.trimEnd(),
    limits[0] === limits[1] ? '' : `, limit ${limits.join(' → ')}`,
  ].join('');
}

function fileRow({ file, bytes }: Comparison['files'][number]): string[] {
  return [`  ${file}`, number(bytes.before, 0), number(bytes.after, 0)];
}

function number(value: number | null, places: number): string {
  return value === null ? NONE : value.toFixed(places);
}

function by(change: Change<number>, places: number): string {
  const step = moved(change);
  return step === undefined ? '' : `${step > 0 ? '+' : ''}${plain(step, places)}`.replace('-', '−');
}
