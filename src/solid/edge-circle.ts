import { dot, minus, type Surface, type Vector } from './surfaces.js';

/** A circle in space. */
export interface Circle {
  readonly center: Vector;
  readonly axis: Vector;
  readonly radius: number;
}

const SAME = 1e-6;
const SAME_HEIGHT = 1e-4;

/**
 * The circle on which an edge of two surfaces lies, by the surfaces' own figures: where a cylinder or cone meets a plane
 * square to its axis, another one about the same axis, or a smooth surface that it runs into.
 *
 * @param surfaces  on either side of the edge
 * @param ends      of the edge, which tell the height along the axis  [mm]
 * @returns the circle; undefined where the edge is none
 */
export function edgeCircle([a, b]: readonly [Surface, Surface], ends: readonly [Vector, Vector]): Circle | undefined {
  const [first, second] = a.form.kind === 'revolved' ? [a.form, b.form] : [b.form, a.form];
  if (first.kind !== 'revolved') return undefined;
  const { origin, axis } = first;
  const along = dot(minus(ends[0], origin), axis);
  if (Math.abs(dot(minus(ends[1], origin), axis) - along) > SAME_HEIGHT) return undefined;
  const center: Vector = [origin[0] + along * axis[0], origin[1] + along * axis[1], origin[2] + along * axis[2]];
  if (second.kind === 'free') return { center, axis, radius: first.radius + first.slope * along };
  if (second.kind === 'plane') {
    if (Math.abs(dot(second.normal, axis)) < 1 - SAME) return undefined;
    return { center, axis, radius: first.radius + first.slope * along };
  }
  if (Math.abs(dot(second.axis, axis)) < 1 - SAME) return undefined;
  const between = minus(center, second.origin);
  const other = dot(between, second.axis);
  const off = Math.sqrt(Math.max(0, dot(between, between) - other * other));
  if (off > 1e-4) return undefined;
  // the one that changes less along the axis says the radius more surely
  const radius =
    Math.abs(first.slope) <= Math.abs(second.slope)
      ? first.radius + first.slope * along
      : second.radius + second.slope * other;
  return { center, axis, radius };
}
