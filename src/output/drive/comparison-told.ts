import type { Comparison } from '../../drive/compare-screws.js';
import { TURNS_ROUND } from '../../drive/controller-change.js';
import type { Assumption, Duty } from '../../drive/duty.js';
import type { DriveNumbers, LayerNumbers } from '../../drive/numbers.js';
import { PURPOSES, type Purpose, rankScrews } from '../../drive/rank-screws.js';
import type { Holding } from '../../mechanics/power-screw/holding.js';
import { howMany, plain } from '../../units/format.js';

/** A comparison with what was taken for granted beyond the duty. */
export type ShownComparison = Comparison & { readonly assumptions: readonly Assumption[] };

/** One thing that is told; what stands under the same label as the one before has an empty one. */
export interface Entry {
  readonly label?: string;
  readonly text: string;
}

/** What is told under one heading. */
export interface ToldSection {
  readonly title: string;
  readonly entries: readonly Entry[];
}

/**
 * What screws side by side mean beyond their table, the same on every surface: layers, which one, what the controller is
 * told, two on one axis, levelling, and what to mind. Headings under which nothing stands are left out.
 *
 * @param comparison the screws, at one duty
 * @param duty as it was given
 * @param levelled whether the levelling of two ends was asked about
 */
export function comparisonTold(comparison: ShownComparison, duty: Duty, levelled = false): readonly ToldSection[] {
  const { screws } = comparison;
  const sections: readonly ToldSection[] = [
    { title: 'Layers off the grid: each top against its nearest full step, mm', entries: patterns(screws) },
    { title: 'Layer heights on full steps, mm', entries: duty.layerHeights === undefined ? grids(screws) : [] },
    { title: choiceTitle(comparison), entries: choices(comparison) },
    { title: `Tell the controller, in place of ${comparison.changes[0]?.from ?? ''}`, entries: changes(comparison) },
    { title: 'Two of them on one axis', entries: pairsTold(comparison) },
    { title: 'Level both ends', entries: levelled ? levels(comparison) : [] },
    { title: screws.length === 1 ? 'In words' : 'Mind', entries: minded(comparison, duty) },
  ];
  return sections.filter(({ entries }) => entries.length > 0);
}

/** What the comparison is of: the screws by name where there are several, and the duty. */
export function comparisonHead({ screws }: Comparison, duty: Duty): string {
  const facts = [
    duty.axis === undefined ? '' : `${duty.axis} axis`,
    duty.load === undefined ? '' : `${plain(duty.load)} N along the screw`,
    duty.span === undefined ? '' : `${plain(duty.span)} mm span`,
    duty.feed === undefined ? '' : `${plain(duty.feed)} mm/s`,
  ].filter((fact) => fact !== '');
  // One screw's name stands over its column.
  const names = screws.length === 1 ? [] : [screws.map(({ designation }) => designation).join(', ')];
  return [...names, ...(facts.length === 0 ? [] : [facts.join(', ')])].join(': ');
}

/** What was taken for granted, and what could not be said for want of it; a sentence each, none where there is none. */
export function comparisonFoot({ screws, assumptions }: ShownComparison, duty: Duty): readonly string[] {
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
    ...(taken.length === 0 ? [] : [`Taken as given: ${taken.join(', ')}.`]),
    ...(missing.length === 0 ? [] : [`Left out for want of a figure: ${missing.join(', ')}.`]),
  ];
}

/** An unevenness below this is not seen on a print [mm]. */
const UNSEEN = 0.005;
/** Layers told one by one. */
const MOST_TOLD = 6;

/** For each layer height off the grid: how far each layer is off, after how many it repeats, and what to use. */
function patterns(screws: readonly DriveNumbers[]): Entry[] {
  return screws.flatMap(({ designation, layers }) =>
    layers
      .filter(({ on_grid }) => !on_grid)
      .map((layer) => ({ label: `${designation}, ${plain(layer.height)}`, text: patternText(layer) })),
  );
}

function patternText({ pattern, repeats_after, worst_off, nearest }: LayerNumbers): string {
  const told = pattern.slice(0, MOST_TOLD).map(({ off }) => signed(off));
  const more = repeats_after > MOST_TOLD ? ' …' : '';
  const advice =
    worst_off <= UNSEEN ? 'too little to see' : `take ${nearest.map((height) => plain(height, 4)).join(' or ')}`;
  return `${told.join(' ')}${more}, every ${howMany(repeats_after, 'layer')}; ${advice}`;
}

function signed(value: number): string {
  const text = plain(Math.abs(value), 4);
  if (text === '0') return text;
  return `${value < 0 ? '−' : '+'}${text}`;
}

/** Usable layer heights of each screw. */
function grids(screws: readonly DriveNumbers[]): Entry[] {
  return screws.map(({ designation, grid_heights }) => ({
    label: designation,
    text: grid_heights.map((height) => plain(height, 4)).join(', '),
  }));
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
function choices({ screws, purpose, ranking }: Comparison): Entry[] {
  if (screws.length < 2) return [];
  if (purpose !== undefined && ranking !== undefined)
    return ranking.map(({ place, designation, reasons }) => ({
      label: `${place} ${designation}`,
      text: reasons.join('; '),
    }));
  return PURPOSES.map((one) => ({ label: PURPOSE_WORDS[one], text: orderText(rankScrews(screws, one)) }));
}

/** `A, then B and C alike` */
function orderText(ranking: readonly { readonly designation: string; readonly place: number }[]): string {
  const places = [...new Set(ranking.map(({ place }) => place))];
  const groups = places.map((place) => ranking.filter((one) => one.place === place).map((one) => one.designation));
  return groups.map((names) => (names.length > 1 ? `${names.join(' and ')} alike` : names[0])).join(', then ');
}

function changes({ changes: all }: Comparison): Entry[] {
  return all.flatMap((change) => {
    const { to, factor, steps_per_mm, if_forgotten, reverses } = change;
    const steps =
      factor === 1 || steps_per_mm === undefined
        ? 'no change, the lead is the same'
        : `${plain(steps_per_mm)} steps per mm instead of ${plain(steps_per_mm / factor)}; forgotten, 100 mm become ${plain(100 * if_forgotten, 1)}`;
    const told = [steps, ...(reverses ? [TURNS_ROUND] : []), ...feedWords(change)];
    return told.map((text, i) => ({ label: i === 0 ? to : '', text }));
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

/** How two ends are brought level. */
function levels({ end_difference }: Comparison): Entry[] {
  return end_difference.turns.map(({ designation, words }) => ({ text: `${designation}: ${words}` }));
}

function pairsTold({ pairs }: Comparison): Entry[] {
  const never = pairs.filter(({ may }) => may === 'no');
  const told = pairs
    .filter(({ may }) => may !== 'no')
    .map(({ a, b, may, reasons }) => ({
      text: `${a} with ${b}: ${may === 'yes' ? 'yes' : 'with care'}. ${reasons.join(' ')}`,
    }));
  const [first, ...others] = never;
  if (first === undefined) return told;
  const reason = others.length === 0 ? first.reasons[0]! : 'The leads differ, and the axis would tilt until it jams.';
  return [...told, { text: `${first.a} with ${never.map(({ b }) => b).join(' or ')}: no. ${reason}` }];
}

/** Everything in words for one screw; for several what the table leaves to the reader. */
function minded({ screws }: Comparison, duty: Duty): Entry[] {
  const [first, ...others] = screws;
  if (first !== undefined && others.length === 0) return first.words.map((text) => ({ text }));
  const on = (holding: Holding, text: string) => {
    const names = new Set(screws.filter((one) => one.holding === holding).map(({ designation }) => designation));
    return names.size === 0 ? [] : [`${text} on ${[...names].join(', ')}`];
  };
  const told = [...on('falls', 'falls'), ...on('may-creep', 'may creep, most of all once greased,')];
  if (duty.axis === 'horizontal' || told.length === 0) return [];
  return [{ text: `Without power a vertical axis ${told.join('; it ')}. Block it before you switch off.` }];
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

function isPart(figures: readonly (number | undefined)[]): boolean {
  return figures.some((one) => one !== undefined) && figures.includes(undefined);
}
