import type { LoftLevel } from '../../solid/convex-loft.js';
import { type Bore, boreOutlines } from './bore.js';
import type { BoreCut } from './carved.js';
import { OVERSHOOT } from './cut.js';

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

/** How much narrower flats begin inside the round before them, so that the two share no face [mm]. */
const NARROWER = 0.1;

/** A cut whose mouth is round up to where its flats begin: a round one, and the one with flats behind it. */
export function flatsBehindRound(
  cut: BoreCut,
  { diameter, flatFrom }: Bore,
  mouth: 'below' | 'above',
  chordError: number,
): BoreCut[] {
  if (flatFrom === undefined) return [cut];
  const [from, to] = cut.ends;
  const start = mouth === 'below' ? from + flatFrom : to - flatFrom;
  const below = cut.levels.filter(([z]) => z < start);
  const above = cut.levels.filter(([z]) => z > start);
  const edge: LoftLevel = [start, 0];
  const parts =
    mouth === 'below'
      ? {
          round: { levels: [...below, edge], ends: [from, start] as const },
          flat: { levels: [[start - OVERSHOOT, -NARROWER] as const, edge, ...above], ends: [start, to] as const },
        }
      : {
          round: { levels: [edge, ...above], ends: [start, to] as const },
          flat: { levels: [...below, edge, [start + OVERSHOOT, -NARROWER] as const], ends: [from, start] as const },
        };
  const round = boreCut({ form: 'round', diameter }, { ...parts.round, keywayEnds: [0, 0] }, chordError);
  const broken = cut.broken?.map((at) => (mouth === 'below' ? at : at - below.length + 1));
  return [
    { ...round, ...(broken ? { broken } : {}) },
    { ...cut, ...parts.flat, broken: [] },
  ];
}
