import type { Bridging } from '../../presets/printer.js';
import { common } from '../../solid/convex.js';
import { movedSides } from '../../solid/convex-loft.js';
import type { Outline } from '../../solid/outline.js';

/** How the ceiling of a pocket is made to print without support. */
export interface Roof {
  readonly kind: Exclude<Bridging, 'none'>;
  /** height of a layer, mm */
  readonly layer: number;
}

/** Sides of the openings that lead from the pocket to the hole, layer by layer: two chords, a square, an octagon. */
const STEPS = [[0], [0, 90], [0, 45, 90, 135]] as const;

/** How far the openings stand off the pocket's wall and the hole, so that no two of them share a wall, mm. */
const APART = 0.05;

/** Layers that a roof takes over the ceiling of its pocket. */
export function roofLayers({ kind }: Roof): number {
  return kind === 'membrane' ? 1 : STEPS.length;
}

/** Whether a floor above a pocket takes a roof: one that is not thicker than its roof stays as it is. */
export function takesRoof(floor: number, roof: Roof): boolean {
  return floor >= (roofLayers(roof) + 1) * roof.layer;
}

/**
 * The openings of a stepped roof from the ceiling of the pocket upwards, one a layer: each is spanned by lines that end
 * on the one below, and holds the hole whole.
 *
 * @param pocket  its outline, convex                                  [mm]
 * @param center  of the hole                                          [mm]
 * @param half    of the openings across their sides: the hole's reach [mm]
 * @returns outlines, the widest first
 */
export function steppedRoof(pocket: Outline, center: readonly [number, number], half: number): Outline[] {
  const within = movedSides(pocket, -APART);
  return STEPS.map((angles) =>
    angles.reduce<Outline>((left, angle) => common(left, band(center, half + APART, angle)), within),
  );
}

/** A long strip about a line through the centre. */
function band([x, y]: readonly [number, number], half: number, degrees: number): Outline {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const far = 1000;
  return [
    [-far, -half],
    [far, -half],
    [far, half],
    [-far, half],
  ].map(([u, v]): [number, number] => [x + c * u! - s * v!, y + s * u! + c * v!]);
}
