/** A short nut holds so many pitches, within these lengths, mm. */
const PITCHES = 4;
const [SHORTEST, LONGEST] = [5, 16];

/** Length of a short nut, mm. */
export function shortNutLength(pitch: number): number {
  return Math.min(LONGEST, Math.max(SHORTEST, PITCHES * pitch));
}
