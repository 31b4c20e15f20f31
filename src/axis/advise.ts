import type { Advice, CheckAdvice, Cure } from '../judge/advice.js';
import { changedLines } from '../pipeline/advice/changed-sheet.js';
import type { Changes } from '../pipeline/advice/knob.js';
import { leastOf } from '../pipeline/advice/least-of.js';
import { type Goal, knownCures, singleCures } from '../pipeline/advice/search.js';
import { costsOf, rank, type Trial, type Try } from '../pipeline/advice/trial.js';
import { advise } from '../pipeline/advise.js';
import type { DesignOptions } from '../pipeline/design.js';
import { SHIPPED } from '../presets/shipped.js';
import { isFields } from '../sheet/fields-map.js';
import { readYaml } from '../sheet/read-yaml.js';
import type { AxisDesign, AxisPart } from './axis-design.js';
import { axisTrial, axisTrier, speltOnAxis } from './axis-trial.js';
import { AXIS_CHECKS } from './checks/index.js';
import { crossCures } from './cross-knobs.js';
import { designAxis } from './design.js';

const MOST_CURES = 3;

/**
 * Looks for the least changes that cure what does not pass, across the parts and in each. Every one is tried on the axis
 * as a whole: a longer nut that leaves too little travel is no cure. Fields of a part are named from the top of the axis's sheet.
 *
 * @param sheet a sheet's text (YAML), or the same as a plain object
 * @param options presets, where not those that ship
 * @returns cures by check, those of a part by PART/CHECK; the lines of a part's cure stand in its section
 * @throws InputError every mistake of the sheet at once
 */
export function adviseAxis(sheet: string | object, options: DesignOptions = {}): Advice {
  const plain = typeof sheet === 'string' ? readYaml(sheet).value : sheet;
  const axis = designAxis(sheet, options);
  if (!isFields(plain)) return { checks: [] };
  const search: Search = { axis, plain, options, before: axisTrial(axis), attempt: axisTrier(plain, options) };
  return {
    checks: [
      ...openAcross(search).map((check) => crossAdvice(check, search)),
      ...axis.parts.flatMap((part) => partAdvice(part, search)),
    ],
  };
}

interface Search {
  readonly axis: AxisDesign;
  readonly plain: object;
  readonly options: DesignOptions;
  readonly before: Trial;
  readonly attempt: Try;
}

/** Checks across the parts that do not pass, fails first. */
function openAcross({ before }: Search): string[] {
  const verdictOf = (id: string) => before.get(id)?.verdict ?? 'pass';
  return AXIS_CHECKS.map(({ id }) => id)
    .filter((id) => verdictOf(id) !== 'pass')
    .sort((a, b) => rank(verdictOf(b)) - rank(verdictOf(a)));
}

function crossAdvice(check: string, search: Search): CheckAdvice {
  const { axis, options, before, attempt } = search;
  const { verdict, moves } = before.get(check)!;
  const { knobs, ways } = crossCures(check, axis, options.presets ?? SHIPPED);
  const upTo = (reach: Goal['reach']): Cure[] => {
    const goal: Goal = { check, reach, base: {}, before, attempt };
    const found = [...knobs.flatMap((knob) => singleCures(goal, knob)), ...knownCures(goal, ways)];
    return leastOf(found)
      .slice(0, MOST_CURES)
      .map(({ changes, change, costs }) => ({
        set: speltOnAxis(search.plain, changes),
        lines: linesOf(search, changes),
        reaches: reach,
        change,
        costs,
      }));
  };
  const passes = upTo('pass');
  const cures = passes.length > 0 || verdict !== 'fail' ? passes : upTo('caution');
  return {
    check,
    verdict,
    cures,
    ...(cures.length > 0 ? {} : { none: `no field of the axis alone cures it; it hangs on ${moves}` }),
  };
}

/** Cures of one part that leave the rest of the axis as good as it was. */
function partAdvice({ role, sheet, own }: AxisPart, search: Search): CheckAdvice[] {
  const { options, before, attempt } = search;
  return advise(sheet, options).checks.map((one): CheckAdvice => {
    const check = `${role}/${one.check}`;
    const cures = one.cures.flatMap((cure): Cure[] => {
      const inPlace = Object.entries(cure.set).map(([path, value]) => [placeOf(path, role, own), value] as const);
      const set = speltOnAxis(search.plain, Object.fromEntries(inPlace));
      const after = attempt(set);
      const costs = after && costsOf(before, after, check);
      return costs ? [{ ...cure, set, lines: linesOf(search, set), costs }] : [];
    });
    if (one.cures.length === 0 || cures.length > 0) return { ...one, check, cures };
    return { ...one, check, cures, none: 'what cures it in the part makes another check of the axis fail' };
  });
}

/** What is said of the axis as a whole, where the part says nothing of it itself. */
const OF_ALL = ['screw', 'motor', 'duty'];

/** Where a field of a part stands in the sheet of its axis. */
function placeOf(path: string, role: string, own: object): string {
  return isOfAll(path, own) ? path : `parts.${role}.${path}`;
}

function isOfAll(path: string, own: object): boolean {
  const section = path.split('.')[0]!;
  return OF_ALL.includes(section) && !(section in own);
}

/** The sections that change, one line each: those of the axis, and in a part's section those of the part. */
function linesOf({ axis: { parts }, plain }: Search, changes: Changes): string[] {
  const spelled = Object.entries(speltOnAxis(plain, changes));
  const own = spelled.filter(([path]) => !path.startsWith('parts.'));
  return [
    ...changedLines(plain, Object.fromEntries(own)),
    ...parts.flatMap(({ role, own: section }) => {
      const start = `parts.${role}.`;
      const inside = spelled.flatMap(([path, value]) =>
        path.startsWith(start) ? [[path.slice(start.length), value] as const] : [],
      );
      return changedLines(section, Object.fromEntries(inside));
    }),
  ];
}
