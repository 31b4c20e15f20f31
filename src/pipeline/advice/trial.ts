import { type Finding, VERDICTS, type Verdict } from '../../fit/check.js';
import { InputError } from '../../units/faults.js';
import { check } from '../check.js';
import { type DesignOptions, design } from '../design.js';
import { type Changes, changedSheet } from './changed-sheet.js';

/** Its prediction of the fit is judged like a check. */
export const OUTLOOK = 'fit';

/** What one state of a sheet is found to be, by check. */
export type Trial = ReadonlyMap<string, Pick<Finding, 'verdict' | 'limit' | 'least' | 'most' | 'moves' | 'value'>>;

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

function attempt(sheet: object, options: DesignOptions): Trial | undefined {
  try {
    const { checks, fit } = check(design(sheet, options), options);
    const rows: [string, Trial extends ReadonlyMap<string, infer Row> ? Row : never][] = checks.map((row) => [
      row.id,
      row,
    ]);
    if (fit) {
      const { starts, turns } = fit.probabilities;
      const chance = Math.min(starts, turns);
      rows.push([
        OUTLOOK,
        {
          verdict: fit.outlook,
          limit: { min: 0.95 },
          least: chance,
          most: chance,
          value: chance,
          moves: OUTLOOK_MOVES,
        },
      ]);
    }
    return new Map(rows);
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

/** Checks with a figure that do not pass, fails first. */
export function openChecks(trial: Trial): string[] {
  const open = [...trial].filter(([, { verdict, value, limit }]) => verdict !== 'pass' && value !== null && limit);
  return open.sort(([, a], [, b]) => rank(b.verdict) - rank(a.verdict)).map(([id]) => id);
}

export function rank(verdict: Verdict): number {
  return VERDICTS.indexOf(verdict);
}

/** How far the worse end of a value is inside its limit; negative outside. */
export function room(trial: Trial, id: string): number {
  const row = trial.get(id);
  if (!row?.limit || row.least === undefined || row.most === undefined) return Number.POSITIVE_INFINITY;
  const { min = -Infinity, max = Infinity } = row.limit;
  return Math.min(row.least - min, max - row.most);
}

/** Checks that were better before; undefined where one of them now fails. */
export function costsOf(before: Trial, after: Trial, cured: string): string[] | undefined {
  const worse = [...after].filter(([id, row]) => {
    const old = before.get(id);
    return id !== cured && rank(row.verdict) > (old ? rank(old.verdict) : 0);
  });
  return worse.some(([, { verdict }]) => verdict === 'fail') ? undefined : worse.map(([id]) => id);
}
