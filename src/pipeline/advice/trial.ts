import type { FitBlock } from '../../fit/stack/fit-block.js';
import { type Finding, VERDICTS, type Verdict } from '../../judge/check.js';
import type { DesignBase } from '../../parts/part-kind.js';
import { InputError } from '../../units/faults.js';
import { once } from '../../units/once.js';
import { kindOfDesign } from '../find-kind.js';
import { KINDS } from '../kinds.js';
import { judgedBy, resolveLimits } from '../resolve-limits.js';
import { type DesignOptions, workOut } from '../work-out.js';
import { changedSheet } from './changed-sheet.js';
import type { Changes } from './knob.js';

/** Its prediction of the fit is judged like a check. */
export const OUTLOOK = 'fit';

export type Row = Pick<Finding, 'verdict' | 'limit' | 'least' | 'most' | 'moves' | 'value'>;

/** What one state of a sheet is found to be. A check is run when it is asked for: most changes are given up after one. */
export interface Trial {
  /** undefined where the check does not apply */
  readonly get: (check: string) => Row | undefined;
  readonly all: () => ReadonlyMap<string, Row>;
}

/** Tries changes of a sheet; undefined where they cannot be worked out. The same changes are worked out once. */
export type Try = (changes: Changes) => Trial | undefined;

const OUTLOOK_MOVES = 'fit.diametral, fit.axial, body.length, printer.layer';

/** A trier for one sheet. */
export function trier(sheet: object, options: DesignOptions): Try {
  const known = new Map<string, Trial | undefined>();
  return (changes) => {
    const key = JSON.stringify(Object.entries(changes).sort(([a], [b]) => (a < b ? -1 : 1)));
    if (known.has(key)) return known.get(key);
    const trial = attempt(changedSheet(sheet, changes), options);
    known.set(key, trial);
    return trial;
  };
}

/** What a sheet is found to be; undefined where it cannot be worked out. */
export function attempt(sheet: object, options: DesignOptions): Trial | undefined {
  try {
    return trialOf(workOut(sheet, options), options);
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

/** What a design is found to be. */
export function trialOf(made: DesignBase, { kinds = KINDS }: DesignOptions): Trial {
  const kind = kindOfDesign(kinds, made);
  const limits = resolveLimits(made.limits, judgedBy(kind, made));
  const outlook = () => outlookRow(kind.particulars(made).fit);
  const one = (id: string) =>
    id === OUTLOOK ? outlook() : kind.runChecks(made, limits, id).find((row) => row.id === id);
  const rows = remembered(one);
  const all = () => {
    const ids = [...new Set([...kind.checks.map(({ id }) => id), OUTLOOK])];
    const found = ids.flatMap((id): [string, Row][] => {
      const row = rows(id);
      return row ? [[id, row]] : [];
    });
    return new Map(found);
  };
  return { get: rows, all: once(all) };
}

function outlookRow(fit: FitBlock | undefined): Row | undefined {
  if (!fit) return undefined;
  const chance = Math.min(fit.probabilities.starts, fit.probabilities.turns);
  return {
    verdict: fit.outlook,
    limit: { min: 0.95 },
    least: chance,
    most: chance,
    value: chance,
    moves: OUTLOOK_MOVES,
  };
}

function remembered<Value>(work: (id: string) => Value): (id: string) => Value {
  const known = new Map<string, Value>();
  return (id) => {
    if (!known.has(id)) known.set(id, work(id));
    return known.get(id)!;
  };
}

/** Checks with a figure that do not pass, fails first. */
export function openChecks(trial: Trial): string[] {
  const open = [...trial.all()].filter(([, { verdict, limit }]) => verdict !== 'pass' && limit);
  return open.sort(([, a], [, b]) => rank(b.verdict) - rank(a.verdict)).map(([id]) => id);
}

export function rank(verdict: Verdict): number {
  return VERDICTS.indexOf(verdict);
}

/** How far the worse end of a value is inside its limit; negative outside. */
export function room(trial: Trial, id: string): number {
  const row = trial.get(id);
  if (!row?.limit) return Infinity;
  if (row.least === undefined || row.most === undefined) return row.verdict === 'pass' ? Infinity : -Infinity;
  const { min = -Infinity, max = Infinity } = row.limit;
  return Math.min(row.least - min, max - row.most);
}

/** Checks that were better before; undefined where one of them now fails. */
export function costsOf(before: Trial, after: Trial, cured: string): string[] | undefined {
  const worse = [...after.all()].filter(([id, { verdict }]) => {
    if (id === cured || verdict === 'pass') return false;
    const old = before.get(id);
    return rank(verdict) > (old ? rank(old.verdict) : 0);
  });
  return worse.some(([, { verdict }]) => verdict === 'fail') ? undefined : worse.map(([id]) => id);
}
