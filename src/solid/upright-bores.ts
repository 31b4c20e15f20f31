import { nestedLoops } from './nested-loops.js';
import type { Outline } from './outline.js';
import type { StandingBore } from './stitch-bore.js';
import { coneAt } from './threaded-bore.js';
import { type Loop, liftOf, ringAtHome, ringInBody, type Span, type UprightPlan } from './upright-plan.js';

/** A lead-in is met this far from its ends, mm. */
const WITHIN = 1e-4;

/** A bore where it meets both faces of the body [mm]. */
export interface OpenBore {
  readonly standing: StandingBore;
  readonly low: Rim;
  readonly high: Rim;
  /** the wider of both [mm] */
  readonly wide: Outline;
}

export interface Rim {
  readonly level: number;
  /** over where the bore is drawn */
  readonly height: number;
  /** where the bore is drawn, and in the body */
  readonly home: Outline;
  readonly ring: Outline;
}

/**
 * The bores by their loops, each right through what it is in; undefined where a lead-in does not end on a face, or
 * comes near to another outline.
 */
export function boresOf(
  plan: UprightPlan,
  walls: readonly (readonly Span[])[],
): ReadonlyMap<number, OpenBore> | undefined {
  const bores = new Map<number, OpenBore>();
  const { loops, levels } = plan;
  for (const [i, { bore: standing }] of loops.entries()) {
    if (!standing) continue;
    const [span, ...more] = walls[i]!;
    if (!span || more.length > 0 || span.side > 0) return undefined;
    const { bore, plug } = standing;
    const rim = (level: number, cone: typeof bore.low): Rim => {
      const height = levels[level]! - liftOf(standing);
      const home = ringAtHome(standing, coneAt(cone, height));
      return { level, height, home, ring: ringInBody(standing, home) };
    };
    const [low, high] = [rim(span.low, bore.low), rim(span.high, bore.high)];
    const [first, inner, outer, last] = plug.contour.map(([, z]) => z) as [number, number, number, number];
    const isLed =
      low.height > first + WITHIN &&
      low.height < inner - WITHIN &&
      high.height > outer + WITHIN &&
      high.height < last - WITHIN;
    if (!isLed) return undefined;
    const isLowWide = Math.hypot(...low.home[0]!) > Math.hypot(...high.home[0]!);
    bores.set(i, { standing, low, high, wide: (isLowWide ? low : high).ring });
  }
  return bores.size === 0 || staysNested(loops, bores) ? bores : undefined;
}

/** Whether all mouths keep off whatever is around them. */
function staysNested(loops: readonly Loop[], bores: ReadonlyMap<number, OpenBore>): boolean {
  const around = nestedLoops(loops.map(({ points }, i) => bores.get(i)?.wide ?? points));
  return around?.every((cell, i) => (cell < 0 ? loops.length : cell) === loops[i]!.around) === true;
}
