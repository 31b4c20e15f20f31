import type { Shape } from '../../src/solid/recipe.js';

/**
 * About how many facets a recipe's shapes have before they are cut from one another; what is cut has fewer or about as
 * many. A thread has two to each corner of its profile in each column, pitch by pitch.
 *
 *     N = 2 · corners · columns · length / pitch
 *
 * @param shape a recipe
 * @returns facets of all that goes into it
 * @example facetsOf({ kind: 'lathe', sides: 48, circumscribed: false, profile: [[5, 0], [5, 10]] }) // 288
 */
export function facetsOf(shape: Shape): number {
  switch (shape.kind) {
    case 'prism':
    case 'strokes':
      return shape.outlines.reduce((sum, outline) => sum + 4 * outline.length, 0);
    case 'lathe':
      return 2 * shape.sides * (shape.profile.length + 1);
    case 'loft':
      return 2 * shape.outline.length * (shape.levels.length + 1);
    case 'mesh':
      return shape.mesh.triangles.length / 3;
    case 'thread': {
      const { profile, columns, from, to, pitch } = shape.thread;
      return (2 * profile.length * columns * (to - from)) / pitch;
    }
    case 'moved':
    case 'feature':
      return facetsOf(shape.shape);
    default:
      return shape.of.reduce((sum, one) => sum + facetsOf(one), 0);
  }
}
