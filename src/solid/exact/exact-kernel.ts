import { type Placement, placementMatrix } from '../mesh.js';
import type { ThreadSweep } from '../thread-sweep.js';
import { type Loop, movedPieces, type Piece, type Point } from './meant-outline.js';
import type { ContourPiece, MeantLeaf, MeantShape, Region } from './meant-shape.js';

/** The file of the optional package's script, and that of its WebAssembly, as the package names them. */
export const EXACT_PACKAGE = { name: 'replicad-opencascadejs', wasm: 'replicad-opencascadejs/wasm' } as const;

/** What the optional package's script exports by default. */
export type ExactScript = (options: object) => Promise<unknown>;

/** What is measured of a body. */
export interface ExactMeasures {
  readonly solids: number;
  readonly freeEdges: number;
  /** whether the kernel's own analysis finds nothing */
  readonly isSound: boolean;
  readonly volume: number;
  readonly area: number;
  readonly center: readonly [number, number, number];
  readonly bounds: readonly [readonly [number, number, number], readonly [number, number, number]];
}

/** A named body of a file. */
export interface NamedBody {
  readonly name: string;
  readonly shape: MeantShape;
  /** where it stands in an assembly, default where it is modelled */
  readonly place?: Placement;
}

/** A body in the kernel's memory. */
export interface ExactBody {
  readonly name: string;
  readonly measures: ExactMeasures;
}

/** The exact solid operations. One kernel serves one part: booleans of threads keep memory that is never given back. */
export interface ExactKernel {
  /** Builds bodies, hands them to the work, and frees them. @throws Error a body cannot be built */
  within<T>(bodies: readonly NamedBody[], work: (built: BuiltBodies) => T): T;
}

/** Bodies that are built, while they are. */
export interface BuiltBodies {
  readonly bodies: readonly ExactBody[];
  /** the text of a STEP file of them, as the kernel writes it; an assembly where there are several */
  write(product: string): string;
  /** what a file holds, body by body */
  readBack(step: string): ExactMeasures[];
}

/**
 * Loads the exact kernel.
 *
 * @param script what the package exports by default
 * @param wasm   its WebAssembly, compiled: a `WebAssembly.Module`, whose type not every program knows; kernels of several
 *   threads may share it
 * @throws Error they are no exact kernel
 */
export async function createExactKernel(script: ExactScript, wasm: object): Promise<ExactKernel> {
  const oc = await loaded(script, wasm);
  if (typeof oc?.STEPCAFControl_Writer !== 'function') throw new TypeError('the script is no exact kernel');
  return {
    within: (bodies, work) => {
      const scope = new Scope();
      try {
        return work(built(oc, scope, bodies));
      } finally {
        scope.free();
      }
    },
  };
}

/** The script tells nobody where its WebAssembly does not fit. */
function loaded(script: ExactScript, wasm: object): Promise<OpenCascade> {
  const silent = () => undefined;
  return new Promise((resolve, reject) => {
    const instantiateWasm = (imports: WebAssembly.Imports, done: (made: WebAssembly.Instance) => void) => {
      WebAssembly.instantiate(wasm, imports).then(done).catch(reject);
      return {};
    };
    const options = { instantiateWasm, locateFile: (name: string) => name, print: silent, printErr: silent };
    script(options).then(resolve, reject);
  });
}

/** Handles of the kernel live outside the garbage collector. */
interface Handle {
  delete(): void;
}

class Scope {
  private readonly kept: Handle[] = [];

  keep<T extends Handle>(handle: T): T {
    this.kept.push(handle);
    return handle;
  }

  free(): void {
    for (const handle of this.kept.reverse()) handle.delete();
    this.kept.length = 0;
  }
}

// biome-ignore lint/suspicious/noExplicitAny: the package's own types are 1.6 MB, and it need not be installed
type OpenCascade = any;
// biome-ignore lint/suspicious/noExplicitAny: as above
type OcShape = any;

const FILE = '/part.step';

function built(oc: OpenCascade, scope: Scope, bodies: readonly NamedBody[]): BuiltBodies {
  const builder = new Builder(oc, scope);
  const shapes = bodies.map(({ name, shape }) => {
    try {
      return builder.oneSolid(builder.build(shape));
    } catch (error) {
      throw new Error(`${name}: ${reasonOf(oc, error)}`);
    }
  });
  return {
    bodies: bodies.map(({ name }, i) => ({ name, measures: measured(oc, scope, shapes[i]) })),
    write: (product) =>
      written(
        oc,
        scope,
        product,
        bodies.map(({ name, place = {} }, i) => ({ name, place, solid: shapes[i] })),
      ),
    readBack: (step) => readBack(oc, scope, step),
  };
}

/** Exceptions of the kernel are no errors of the language. */
function reasonOf(oc: OpenCascade, error: unknown): string {
  if (error instanceof Error) return error.message;
  try {
    const [type, message] = oc.getExceptionMessage(error) as [string, string];
    return `${type} ${message}`.trim();
  } catch {
    return String(error);
  }
}

/** Numbers are rounded before the kernel, since the last digits of sines differ between engines, mm. */
function steady(value: number): number {
  return Math.round(value * 1e9) / 1e9 + 0;
}

function locationOf(oc: OpenCascade, scope: Scope, place: Placement): OcShape {
  const trsf = scope.keep(new oc.gp_Trsf());
  trsf.SetValues(...placementMatrix(place).map(steady));
  return scope.keep(new oc.TopLoc_Location(trsf));
}

class Builder {
  private readonly known = new Map<MeantShape, OcShape>();

  constructor(
    private readonly oc: OpenCascade,
    private readonly scope: Scope,
  ) {}

  build(shape: MeantShape): OcShape {
    const known = this.known.get(shape);
    if (known) return known;
    const made = this.make(shape);
    this.known.set(shape, made);
    return made;
  }

  /** A result in one piece, as that piece. */
  oneSolid(shape: OcShape): OcShape {
    const solids = this.subshapes(shape, 'TopAbs_SOLID');
    return solids.length === 1 ? solids[0] : shape;
  }

  private make(shape: MeantShape): OcShape {
    const { oc, scope } = this;
    switch (shape.kind) {
      case 'moved': {
        return scope.keep(this.build(shape.shape).Moved(locationOf(oc, scope, shape), false));
      }
      case 'union':
        return this.together(
          'BRepAlgoAPI_Fuse',
          [this.build(shape.of[0]!)],
          shape.of.slice(1).map((part) => this.build(part)),
        );
      case 'intersection':
        return shape.of
          .slice(1)
          .reduce(
            (left, part) => this.together('BRepAlgoAPI_Common', [left], [this.build(part)]),
            this.build(shape.of[0]!),
          );
      case 'difference':
        return this.difference(shape.of);
      case 'extrusion':
        return this.extrusion(shape);
      case 'revolution':
        return this.revolution(shape.contour);
      case 'loft':
        return this.loft(shape);
      case 'thread':
        return this.thread(shape.thread);
    }
  }

  /** The light cutters at once, then each thread by itself. */
  private difference([first, ...others]: readonly MeantShape[]): OcShape {
    const cutters = others.flatMap(parts);
    const light = cutters.filter((shape) => !isHeavy(shape));
    const rest = this.together(
      'BRepAlgoAPI_Cut',
      [this.build(first!)],
      light.map((shape) => this.build(shape)),
    );
    return cutters
      .filter(isHeavy)
      .reduce((left, shape) => this.together('BRepAlgoAPI_Cut', [left], [this.build(shape)]), rest);
  }

  private together(
    how: 'BRepAlgoAPI_Fuse' | 'BRepAlgoAPI_Cut' | 'BRepAlgoAPI_Common',
    of: OcShape[],
    tools: OcShape[],
  ): OcShape {
    if (tools.length === 0) return of[0];
    const { oc, scope } = this;
    const run = scope.keep(new oc[how]());
    run.SetArguments(this.list(of));
    run.SetTools(this.list(tools));
    run.Build(scope.keep(new oc.Message_ProgressRange()));
    if (!run.IsDone()) throw new Error('the kernel gave up on a boolean');
    run.SimplifyResult(true, true, 1e-9);
    return scope.keep(run.Shape());
  }

  private list(shapes: readonly OcShape[]): OcShape {
    const list = this.scope.keep(new this.oc.NCollection_List_TopoDS_Shape());
    for (const shape of shapes) list.Append(shape);
    return list;
  }

  private extrusion({ regions, from, to }: Extract<MeantLeaf, { kind: 'extrusion' }>): OcShape {
    const { oc, scope } = this;
    const up = scope.keep(new oc.gp_Vec(0, 0, steady(to) - steady(from)));
    const solids = regions.map((region) => {
      const face = this.regionFace(region, from);
      return scope.keep(scope.keep(new oc.BRepPrimAPI_MakePrism(face, up, false, true)).Shape());
    });
    return this.compound(solids);
  }

  private compound(shapes: readonly OcShape[]): OcShape {
    if (shapes.length === 1) return shapes[0];
    const { oc, scope } = this;
    const builder = scope.keep(new oc.TopoDS_Builder());
    const compound = scope.keep(new oc.TopoDS_Compound());
    builder.MakeCompound(compound);
    for (const shape of shapes) builder.Add(compound, shape);
    return compound;
  }

  private regionFace({ outer, holes }: Region, z: number): OcShape {
    const { oc, scope } = this;
    const plane = scope.keep(new oc.gp_Pln(this.point([0, 0], z), scope.keep(new oc.gp_Dir(0, 0, 1))));
    const make = scope.keep(new oc.BRepBuilderAPI_MakeFace(plane, this.loopWire(outer, z), true));
    for (const hole of holes) make.Add(oc.TopoDS.Wire(scope.keep(this.loopWire(hole, z).Reversed())));
    return scope.keep(make.Face());
  }

  private loopWire(loop: Loop, z: number): OcShape {
    return loop.kind === 'circle' ? this.circleWire(loop, z) : this.piecesWire(loop.pieces, z);
  }

  private circleWire({ center, radius }: { readonly center: Point; readonly radius: number }, z: number): OcShape {
    return this.wireOf([this.edge(this.circle(center, radius, z))]);
  }

  private circle(center: Point, radius: number, z: number): OcShape {
    const { oc, scope } = this;
    const axes = scope.keep(
      new oc.gp_Ax2(this.point(center, z), scope.keep(new oc.gp_Dir(0, 0, 1)), scope.keep(new oc.gp_Dir(1, 0, 0))),
    );
    return scope.keep(new oc.gp_Circ(axes, steady(radius)));
  }

  private piecesWire(pieces: readonly Piece[], z: number): OcShape {
    return this.wireOf(
      pieces.map((piece) => {
        const [from, to] = [this.point(piece.from, z), this.point(piece.to, z)];
        if (piece.kind === 'line') return this.edge(from, to);
        return this.arcEdge(from, this.point(middleOf(piece), z), to);
      }),
    );
  }

  private arcEdge(from: OcShape, through: OcShape, to: OcShape): OcShape {
    const { oc, scope } = this;
    const arc = scope.keep(new oc.GC_MakeArcOfCircle(from, through, to));
    return this.edge(scope.keep(arc.Value()));
  }

  private edge(...of: readonly OcShape[]): OcShape {
    return this.scope.keep(this.scope.keep(new this.oc.BRepBuilderAPI_MakeEdge(...of)).Edge());
  }

  private wireOf(edges: readonly OcShape[]): OcShape {
    const make = this.scope.keep(new this.oc.BRepBuilderAPI_MakeWire());
    for (const edge of edges) make.Add(edge);
    if (!make.IsDone()) throw new Error('an outline does not close');
    return this.scope.keep(make.Wire());
  }

  private point([x, y]: Point, z: number): OcShape {
    return this.scope.keep(new this.oc.gp_Pnt(steady(x), steady(y), steady(z)));
  }

  private revolution(contour: readonly ContourPiece[]): OcShape {
    const { oc, scope } = this;
    const at = ([radius, z]: Point) => this.point([radius, 0], z);
    const [first, last] = [contour[0]!.from, contour.at(-1)!.to];
    const edges = contour.map(({ from, to, center }) =>
      center ? this.arcEdge(at(from), at(contourMiddle(from, to, center)), at(to)) : this.edge(at(from), at(to)),
    );
    const corners: Point[] = [last, [0, last[1]], [0, first[1]], first];
    for (let i = 1; i < corners.length; i++) {
      const [a, b] = [corners[i - 1]!, corners[i]!];
      if (Math.hypot(a[0] - b[0], a[1] - b[1]) > 1e-9) edges.push(this.edge(at(a), at(b)));
    }
    const face = scope.keep(scope.keep(new oc.BRepBuilderAPI_MakeFace(this.wireOf(edges), true)).Face());
    const axis = scope.keep(new oc.gp_Ax1(this.point([0, 0], 0), scope.keep(new oc.gp_Dir(0, 0, 1))));
    return this.facingOut(scope.keep(scope.keep(new oc.BRepPrimAPI_MakeRevol(face, axis, false)).Shape()));
  }

  /** Straight sides that a circle's arcs do not touch, or that a fillet runs along, are cut off one by one. */
  private loft(loft: Extract<MeantLeaf, { kind: 'loft' }>): OcShape {
    const { outline, contour, circle } = loft;
    const isRounded = contour.some(({ center }) => center !== undefined);
    if (!circle && !isRounded) return this.ruled(loft);
    const far =
      4 * Math.max(...outline.map(({ from }) => Math.hypot(...from)), ...contour.map(({ from }) => Math.abs(from[0])));
    const walls = outline.flatMap((piece) => (piece.kind === 'line' ? [this.wall(piece, contour, far)] : []));
    const round = circle
      ? this.revolution(
          contour.map(({ from, to, center }) => ({
            from: [from[0] + circle, from[1]],
            to: [to[0] + circle, to[1]],
            ...(center ? { center: [center[0] + circle, center[1]] as const } : {}),
          })),
        )
      : walls.shift();
    return walls.reduce((left, wall) => this.together('BRepAlgoAPI_Common', [left], [wall]), round);
  }

  /** All that lies inside one side of a loft: its contour across the side, drawn along it. */
  private wall({ from, to }: Piece, contour: readonly ContourPiece[], far: number): OcShape {
    const { oc, scope } = this;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
    const at = ([offset, z]: Point, along: number): OcShape =>
      this.point([from[0] + offset * uy + along * ux, from[1] - offset * ux + along * uy], z);
    const [first, last] = [contour[0]!.from, contour.at(-1)!.to];
    const edges = contour.map((piece) =>
      piece.center
        ? this.arcEdge(
            at(piece.from, -far),
            at(contourMiddle(piece.from, piece.to, piece.center), -far),
            at(piece.to, -far),
          )
        : this.edge(at(piece.from, -far), at(piece.to, -far)),
    );
    const back: Point[] = [last, [-2 * far, last[1]], [-2 * far, first[1]], first];
    for (let i = 1; i < back.length; i++) edges.push(this.edge(at(back[i - 1]!, -far), at(back[i]!, -far)));
    const face = scope.keep(scope.keep(new oc.BRepBuilderAPI_MakeFace(this.wireOf(edges), true)).Face());
    const way = scope.keep(new oc.gp_Vec(2 * far * ux, 2 * far * uy, 0));
    return this.facingOut(scope.keep(scope.keep(new oc.BRepPrimAPI_MakePrism(face, way, false, true)).Shape()));
  }

  /** Levels joined by planes and cones, step by step. */
  private ruled({ outline, contour }: Extract<MeantLeaf, { kind: 'loft' }>): OcShape {
    const { oc, scope } = this;
    const make = scope.keep(new oc.BRepOffsetAPI_ThruSections(true, true, 1e-9));
    make.CheckCompatibility(false);
    for (const [offset, z] of [contour[0]!.from, ...contour.map(({ to }) => to)])
      make.AddWire(this.piecesWire(movedPieces(outline, offset), z));
    make.Build(scope.keep(new oc.Message_ProgressRange()));
    return this.facingOut(scope.keep(make.Shape()));
  }

  /** A solid turned inside out measures a negative volume. */
  private facingOut(shape: OcShape): OcShape {
    return volumeOf(this.oc, this.scope, shape) < 0 ? this.scope.keep(shape.Reversed()) : shape;
  }

  /**
   * A threaded rod: one face for each flank, crest and root over its whole length. Along the helix a face is a spline of
   * degree 5 with poles on a circle scaled so that it runs through the helix, across it is straight; so z is linear in
   * both parameters and a flat end is a straight line in them.
   */
  private thread(thread: ThreadSweep): OcShape {
    const { oc, scope } = this;
    const { ridge, pitch, starts, hand, from, to } = thread;
    const lead = pitch * starts;
    const sewing = scope.keep(new oc.BRepBuilderAPI_Sewing(1e-5, true, true, true, false));
    const at = (k: number): Point => {
      const [z, r] = ridge[k % ridge.length]!;
      return [r, z + pitch * Math.floor(k / ridge.length)];
    };
    const count = starts * ridge.length;
    // all faces share one net of knots, so that neighbours share their edges to the last digit
    const angles = [angleAt(from, at(count)[1], lead), angleAt(to, at(0)[1], lead)] as const;
    const strips = Array.from({ length: count }, (_, i) => helixStrip(at(i), at(i + 1), { lead, from, to, angles }));
    const ends: [OcShape[], OcShape[]] = [[], []];
    for (const strip of strips) {
      const { face, low, high } = this.stripFace(strip, hand === 'left' ? -1 : 1);
      sewing.Add(face);
      ends[0].push(low);
      ends[1].push(high);
    }
    for (const [i, edges] of ends.entries()) sewing.Add(this.cap(edges, i === 0 ? from : to));
    sewing.Perform(scope.keep(new oc.Message_ProgressRange()));
    if (sewing.NbFreeEdges() > 0) throw new Error(`a thread leaves ${sewing.NbFreeEdges()} open edges`);
    const [shell] = this.subshapes(scope.keep(sewing.SewedShape()), 'TopAbs_SHELL');
    const solid = scope.keep(scope.keep(new oc.ShapeFix_Solid()).SolidFromShell(oc.TopoDS.Shell(shell)));
    return this.facingOut(solid);
  }

  private stripFace({ radii, low, high, angles, z0, lead }: HelixStrip, side: 1 | -1) {
    const { oc, scope } = this;
    const surface = this.helicoid({ radii, low, high, angles, z0, lead }, side);
    const uv = (u: number, v: number) => scope.keep(new oc.gp_Pnt2d(u, v));
    const line = (a: Point, b: Point): OcShape => {
      const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
      const way = scope.keep(new oc.gp_Dir2d((b[0] - a[0]) / length, (b[1] - a[1]) / length));
      const curve = scope.keep(new oc.Geom2d_Line(uv(...(a as [number, number])), way));
      const edge = this.edge(curve, surface, 0, length);
      oc.BRepLib.BuildCurves3d(edge, 1e-7, oc.GeomAbs_Shape.GeomAbs_C1, 14, 1000);
      return edge;
    };
    const corners: Point[] = [
      [low[0], 0],
      [high[0], 0],
      [high[1], 1],
      [low[1], 1],
    ];
    const edges = corners.map((corner, i) => line(corner, corners[(i + 1) % 4]!));
    const make = scope.keep(new oc.BRepBuilderAPI_MakeFace(surface, this.wireOf(edges), true));
    return { face: scope.keep(make.Face()), low: edges[3], high: edges[1] };
  }

  private helicoid({ radii, angles, z0, lead }: HelixStrip, side: 1 | -1): OcShape {
    const { oc, scope } = this;
    const [first, last] = angles;
    const spans = Math.max(1, Math.ceil((last - first) / (Math.PI / 8)));
    const step = (last - first) / spans;
    const scale = 120 / (66 + 52 * Math.cos(step) + 2 * Math.cos(2 * step));
    const count = spans + 5;
    const poles = scope.keep(new oc.NCollection_Array2_gp_Pnt(1, count, 1, 2));
    for (let i = 0; i < count; i++) {
      // a pole stands at the mean of its five inner knots
      const angle = first + (i - 2) * step;
      for (const row of [0, 1] as const) {
        const r = radii[row] * scale;
        const point: Point = [r * Math.cos(angle), side * r * Math.sin(angle)];
        poles.SetValue(i + 1, row + 1, this.point(point, z0[row] + (lead * angle) / (2 * Math.PI)));
      }
    }
    const knots = spans + 11;
    const uKnots = scope.keep(new oc.NCollection_Array1_double(1, knots));
    const uMults = scope.keep(new oc.NCollection_Array1_int(1, knots));
    for (let i = 0; i < knots; i++) {
      uKnots.SetValue(i + 1, first + (i - 5) * step);
      uMults.SetValue(i + 1, 1);
    }
    const vKnots = scope.keep(new oc.NCollection_Array1_double(1, 2));
    const vMults = scope.keep(new oc.NCollection_Array1_int(1, 2));
    for (const i of [0, 1]) {
      vKnots.SetValue(i + 1, i);
      vMults.SetValue(i + 1, 2);
    }
    const surface = scope.keep(new oc.Geom_BSplineSurface(poles, uKnots, vKnots, uMults, vMults, 5, 1, false, false));
    surface.Segment(first, last, 0, 1, 1e-9, 1e-9);
    return surface;
  }

  private cap(edges: readonly OcShape[], z: number): OcShape {
    const { oc, scope } = this;
    const plane = scope.keep(new oc.gp_Pln(this.point([0, 0], z), scope.keep(new oc.gp_Dir(0, 0, 1))));
    const make = scope.keep(new oc.BRepBuilderAPI_MakeFace(plane, this.wireOf(edges), true));
    return scope.keep(make.Face());
  }

  private subshapes(shape: OcShape, kind: string): OcShape[] {
    return subshapes(this.oc, this.scope, shape, kind);
  }
}

/** Cutters that are joined are cut one by one. */
function parts(shape: MeantShape): readonly MeantShape[] {
  return shape.kind === 'union' ? shape.of.flatMap(parts) : [shape];
}

function isHeavy(shape: MeantShape): boolean {
  return shape.kind === 'thread' || (shape.kind === 'moved' && isHeavy(shape.shape));
}

/** A face of a thread in the angle along it and 0 to 1 across it. */
interface HelixStrip {
  readonly radii: readonly [number, number];
  /** heights of its two edges at angle 0 */
  readonly z0: readonly [number, number];
  readonly lead: number;
  /** angles at which the edges meet the lower and the upper end */
  readonly low: readonly [number, number];
  readonly high: readonly [number, number];
  /** angles that the surface spans */
  readonly angles: readonly [number, number];
}

function helixStrip(
  [r0, z0]: Point,
  [r1, z1]: Point,
  { lead, from, to, angles }: Pick<HelixStrip, 'lead' | 'angles'> & { readonly from: number; readonly to: number },
): HelixStrip {
  const low = [angleAt(from, z0, lead), angleAt(from, z1, lead)] as const;
  const high = [angleAt(to, z0, lead), angleAt(to, z1, lead)] as const;
  return { radii: [r0, r1], z0: [z0, z1], lead, low, high, angles };
}

/** Where a helix that starts at a height reaches another, radians. */
function angleAt(end: number, z: number, lead: number): number {
  return ((end - z) * 2 * Math.PI) / lead;
}

/** The middle of an arc between two of its points. */
function middleOf({ from, to, center, radius, outwards }: Extract<Piece, { kind: 'arc' }>): Point {
  const angle = (point: Point) => Math.atan2(point[1] - center[1], point[0] - center[0]);
  const [a, b] = [angle(from), angle(to)];
  const whole = 2 * Math.PI;
  const sweep = outwards ? (b - a + 2 * whole) % whole : -((a - b + 2 * whole) % whole);
  return [center[0] + radius * Math.cos(a + sweep / 2), center[1] + radius * Math.sin(a + sweep / 2)];
}

/** The middle of an arc of less than half a turn. */
function contourMiddle(from: Point, to: Point, center: Point): Point {
  const middle: Point = [(from[0] + to[0]) / 2 - center[0], (from[1] + to[1]) / 2 - center[1]];
  const radius = Math.hypot(from[0] - center[0], from[1] - center[1]);
  const share = radius / Math.hypot(...middle);
  return [center[0] + share * middle[0], center[1] + share * middle[1]];
}

function subshapes(oc: OpenCascade, scope: Scope, shape: OcShape, kind: string): OcShape[] {
  const found: OcShape[] = [];
  const explorer = scope.keep(
    new oc.TopExp_Explorer(shape, oc.TopAbs_ShapeEnum[kind], oc.TopAbs_ShapeEnum.TopAbs_SHAPE),
  );
  for (; explorer.More(); explorer.Next()) found.push(scope.keep(explorer.Current()));
  return found;
}

function volumeOf(oc: OpenCascade, scope: Scope, shape: OcShape): number {
  const props = scope.keep(new oc.GProp_GProps());
  oc.BRepGProp.VolumeProperties(shape, props, false, false, false);
  return props.Mass();
}

function measured(oc: OpenCascade, scope: Scope, shape: OcShape): ExactMeasures {
  const props = scope.keep(new oc.GProp_GProps());
  oc.BRepGProp.VolumeProperties(shape, props, 1e-7, true, false);
  const surface = scope.keep(new oc.GProp_GProps());
  oc.BRepGProp.SurfaceProperties(shape, surface, false, false);
  const box = scope.keep(new oc.Bnd_Box());
  oc.BRepBndLib.AddOptimal(shape, box, false, false);
  const center = scope.keep(props.CentreOfMass());
  return {
    solids: subshapes(oc, scope, shape, 'TopAbs_SOLID').length,
    freeEdges: freeEdges(oc, scope, shape),
    isSound: scope.keep(new oc.BRepCheck_Analyzer(shape, true, false, false)).IsValid(),
    volume: props.Mass(),
    area: surface.Mass(),
    center: [center.X(), center.Y(), center.Z()],
    bounds: [
      [box.GetXMin(), box.GetYMin(), box.GetZMin()],
      [box.GetXMax(), box.GetYMax(), box.GetZMax()],
    ],
  };
}

/** Edges that do not lie on two faces, or twice on one; those without length aside. */
function freeEdges(oc: OpenCascade, scope: Scope, shape: OcShape): number {
  const known = new Map<string, { readonly edge: OcShape; uses: number }[]>();
  for (const face of subshapes(oc, scope, shape, 'TopAbs_FACE')) {
    for (const edge of subshapes(oc, scope, face, 'TopAbs_EDGE')) {
      if (oc.BRep_Tool.Degenerated(scope.keep(oc.TopoDS.Edge(edge)))) continue;
      const place = middleOfEnds(oc, scope, edge);
      const near = known.get(place) ?? [];
      known.set(place, near);
      const same = near.find((one) => one.edge.IsSame(edge));
      if (same) same.uses += 1;
      else near.push({ edge, uses: 1 });
    }
  }
  return [...known.values()].flat().filter(({ uses }) => uses !== 2).length;
}

/** The same for an edge whichever way it runs: only edges of one place are compared. */
function middleOfEnds(oc: OpenCascade, scope: Scope, edge: OcShape): string {
  const sum = [0, 0, 0];
  for (const vertex of subshapes(oc, scope, edge, 'TopAbs_VERTEX')) {
    const point = scope.keep(oc.BRep_Tool.Pnt(scope.keep(oc.TopoDS.Vertex(vertex))));
    sum[0] += point.X();
    sum[1] += point.Y();
    sum[2] += point.Z();
  }
  return sum.map((value) => Math.round(value * 1e6)).join();
}

function written(
  oc: OpenCascade,
  scope: Scope,
  product: string,
  bodies: readonly { name: string; place: Placement; solid: OcShape }[],
): string {
  const text = (words: string) => scope.keep(new oc.TCollection_ExtendedString(words, true));
  const doc = scope.keep(new oc.TDocStd_Document(text('XCAF')));
  const tool = scope.keep(oc.XCAFDoc_DocumentTool.ShapeTool(scope.keep(doc.Main())));
  oc.XCAFDoc_DocumentTool.SetLengthUnit(doc, 0.001);
  // the first writer sets what follows to its own defaults
  const writer = scope.keep(new oc.STEPCAFControl_Writer());
  oc.Interface_Static.SetCVal('write.step.schema', 'AP242DIS');
  oc.Interface_Static.SetIVal('write.surfacecurve.mode', 0);
  const labels = bodies.map(({ name, solid }) => {
    const label = scope.keep(tool.AddShape(solid, false, false));
    scope.keep(oc.TDataStd_Name.Set(label, text(name)));
    return label;
  });
  if (labels.length > 1) {
    const whole = scope.keep(tool.NewShape());
    scope.keep(oc.TDataStd_Name.Set(whole, text(product)));
    for (const [i, label] of labels.entries()) {
      const { name, place } = bodies[i]!;
      const part = scope.keep(tool.AddComponent(whole, label, locationOf(oc, scope, place)));
      scope.keep(oc.TDataStd_Name.Set(part, text(name)));
    }
    tool.UpdateAssemblies();
  }
  if (!writer.Perform(doc, FILE, scope.keep(new oc.Message_ProgressRange())))
    throw new Error('the kernel did not write the file');
  const step = oc.FS.readFile(FILE, { encoding: 'utf8' }) as string;
  oc.FS.unlink(FILE);
  return step;
}

function readBack(oc: OpenCascade, scope: Scope, step: string): ExactMeasures[] {
  oc.FS.writeFile(FILE, step);
  const reader = scope.keep(new oc.STEPControl_Reader());
  reader.ReadFile(FILE);
  oc.FS.unlink(FILE);
  reader.TransferRoots(scope.keep(new oc.Message_ProgressRange()));
  const whole = scope.keep(reader.OneShape());
  return subshapes(oc, scope, whole, 'TopAbs_SOLID').map((solid) => measured(oc, scope, solid));
}
