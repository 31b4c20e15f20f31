import { boreSurface, type Mouth } from './bore-surface.js';
import { type Mesh, mirrored, type Placement, place, placementMatrix } from './mesh.js';
import { cornerRadius } from './outline.js';
import type { Triangulate } from './prism-mesh.js';
import type { Lathe, Shape } from './recipe.js';
import { type RimCorners, shorterMouth, straightRim } from './straight-rim.js';
import { coneAt, plugOf, type ThreadedBore, threadedBore } from './threaded-bore.js';

/** A corner of a body further than this from where its plug left it is not the plug's, mm. */
const OFF = 1e-4;
/** Nearer to a column than this, in parts of a sector, a corner stands on it. */
const ON_COLUMN = 1e-3;

/** A bore where it stands in a body. */
export interface StandingBore {
  readonly bore: ThreadedBore;
  readonly plug: Lathe;
  readonly moves: readonly Placement[];
}

/** Reads a threaded bore, and where it stands, from a recipe; undefined where a shape is anything else. */
export function standingBore(shape: Shape): StandingBore | undefined {
  if (shape.kind === 'feature') return standingBore(shape.shape);
  if (shape.kind === 'moved') {
    const inner = standingBore(shape.shape);
    return inner && { ...inner, moves: [...inner.moves, shape] };
  }
  const bore = threadedBore(shape);
  const plug = bore && plugOf(bore);
  return plug && { bore, plug, moves: [] };
}

/** What a plug left of a body. */
export interface Wall {
  readonly facets: ReadonlySet<number>;
  /** both mouths, as of a right-handed thread at home [mm] */
  readonly mouths: readonly [Mouth, Mouth];
  /** corners of the body that they are, in the same order */
  readonly rims: readonly [RimCorners, RimCorners];
}

interface RimCorner {
  readonly corner: number;
  readonly point: readonly [number, number, number];
  /** in columns from +X */
  readonly turn: number;
}

/**
 * Finds the wall that a plug left, if nothing else met it: a ring at either end of its cylinder, and a flat one at
 * either mouth, with corners on all columns and perhaps between two.
 *
 * @param body    the body with the plug taken out  [mm]
 * @param facets  those that lie on the plug
 * @returns undefined where anything else was cut into the plug's wall, or the body ends within it
 */
export function wallOf(body: Mesh, facets: readonly number[], standing: StandingBore): Wall | undefined {
  const { sides, contour } = standing.plug;
  const isLeft = standing.bore.thread.hand === 'left';
  const corners = new Set(facets.flatMap((facet) => [...body.triangles.subarray(3 * facet, 3 * facet + 3)]));
  const rings: [RimCorner[], RimCorner[], RimCorner[]] = [[], [], []];
  for (const corner of corners) {
    const [x, y, z] = atHome(
      [0, 1, 2].map((axis) => body.positions[3 * corner + axis]!),
      standing.moves,
    );
    const point = [x!, isLeft ? 0 - y! : y!, z!] as const;
    if (offPlug(point, standing.plug) > OFF) return undefined;
    const end = z! < contour[1]![1] - OFF ? 0 : z! > contour[2]![1] + OFF ? 2 : 1;
    const turn = (Math.atan2(point[1], point[0]) * sides) / (2 * Math.PI);
    rings[end].push({ corner, point, turn: turn < -ON_COLUMN ? turn + sides : Math.max(0, turn) });
  }
  const [low, inner, high] = rings;
  const between = low.length + high.length - 2 * sides;
  if (inner.length !== 2 * sides || facets.length !== 6 * sides + between) return undefined;
  const ends = [mouthOf(low, sides), mouthOf(high, sides)];
  if (!ends[0] || !ends[1]) return undefined;
  return {
    facets: new Set(facets),
    mouths: [ends[0].mouth, ends[1].mouth],
    rims: [ends[0].rim, ends[1].rim],
  };
}

function mouthOf(ring: readonly RimCorner[], sides: number): { mouth: Mouth; rim: RimCorners } | undefined {
  const sectors = Array.from({ length: sides }, (): RimCorner[] => []);
  for (const corner of ring) sectors[Math.floor(corner.turn + ON_COLUMN) % sides]!.push(corner);
  for (const sector of sectors) sector.sort((a, b) => a.turn - b.turn);
  const height = ring[0]?.point[2];
  const isFlat = height !== undefined && ring.every(({ point }) => Math.abs(point[2] - height) < OFF);
  const isWhole = sectors.every(([first], i) => first && Math.abs(first.turn - i) < ON_COLUMN);
  if (!isFlat || !isWhole) return undefined;
  return {
    mouth: { height, sectors: sectors.map((sector) => sector.map(({ point }) => point)) },
    rim: sectors.map((sector) => sector.map(({ corner }) => corner)),
  };
}

/** How far a point is off the facets of a plug, square to the axis [mm]. */
function offPlug([x, y, z]: readonly [number, number, number], { sides, contour, circumscribed }: Lathe): number {
  const step = (2 * Math.PI) / sides;
  const middle = (Math.floor(Math.atan2(y, x) / step) + 0.5) * step;
  const flat = x * Math.cos(middle) + y * Math.sin(middle);
  return Math.abs(flat - cornerRadius(radiusAt(contour, z), sides, circumscribed) * Math.cos(step / 2));
}

/** Where a point of the body lies, before the moves of the bore. */
function atHome(point: readonly number[], moves: readonly Placement[]): readonly number[] {
  return moves.reduceRight((at, move) => {
    const m = placementMatrix(move);
    const [x, y, z] = [at[0]! - m[3]!, at[1]! - m[7]!, at[2]! - m[11]!];
    return [0, 1, 2].map((row) => m[row]! * x + m[4 + row]! * y + m[8 + row]! * z);
  }, point);
}

function radiusAt(contour: Lathe['contour'], z: number): number {
  const next = contour.findIndex(([, height]) => height >= z);
  if (next < 1) return contour[next < 0 ? contour.length - 1 : 0]![0];
  const [[r0, z0], [r1, z1]] = [contour[next - 1]!, contour[next]!];
  return r0 + ((r1 - r0) * (z - z0)) / (z1 - z0);
}

/** What a plug takes out of a body between its mouths [mm³]. */
export function plugVolume({ plug, bore }: StandingBore, mouths: Wall['mouths']): number {
  const [low, high] = [mouths[0].height, mouths[1].height];
  const { sides, circumscribed, contour } = plug;
  const reach = cornerRadius(1, sides, circumscribed);
  const area = (sides / 2) * Math.sin((2 * Math.PI) / sides) * reach ** 2;
  const rings: readonly (readonly [number, number])[] = [
    [coneAt(bore.low, low), low],
    contour[1]!,
    contour[2]!,
    [coneAt(bore.high, high), high],
  ];
  return rings.slice(1).reduce((sum, [r1, z1], i) => {
    const [r0, z0] = rings[i]!;
    return sum + (area * (z1 - z0) * (r0 * r0 + r0 * r1 + r1 * r1)) / 3;
  }, 0);
}

/**
 * A body with threads in place of the walls of their plugs.
 * @returns undefined where a thread and its lead-ins do not close
 */
export function stitched(
  body: Mesh,
  bores: readonly (readonly [StandingBore, Wall])[],
  triangulate: Triangulate,
): Mesh | undefined {
  const triangles = keptFacets(body, bores);
  const surfaces: { readonly mesh: Mesh; readonly rims: readonly number[] }[] = [];
  for (const [{ bore, moves }, wall] of bores) {
    const left = wall.rims.map((rim) => straightRim(body.positions, triangles, rim));
    const mouths = wall.mouths.map((mouth, end) => shorterMouth(mouth, wall.rims[end]!, left[end]!));
    const right = boreSurface(bore, mouths as [Mouth, Mouth], triangulate);
    if (!right) return undefined;
    const mesh = moves.reduce<Mesh>(place, bore.thread.hand === 'left' ? mirrored(right) : right);
    surfaces.push({ mesh, rims: left.flat(2) });
  }
  return sewn({ positions: body.positions, triangles }, surfaces);
}

/** The facets of a body that are on no bore's wall. */
function keptFacets({ triangles }: Mesh, bores: readonly (readonly [StandingBore, Wall])[]): Uint32Array {
  const walls = bores.map(([, { facets }]) => facets).filter(({ size }) => size > 0);
  if (walls.length === 0) return triangles;
  const kept = new Uint32Array(triangles.length);
  let at = 0;
  for (let i = 0; i < triangles.length; i += 3) {
    if (walls.some((facets) => facets.has(i / 3))) continue;
    kept[at++] = triangles[i]!;
    kept[at++] = triangles[i + 1]!;
    kept[at++] = triangles[i + 2]!;
  }
  return kept.slice(0, at);
}

/** A body with surfaces turned inside out, whose first corners are corners of the body. */
function sewn(body: Mesh, surfaces: readonly { readonly mesh: Mesh; readonly rims: readonly number[] }[]): Mesh {
  const sum = (sizes: readonly number[]) => sizes.reduce((all, size) => all + size, 0);
  const more = sum(surfaces.map(({ mesh, rims }) => mesh.positions.length - 3 * rims.length));
  const positions = new Float64Array(body.positions.length + more);
  const triangles = new Uint32Array(body.triangles.length + sum(surfaces.map(({ mesh }) => mesh.triangles.length)));
  positions.set(body.positions);
  triangles.set(body.triangles);
  let [corner, at] = [body.positions.length / 3, body.triangles.length];
  for (const { mesh, rims } of surfaces) {
    positions.set(mesh.positions.subarray(3 * rims.length), 3 * corner);
    const first = corner - rims.length;
    const named = (i: number) => (i < rims.length ? rims[i]! : first + i);
    for (let i = 0; i < mesh.triangles.length; i += 3) {
      triangles[at++] = named(mesh.triangles[i]!);
      triangles[at++] = named(mesh.triangles[i + 2]!);
      triangles[at++] = named(mesh.triangles[i + 1]!);
    }
    corner += mesh.positions.length / 3 - rims.length;
  }
  return { positions, triangles };
}
