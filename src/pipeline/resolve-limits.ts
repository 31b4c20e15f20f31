import { SOLID_GROUP } from '../judge/accept.js';
import type { Bounds, CheckFacts, Finding } from '../judge/check.js';
import type { LimitChanges } from '../judge/run-checks.js';
import type { DesignBase } from '../parts/part-kind.js';
import { nearest } from '../sheet/nearest.js';
import type { LimitsSheet } from '../sheet/sections/limits.js';
import { type Fault, InputError, shown } from '../units/faults.js';
import { parseQuantity } from '../units/quantity.js';
import type { Dimension } from '../units/unit-table.js';
import type { KnownKind } from './known-kind.js';

type Side = 'min' | 'max';

/** Checks, and what one of them finds where no limit is changed: that shows which bounds it has. */
export interface Judged {
  readonly checks: readonly CheckFacts[];
  readonly finding: (id: string) => Finding | undefined;
}

/** A design as its kind judges it. */
export function judgedBy(kind: Pick<KnownKind, 'checks' | 'runChecks'>, design: DesignBase): Judged {
  return {
    checks: kind.checks,
    finding: (id) => kind.runChecks(design, {}, id).find((found) => found.id === id),
  };
}

/**
 * Turns the limits that a sheet changes into bounds in the units of their checks.
 *
 * @param limits bounds by check id, as numbers or quantities
 * @param judged the checks of a kind, and what they find of a design
 * @throws InputError an unknown check, one without that bound or of the solid, or a bound of the wrong unit
 */
export function resolveLimits(limits: LimitsSheet, judged: Judged): LimitChanges {
  const { checks } = judged;
  const ids = Object.keys(limits);
  if (ids.length === 0) return {};
  const faults: Fault[] = [];
  const changes = ids.map((id): [string, Bounds] => {
    const check = checks.find((known) => known.id === id);
    // limits that hang on the design show in what is found; asking costs a check, and most have limits of their own
    const found = check && !check.limits ? judged.finding(id) : undefined;
    const wrong = check ? unchangeable(check, found) : unknownCheck(id, checks);
    if (!check || wrong !== undefined) faults.push({ path: `limits.${id}`, value: '', allowed: wrong ?? '' });
    return [id, check && wrong === undefined ? boundsOf(limits[id] ?? {}, check, found, faults) : {}];
  });
  if (faults.length > 0) throw new InputError(faults);
  return Object.fromEntries(changes);
}

function unknownCheck(id: string, checks: readonly CheckFacts[]): string {
  const ids = checks.map((check) => check.id);
  const near = nearest(id, ids);
  return near ? `unknown check; did you mean ${near}?` : `unknown check; known: ${ids.join(', ')}`;
}

function unchangeable(check: CheckFacts, found: Finding | undefined): string | undefined {
  if (check.group === SOLID_GROUP) return 'a check of the solid cannot be changed';
  const isFixed = !check.limits && found && found.limit === null && found.value !== null;
  return isFixed ? 'this check has no limit to change' : undefined;
}

/** A plain value stands on both sides and moves the bound that the check has; a bound by name must exist. */
function boundsOf(given: LimitsSheet[string], check: CheckFacts, found: Finding | undefined, faults: Fault[]): Bounds {
  const own = check.limits?.pass ?? found?.limit ?? undefined;
  const isPlain = given.min !== undefined && given.min === given.max;
  const read = (side: Side): Partial<Record<Side, number>> => {
    const bound = given[side];
    if (bound === undefined) return {};
    const path = isPlain ? `limits.${check.id}` : `limits.${check.id}.${side}`;
    const refuse = (allowed: string) => {
      if (!faults.some((known) => known.path === path)) faults.push({ path, value: shown(bound), allowed });
      return {};
    };
    if (!isPlain && own && own[side] === undefined)
      return refuse(`this check has no ${side}, only a ${side === 'min' ? 'max' : 'min'}`);
    const value = inUnit(bound, check.unit);
    return typeof value === 'number' ? { [side]: value } : refuse(value.allowed);
  };
  const bounds: Bounds = { ...read('min'), ...read('max') };
  if (bounds.min !== undefined && bounds.max !== undefined && bounds.min > bounds.max) {
    faults.push({
      path: `limits.${check.id}`,
      value: `${bounds.min} to ${bounds.max}`,
      allowed: 'min must not be above max',
    });
  }
  return bounds;
}

const DIMENSION_OF_UNIT: Readonly<Record<string, Dimension>> = {
  mm: 'length',
  deg: 'angle',
  '°': 'angle',
  N: 'force',
  N·mm: 'torque',
  'mm/s': 'speed',
  '%': 'ratio',
  '°C': 'temperature',
  K: 'temperature-difference',
  MPa: 'stress',
  'MPa·m/s': 'pressure-velocity',
};

function inUnit(bound: string | number, unit: string): number | { readonly allowed: string } {
  const dimension = DIMENSION_OF_UNIT[unit];
  if (dimension === undefined || (unit === '%' && typeof bound === 'number')) {
    const isNumber = typeof bound === 'number' && Number.isFinite(bound);
    return isNumber ? bound : { allowed: `must be a plain number${unit === '' ? '' : ` in ${unit}`}` };
  }
  const parsed = parseQuantity(bound, dimension);
  if (!parsed.ok) return { allowed: parsed.allowed };
  if (parsed.quantity.half !== undefined) return { allowed: 'takes no ± here' };
  return unit === '%' ? parsed.quantity.value * 100 : parsed.quantity.value;
}
