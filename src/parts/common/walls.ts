/** Least wall that carries a load: four lines of the usual nozzle, mm. @source common-practice */
export const LEAST_WALL = 1.6;

/** A wall with its name, finished size. */
export interface Wall {
  readonly where: string;
  readonly size: number;
}

/** The thinnest of several walls. */
export function thinnest(walls: readonly Wall[]): Wall {
  return walls.reduce((least, next) => (next.size < least.size ? next : least));
}
