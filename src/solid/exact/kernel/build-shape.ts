import { isHeavy } from '../../cutters.js';
import type { MeantShape } from '../meant-shape.js';
import { joined } from './booleans.js';
import { extrusion } from './extrusion.js';
import { loft } from './loft.js';
import { revolution } from './revolution.js';
import type { OcShape, Session } from './session.js';
import { locationOf } from './steady.js';
import { subshapes } from './subshapes.js';
import { threadRod } from './thread-rod.js';

type Build = (shape: MeantShape) => OcShape;

/** Builds bodies of one part; a shape that several of them hold is built once. @throws Error a body cannot be built */
export function bodyBuilder(session: Session): Build {
  const known = new Map<MeantShape, OcShape>();
  const build: Build = (shape) => {
    const found = known.get(shape);
    if (found) return found;
    const made = evaluate(session, shape, build);
    known.set(shape, made);
    return made;
  };
  return (shape) => inOnePiece(session, build(shape));
}

/** A result in one piece, as that piece. */
function inOnePiece(session: Session, shape: OcShape): OcShape {
  const solids = subshapes(session, shape, 'solid');
  return solids.length === 1 ? solids[0] : shape;
}

function evaluate(session: Session, shape: MeantShape, build: Build): OcShape {
  switch (shape.kind) {
    case 'moved':
      return session.keep(build(shape.shape).Moved(locationOf(session, shape), false));
    case 'union':
      return joined(session, 'union', build(shape.of[0]!), shape.of.slice(1).map(build));
    case 'intersection':
      return inTurn(session, 'intersection', build(shape.of[0]!), shape.of.slice(1), build);
    case 'difference':
      return difference(session, shape.of, build);
    case 'extrusion':
      return extrusion(session, shape);
    case 'revolution':
      return revolution(session, shape.contour);
    case 'loft':
      return loft(session, shape);
    case 'thread':
      return threadRod(session, shape.thread);
  }
}

/** The light cutters at once, then each thread by itself. */
function difference(session: Session, [first, ...others]: readonly MeantShape[], build: Build): OcShape {
  const cutters = others.flatMap(parts);
  const light = cutters.filter((shape) => !isHeavy(shape));
  const rest = joined(session, 'difference', build(first!), light.map(build));
  return inTurn(session, 'difference', rest, cutters.filter(isHeavy), build);
}

/** One boolean for each shape, which is built when its turn comes. */
function inTurn(
  session: Session,
  how: 'difference' | 'intersection',
  first: OcShape,
  others: readonly MeantShape[],
  build: Build,
): OcShape {
  return others.reduce((left, shape) => joined(session, how, left, [build(shape)]), first);
}

/** Cutters that are joined are cut one by one. */
function parts(shape: MeantShape): readonly MeantShape[] {
  return shape.kind === 'union' ? shape.of.flatMap(parts) : [shape];
}
