import type { Comparison } from '../../drive/compare-screws.js';
import { TURNS_ROUND } from '../../drive/controller-change.js';
import type { Assumption, Duty } from '../../drive/duty.js';
import { PURPOSES, type Purpose, rankScrews } from '../../drive/rank-screws.js';
import type { Holding } from '../../mechanics/power-screw/holding.js';
import { plain } from '../../units/format.js';
import { driveTable } from './drive-table.js';
import { gridLines, patternLines } from './layer-lines.js';
import { beside, hung, WIDTH, wrapped } from './layout.js';
import { type Paint, paint } from './paint.js';
import { sectionsText } from './sections.js';

/** A comparison with what was taken for granted beyond the duty. */
export type ShownComparison = Comparison & { readonly assumptions: readonly Assumption[] };

/**
 * Screws side by side for people: one screen that answers which of them, and what the change means; as wide as the terminal
 * where words allow.
 *
 * @param comparison the screws, at one duty
 * @param duty as it was given
 * @param options colour, columns of the terminal, and whether the levelling of two ends is told
 * @returns lines, a line break after each
 */
export function comparisonText(
  comparison: ShownComparison,
  duty: Duty,
  {
    colour = false,
    levelled = false,
    width = WIDTH,
  }: { readonly colour?: boolean; readonly levelled?: boolean; readonly width?: number } = {},
): string {
  const style = paint(colour);
  return sectionsText(
    [
      ['', [...headLines(comparison, duty, style, width), ...driveTable(comparison, duty, style, width)]],
      ['Layers off the grid: each top against its nearest full step, mm', patternLines(comparison.screws, width)],
      ['Layer heights on full steps, mm', duty.layerHeights === undefined ? gridLines(comparison.screws, width) : []],
      [choiceTitle(comparison), choiceLines(comparison, width)],
      [controllerTitle(comparison), changeLines(comparison, width)],
      ['Two of them on one axis', pairLines(comparison, width)],
      ['Level both ends', levelLines(comparison, levelled, width)],
      [comparison.screws.length === 1 ? 'In words' : 'Mind', wordLines(comparison, duty, width)],
      ['', footLines(comparison, duty, style, width)],
    ],
    style,
  );
}

function headLines({ screws }: Comparison, duty: Duty, style: Paint, width: number): string[] {
  const facts = [
    duty.axis === undefined ? '' : `${duty.axis} axis`,
    duty.load === undefined ? '' : `${plain(duty.load)} N along the screw`,
    duty.span === undefined ? '' : `${plain(duty.span)} mm span`,
    duty.feed === undefined ? '' : `${plain(duty.feed)} mm/s`,
  ].filter((fact) => fact !== '');
  // One screw's name stands over its column.
  const names = screws.length === 1 ? [] : [screws.map(({ designation }) => designation).join(', ')];
  const told = [...names, ...(facts.length === 0 ? [] : [facts.join(', ')])].join(': ');
  return wrapped(told, 0, width).map(style.bold);
}

const PURPOSE_WORDS: Readonly<Record<Purpose, string>> = {
  'fine-layers': 'fine layers',
  speed: 'speed',
  holding: 'holding',
};

function choiceTitle({ purpose }: Comparison): string {
  return purpose === undefined ? 'Which one' : `Best for ${PURPOSE_WORDS[purpose]}`;
}

/** The order for each purpose, or for the one that was asked for with its reasons. */
function choiceLines({ screws, purpose, ranking }: Comparison, width: number): string[] {
  if (screws.length < 2) return [];
  if (purpose !== undefined && ranking !== undefined) {
    const column = 6 + Math.max(...ranking.map(({ designation }) => designation.length));
    return ranking.flatMap(({ place, designation, reasons }) =>
      beside(`  ${place} ${designation}`, column, reasons.join('; '), width),
    );
  }
  return PURPOSES.flatMap((one) => beside(`  ${PURPOSE_WORDS[one]}`, 17, orderText(rankScrews(screws, one)), width));
}

/** `A, then B and C alike` */
function orderText(ranking: readonly { readonly designation: string; readonly place: number }[]): string {
  const places = [...new Set(ranking.map(({ place }) => place))];
  const groups = places.map((place) => ranking.filter((one) => one.place === place).map((one) => one.designation));
  return groups.map((names) => (names.length > 1 ? `${names.join(' and ')} alike` : names[0])).join(', then ');
}

function controllerTitle({ changes }: Comparison): string {
  return `Tell the controller, in place of ${changes[0]?.from ?? ''}`;
}

function changeLines({ changes }: Comparison, width: number): string[] {
  const column = 4 + Math.max(0, ...changes.map(({ to }) => to.length));
  return changes.flatMap((change) => {
    const { to, factor, steps_per_mm, if_forgotten, reverses } = change;
    const steps =
      factor === 1 || steps_per_mm === undefined
        ? 'no change, the lead is the same'
        : `${plain(steps_per_mm)} steps per mm instead of ${plain(steps_per_mm / factor)}; forgotten, 100 mm become ${plain(100 * if_forgotten, 1)}`;
    const told = [steps, ...(reverses ? [TURNS_ROUND] : []), ...feedWords(change)];
    return told.flatMap((line, i) => beside(i === 0 ? `  ${to}` : '', column, line, width));
  });
}

function feedWords({ from, to, feed, lifts }: Comparison['changes'][number]): string[] {
  if (feed === undefined) return [];
  const same = `at the same motor speed ${plain(feed.old)} mm/s become ${plain(feed.new)} mm/s`;
  if (lifts === undefined) return [same];
  const way = lifts.saved >= 0 ? 'saved' : 'more';
  return [
    same,
    `${lifts.count} lifts take ${duration(lifts.old)} with ${from} and ${duration(lifts.new)} with ${to}: ${duration(Math.abs(lifts.saved))} ${way}`,
  ];
}

function duration(seconds: number): string {
  const whole = Math.round(seconds);
  if (whole < 60) return `${plain(seconds, 1)} s`;
  const [hours, minutes] = [Math.floor(whole / 3600), Math.floor((whole % 3600) / 60)];
  return hours > 0 ? `${hours} h ${minutes} min` : `${minutes} min ${whole % 60} s`;
}

/** How two ends are brought level, where a difference was asked about. */
function levelLines({ end_difference }: ShownComparison, asked: boolean, width: number): string[] {
  if (!asked) return [];
  return end_difference.turns.flatMap(({ designation, words: told }) => hung(`${designation}: ${told}`, width));
}

function pairLines({ pairs }: Comparison, width: number): string[] {
  const never = pairs.filter(({ may }) => may === 'no');
  const told = pairs.flatMap((pair) => {
    if (pair.may === 'no') return [];
    return hung(
      `${pair.a} with ${pair.b}: ${pair.may === 'yes' ? 'yes' : 'with care'}. ${pair.reasons.join(' ')}`,
      width,
    );
  });
  const [first, ...others] = never;
  if (first === undefined) return told;
  const reason = others.length === 0 ? first.reasons[0]! : 'The leads differ, and the axis would tilt until it jams.';
  return [...told, ...hung(`${first.a} with ${never.map(({ b }) => b).join(' or ')}: no. ${reason}`, width)];
}

/** Everything in words for one screw; for several what the table leaves to the reader. */
function wordLines({ screws }: Comparison, duty: Duty, width: number): string[] {
  const [first, ...others] = screws;
  if (first !== undefined && others.length === 0) return first.words.flatMap((line) => hung(line, width));
  const on = (holding: Holding, text: string) => {
    const names = new Set(screws.filter((one) => one.holding === holding).map(({ designation }) => designation));
    return names.size === 0 ? [] : [`${text} on ${[...names].join(', ')}`];
  };
  const told = [...on('falls', 'falls'), ...on('may-creep', 'may creep, most of all once greased,')];
  if (duty.axis === 'horizontal' || told.length === 0) return [];
  return hung(`Without power a vertical axis ${told.join('; it ')}. Block it before you switch off.`, width);
}

const TAKEN: Readonly<Record<string, (value: string) => string>> = {
  'duty.motor.steps': (value) => `${value} steps a turn`,
  'duty.motor.microsteps': (value) => `${value} microsteps`,
  'duty.motor.gear': () => 'no gear',
  'duty.motor.speed': (value) => `a motor good to ${value} rpm`,
  'duty.sliding_speed': (value) => `a nut good to ${value} mm/s of sliding`,
  'duty.ends': (value) => `ends ${value}`,
  'duty.collar': () => 'a rolling thrust bearing',
  'screw.minor': () => 'roots as thin as their class allows (a rolled one may be 0.15 pitch thinner)',
  fit: (value) => `a ${value} fit of the nut`,
};

/** What was taken for granted, and what could not be said for want of it. */
function footLines({ screws, assumptions }: ShownComparison, duty: Duty, { dim }: Paint, width: number): string[] {
  const taken = [...screws[0]!.assumptions, ...assumptions].map(
    ({ field, value }) => TAKEN[field]?.(String(value)) ?? `${field} ${value}`,
  );
  const missing = [
    ...(duty.load === undefined ? ['torque (load)'] : []),
    ...(duty.span === undefined ? ['whirl and column (span)'] : []),
    ...(isPart([duty.motorCurrent, duty.motorInductance, duty.supplyVoltage])
      ? ["the motor's own speed (current, inductance and voltage together)"]
      : []),
  ];
  return [
    ...(taken.length === 0 ? [] : wrapped(`Taken as given: ${taken.join(', ')}.`, 0, width)),
    ...(missing.length === 0 ? [] : wrapped(`Left out for want of a figure: ${missing.join(', ')}.`, 0, width)),
  ].map(dim);
}

function isPart(figures: readonly (number | undefined)[]): boolean {
  return figures.some((one) => one !== undefined) && figures.includes(undefined);
}
