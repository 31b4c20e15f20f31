import type { Bounds, Limits, LimitsInForce } from './check.js';

/** Limits with the bounds that a sheet puts in their place, and the same for limits that hang on the design. */
export function limitsInForce(own: Limits = { pass: {} }, change?: Bounds): LimitsInForce {
  const of = (limits: Limits) => (change ? changedLimits(limits, change) : limits);
  return { ...of(own), of };
}

/** Whether the sheet's bounds stand in place of a check's own, so that its reason for them no longer holds. */
export function isReplaced(own: Bounds, inForce: Bounds): boolean {
  return own.min !== inForce.min || own.max !== inForce.max;
}

/** The sheet's bounds replace the pass limits; a fail limit moves along when it would be stricter than they are. */
function changedLimits(own: Limits, change: Bounds): Limits {
  const replace = (bound: 'min' | 'max') =>
    own.pass[bound] === undefined ? undefined : (change[bound] ?? own.pass[bound]);
  const pass = bounds(replace('min'), replace('max'));
  if (!own.fail) return { pass };
  const wasHard = own.pass.min === own.fail.min && own.pass.max === own.fail.max;
  const loosest = (mine: number | undefined, theirs: number | undefined, pick: (a: number, b: number) => number) =>
    mine === undefined || theirs === undefined ? mine : pick(mine, theirs);
  const fail = wasHard
    ? pass
    : bounds(loosest(own.fail.min, pass.min, Math.min), loosest(own.fail.max, pass.max, Math.max));
  return { pass, fail };
}

function bounds(min: number | undefined, max: number | undefined): Bounds {
  return { ...(min === undefined ? {} : { min }), ...(max === undefined ? {} : { max }) };
}
