import { matrixWithin, placementMatrix } from '../../mesh.js';
import type { MeantShape } from '../meant-shape.js';
import { lyingPrism } from './lying-prism.js';
import type { Matrix } from './placed.js';
import { joinedProbe, type Probe } from './probe.js';
import { standingLeaf } from './standing-leaf.js';

/**
 * What lines along Z meet of a shape.
 * @throws TypeError a turned body or a thread lies, or a prism leans
 */
export function shapeProbe(shape: MeantShape): Probe {
  const still = placementMatrix({});
  return probeOf(shape, still, planesOf(shape, still));
}

function probeOf(shape: MeantShape, at: Matrix, planes: readonly number[]): Probe {
  switch (shape.kind) {
    case 'moved':
      return probeOf(shape.shape, matrixWithin(at, shape), planes);
    case 'union':
    case 'difference':
    case 'intersection':
      return joinedProbe(
        shape.kind,
        shape.of.map((part) => probeOf(part, at, planes)),
      );
    case 'extrusion':
      return Math.abs(at[10]!) > 0.5 ? standingLeaf(shape, at, planes) : lyingPrism(shape, at);
    default:
      return standingLeaf(shape, at, planes);
  }
}

/** Heights at which a shape has flat faces, or edges all around. */
function planesOf(shape: MeantShape, at: Matrix): number[] {
  if (shape.kind === 'moved') return planesOf(shape.shape, matrixWithin(at, shape));
  if ('of' in shape) return [...new Set(shape.of.flatMap((part) => planesOf(part, at)))];
  if (Math.abs(at[10]!) < 0.5) return [];
  const own =
    'contour' in shape
      ? shape.contour.flatMap(({ from, to }) => [from[1], to[1]])
      : shape.kind === 'thread'
        ? [shape.thread.from, shape.thread.to]
        : [shape.from, shape.to];
  return own.map((z) => at[10]! * z + at[11]!);
}
