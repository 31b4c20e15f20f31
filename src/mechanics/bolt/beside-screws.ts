type Point = readonly [number, number];

/** Where a load passes beside screws that stand in one line, or beside a lone one. */
export interface Beside {
  /** from the load to the line, a unit vector */
  readonly along: Point;
  /** [mm] */
  readonly distance: number;
}

/** Screws count as in one line where none is off it by more than this share of its length, squared. */
const IN_LINE = 1e-9;

/** A load nearer to the line than this passes through it, mm. */
const THROUGH = 1e-6;

/**
 * How far beside its screws a load along the axis passes, where they stand in one line and so do not hold it there by pull alone.
 *
 *     d = |c₁ − (c₁·u)·u|        u along the line; of a lone screw d = |c₁|
 *
 * @param centres  of the screws, from the line of the load  [mm]
 * @returns the way and the distance to the line; nothing where screws stand around, or the load passes through their line
 * @validity screws parallel to the load
 * @source derived: geometry
 * @example besideScrews([[15, 9], [15, -9]]) // {"along":[1,0],"distance":15}
 */
export function besideScrews(centres: readonly Point[]): Beside | undefined {
  const [first] = centres;
  if (!first) return undefined;
  const far = centres.reduce((most, at) => (apart(at, first) > apart(most, first) ? at : most));
  const length = apart(far, first);
  const line: Point = length === 0 ? [0, 0] : [(far[0] - first[0]) / length, (far[1] - first[1]) / length];
  const off = centres.map((at) => Math.abs((at[0] - first[0]) * line[1] - (at[1] - first[1]) * line[0]));
  if (Math.max(...off) ** 2 > IN_LINE * length ** 2) return undefined;
  const reached = first[0] * line[0] + first[1] * line[1];
  const foot: Point = [first[0] - reached * line[0], first[1] - reached * line[1]];
  const distance = Math.hypot(...foot);
  return distance <= THROUGH ? undefined : { along: [foot[0] / distance, foot[1] / distance], distance };
}

function apart([x, y]: Point, [u, v]: Point): number {
  return Math.hypot(x - u, y - v);
}
