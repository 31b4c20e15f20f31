import type { PartFacts } from './facts.js';

/** What of a part tells where it stands. */
type Stands = Pick<PartFacts, 'joint' | 'plate' | 'holder'>;

/** Places along a screw that hold one part each, and what stands there. */
const PLACES: readonly (readonly [place: string, stands: (facts: Stands) => boolean])[] = [
  ['between motor and screw', ({ joint }) => joint !== undefined],
  ['under the motor', ({ plate }) => plate !== undefined],
  ['around the end of the screw', ({ holder }) => holder?.role === 'free'],
  ['at the end that is held', ({ holder }) => holder !== undefined && holder.role !== 'free'],
];

/** More parts than find their place. */
export interface Crowd {
  readonly place: string;
  readonly roles: readonly string[];
}

/**
 * Places at which more parts stand than find room.
 *
 * @param parts  the parts of an axis, and how many there are of each; one unless told
 * @param screws how many screws it has at most
 */
export function crowds(
  parts: readonly { readonly role: string; readonly facts: Stands; readonly pieces?: number }[],
  screws = 1,
): Crowd[] {
  return PLACES.flatMap(([place, stands]) => {
    const there = parts.filter(({ facts }) => stands(facts));
    const count = there.reduce((sum, { pieces = 1 }) => sum + pieces, 0);
    return count > screws ? [{ place, roles: there.map(({ role }) => role) }] : [];
  });
}
