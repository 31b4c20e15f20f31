import type { Advice, CheckAdvice, Cure, TriedRemedy } from '../judge/advice.js';
import { VERDICTS, type Verdict } from '../judge/check.js';
import { SHIPPED } from '../presets/shipped.js';
import type { PresetTexts } from '../presets/texts.js';
import { readYaml } from '../sheet/read-yaml.js';
import { changedLines, sheetLines, spelt } from './advice/changed-sheet.js';
import { choicesOf } from './advice/choices.js';
import { type Changes, type Knob, movedTo } from './advice/knob.js';
import { leastOf } from './advice/least-of.js';
import { onPresetList } from './advice/printer-choices.js';
import { type Found, type Goal, knownCures, movingKnobs, pairCures, singleCures } from './advice/search.js';
import { surerReadings } from './advice/surer-readings.js';
import { OUTLOOK, openChecks, rank, type Trial, type Try, trier } from './advice/trial.js';
import { type DesignOptions, design } from './design.js';
import { kindOfDesign } from './find-kind.js';
import { KINDS } from './kinds.js';

const MOST_CURES = 3;
const MOST_ROUNDS = 8;

/**
 * Looks for the least changes of a sheet that bring its failed and doubtful checks to pass. Each is tried on the sheet
 * itself, worked out and checked anew; a change that makes another check fail is none.
 *
 * @param sheet a sheet's text (YAML), or the same as a plain object
 * @param options presets and part kinds, where not those that ship
 * @returns cures by check, the least change first, and all of them together
 * @throws InputError every mistake of the sheet at once
 */
export function advise(sheet: string | object, options: DesignOptions = {}): Advice {
  const plain = typeof sheet === 'string' ? readYaml(sheet).value : sheet;
  const made = design(sheet, options);
  const kind = kindOfDesign(options.kinds ?? KINDS, made);
  if (typeof plain !== 'object' || plain === null) return { checks: [] };
  const attempt = trier(plain, options);
  const before = attempt({});
  if (!before) return { checks: [] };
  const { presets = SHIPPED } = options;
  const knobs = onPresetList(kind.tunables(made), presets);
  const choices = knobs.length === 0 ? [] : choicesOf(plain, presets);
  const ways = (made.remedies ?? []).filter(({ another }) => another === undefined);
  const checks = askedFor(before, ways).map((check): CheckAdvice => {
    const { verdict } = before.get(check)!;
    const search = { check, base: {}, before, attempt };
    const { found, reach, tried } = curesOf(search, [...knobs, ...choices], ways);
    const surer = surerReadings(check, plain, before, attempt);
    const cures = found.map(
      ({ changes, change, costs }): Cure => ({
        set: spelt(plain, changes),
        lines: changedLines(plain, changes),
        reaches: reach,
        change,
        costs,
      }),
    );
    const another = made.remedies?.find((one) => one.check === check && one.another)?.another;
    const part = another ? { another: sheetLines(another) } : {};
    return {
      check,
      verdict,
      cures,
      ...(surer.length === 0 ? {} : { surer }),
      ...part,
      ...(cures.length === 0 ? { none: whyNone(search, tried, knobs.length > 0) } : {}),
    };
  });
  return { checks, ...together(plain, attempt, before, { knobs: [...knobs, ...choices], presets, ways }) };
}

type Search = Omit<Goal, 'reach'>;
/** What a kind knows of: a check, and the fields that cure it. */
type Way = Pick<TriedRemedy, 'check' | 'set'>;

/** Checks that do not pass: those with a figure, and those that their kind knows a way to cure. */
function askedFor(before: Trial, ways: readonly Way[]): string[] {
  return [...new Set([...openChecks(before), ...ways.map(({ check }) => check)])];
}

/** Cures of one check, the cleanest and smallest first; for a failed one that cannot pass, what makes it a caution. */
function curesOf(search: Search, knobs: readonly Knob[], ways: readonly Way[]) {
  const near = knobsFor(search.check, search.before, knobs);
  // a chance of 0 does not move with a small change
  const tried = search.check === OUTLOOK ? near : movingKnobs({ ...search, reach: 'pass' }, near);
  const known = ways.filter((one) => one.check === search.check).map(({ set }) => set);
  const passes = curesUpTo({ ...search, reach: 'pass' }, tried, known);
  if (passes.length > 0 || search.before.get(search.check)?.verdict !== 'fail')
    return { found: passes, reach: 'pass' as Verdict, tried };
  return { found: curesUpTo({ ...search, reach: 'caution' }, tried, known), reach: 'caution' as Verdict, tried };
}

function curesUpTo(goal: Goal, knobs: readonly Knob[], known: readonly Changes[]): Found[] {
  const ways = knownCures(goal, known);
  const single = [...knobs.flatMap((knob) => singleCures(goal, knob)), ...ways];
  const found = single.some(({ costs }) => costs.length === 0) ? single : [...single, ...pairCures(goal, knobs)];
  return leastOf(found).slice(0, Math.max(MOST_CURES, ways.length));
}

/** Fields of the sections that the check says it is moved by. */
function knobsFor(check: string, trial: Trial, knobs: readonly Knob[]): Knob[] {
  const moves = trial.get(check)?.moves ?? '';
  const sections = new Set(moves.split(',').map((field) => field.trim().split('.')[0]!));
  return knobs.filter(({ path }) => sections.has(path.split('.')[0]!));
}

function whyNone({ check, before }: Search, tried: readonly Knob[], isKnown: boolean): string {
  const moves = before.get(check)?.moves ?? '';
  if (!isKnown) return `cures for this kind of part are not worked out; it hangs on ${moves}`;
  if (tried.length === 0) return `no size of this sheet moves it; it hangs on ${moves}`;
  const fields = tried.map(({ path }) => path).join(', ');
  return `${fields}: no change of one or two of them is enough without making another check fail; it hangs on ${moves}`;
}

/** Best cures one after another, each found on what the ones before have left. */
function together(
  sheet: object,
  attempt: Try,
  before: Trial,
  {
    knobs,
    presets,
    ways,
  }: { readonly knobs: readonly Knob[]; readonly presets: PresetTexts; readonly ways: readonly Way[] },
): Pick<Advice, 'together'> {
  let set: Changes = {};
  let state = before;
  const given = new Set<string>();
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const check = openChecks(state).find((id) => !given.has(id));
    if (check === undefined) break;
    given.add(check);
    const moved = knobs.map((knob) => movedTo(knob, set[knob.path]));
    const here = onPresetList(moved, presets);
    const [best] = curesOf({ check, base: set, before: state, attempt }, here, ways).found;
    const isWorth = best && (best.costs.length === 0 || state.get(check)!.verdict === 'fail');
    if (!isWorth) continue;
    set = { ...set, ...best.changes };
    state = attempt(set)!;
  }
  if (Object.keys(set).length === 0) return {};
  return {
    together: {
      set: spelt(sheet, set),
      lines: changedLines(sheet, set),
      verdict: worstOf(state),
      still: openChecks(state),
    },
  };
}

function worstOf(trial: Trial): Verdict {
  return VERDICTS[Math.max(0, ...[...trial.all().values()].map(({ verdict }) => rank(verdict)))]!;
}
