import type { LoftLevel } from '../../solid/convex-loft.js';
import { type Bore, boreOutlines } from './bore.js';
import type { BoreCut } from './carved.js';

/** Where a bore runs: its levels, its ends, and those of its keyway. */
export interface BoreRun {
  readonly levels: readonly LoftLevel[];
  readonly keywayEnds: readonly [number, number];
  readonly ends: readonly [number, number];
}

/** A bore as a cutter of a carved body. */
export function boreCut(bore: Bore, { levels, keywayEnds, ends }: BoreRun, chordError: number): BoreCut {
  const [outline, keyway] = boreOutlines(bore, chordError);
  const isRound = bore.form === 'round' || bore.form === 'keyed';
  return { outline, isRound, levels, ends, ...(keyway ? { keyway, keywayEnds } : {}) };
}
