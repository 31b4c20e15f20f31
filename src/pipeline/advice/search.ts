import type { Verdict } from '../../judge/check.js';
import { rounded } from '../../units/format.js';
import { type Changes, type FigureKnob, isFigure, type Knob, type WordKnob } from './knob.js';
import { costsOf, rank, room, type Trial, type Try } from './trial.js';

/** Changes that bring a check to pass. */
export interface Found {
  readonly changes: Changes;
  readonly change: number;
  readonly costs: readonly string[];
}

/** What is looked for. */
export interface Goal {
  readonly check: string;
  /** the verdict that is good enough */
  readonly reach: Verdict;
  /** changes that are already made */
  readonly base: Changes;
  readonly before: Trial;
  readonly attempt: Try;
}

/** The least change of one field, either way, that brings the check to pass and lets no other fail. */
export function singleCures(goal: Goal, knob: Knob): Found[] {
  if (!isFigure(knob)) return wordCure(goal, knob);
  return [1, -1].flatMap((way) => {
    const passes = (index: number) => passing(goal, changesAt(knob, index * way));
    const first = firstPassing(knob, way, passes);
    return first === undefined ? [] : [found(goal, knob, changesAt(knob, first * way))];
  });
}

/** The word that costs least of those that bring the check to pass, the simplest of them. */
function wordCure(goal: Goal, knob: WordKnob): Found[] {
  const good = otherWords(knob)
    .map((word): Changes => ({ [knob.path]: word }))
    .filter((set) => passing(goal, set))
    .map((set) => found(goal, knob, set));
  const least = Math.min(...good.map(({ costs }) => costs.length));
  return good.filter(({ costs }) => costs.length === least).slice(0, 1);
}

/** Each field that a kind's own cure sets counts as so many grains: turning a part over is no small change. */
const OWN_CURE = 10;

/** The cures that a kind knows of, as far as they hold on what was changed before. */
export function knownCures(goal: Goal, ways: readonly Changes[]): Found[] {
  return ways.flatMap((changes): Found[] => {
    if (!passing(goal, changes)) return [];
    const after = goal.attempt({ ...goal.base, ...changes })!;
    const change = OWN_CURE * Object.keys(changes).length;
    return [{ changes, change, costs: costsOf(goal.before, after, goal.check) ?? [] }];
  });
}

/** Steps away from the present value double until one passes; then halves lead back to the least that does. */
function firstPassing(knob: Knob, way: number, passes: (index: number) => boolean): number | undefined {
  let failed = 0;
  for (let index = 1; ; index *= 2) {
    const reach = Math.min(index, lastIndex(knob, way));
    if (reach <= failed) return undefined;
    if (passes(reach)) {
      let good = reach;
      while (good - failed > 1) {
        const middle = Math.floor((good + failed) / 2);
        if (passes(middle)) good = middle;
        else failed = middle;
      }
      return good;
    }
    failed = reach;
  }
}

/** A field moved by so many steps, and what goes with it. */
function changesAt(knob: Knob, index: number): Changes {
  if (!isFigure(knob)) return { [knob.path]: otherWords(knob)[index - 1]! };
  const value = at(knob, index);
  return { ...knob.also?.(value), [knob.path]: value };
}

/** The value some steps away: whole steps, the first one the next whole step; or so many further on in the list. */
function at(knob: FigureKnob, index: number): number {
  const { now, step, values } = knob;
  if (values) return index > 0 ? above(knob, values)[index - 1]! : below(knob, values)[-index - 1]!;
  const up = Math.floor(now / step + 1e-6) + index;
  const down = Math.ceil(now / step - 1e-6) + index;
  return rounded((index > 0 ? up : down) * step);
}

/** Values above the present one, the nearest first. */
function above({ now }: FigureKnob, values: readonly number[]): number[] {
  return values.filter((value) => value > now + 1e-9);
}

/** Values below the present one, the nearest first. */
function below({ now }: FigureKnob, values: readonly number[]): number[] {
  return values.filter((value) => value < now - 1e-9).reverse();
}

/** The words that a field does not hold now. */
function otherWords({ words, now }: Exclude<Knob, FigureKnob>): string[] {
  return words.filter((word) => word !== now);
}

function lastIndex(knob: Knob, way: number): number {
  if (!isFigure(knob)) return way > 0 ? otherWords(knob).length : 0;
  if (knob.values) return (way > 0 ? above : below)(knob, knob.values).length;
  const range = way > 0 ? knob.most - knob.now : knob.now - knob.least;
  return Math.floor(range / knob.step + 1e-6);
}

function passing({ check, reach, base, before, attempt }: Goal, set: Changes): boolean {
  const after = attempt({ ...base, ...set });
  const row = after?.get(check);
  if (!after || !row || rank(row.verdict) > rank(reach)) return false;
  return costsOf(before, after, check) !== undefined;
}

function found(goal: Goal, knob: Knob, set: Changes): Found {
  const after = goal.attempt({ ...goal.base, ...set })!;
  const costs = costsOf(goal.before, after, goal.check) ?? [];
  return { changes: set, change: grainsMoved(knob, set), costs };
}

/** How much a field is changed, in grains. */
function grainsMoved(knob: Knob, set: Changes): number {
  return isFigure(knob) ? Math.abs(Number(set[knob.path]) - knob.now) / knob.grain : (knob.grains ?? 1);
}

/** So many grains of a field in steps of it; of a list, so many values further on. */
function stepsIn(knob: Knob, grains: number): number {
  return isFigure(knob) && !knob.values ? Math.round((grains * knob.grain) / knob.step) : grains;
}

const MOST_PARTNERS = 4;
const PARTNER_STEPS = [1, 3, 8];

/** Cures by two fields: one is moved a little to where the check has more room, then the other is looked for. */
export function pairCures(goal: Goal, knobs: readonly Knob[]): Found[] {
  const helpers = knobs
    .flatMap((knob) => [1, -1].map((way) => ({ knob, way, gain: gainOf(goal, knob, way) })))
    .filter(({ gain }) => gain > 1e-9)
    .sort((a, b) => b.gain - a.gain)
    .slice(0, MOST_PARTNERS);
  return helpers.flatMap(({ knob, way }) =>
    PARTNER_STEPS.flatMap((grains) => {
      const wanted = isFigure(knob) && !knob.values ? stepsIn(knob, grains / 2) : grains;
      const index = Math.max(1, Math.min(wanted, lastIndex(knob, way)));
      if (lastIndex(knob, way) < 1) return [];
      const first = changesAt(knob, index * way);
      const moved = grainsMoved(knob, first);
      const others = helpers.filter((other) => other.knob.path !== knob.path).map((other) => other.knob);
      const started = { ...goal, base: { ...goal.base, ...first } };
      return [...new Set(others)].flatMap((other) =>
        singleCures(started, other).map(({ changes, change, costs }) => ({
          changes: { ...first, ...changes },
          change: change + moved,
          costs,
        })),
      );
    }),
  );
}

/** The fields that a check hangs on: a grain either way changes its room. */
export function movingKnobs(goal: Goal, knobs: readonly Knob[]): Knob[] {
  return knobs.filter((knob) => [1, -1].some((way) => Math.abs(gainOf(goal, knob, way)) > 1e-9));
}

/** Room that a check wins by one grain of a field. */
function gainOf({ check, base, before, attempt }: Goal, knob: Knob, way: number): number {
  const index = Math.min(Math.max(1, stepsIn(knob, 1)), lastIndex(knob, way));
  if (index < 1) return 0;
  const after = attempt({ ...base, ...changesAt(knob, index * way) });
  return after?.get(check) ? room(after, check) - room(before, check) : 0;
}
