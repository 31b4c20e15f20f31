import { fault } from '../../units/faults.js';
import { cosd } from '../angles.js';
import type { LoftLevel } from '../convex-loft.js';
import type { Placement } from '../mesh.js';
import { LEAST_ROUND, type Outline, polygonArea } from '../outline.js';
import type { Lathe, Loft, Prism, Shape, Strokes } from '../recipe.js';
import { threadCore } from '../surfaces.js';
import type { ThreadSweep } from '../thread-sweep.js';
import { type Loop, meantOutline, type Piece, type Point } from './meant-outline.js';

/** One piece of a contour that rises along the axis: a straight line, or an arc that stands for a fillet. */
export interface ContourPiece {
  /** [radius or offset, z], mm */
  readonly from: Point;
  readonly to: Point;
  /** centre of the circle that the piece is a quarter or less of; straight where it is left out */
  readonly center?: Point;
}

/** A region of the plane with its holes. */
export interface Region {
  readonly outer: Loop;
  readonly holes: readonly Loop[];
}

/** What a leaf of a recipe stands for, by true circles, cylinders, cones and helicoids. */
export type MeantLeaf =
  | { readonly kind: 'extrusion'; readonly regions: readonly Region[]; readonly from: number; readonly to: number }
  /** turned about the axis; its contour runs upwards along the outside */
  | { readonly kind: 'revolution'; readonly contour: readonly ContourPiece[] }
  /** a convex outline whose sides move out and in along the axis */
  | {
      readonly kind: 'loft';
      readonly outline: readonly Piece[];
      readonly contour: readonly ContourPiece[];
      /** radius of the circle about the axis that its corners lie on, where its straight sides cut it at an angle */
      readonly circle?: number;
    }
  | { readonly kind: 'thread'; readonly thread: ThreadSweep };

export type MeantExtrusion = Extract<MeantLeaf, { kind: 'extrusion' }>;
export type MeantLoft = Extract<MeantLeaf, { kind: 'loft' }>;

/** A recipe by what it means. */
export type MeantShape =
  | MeantLeaf
  | { readonly kind: 'union' | 'difference' | 'intersection'; readonly of: readonly MeantShape[] }
  | ({ readonly kind: 'moved'; readonly shape: MeantShape } & Placement);

/** How a recipe is read. */
export interface MeantOptions {
  /** plain: threads are left as the bore */
  readonly threads: 'exact' | 'plain';
  /** joins outlines that may overlap to loops that do not, outer ones counter-clockwise, holes clockwise */
  readonly join: (outlines: readonly Outline[]) => readonly Outline[];
}

/**
 * Reads a recipe by what it states: nothing is recognised from points.
 *
 * @param shape    a recipe
 * @param options  how threads and overlapping strokes are taken
 * @returns the same tree of exact leaves
 * @throws InputError  a shape that no exact body stands for
 */
export function meantShape(shape: Shape, options: MeantOptions): MeantShape {
  switch (shape.kind) {
    case 'feature':
      return meantShape(shape.shape, options);
    case 'moved':
      return { ...shape, shape: meantShape(shape.shape, options) };
    case 'union':
    case 'difference':
    case 'intersection':
      return { kind: shape.kind, of: shape.of.map((part) => meantShape(part, options)) };
    case 'prism':
      return ofPrism(shape);
    case 'strokes':
      return ofStrokes(shape, options);
    case 'lathe':
      return ofLathe(shape);
    case 'loft':
      return ofLoft(shape);
    case 'thread':
      return options.threads === 'exact' ? shape : ofLathe(threadCore(shape.thread));
    case 'mesh':
      throw fault('shape', shape.kind, 'has no exact body');
  }
}

function ofPrism({ outlines: [outer, ...holes], from, to }: Prism): MeantLeaf {
  const region = { outer: meantOutline(outer), holes: holes.map((hole) => meantOutline(hole)) };
  return { kind: 'extrusion', regions: [region], from, to };
}

/** Strokes are joined in their plane; each piece that is left has its own holes. */
function ofStrokes({ outlines, from, to }: Strokes, { join }: MeantOptions): MeantLeaf {
  const loops = join(outlines);
  const outers = loops.filter((loop) => polygonArea(loop) > 0);
  const holes = loops.filter((loop) => polygonArea(loop) < 0);
  const regions = outers.map((outer) => ({
    outer: meantOutline(outer),
    holes: holes.filter(([corner]) => holdsPoint(outer, corner!)).map((hole) => meantOutline([...hole].reverse())),
  }));
  return { kind: 'extrusion', regions, from, to };
}

function holdsPoint(outline: Outline, [x, y]: Point): boolean {
  let inside = false;
  for (const [i, [x0, y0]] of outline.entries()) {
    const [x1, y1] = outline[(i + 1) % outline.length]!;
    if (y0 > y !== y1 > y && x < x0 + ((y - y0) / (y1 - y0)) * (x1 - x0)) inside = !inside;
  }
  return inside;
}

function ofLathe({ sides, circumscribed, turn = 0, contour }: Lathe): MeantLeaf {
  if (sides >= LEAST_ROUND) return { kind: 'revolution', contour: straight(contour) };
  const share = circumscribed ? 1 : cosd(180 / sides);
  const [[first]] = contour as [Point];
  if (contour.some(([radius, z], i) => radius === 0 || (i > 0 && z <= contour[i - 1]![1])))
    throw fault('contour', sides, 'must rise and stay off the axis where the lathe has fewer sides than a circle');
  const corner = (i: number): Point => {
    const angle = turn + (360 * i) / sides;
    const reach = (share * first) / cosd(180 / sides);
    return [reach * cosd(angle), reach * cosd(angle - 90)];
  };
  const outline = meantOutline(Array.from({ length: sides }, (_, i) => corner(i)));
  return {
    kind: 'loft',
    outline: piecesOf(outline),
    contour: straight(contour.map(([radius, z]): Point => [share * (radius - first), z])),
  };
}

function straight(points: readonly Point[]): readonly ContourPiece[] {
  return withoutEmpty(points.slice(1).map((to, i) => ({ from: points[i]!, to })));
}

/** No kernel makes an edge between points nearer than this, mm. */
const ONE_POINT = 1e-6;

/** Pieces that lead nowhere, as a chamfer of nothing does, are left out; the next one begins where they began. */
function withoutEmpty(pieces: readonly ContourPiece[]): readonly ContourPiece[] {
  const kept: ContourPiece[] = [];
  let at = pieces[0]!.from;
  for (const piece of pieces) {
    if (Math.hypot(piece.to[0] - at[0], piece.to[1] - at[1]) < ONE_POINT) continue;
    kept.push({ ...piece, from: at });
    at = piece.to;
  }
  return kept;
}

/** A circle, whole or cut, is turned about its own centre. */
function ofLoft(loft: Loft): MeantShape {
  const outline = meantOutline(loft.outline);
  const contour = contourOf(loft);
  if (outline.kind === 'circle') {
    const { radius, center } = outline;
    const out = ([offset, z]: Point): Point => [radius + offset, z];
    const round = contour.map(({ from, to, center: about }) => ({
      from: out(from),
      to: out(to),
      ...(about ? { center: out(about) } : {}),
    }));
    return about(center, { kind: 'revolution', contour: round });
  }
  const { pieces } = outline;
  const circle = cutCircle(pieces);
  if (circle) {
    const [x, y] = circle.center;
    const own = pieces.map((piece) => movedPiece(piece, [-x, -y]));
    return about(circle.center, { kind: 'loft', outline: own, contour, circle: circle.radius });
  }
  if (contour.some(({ center }) => center) && pieces.some(({ kind }) => kind === 'arc'))
    throw fault('outline', 'rounded', 'must be a circle or have straight sides alone where a fillet runs around it');
  return { kind: 'loft', outline: pieces, contour };
}

function about([x, y]: Point, leaf: MeantLeaf): MeantShape {
  return Math.hypot(x, y) < 1e-9 ? leaf : { kind: 'moved', by: [x, y, 0], shape: leaf };
}

function movedPiece(piece: Piece, [x, y]: Point): Piece {
  const moved = (point: Point): Point => [point[0] + x, point[1] + y];
  const ends = { from: moved(piece.from), to: moved(piece.to) };
  return piece.kind === 'line' ? { ...piece, ...ends } : { ...piece, ...ends, center: moved(piece.center) };
}

/** Levels as a contour of [offset, z]; a run that stands for a stated arc is that arc. */
function contourOf({ levels, rounds = [] }: Loft): readonly ContourPiece[] {
  const at = ([z, offset]: LoftLevel): Point => [offset, z];
  const pieces: ContourPiece[] = [];
  for (let i = 0; i + 1 < levels.length; ) {
    const round = rounds.find(({ from, arc }) => from === i && arc !== undefined);
    if (!round) {
      pieces.push({ from: at(levels[i]!), to: at(levels[i + 1]!) });
      i += 1;
      continue;
    }
    const { begins, center } = round.arc!;
    pieces.push(
      { from: at(levels[i]!), to: at(begins) },
      { from: at(begins), to: at(levels[round.to]!), center: at(center) },
    );
    i = round.to;
  }
  return withoutEmpty(pieces);
}

/** The one circle of an outline whose straight sides cut it; undefined where a corner lies off it. */
function cutCircle(pieces: readonly Piece[]): { center: Point; radius: number } | undefined {
  const arcs = pieces.flatMap((piece) => (piece.kind === 'arc' ? [piece] : []));
  const [first] = arcs;
  if (!first) return undefined;
  const { center, radius } = first;
  const isOne = arcs.every((arc) => Math.hypot(arc.center[0] - center[0], arc.center[1] - center[1]) < 1e-9);
  const isOn = ({ from: [x, y] }: Piece) => Math.abs(Math.hypot(x - center[0], y - center[1]) - radius) < 1e-6;
  return isOne && pieces.every(isOn) ? { center, radius } : undefined;
}

function piecesOf(loop: Loop): readonly Piece[] {
  if (loop.kind === 'circle') throw new TypeError('a circle has no pieces');
  return loop.pieces;
}
