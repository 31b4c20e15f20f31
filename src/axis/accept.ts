import type { Acceptance } from '../judge/accept.js';
import { requireAcceptable } from '../pipeline/require-acceptable.js';
import { fault } from '../units/faults.js';
import type { AxisDesign } from './axis-design.js';
import { AXIS_CHECKS } from './checks/index.js';

/** Failed checks that are accepted: those of the axis itself, and those of its parts by their names. */
export interface AxisAcceptances {
  readonly own: readonly Acceptance[];
  readonly ofPart: (role: string) => readonly Acceptance[];
}

/** `nut/wall`: the check of one part of an axis; undefined for any other text. */
export function partOfAxis(check: string): { readonly role: string; readonly check: string } | undefined {
  const [role, ...rest] = check.split('/');
  return rest.length === 0 || role === undefined ? undefined : { role, check: rest.join('/') };
}

/** Whether a check looks across the parts of an axis. */
export function isAxisCheck(check: string): boolean {
  return AXIS_CHECKS.some(({ id }) => id === check);
}

/**
 * Shares out what is accepted of an axis.
 * @throws InputError a part or a check that the axis does not have, or one that cannot be accepted
 */
export function shareOut(accepted: readonly Acceptance[], { parts }: AxisDesign, field = '--accept'): AxisAcceptances {
  const byRole = new Map<string, Acceptance[]>(parts.map(({ role }) => [role, []]));
  const own: Acceptance[] = [];
  for (const one of accepted) {
    const named = partOfAxis(one.check);
    const part = named && parts.find(({ role }) => role === named.role);
    if (named && part) {
      requireAcceptable([{ ...one, check: named.check }], [part.kind], field);
      byRole.get(named.role)!.push({ ...one, check: named.check });
    } else if (!named && isAxisCheck(one.check)) own.push(one);
    else {
      const names = parts.map(({ role }) => role).join(', ');
      throw fault(
        field,
        one.check,
        `must be a check of the axis such as axis-travel, or PART/CHECK; its parts: ${names}`,
      );
    }
  }
  return { own, ofPart: (role) => byRole.get(role) ?? [] };
}
