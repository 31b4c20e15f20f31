import type { MeantShape } from './exact/meant-shape.js';
import type { Shape } from './recipe.js';

/** What a cutter is made of, unions taken apart; each keeps its feature. */
export function parts(shape: Shape): readonly Shape[] {
  if (shape.kind === 'feature') return parts(shape.shape).map((part) => ({ ...shape, shape: part }));
  return shape.kind === 'union' ? shape.of.flatMap(parts) : [shape];
}

/** Whether a cutter is a thread, wherever it stands. */
export function isHeavy(shape: Shape | MeantShape): boolean {
  return shape.kind === 'thread' || ((shape.kind === 'moved' || shape.kind === 'feature') && isHeavy(shape.shape));
}
