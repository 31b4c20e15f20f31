import type { Point } from '../../../src/parts/part-views.js';
import { OVER, readingsOf, type Typed } from './readings.js';

/** What is drawn of a screw before it is measured [mm]. */
const USUAL = { major: 8, pitch: 2 };
/** A trapezoidal thread's depth, and the width of its crest at the outside, over the pitch (ISO 2901: 0.5 P, 0.366 P). */
const SHARE = { depth: 0.5, crest: 0.366 };
/** Turns that are drawn: as many pitches as are read over, and a little. */
export const DRAWN = OVER + 1.5;

/** A screw lying, as far as its readings tell it [mm]. */
export interface ScrewOutline {
  readonly major: number;
  readonly pitch: number;
  readonly minor: number;
  /** its upper edge from left to right; the lower one is half a pitch further and mirrored */
  readonly upper: readonly Point[];
  readonly lower: readonly Point[];
  /** whether diameter and pitch were read, or are those of a usual screw */
  readonly isRead: { readonly major: boolean; readonly pitch: boolean };
}

/** The screw of the readings so far; what was not read is drawn as a usual screw has it. */
export function screwOutline(typed: Typed): ScrewOutline {
  const read = readingsOf(typed) ?? {};
  const majors = read.major ?? [];
  const major = majors.length === 0 ? USUAL.major : majors.reduce((sum, one) => sum + one, 0) / majors.length;
  const spanned = read.crests && read.crests.length / read.crests.count;
  const pitch = Math.min(spanned ?? (USUAL.pitch * major) / USUAL.major, major);
  const minor = Math.min(read.minor ?? major - 2 * SHARE.depth * pitch, 0.98 * major);
  return {
    major,
    pitch,
    minor,
    upper: ridges(0, pitch, minor / 2, major / 2),
    lower: ridges(pitch / 2, pitch, -minor / 2, -major / 2),
    isRead: { major: majors.length > 0, pitch: spanned !== undefined },
  };
}

/** Crest after crest from 0 to the end of what is drawn. */
function ridges(from: number, pitch: number, root: number, crest: number): Point[] {
  const end = DRAWN * pitch;
  const flat = (SHARE.crest * pitch) / 2;
  const foot = pitch / 2 - flat;
  const points: Point[] = [];
  for (let at = from - pitch; at <= end + pitch; at += pitch)
    points.push([at - foot, root], [at - flat, crest], [at + flat, crest], [at + foot, root]);
  const inside = points.filter(([x]) => x >= 0 && x <= end);
  const first = inside[0]!;
  const last = inside.at(-1)!;
  return [[0, first[1]], ...inside, [end, last[1]]];
}
