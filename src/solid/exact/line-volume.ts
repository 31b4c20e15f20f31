import { type Break, xBreaks, yBreaks } from './lines/breaks.js';
import { added, halved, type Panel, panelOver, type Ruled, ruled, type Sums, ZERO } from './lines/kronrod.js';
import { rowSums } from './lines/row-sums.js';
import { shapeProbe } from './lines/shape-probe.js';
import type { MeantShape } from './meant-shape.js';

/** What a body holds, as lines along Z find it. */
export interface LineMeasures {
  /** mm³ */
  readonly volume: number;
  /** mm */
  readonly center: readonly [number, number, number];
}

/** How far a half may be off, of what halving changed. */
const DOUBT = 1 / 4;

/** Halvings in y, at most. */
const MOST_PANELS = 4000;

/**
 * Volume and centre of a meant shape by integrals over lines along Z. It shares nothing with a kernel, so that the two
 * check each other.
 *
 *     V = ∫∫ L(x, y) dx dy,  z̄·V = ∫∫ ∫ z dz dx dy
 *
 * with L the length of the line at (x, y) inside the shape, exact for prisms, cones, tori and helicoids. In x and y it
 * is Kronrod's rule between the curves of the plan at which L may jump, a stretch that ends in a root mapped by a
 * cosine. In x each stretch is halved where the rule and Gauss's within it differ; in y always the one where they
 * differ most, or that halving changed most, until the differences together are small enough.
 *
 * @param shape   the shape; turned bodies and threads stand upright                      [mm]
 * @param within  what the differences in y may come to, of V, default 3e-6                [-]
 * @returns V and the centre                                                               [mm³, mm]
 * @throws TypeError  a turned body or a thread lies
 * @source geometry: Cavalieri's principle, Gauss–Kronrod rule of 3 and 7 points
 */
export function lineVolume(shape: MeantShape, within = 3e-6): LineMeasures {
  const { marks, row } = shapeProbe(shape);
  const at = (y: number): Sums => {
    const found = row(y);
    return found ? rowSums(found, y, xBreaks(marks, y)) : ZERO;
  };
  const panels = panelsBetween(yBreaks(marks)).map((panel) => ruled(panel, at));
  for (let left = MOST_PANELS; left > 0; left--) {
    const off = panels.reduce((sum, { off }) => sum + off, 0);
    if (off <= within * panels.reduce((sum, { sums }) => sum + sums[0], 0)) break;
    const worst = panels.reduce((most, { off }, i) => (off > panels[most]!.off ? i : most), 0);
    const [whole] = panels.splice(worst, 1) as [Ruled];
    panels.push(...inHalves(whole, at));
  }
  const [volume, mx, my, mz] = panels.reduce<Sums>((sum, { sums }) => added(sum, sums, 1), ZERO);
  return { volume, center: [mx / volume, my / volume, mz / volume] };
}

/**
 * A stretch in halves. Where a kink lies so that both rules of a half miss it alike, their difference is none; what the halves find
 * together still differs from what the whole did, and each counts as off by its part of that at least.
 */
function inHalves({ panel, sums: [whole] }: Ruled, at: (y: number) => Sums): Ruled[] {
  const halves = halved(panel).map((half) => ruled(half, at));
  const moved = Math.abs(halves.reduce((sum, { sums }) => sum + sums[0], 0) - whole);
  return halves.map((half) => ({ ...half, off: Math.max(half.off, moved * DOUBT) }));
}

function panelsBetween(breaks: readonly Break[]): Panel[] {
  return breaks.slice(1).map((high, i) => panelOver(breaks[i]!.at, high.at, breaks[i]!.isRoot || high.isRoot));
}
