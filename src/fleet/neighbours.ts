import type { Verdict } from '../judge/check.js';
import type { RememberedPart } from './made-part.js';

/** A part of a machine that was made, as its neighbours see it. */
export interface Neighbour {
  readonly role: string;
  readonly axis?: string | undefined;
  /** how many of it the machine needs, spare ones aside; one unless told */
  readonly pieces?: number;
  readonly made: Pick<RememberedPart, 'facts'>;
}

/** What may be found between the parts of one machine. */
export const PAIR_IDS = [
  'axis-pair',
  'axis-fit',
  'axis-told',
  'coupling-motor',
  'coupling-screw',
  'plate-motor',
] as const;

/** What was found between the parts of one machine. */
export interface PairFinding {
  readonly id: (typeof PAIR_IDS)[number];
  readonly verdict: Verdict;
  /** names of the parts concerned */
  readonly roles: readonly string[];
  readonly message: string;
}

/** The parts of each axis; a part of no axis belongs to nobody. */
export function axesOf(neighbours: readonly Neighbour[]): Neighbour[][] {
  const axes = [...new Set(neighbours.flatMap(({ axis }) => axis ?? []))];
  return axes.map((axis) => neighbours.filter((one) => one.axis === axis));
}

/** Whether it holds a nut, printed or bought. */
export function isNut({ made: { facts } }: Neighbour): boolean {
  return facts.nut !== undefined || facts.holdsNut === true;
}

export function piecesOf(parts: readonly Neighbour[]): number {
  return parts.reduce((sum, { pieces = 1 }) => sum + pieces, 0);
}

/** How many screws an axis may have: nobody tells which part is on which, but each has a nut. */
export function mostScrews(on: readonly Neighbour[]): number {
  return Math.max(1, piecesOf(on.filter(isNut)));
}
