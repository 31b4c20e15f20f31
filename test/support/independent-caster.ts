import { BufferAttribute, BufferGeometry, DoubleSide, Ray, Vector3 } from 'three';
import { MeshBVH } from 'three-mesh-bvh';
import { seededUniform } from './seeded.js';

type Vector = readonly [number, number, number];

/** A mesh as a reader of its file holds it. */
export interface Triangles {
  readonly positions: ArrayLike<number>;
  readonly triangles: ArrayLike<number>;
}

/** A mesh in an independent library's tree of boxes. */
export interface Caster {
  readonly corners: Float32Array;
  readonly index: Uint32Array;
  readonly first: (from: Vector, along: Vector) => { readonly distance: number; readonly facet: number } | undefined;
  readonly isInside: (point: Vector) => boolean;
}

/** Sorts a mesh into the library's tree; corners and facets stay as they are. */
export function casterOf({ positions, triangles }: Triangles): Caster {
  const corners = Float32Array.from(positions);
  const index = Uint32Array.from(triangles);
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(corners.slice(), 3));
  geometry.setIndex(new BufferAttribute(index.slice(), 1));
  const tree = new MeshBVH(geometry, { indirect: true });
  const ray = new Ray();
  const set = (from: Vector, along: Vector) => {
    ray.origin.set(...from);
    ray.direction.set(...along);
    return ray;
  };
  const first: Caster['first'] = (from, along) => {
    const hit = tree.raycastFirst(set(from, along), DoubleSide, 1e-4);
    return hit ? { distance: hit.distance, facet: hit.faceIndex! } : undefined;
  };
  const slanted = new Vector3(0.0123, 0.0271, 1).normalize();
  return {
    corners,
    index,
    first,
    isInside: (point) => tree.raycast(set(point, [slanted.x, slanted.y, slanted.z]), DoubleSide).length % 2 === 1,
  };
}

const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const plus = (a: Vector, b: Vector, times = 1): Vector => [
  a[0] + times * b[0],
  a[1] + times * b[1],
  a[2] + times * b[2],
];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const scaled = (a: Vector, by: number): Vector => [by * a[0], by * a[1], by * a[2]];

/** A facet by its corners, its normal and its area, by the cross product of two sides. */
export interface Facet {
  readonly corners: readonly [Vector, Vector, Vector];
  readonly normal: Vector;
  readonly area: number;
}

/** The facets of a mesh. */
export function facetsOf({ corners, index }: Caster): Facet[] {
  return Array.from({ length: index.length / 3 }, (_, i) => {
    const [a, b, c] = [0, 1, 2].map((k): Vector => {
      const at = 3 * index[3 * i + k]!;
      return [corners[at]!, corners[at + 1]!, corners[at + 2]!];
    }) as [Vector, Vector, Vector];
    const [u, v] = [minus(b, a), minus(c, a)];
    const cross: Vector = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    const length = Math.hypot(...cross);
    return { corners: [a, b, c], normal: scaled(cross, 1 / (length || 1)), area: length / 2 };
  });
}

/** Whether two places of the surface can be the two faces of a wall, as far as the sheet tells. */
export type IsWall = (from: Place, to: Place) => boolean;
export interface Place {
  readonly at: Vector;
  readonly normal: Vector;
}

/** Faces of a wall look apart within 40°; what lies on that border is left out on both sides. */
const FACING = Math.cos((36 * Math.PI) / 180);

/** The thinnest wall met from random places of the surface; the same places for the same seed. */
export function thinnestFrom(
  caster: Caster,
  facets: readonly Facet[],
  { rays, seed, isWall }: { readonly rays: number; readonly seed: number; readonly isWall: IsWall },
): { readonly thickness: number; readonly at: Vector } | undefined {
  const random = seededUniform(seed);
  const sums: number[] = [];
  let total = 0;
  for (const { area } of facets) {
    total += area;
    sums.push(total);
  }
  let thin: { thickness: number; at: Vector } | undefined;
  const ask = (at: Vector, normal: Vector) => {
    const hit = caster.first(at, scaled(normal, -1));
    if (!hit || hit.distance >= (thin?.thickness ?? Infinity)) return;
    const to = { at: plus(at, normal, -hit.distance), normal: facets[hit.facet]!.normal };
    if (-dot(to.normal, normal) < FACING || !isWall({ at, normal }, to)) return;
    if (!runsOut(caster, { at, normal }, to, hit.distance)) thin = { thickness: hit.distance, at };
  };
  for (const {
    corners: [a, b, c],
    normal,
    area,
  } of facets)
    if (area > 1e-6) ask(scaled(plus(plus(a, b), c), 1 / 3), normal);
  for (let i = 0; i < rays; i++) {
    const place = random() * total;
    let [low, high] = [0, sums.length - 1];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (sums[middle]! < place) low = middle + 1;
      else high = middle;
    }
    const {
      corners: [a, b, c],
      normal,
    } = facets[low]!;
    const [u, v] = [Math.sqrt(random()), random()];
    ask(plus(plus(scaled(a, 1 - u), b, u * (1 - v)), c, u * v), normal);
  }
  return thin;
}

/** Whether two faces that lean to one another come together in an edge: followed towards it, what lies between goes to nothing. */
function runsOut({ first }: Caster, from: Place, to: Place, thickness: number): boolean {
  const facing = -dot(from.normal, to.normal);
  const lean = Math.sqrt(Math.max(0, 1 - facing * facing));
  if (lean < Math.sin((4 * Math.PI) / 180)) return false;
  const steepest = scaled(plus(to.normal, from.normal, facing), 1 / lean);
  const [n, w] = [from.normal, steepest];
  const beside: Vector = [n[1] * w[2] - n[2] * w[1], n[2] * w[0] - n[0] * w[2], n[0] * w[1] - n[1] * w[0]];
  const apex = (thickness * facing) / lean;
  const far = 1.5 * apex + thickness;
  const down = scaled(from.normal, -1);
  return [0, 30, -30, 60, -60, 80, -80].some((degrees) => {
    const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    const way = plus(scaled(steepest, c), beside, s);
    let least = thickness;
    for (let along = apex / 20; along <= far; along += apex / 20) {
      const above = plus(plus(from.at, way, along), from.normal, 2 * thickness);
      const enters = first(above, down);
      if (!enters || enters.distance > 4 * thickness) break;
      const leaves = first(plus(above, down, enters.distance + 1e-4), down);
      if (!leaves) break;
      least = Math.min(least, leaves.distance);
    }
    return least < 0.25 * thickness;
  });
}

/** A ceiling over air: its area seen from below, and whether lines can be laid across it. */
export interface Hanging {
  readonly area: number;
  /** how far lines reach from hold to hold; endless where some end in the air */
  readonly bridge: number;
  /** how far it reaches from what holds it */
  readonly ledge: number;
}

/** Facets that look down by more than 45° from the vertical, put together where they share a corner. */
export function ceilingsFrom(
  caster: Caster,
  facets: readonly Facet[],
  {
    up,
    layer,
    isCeiling,
    step = 0.2,
  }: {
    readonly up: 1 | -1;
    readonly layer: number;
    readonly step?: number;
    readonly isCeiling: (place: Place) => boolean;
  },
): Hanging[] {
  const height = ([, , z]: Vector) => up * z;
  let bed = Infinity;
  for (const { corners } of facets) for (const corner of corners) bed = Math.min(bed, height(corner));
  const limit = -Math.sin(Math.PI / 4) - 0.012;
  const groups = new Map<string, Facet[]>();
  const joined = new Map<string, string>();
  const root = (key: string): string => {
    let at = key;
    while (joined.get(at) !== at) at = joined.get(at)!;
    return at;
  };
  const hung = facets.filter(
    ({ corners, normal }) =>
      up * normal[2] < limit &&
      Math.max(...corners.map(height)) - bed >= layer / 2 &&
      isCeiling({ at: scaled(plus(plus(corners[0], corners[1]), corners[2]), 1 / 3), normal }),
  );
  const edges = ({ corners }: Facet) =>
    [0, 1, 2].map((i) => [corners[i]!.join(), corners[(i + 1) % 3]!.join()].sort().join(';'));
  for (const facet of hung) {
    const keys = edges(facet);
    for (const key of keys) if (!joined.has(key)) joined.set(key, key);
    const [one, ...rest] = keys;
    for (const key of rest) joined.set(root(key), root(one!));
  }
  for (const facet of hung) {
    const key = root(edges(facet)[0]!);
    groups.set(key, [...(groups.get(key) ?? []), facet]);
  }
  return [...groups.values()].map((group) => hangingOf(caster, group, { up, layer, step }));
}

function hangingOf(
  caster: Caster,
  group: readonly Facet[],
  { up, layer, step }: { up: 1 | -1; layer: number; step: number },
): Hanging {
  const area = group.reduce((sum, { area: one, normal }) => sum + one * Math.abs(normal[2]), 0);
  const spare = Math.max(2, 0.05 * area);
  let [bridge, ledge] = [Infinity, 0];
  for (let degrees = 0; degrees < 180; degrees += 5) {
    const lines = linesAcross(group, degrees, step);
    let [longest, hangs] = [0, 0];
    for (const { from, to } of lines) {
      const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
      const held = [
        [from, to],
        [to, from],
      ].map(([end, other]) => isHeld(caster, end!, other!, { up, layer }));
      const holds = length <= 0.5 ? held[0] || held[1] : held[0] && held[1];
      if (holds) longest = Math.max(longest, length);
      else hangs += length * step;
      // so little hangs by its neighbours, and so does a share that no figure here is kept to
      if (hangs > spare) break;
    }
    if (hangs > spare) longest = Infinity;
    bridge = Math.min(bridge, longest);
  }
  if (bridge === Infinity) ledge = ledgeOf(caster, group, { up, layer });
  return { area, bridge, ledge };
}

/** Stretches in which lines of one direction cross the facets of a ceiling. */
function linesAcross(group: readonly Facet[], degrees: number, step: number): { from: Vector; to: Vector }[] {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const rows = new Map<number, { from: number; to: number; z0: number; z1: number }[]>();
  for (const { corners } of group) {
    const uv = corners.map(([x, y, z]) => [c * x + s * y, c * y - s * x, z] as const);
    const vs = uv.map(([, v]) => v);
    for (let row = Math.ceil(Math.min(...vs) / step - 0.5); (row + 0.5) * step <= Math.max(...vs); row++) {
      const v = (row + 0.5) * step;
      const cuts = [0, 1, 2].flatMap((i) => {
        const [p, q] = [uv[i]!, uv[(i + 1) % 3]!];
        if (p[1] > v === q[1] > v) return [];
        const share = (v - p[1]) / (q[1] - p[1]);
        return [[p[0] + share * (q[0] - p[0]), p[2] + share * (q[2] - p[2])] as const];
      });
      if (cuts.length !== 2) continue;
      const [one, other] = cuts[0]![0] < cuts[1]![0] ? [cuts[0]!, cuts[1]!] : [cuts[1]!, cuts[0]!];
      rows.set(row, [...(rows.get(row) ?? []), { from: one[0], to: other[0], z0: one[1], z1: other[1] }]);
    }
  }
  return [...rows].flatMap(([row, pieces]) => {
    const v = (row + 0.5) * step;
    const sorted = pieces.sort((a, b) => a.from - b.from);
    const runs: (typeof pieces)[number][] = [];
    for (const piece of sorted) {
      const last = runs.at(-1);
      if (last && piece.from <= last.to + 1e-4) {
        if (piece.to > last.to) Object.assign(last, { to: piece.to, z1: piece.z1 });
      } else runs.push({ ...piece });
    }
    const at = (u: number, z: number): Vector => [c * u - s * v, s * u + c * v, z];
    return runs.map(({ from, to, z0, z1 }) => ({ from: at(from, z0), to: at(to, z1) }));
  });
}

/** Whether the solid stands under the end of a line, a little way on. */
function isHeld(
  { isInside }: Caster,
  end: Vector,
  other: Vector,
  { up, layer }: { up: 1 | -1; layer: number },
): boolean {
  const length = Math.hypot(end[0] - other[0], end[1] - other[1]) || 1;
  const on: Vector = [(end[0] - other[0]) / length, (end[1] - other[1]) / length, 0];
  const [x, y, z] = plus(end, on, 0.03);
  return isInside([x, y, z - up * Math.min(0.02, layer / 4)]);
}

function ledgeOf(caster: Caster, group: readonly Facet[], as: { up: 1 | -1; layer: number }): number {
  const sides = new Map<string, { from: Vector; to: Vector; middle: Vector }>();
  for (const { corners } of group) {
    const middle = scaled(plus(plus(corners[0], corners[1]), corners[2]), 1 / 3);
    for (let i = 0; i < 3; i++) {
      const [from, to] = [corners[i]!, corners[(i + 1) % 3]!];
      const back = `${to.join()};${from.join()}`;
      if (!sides.delete(back)) sides.set(`${from.join()};${to.join()}`, { from, to, middle });
    }
  }
  const rim = [...sides.values()].map(({ from, to, middle }) => {
    const half = scaled(plus(from, to), 0.5);
    const [ux, uy] = [to[0] - from[0], to[1] - from[1]];
    const length = Math.hypot(ux, uy) || 1;
    const side = ux * (middle[1] - from[1]) - uy * (middle[0] - from[0]) > 0 ? 1 : -1;
    const inward: Vector = [(-side * uy) / length, (side * ux) / length, 0];
    return { from, to, held: isHeld(caster, half, plus(half, inward), as) };
  });
  const held = rim.filter((one) => one.held);
  const toSegment = ([x, y]: Vector, { from, to }: (typeof rim)[number]) => {
    const [ux, uy] = [to[0] - from[0], to[1] - from[1]];
    const square = ux * ux + uy * uy || 1;
    const share = Math.min(1, Math.max(0, ((x - from[0]) * ux + (y - from[1]) * uy) / square));
    return Math.hypot(x - from[0] - share * ux, y - from[1] - share * uy);
  };
  return Math.max(
    0,
    ...rim.filter((one) => !one.held).map(({ from }) => Math.min(...held.map((one) => toSegment(from, one)))),
  );
}
