import { fault } from '../units/faults.js';
import { requirePositive, requireWhole } from '../units/require.js';
import { unitAt } from './angles.js';
import { clipBetween } from './clip-between.js';
import { type Mesh, mirrored } from './mesh.js';
import { cornerRadius } from './outline.js';

/**
 * A screw-like solid between two planes: its surface has radius r(z − lead·θ/360°), r repeating every pitch. It is a
 * screw's metal, or what a nut's thread cuts away.
 */
export interface ThreadSweep {
  /**
   * [z, radius] over one pitch, z rising strictly from 0 or more to below the pitch, mm. The polyline closes from the
   * last point to the first one a pitch higher. On +X it stands at its own z; see {@link ThreadSweep.hand}.
   */
  readonly ridge: readonly (readonly [number, number])[];
  /** distance of neighbouring crests, mm */
  readonly pitch: number;
  readonly starts: number;
  /** right climbs counter-clockwise seen from +Z; left is its exact mirror image in y = 0 */
  readonly hand: 'right' | 'left';
  /** columns around the axis, a multiple of 4, one of them on +X */
  readonly columns: number;
  /** flat ends, mm; a cutter's lie outside the body it cuts */
  readonly from: number;
  readonly to: number;
  /** inside: the solid is air and cuts a nut; outside: the solid is a screw's metal */
  readonly airSide: 'inside' | 'outside';
  /** true: the middles of the facets lie on the ridge's radius; false: the columns do */
  readonly circumscribed: boolean;
}

/**
 * Sweeps a ridge, as a plane through the axis cuts it, around the axis. Every column carries the same polyline, moved up
 * by lead/columns each, so corners lie exactly on helices, and the column at 360° is the first one `starts` pitches on.
 *
 * A flank quad is twisted: of its two diagonals the one that climbs with the helix *and* across the flank (from the
 * lower corner of one column to the upper corner of the next) is a convex edge of the solid, the other a concave one.
 * Midway they stand off the true helicoid by ±lead·tan(180°/n)·Δr / (4π·r) along the axis, whatever the flank's slope.
 * A cutter takes the convex edge and a screw the concave one, so that the sliver between the two diagonals is air both
 * times and metal never stands beyond the true helicoid. (The wrong one eats 0.002 mm a flank on Tr8x2.)
 *
 * The ends are cut flat; a flat section is a star about the axis, so a fan to the axis always closes it.
 *
 * @param thread  ridge and sweep  [mm]
 * @returns a closed mesh, outward facets; about 2 × columns × corners facets a pitch, for any number of starts  [mm]
 * @throws InputError  a value is out of its range or the ridge does not rise
 * @example measureMesh(sweepThread(thread)).openEdges // 0
 */
export function sweepThread(thread: ThreadSweep): Mesh {
  requireThread(thread);
  const right = rightHanded(thread);
  return thread.hand === 'left' ? mirrored(right) : right;
}

function rightHanded(thread: ThreadSweep): Mesh {
  return clipBetween(threadSurface(thread), thread.from, thread.to);
}

/** The surface of a right-handed thread, open past both ends, and how its corners are counted. */
export interface ThreadSurface extends Mesh {
  /** corners a column: corner `i` stands in column `⌊i / stride⌋`, at the ridge's corner `i % stride % corners` */
  readonly stride: number;
}

/**
 * The surface of a sweep, whatever its hand, as a right-handed one and not yet cut flat.
 *
 * @param thread  ridge and sweep  [mm]
 * @returns outward facets, each between two neighbouring columns, open a little below `from` and above `to`  [mm]
 */
export function threadSurface(thread: ThreadSweep): ThreadSurface {
  const { pitch, starts, columns, from, to } = thread;
  const corners = thread.ridge.length;
  const rise = (pitch * starts) / columns;
  const low = Math.floor((from - pitch * starts) / pitch) - 1;
  const rows = (Math.ceil(to / pitch) + 1 - low) * corners;
  const grid = columnGrid(thread, low, rows);
  const at = (column: number, row: number) =>
    column === columns ? row + starts * corners : column * grid.stride + row;

  const triangles: number[] = [];
  for (let i = 0; i < columns; i++) {
    const first = Math.max(0, (Math.floor((from - (i + 1) * rise) / pitch) - 1 - low) * corners);
    for (let row = first; row + 1 < rows; row++) {
      const a = at(i, row);
      const b = at(i, row + 1);
      const c = at(i + 1, row + 1);
      const d = at(i + 1, row);
      if (grid.positions[3 * a + 2]! >= to) break;
      if (grid.positions[3 * c + 2]! <= from) continue;
      if (climbs(thread, row % corners)) triangles.push(a, d, c, a, c, b);
      else triangles.push(a, d, b, d, c, b);
    }
  }
  return { positions: grid.positions, triangles: new Uint32Array(triangles), stride: grid.stride };
}

/** Corners of all columns; column 0 is longer by `starts` pitches, for the seam. */
function columnGrid({ ridge, pitch, starts, columns, circumscribed }: ThreadSweep, low: number, rows: number) {
  const corners = ridge.length;
  const stride = rows + starts * corners;
  const positions = new Float64Array(3 * columns * stride);
  const reach = ridge.map(([, radius]) => cornerRadius(radius, columns, circumscribed));
  for (let i = 0, k = 0; i < columns; i++) {
    const [x, y] = unitAt(i, columns);
    const lift = (pitch * starts * i) / columns;
    for (let row = 0; row < stride; row++) {
      const corner = row % corners;
      positions[k++] = reach[corner]! * x;
      positions[k++] = reach[corner]! * y;
      positions[k++] = ridge[corner]![0] + pitch * (low + (row - corner) / corners) + lift;
    }
  }
  return { positions, stride };
}

/** Whether the quad above a corner takes its climbing diagonal; where both lie in one plane, the shorter is taken. */
function climbs({ ridge, airSide }: ThreadSweep, corner: number): boolean {
  const next = ridge[(corner + 1) % ridge.length]!;
  return airSide === 'inside' && next[1] !== ridge[corner]![1];
}

function requireThread({ ridge, pitch, starts, columns, from, to }: ThreadSweep): void {
  requirePositive('pitch', pitch);
  requireWhole('starts', starts, 1, 100);
  requireWhole('columns', columns, 4, 10_000);
  if (columns % 4 !== 0) throw fault('columns', columns, 'must be a multiple of 4');
  if (!(to > from && to - from < 100_000 * pitch)) throw fault('to', to, `must be above ${from}`);
  if (ridge.length < 2) throw fault('ridge', ridge.length, 'must have at least 2 corners');
  let before = -1;
  for (const [i, [z, radius]] of ridge.entries()) {
    requirePositive(`ridge.${i}`, radius);
    if (!(z >= 0 && z > before && z < pitch)) throw fault(`ridge.${i}`, z, `must rise from 0 to below ${pitch}`);
    before = z;
  }
}
