import type { z } from 'zod';
import type { Finding } from '../judge/check.js';
import { runChecks } from '../judge/run-checks.js';
import { changedSheet, spelt } from '../pipeline/advice/changed-sheet.js';
import type { Changes } from '../pipeline/advice/knob.js';
import type { Trial, Try } from '../pipeline/advice/trial.js';
import { findKind } from '../pipeline/find-kind.js';
import { KINDS } from '../pipeline/kinds.js';
import { judgedBy, resolveLimits } from '../pipeline/resolve-limits.js';
import { type Fields, isFields } from '../sheet/fields-map.js';
import { isLength } from '../sheet/inches.js';
import { InputError } from '../units/faults.js';
import { once } from '../units/once.js';
import type { AxisDesign } from './axis-design.js';
import { AXIS_CHECKS } from './checks/index.js';
import { type AxisOptions, designAxis } from './design.js';
import { limitsOf } from './limits.js';
import { axisSchema } from './sheet.js';

/** What an axis is found to be: its own checks by id, those of a part as PART/CHECK. */
export function axisTrial(axis: AxisDesign): Trial {
  const all = once(() => new Map([...ownRows(axis), ...axis.parts.flatMap(partRows)]));
  const own = once(() => new Map(ownRows(axis)));
  return { get: (id) => (id.includes('/') ? all() : own()).get(id), all };
}

/** Tries changes of the sheet of an axis; undefined where they cannot be worked out. */
export function axisTrier(sheet: object, options: AxisOptions): Try {
  const known = new Map<string, Trial | undefined>();
  return (changes: Changes) => {
    const key = JSON.stringify(Object.entries(changes).sort(([a], [b]) => (a < b ? -1 : 1)));
    if (!known.has(key)) known.set(key, tried(changedSheet(sheet, speltOnAxis(sheet, changes)), options));
    return known.get(key);
  };
}

/** Changes of an axis as they are put into its sheet: lengths of its parts say their unit as well where bare ones are inches. */
export function speltOnAxis(sheet: object, changes: Changes): Changes {
  return spelt(sheet, changes, (path) => isFields(sheet) && isLength(...fieldOf(sheet, path)));
}

/** The schema that a field of an axis or of one of its parts stands in, and its path there. */
function fieldOf(sheet: Fields, path: readonly string[]): [z.ZodType, readonly string[]] {
  const [first, role = '', ...rest] = path;
  if (first !== 'parts') return [axisSchema, path];
  const section = isFields(sheet.parts) ? sheet.parts[role] : undefined;
  const kind = findKind(KINDS, isFields(section) && section.part !== undefined ? section.part : role);
  return [kind?.schema ?? axisSchema, rest];
}

function tried(sheet: object, options: AxisOptions): Trial | undefined {
  try {
    return axisTrial(designAxis(sheet, options));
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

function ownRows(axis: AxisDesign): [string, Finding][] {
  return runChecks(AXIS_CHECKS, axis, limitsOf(axis)).map((row) => [row.id, row]);
}

function partRows({ role, kind, design }: AxisDesign['parts'][number]): [string, Finding][] {
  const limits = resolveLimits(design.limits, judgedBy(kind, design));
  return kind.runChecks(design, limits).map((row) => [`${role}/${row.id}`, row]);
}
