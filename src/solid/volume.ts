import { fault } from '../units/faults.js';
import { sind } from './angles.js';
import { cornerRadius, type Outline, polygonArea } from './outline.js';
import type { Lathe } from './recipe.js';
import type { ThreadSweep } from './thread-sweep.js';

/**
 * Volume of a prism.
 *
 *     V = (A_outer − Σ A_holes)·(to − from)
 *
 * @param prism.outlines  outer outline first, then holes    [mm]
 * @param prism.from      bottom                             [mm]
 * @param prism.to        top                                [mm]
 * @returns V  [mm³]
 * @source geometry
 * @example prismVolume({ outlines: [[[0, 0], [2, 0], [0, 2]]], from: 0, to: 3 }) // 6
 */
export function prismVolume(prism: {
  readonly outlines: readonly Outline[];
  readonly from: number;
  readonly to: number;
}): number {
  const areas = prism.outlines.map((outline) => Math.abs(polygonArea(outline)));
  const area = areas.reduce((sum, hole, i) => (i === 0 ? hole : sum - hole), 0);
  return area * (prism.to - prism.from);
}

/**
 * Volume of a lathe shape: a stack of frusta of regular polygons. Steps that fall in z count as negative.
 *
 *     V = n/2·sin(360°/n) · Σ (R1² + R1·R2 + R2²)/3 · (z2 − z1),  R the corner radius
 *
 * @param lathe  sides n and contour [radius, z]  [mm]
 * @returns V  [mm³]
 * @source geometry: frustum of a pyramid
 * @example latheVolume({ sides: 4, circumscribed: true, contour: [[1, 0], [1, 3]] }) // 12
 */
export function latheVolume({
  sides,
  circumscribed,
  contour,
}: Pick<Lathe, 'sides' | 'circumscribed' | 'contour'>): number {
  let volume = 0;
  for (let i = 1; i < contour.length; i++) {
    const [[below, low], [above, high]] = [contour[i - 1]!, contour[i]!];
    const [a, b] = [cornerRadius(below, sides, circumscribed), cornerRadius(above, sides, circumscribed)];
    volume += ((a * a + a * b + b * b) / 3) * (high - low);
  }
  return (sides / 2) * sind(360 / sides) * volume;
}

/** Where a thread is weighed, and the openings cut with it. */
export interface ThreadSpan {
  /** planes between which the volume is taken, mm; within the sweep's own ends */
  readonly from: number;
  readonly to: number;
  /**
   * coaxial openings as [radius, z] with z rising or equal, drawn with the thread's columns and circumscription;
   * between and outside them only the thread counts
   */
  readonly openings?: readonly (readonly (readonly [number, number])[])[];
}

/**
 * Volume of a swept thread between two planes, united with coaxial openings, by integrals over its sections. It shares
 * no code with the sweep or the kernel, so the two check each other.
 *
 *     V = ∫ A(z) dz,  A = n/2·sin(360°/n)·mean over a pitch of max(r, R(z))² ± starts·sin(360°/n)·Σ Δr²·w / 12
 *
 * with r the ridge's and R the openings' corner radius. The last term is what the diagonals of the flank quads add
 * (cutter, convex) or take (screw, concave) on flanks of depth Δr: half the tetrahedron on each quad's corners. w is
 * the share of it that stands outside the opening, 1 − 3u² + 2u³ with u the covered part of the flank.
 *
 * @param thread  the sweep  [mm]
 * @param span    planes and openings  [mm]
 * @returns V  [mm³]; within 0.02 % of the mesh over a pitch or more
 * @throws InputError  `to` is not above `from`
 * @source geometry: section integral in the sheared cylinder (shearing along the axis keeps volume)
 * @example threadVolume(thread, { from: 0, to: 10 }) // for a plain cylinder of 96 columns, n/2·sin(360°/n)·r²·10
 */
export function threadVolume(thread: ThreadSweep, { from, to, openings = [] }: ThreadSpan): number {
  if (!(to > from)) throw fault('to', to, `must be above ${from}`);
  const reach = (radius: number) => cornerRadius(radius, thread.columns, thread.circumscribed);
  const segments = segmentsOf(thread, reach);
  const contours = openings.map((opening) => opening.map(([radius, z]): Point => [reach(radius), z]));
  const breaks = [from, to, ...contours.flat().map(([, z]) => z)].filter((z) => z >= from && z <= to);
  breaks.sort((a, b) => a - b);
  let volume = 0;
  for (let i = 1; i < breaks.length; i++) volume += integral(breaks[i - 1]!, breaks[i]!, contours, segments, thread);
  return volume;
}

type Point = readonly [number, number];

/** One straight piece of the ridge: its axial length and the corner radii at its ends. */
interface Segment {
  readonly length: number;
  readonly low: number;
  readonly high: number;
}

function segmentsOf({ ridge, pitch }: ThreadSweep, reach: (radius: number) => number): Segment[] {
  return ridge.map(([z, radius], i) => {
    const next = ridge[i + 1] ?? [ridge[0]![0] + pitch, ridge[0]![1]];
    const ends = [reach(radius), reach(next[1])] as const;
    return { length: next[0] - z, low: Math.min(...ends), high: Math.max(...ends) };
  });
}

/** Simpson's rule over a stretch without breaks; constant where no opening stands. */
function integral(from: number, to: number, contours: readonly Point[][], segments: Segment[], thread: ThreadSweep) {
  const inside = (z: number) => Math.max(0, ...contours.map((contour) => radiusAt(contour, z)));
  const steps = inside((from + to) / 2) === 0 ? 2 : 400;
  const step = (to - from) / steps;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
    const nudged = Math.min(Math.max(from + i * step, from + step * 1e-6), to - step * 1e-6);
    sum += weight * sectionArea(segments, inside(nudged), thread);
  }
  return (sum * step) / 3;
}

function radiusAt(contour: readonly Point[], z: number): number {
  for (let i = 1; i < contour.length; i++) {
    const [[below, low], [above, high]] = [contour[i - 1]!, contour[i]!];
    if (high > low && z >= low && z <= high) return below + ((above - below) * (z - low)) / (high - low);
  }
  return 0;
}

/** Mean area of the flat sections of one pitch, with an opening of the given corner radius. */
function sectionArea(segments: readonly Segment[], opening: number, thread: ThreadSweep): number {
  const sine = sind(360 / thread.columns);
  let squares = 0;
  let diagonals = 0;
  for (const { length, low, high } of segments) {
    const depth = high - low;
    const covered = depth === 0 ? (opening >= high ? 1 : 0) : Math.min(1, Math.max(0, (opening - low) / depth));
    const bottom = low + covered * depth;
    const bare = ((bottom * bottom + bottom * high + high * high) / 3) * (1 - covered);
    squares += length * (covered * opening * opening + bare);
    diagonals += depth * depth * (1 - 3 * covered ** 2 + 2 * covered ** 3);
  }
  const ruled = (thread.columns / 2) * sine * (squares / thread.pitch);
  const side = thread.airSide === 'inside' ? 1 : -1;
  return ruled + (side * thread.starts * sine * diagonals) / 12;
}
