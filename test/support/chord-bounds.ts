import type { ExactMeasures } from '../../src/solid/exact/kernel/measures.js';
import type { Mesh } from '../../src/solid/mesh.js';
import type { Outline } from '../../src/solid/outline.js';
import type { Lathe, Loft, Shape } from '../../src/solid/recipe.js';
import type { ThreadSweep } from '../../src/solid/thread-sweep.js';

type Vector = readonly [number, number, number];

/** What is compared of a body, as a mesh has it. */
export type DrawnMeasures = Pick<ExactMeasures, 'volume' | 'area' | 'center' | 'bounds'> & {
  /** Σ ℓ·|θ| over its edges: length times the angle that the surface turns by there, mm */
  readonly turning: number;
};

/** How far the two may be apart. */
export interface ChordBounds {
  readonly volume: number;
  readonly area: number;
  readonly center: number;
  readonly bounds: number;
}

/**
 * How far volume, area, centre and bounds of a drawn body may be off those of the one that is meant, if every facet lies
 * within δ of its surface:
 *
 *     |ΔV| ≤ δ·A,  |ΔA| ≤ δ·Σ ℓ·|θ|,  |Δx̄| ≤ R·δ·A/V,  |Δb| ≤ 2·δ
 *
 * The two bodies differ by a layer of thickness δ over the area A at most. By Steiner's formula a surface that moves by δ
 * changes its area by δ times its whole turning, Σ ℓ·|θ| over the edges of facets; tilted facets add a third of that at
 * most (a chord of sagitta s is shorter than its arc by s/3 of the arc's turning, and a facet lies within s of it). Each
 * point of the layer is at most R, half the diagonal of the bounds, from the centre. Where faces meet under 60° and more,
 * their edge moves by δ/sin 30° at most.
 *
 * @param shape  the recipe, for δ                          [mm]
 * @param drawn  what its mesh measures                     [mm, mm², mm³]
 * @source geometry: Steiner's formula
 */
export function chordBounds(shape: Shape, { volume, area, bounds, turning }: DrawnMeasures): ChordBounds {
  // kernels of meshes take corners as float32
  const most = sagittaOf(shape) + 1e-5;
  const [min, max] = bounds;
  const reach = Math.hypot(max[0] - min[0], max[1] - min[1], max[2] - min[2]) / 2;
  return { volume: most * area, area: most * turning, center: (reach * most * area) / volume, bounds: 2 * most };
}

/** How far a facet of a recipe lies off the surface that it stands for, at most [mm]. */
export function sagittaOf(shape: Shape): number {
  switch (shape.kind) {
    case 'prism':
      return Math.max(...shape.outlines.map((outline) => ofOutline(outline)));
    case 'strokes':
    case 'mesh':
      return 0;
    case 'lathe':
      return ofLathe(shape);
    case 'loft':
      return ofLoft(shape);
    case 'thread':
      return ofThread(shape.thread);
    case 'feature':
    case 'moved':
      return sagittaOf(shape.shape);
    default:
      return Math.max(...shape.of.map(sagittaOf));
  }
}

/** Of a side that stands for an arc: at its ends or its middle. Moved out, it grows with its radius. */
function ofOutline(outline: Outline, out = 0): number {
  const off = outline.map((from, i) => {
    const curve = outline.curves?.[i];
    if (curve?.kind !== 'arc') return 0;
    const to = outline[(i + 1) % outline.length]!;
    const middle = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] as const;
    const { center, radius } = curve;
    const most = [from, to, middle].map(([x, y]) => Math.abs(Math.hypot(x - center[0], y - center[1]) - radius));
    return Math.max(...most) * Math.max(1, 1 + out / radius);
  });
  return Math.max(0, ...off);
}

function ofPolygon(radius: number, sides: number): number {
  return radius * (1 / Math.cos(Math.PI / sides) - 1);
}

function ofLathe({ sides, contour }: Lathe): number {
  return sides < 12 ? 0 : ofPolygon(Math.max(...contour.map(([radius]) => radius)), sides);
}

/** A fillet in even steps is off by that of its own chords besides. */
function ofLoft({ outline, levels, rounds = [] }: Loft): number {
  const fillets = rounds.map(({ from, to, arc }) => {
    if (!arc) return 0;
    const radius = Math.hypot(arc.begins[0] - arc.center[0], arc.begins[1] - arc.center[1]);
    return radius * (1 - Math.cos(Math.PI / 4 / (to - from)));
  });
  return ofOutline(outline, Math.max(...levels.map(([, offset]) => offset))) + Math.max(0, ...fillets);
}

/** Facets between two columns are off by the twist of their flank besides: a quarter of what its corners are out of plane. */
function ofThread({ ridge, columns, pitch, starts }: ThreadSweep): number {
  const radii = ridge.map(([, radius]) => radius);
  const [least, most] = [Math.min(...radii), Math.max(...radii)];
  return ofPolygon(most, columns) + ((most - least) * pitch * starts) / (4 * columns * least);
}

/** Volume, area, centre, bounds and turning of a closed mesh. */
export function drawnMeasures(mesh: Mesh): DrawnMeasures {
  const { positions, triangles } = mesh;
  const at = (i: number): Vector => [positions[3 * i]!, positions[3 * i + 1]!, positions[3 * i + 2]!];
  const normals = new Map<string, Vector>();
  let [volume, area, turning] = [0, 0, 0];
  const moment = [0, 0, 0];
  const min = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const max = min.map((value) => -value);
  for (let i = 0; i < triangles.length; i += 3) {
    const corners = [0, 1, 2].map((k) => at(triangles[i + k]!)) as [Vector, Vector, Vector];
    const [a, b, c] = corners;
    const cross = crossed(minus(b, a), minus(c, a));
    const twice = Math.hypot(...cross);
    const six = a[0] * cross[0] + a[1] * cross[1] + a[2] * cross[2];
    area += twice / 2;
    volume += six / 6;
    for (const k of [0, 1, 2] as const) {
      moment[k]! += (six / 24) * (a[k] + b[k] + c[k]);
      min[k] = Math.min(min[k]!, a[k], b[k], c[k]);
      max[k] = Math.max(max[k]!, a[k], b[k], c[k]);
    }
    const normal: Vector = [cross[0] / twice, cross[1] / twice, cross[2] / twice];
    for (const [k, from] of corners.entries()) {
      const to = corners[(k + 1) % 3]!;
      const key = from.join() < to.join() ? `${from.join()}|${to.join()}` : `${to.join()}|${from.join()}`;
      const other = normals.get(key);
      if (other) turning += Math.hypot(...minus(to, from)) * angleBetween(normal, other);
      else normals.set(key, normal);
    }
  }
  const center = moment.map((one) => one / volume) as unknown as Vector;
  return { volume, area, turning, center, bounds: [min, max] as unknown as DrawnMeasures['bounds'] };
}

function minus(a: Vector, b: Vector): Vector {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

function crossed(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

function angleBetween(a: Vector, b: Vector): number {
  return Math.atan2(Math.hypot(...crossed(a, b)), a[0] * b[0] + a[1] * b[1] + a[2] * b[2]);
}
