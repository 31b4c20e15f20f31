import type { PrintSizes } from './print-sizes.js';
import type { Wall } from './walls.js';

/** Polygons stand on both sides of a wall, each off its arc by at most the chord error, and a corner by as much again. */
const CHORDS = 3;
/** Diameters at whose ends an offset that runs with the diameter is asked, mm. */
const DIAMETERS = [1, 100] as const;

/**
 * The least that a wall of a finished size can measure in the file: what openings are enlarged by, and what outsides are
 * made smaller by, comes off it, and so do the chords of what is drawn.
 *
 * @param wall       finished                                  [mm]
 * @param sizes      how sizes stand in the file
 * @param chordError of the drawing                            [mm]
 * @returns a bound from below                                 [mm]
 */
export function wallInFile({ where, size }: Wall, sizes: PrintSizes, chordError: number): Wall {
  const { across, along, inside, outside } = sizes;
  const enlarged = Math.max(0, ...DIAMETERS.map((diameter) => inside(diameter) - across(diameter)));
  const reduced = Math.max(0, ...DIAMETERS.map((diameter) => across(diameter) - outside(diameter)));
  const beside = lessChords({ where, size: across(size) - enlarged - reduced / 2 }, chordError);
  return { where, size: Math.min(beside.size, along(size)) };
}

/** A wall between arcs of the file as it stands between their polygons. */
export function lessChords({ where, size }: Wall, chordError: number): Wall {
  return { where, size: size - CHORDS * chordError };
}
