import type { Remedy, Setting, TriedRemedy } from '../../judge/advice.js';
import type { DesignBase } from '../../parts/part-kind.js';
import { plain } from '../../units/format.js';
import type { KnownKind } from '../known-kind.js';
import { judgedBy, resolveLimits } from '../resolve-limits.js';
import type { DesignOptions } from '../work-out.js';
import { attempt, costsOf, type Trial, trialOf, trier } from './trial.js';

/** Sections that a sheet shares with that of another part for the same place. */
const SHARED = ['screw', 'material', 'printer', 'profile', 'duty', 'calipers', 'units'];

/**
 * Tries the ways that a kind knows to cure what does not pass, each on the sheet itself: its check must pass then, and no
 * other may fail that did not before.
 *
 * @param made what the sheet came to
 * @param kind its kind
 * @param sheet the same sheet as plain data
 * @returns those that hold, in the kind's order
 */
export function triedRemedies(
  made: DesignBase,
  kind: KnownKind,
  sheet: object,
  options: DesignOptions,
): Pick<DesignBase, 'remedies'> {
  const ways = kind.remedies(made, resolveLimits(made.limits, judgedBy(kind, made)));
  if (ways.length === 0) return { remedies: [] };
  const attemptOf = trier(sheet, options);
  const before = trialOf(made, options);
  const holds = ({ check, set, another }: Remedy) => {
    if (another) return isSound(attempt(another, options));
    const after = attemptOf(set);
    return after !== undefined && leadsThere(before, after, check);
  };
  return {
    remedies: ways
      .map((way) => wholly(way, sheet))
      .filter(holds)
      .map(told),
  };
}

function leadsThere(before: Trial, after: Trial, check: string): boolean {
  const row = after.get(check);
  return (row === undefined || row.verdict === 'pass') && costsOf(before, after, check) !== undefined;
}

function isSound(trial: Trial | undefined): boolean {
  return trial !== undefined && [...trial.all().values()].every(({ verdict }) => verdict !== 'fail');
}

/** The sheet of the other part with the sections that both share. */
function wholly(way: Remedy, sheet: object): Remedy {
  if (!way.another) return way;
  const shared = Object.fromEntries(Object.entries(sheet).filter(([key]) => SHARED.includes(key)));
  return { ...way, another: { ...way.another, ...shared } };
}

function told({ check, say, set, another }: Remedy): TriedRemedy {
  const fields = Object.entries(set).map(([field, value]) => `${field}: ${spelt(value)}`);
  return { check, set, words: `${say} (${fields.join(', ')})`, ...(another ? { another } : {}) };
}

function spelt(value: Setting): string {
  return typeof value === 'number' ? `${plain(value)} mm` : value;
}
