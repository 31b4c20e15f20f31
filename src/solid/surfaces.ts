import { cosd, sind } from './angles.js';
import type { LoftLevel } from './convex-loft.js';
import { type Curve, LEAST_ROUND, type Outline } from './outline.js';
import type { Lathe, Loft, Prism, Shape } from './recipe.js';

export type Vector = readonly [number, number, number];

/** What a surface of a recipe is, by the figures that the recipe states. */
export type Form =
  | { readonly kind: 'plane'; readonly normal: Vector }
  /** a cylinder or a cone: `radius` where the axis has its origin, `slope` more of it for each mm along the axis */
  | {
      readonly kind: 'revolved';
      readonly origin: Vector;
      readonly axis: Vector;
      readonly radius: number;
      readonly slope: number;
    }
  /** smooth, known by its facets alone */
  | { readonly kind: 'free' };

/** A surface that facets of a solid came from. */
export interface Surface {
  readonly form: Form;
  /** name of the feature that its shape belongs to */
  readonly feature?: string;
  /** it only breaks an edge, or leads into a bore */
  readonly broken: boolean;
  readonly isFillet?: true;
}

/** A shape that is not put together from others. */
export type Leaf = Exclude<Shape, { kind: 'union' | 'difference' | 'intersection' | 'moved' | 'feature' }>;

/** Surfaces of a leaf, and which of them each tag of its mesh means. */
export interface Tagged {
  readonly surfaces: readonly Surface[];
  /** by the tag of its mesh; one entry means all tags */
  readonly ofTag: readonly number[];
}

/**
 * The surfaces of a leaf as it is modelled, in the order of its mesh's tags.
 *
 * @param leaf  a shape; a thread counts as the cylinder of {@link threadCore}
 * @returns surfaces  [mm]
 */
export function surfacesOf(leaf: Leaf): Tagged {
  switch (leaf.kind) {
    case 'lathe':
      return ofLathe(leaf);
    case 'prism':
      return ofPrism(leaf);
    case 'loft':
      return ofLoft(leaf);
    case 'thread':
      return ofLathe(threadCore(leaf.thread));
    case 'mesh':
    case 'strokes':
      return { surfaces: [{ form: { kind: 'free' }, broken: false }], ofTag: [0] };
  }
}

/** The cylinder that stands for a thread in a drawing: at its least radius, with the same columns. */
export function threadCore(thread: Extract<Shape, { kind: 'thread' }>['thread']): Lathe {
  const radius = Math.min(...thread.ridge.map(([, r]) => r));
  const contour = [thread.from, thread.to].map((z) => [radius, z] as const);
  return { kind: 'lathe', sides: thread.columns, circumscribed: thread.circumscribed, contour };
}

/**
 * A surface moved as its shape is.
 *
 * @param m  3 × 4, row by row, so that x' = m0·x + m1·y + m2·z + m3
 */
export function placedSurface(surface: Surface, m: readonly number[]): Surface {
  const turn = ([x, y, z]: Vector): Vector => [
    m[0]! * x + m[1]! * y + m[2]! * z,
    m[4]! * x + m[5]! * y + m[6]! * z,
    m[8]! * x + m[9]! * y + m[10]! * z,
  ];
  const { form } = surface;
  if (form.kind === 'free') return surface;
  if (form.kind === 'plane') return { ...surface, form: { ...form, normal: turn(form.normal) } };
  const [x, y, z] = turn(form.origin);
  return {
    ...surface,
    form: { ...form, origin: [x + m[3]!, y + m[7]!, z + m[11]!], axis: turn(form.axis) },
  };
}

/** The direction that a surface faces at a point of it, either way; undefined where only its facets tell. */
export function normalAt({ form }: Surface, point: Vector): Vector | undefined {
  if (form.kind === 'free') return undefined;
  if (form.kind === 'plane') return form.normal;
  const { axis, slope } = form;
  const [x, y, z] = minus(point, form.origin);
  const along = x * axis[0] + y * axis[1] + z * axis[2];
  const out: Vector = [x - along * axis[0], y - along * axis[1], z - along * axis[2]];
  const far = Math.hypot(...out);
  if (far === 0) return undefined;
  const length = Math.hypot(1, slope);
  const at = (i: 0 | 1 | 2) => (out[i] / far - slope * axis[i]) / length;
  return [at(0), at(1), at(2)];
}

export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function minus(a: Vector, b: Vector): Vector {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

const UP: Vector = [0, 0, 1];
const DOWN: Vector = [0, 0, -1];

function plane(normal: Vector, broken = false): Surface {
  return { form: { kind: 'plane', normal }, broken };
}

/** A cylinder or cone about an upright axis whose radius is known at a height. */
function standing(
  center: readonly [number, number],
  { radius, z, slope }: { readonly radius: number; readonly z: number; readonly slope: number },
  broken = false,
): Surface {
  const origin: Vector = [center[0], center[1], 0];
  return { form: { kind: 'revolved', origin, axis: UP, radius: radius - slope * z, slope }, broken };
}

function ofLathe({ sides, circumscribed, turn = 0, contour, broken = [] }: Lathe): Tagged {
  const surfaces: Surface[] = [];
  const ofTag: number[] = [];
  for (let i = 1; i < contour.length; i++) {
    const [[low, from], [high, to]] = [contour[i - 1]!, contour[i]!];
    const isBroken = broken.includes(i - 1);
    const isRound = sides >= LEAST_ROUND;
    if (from === to || isRound) {
      const slope = (high - low) / (to - from);
      ofTag.push(...Array.from({ length: sides }, () => surfaces.length));
      surfaces.push(
        from === to
          ? plane(high < low ? UP : DOWN, isBroken)
          : standing([0, 0], { radius: low, z: from, slope }, isBroken),
      );
      continue;
    }
    const lean = ((high - low) / (to - from)) * (circumscribed ? 1 : cosd(180 / sides));
    const length = Math.hypot(1, lean);
    for (let side = 0; side < sides; side++) {
      const angle = turn + (360 * (side + 0.5)) / sides;
      ofTag.push(surfaces.length);
      surfaces.push(plane([cosd(angle) / length, sind(angle) / length, -lean / length], isBroken));
    }
  }
  return withEnds(surfaces, ofTag);
}

function withEnds(surfaces: readonly Surface[], ofTag: readonly number[]): Tagged {
  return {
    surfaces: [...surfaces, plane(DOWN), plane(UP)],
    ofTag: [...ofTag, surfaces.length, surfaces.length + 1],
  };
}

function ofPrism({ outlines }: Prism): Tagged {
  const surfaces: Surface[] = [];
  const ofTag = outlines.flatMap((outline) => {
    const walls = new Walls(outline, surfaces);
    return outline.map((_, side) =>
      walls.of(side, (curve) =>
        curve === undefined || curve.kind === 'tangent'
          ? plane(outwards(outline, side, 0))
          : curve.kind === 'arc'
            ? standing(curve.center, { radius: curve.radius, z: 0, slope: 0 })
            : { form: { kind: 'free' }, broken: false },
      ),
    );
  });
  return withEnds(surfaces, ofTag);
}

/** Surfaces of one ring of walls: sides of one curve share one. */
class Walls {
  private readonly known = new Map<Curve, number>();

  constructor(
    private readonly outline: Outline,
    private readonly surfaces: Surface[],
  ) {}

  of(side: number, make: (curve: Curve | undefined) => Surface): number {
    const curve = this.outline.curves?.[side];
    const known = curve && this.known.get(curve);
    if (known !== undefined) return known;
    const made = this.surfaces.length;
    this.surfaces.push(make(curve));
    if (curve) this.known.set(curve, made);
    return made;
  }
}

function outwards(outline: Outline, side: number, lean: number): Vector {
  const [x0, y0] = outline[side]!;
  const [x1, y1] = outline[(side + 1) % outline.length]!;
  const [dx, dy] = [x1 - x0, y1 - y0];
  const length = Math.hypot(dx, dy);
  const whole = Math.hypot(1, lean);
  return [dy / length / whole, -dx / length / whole, -lean / whole];
}

function ofLoft({ outline, levels, rounds = [], broken = [] }: Loft): Tagged {
  const surfaces: Surface[] = [];
  const ofTag: number[] = [];
  const fillets = new Map<number, number[]>();
  for (let step = 0; step + 1 < levels.length; step++) {
    const round = rounds.findIndex(({ from, to }) => step >= from && step < to);
    if (round >= 0) {
      const shared = fillets.get(round) ?? filletWalls(outline, surfaces);
      fillets.set(round, shared);
      ofTag.push(...shared);
      continue;
    }
    const [[z, low], [above, high]] = [levels[step]!, levels[step + 1]!] as readonly [LoftLevel, LoftLevel];
    const slope = (high - low) / (above - z);
    const isBroken = broken.includes(step);
    const walls = new Walls(outline, surfaces);
    const sides = outline.map((_, side) =>
      walls.of(side, (curve) =>
        curve === undefined || curve.kind === 'tangent'
          ? plane(outwards(outline, side, slope), isBroken)
          : curve.kind === 'arc'
            ? standing(curve.center, { radius: curve.radius + low, z, slope }, isBroken)
            : { form: { kind: 'free' }, broken: isBroken },
      ),
    );
    ofTag.push(...sides);
  }
  return withEnds(surfaces, ofTag);
}

/** A fillet is one smooth surface for each curve or side of the outline. */
function filletWalls(outline: Outline, surfaces: Surface[]): number[] {
  const walls = new Walls(outline, surfaces);
  return outline.map((_, side) => walls.of(side, () => ({ form: { kind: 'free' }, broken: false, isFillet: true })));
}
