import type { FitBlock } from '../../fit/stack/fit-block.js';
import type { Finding } from '../../judge/check.js';
import { worked } from '../../units/format.js';
import { figure } from '../figures.js';
import type { Report } from '../report.js';
import { FIT_FIGURES, fitChances, judgedBy } from '../terminal/fit-lines.js';
import { words } from '../terminal/layout.js';
import { xmlText } from '../xml-text.js';
import { chart, label, px, ticksOf } from './chart.js';
import { table } from './html.js';

/** A figure within its bounds. */
interface Range {
  readonly name: string;
  readonly least: number;
  readonly likely: number;
  readonly most: number;
  readonly limit?: { readonly min?: number; readonly max?: number };
}

const ROW = 34;
const WIDTH = 640;

/** Play and gaps as bars from the least over the likely to the most. */
export function playSection({ fit, checks }: Report): string {
  const ranges = fit ? fitRanges(fit, checks) : checkRanges(checks);
  if (ranges.length === 0) return '';
  const rows = ranges.map(({ name, least, likely, most }) => [name, length(least), length(likely), length(most)]);
  const said = fit
    ? `<p>${xmlText(`Most likely ${fit.words}. Chances: ${fitChances(fit)}. ${capital(judgedBy(fit))}.`)}</p>`
    : '';
  return [
    said,
    bars(ranges),
    table(
      `The same in figures, mm${fit ? ': 19 of 20 nuts lie between least and most' : ''}`,
      ['', 'least', 'likely', 'most'],
      rows,
      [1, 2, 3],
    ),
  ].join('\n');
}

/** A length that was worked out: calipers read two decimals. */
function length(value: number): string {
  return worked(value, 'mm');
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function fitRanges(fit: FitBlock, checks: readonly Finding[]): Range[] {
  const limits: Partial<Record<(typeof FIT_FIGURES)[number][0], string>> = {
    diametral_clearance: 'thread-clearance',
    crest_gap: 'thread-crest-gap',
    root_gap: 'thread-root-gap',
    backlash: 'thread-backlash',
  };
  return FIT_FIGURES.map(([name, told]) => {
    const limit = checks.find(({ id }) => id === limits[name])?.limit;
    return { name: told, ...fit[name], ...(limit ? { limit } : {}) };
  });
}

/** Where no fit was predicted: every length that is uncertain. */
function checkRanges(checks: readonly Finding[]): Range[] {
  return checks.flatMap(({ id, unit, value, least, most, limit }) =>
    unit === 'mm' && value !== null && least !== undefined && most !== undefined && most - least > 1e-6
      ? [{ name: words(id.replaceAll('-', ' ')), least, likely: value, most, ...(limit ? { limit } : {}) }]
      : [],
  );
}

function bars(ranges: readonly Range[]): string {
  const ends = ranges.flatMap(({ least, most, limit }) => [least, most, limit?.min ?? least, limit?.max ?? most, 0]);
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const x = (value: number) => 150 + ((value - low) / (high - low || 1)) * (WIDTH - 175);
  const height = ROW * ranges.length + 34;
  const grid = ticksOf(low, high, 6).flatMap((tick) => [
    `<line class="grid" x1="${px(x(tick))}" y1="4" x2="${px(x(tick))}" y2="${height - 26}"/>`,
    label(x(tick), height - 10, figure(tick), 'middle'),
  ]);
  const rows = ranges.flatMap((range, i) => row(range, 4 + ROW * i + ROW / 2, x));
  const told = ranges.map(
    ({ name, least, likely, most }) => `${name} ${length(least)}, ${length(likely)}, ${length(most)}`,
  );
  return [
    chart(WIDTH, height, `Least, likely and most in mm: ${told.join('; ')}`, [...grid, ...rows]),
    '<p class="key"><span class="swatch wide"></span> least to most <span class="swatch dot"></span> likely <span class="swatch limit"></span> limit; all mm</p>',
  ].join('\n');
}

function row({ name, least, likely, most, limit }: Range, y: number, x: (value: number) => number): string[] {
  const bar = (from: number, to: number, half: number, kind: string) =>
    `<rect class="${kind}" x="${px(x(from))}" y="${px(y - half)}" width="${px(Math.max(1, x(to) - x(from)))}" height="${px(2 * half)}" rx="2"/>`;
  const marks = [limit?.min, limit?.max].flatMap((at) =>
    at === undefined ? [] : [`<path class="bound" d="M${px(x(at))} ${px(y - 12)}V${px(y + 12)}"/>`],
  );
  return [
    label(142, y + 4, name, 'end'),
    bar(least, most, 4, 'range'),
    `<circle class="likely" cx="${px(x(likely))}" cy="${px(y)}" r="5"/>`,
    ...marks,
  ];
}
