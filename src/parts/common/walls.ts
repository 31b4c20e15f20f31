/** Least wall that carries a load: four lines of the usual nozzle, mm. @source common-practice */
export const LEAST_WALL = 1.6;

/** Four lines of a nozzle, and never less than that wall, mm. @source common-practice */
export function fourLines(nozzle: number): number {
  return Math.max(LEAST_WALL, 4 * nozzle);
}

/** A wall with its name, finished size. */
export interface Wall {
  readonly where: string;
  readonly size: number;
}

/** The thinnest of several walls. */
export function thinnest(walls: readonly Wall[]): Wall {
  return walls.reduce((least, next) => (next.size < least.size ? next : least));
}
