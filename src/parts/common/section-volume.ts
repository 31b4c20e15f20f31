import { common } from '../../solid/convex.js';
import { type Outline, polygonArea } from '../../solid/outline.js';

/** Gauss-Legendre points on −1 to 1 with their weights. */
const POINTS = [
  [-Math.sqrt(0.6), 5 / 9],
  [0, 8 / 9],
  [Math.sqrt(0.6), 5 / 9],
] as const;

/**
 * Volume by the integral of sections. Sections may jump at the breaks, never between them.
 *
 * @param areaAt  area of the section at a height           [mm²]
 * @param breaks  heights where the area's law changes, the ends included; in any order  [mm]
 * @param parts   pieces into which each stretch is cut     [-]
 * @returns volume between the lowest and the highest break [mm³]
 */
export function sectionVolume(areaAt: (z: number) => number, breaks: readonly number[], parts = 1): number {
  const heights = [...new Set(breaks)].sort((a, b) => a - b);
  let volume = 0;
  for (let i = 1; i < heights.length; i++) {
    const step = (heights[i]! - heights[i - 1]!) / parts;
    if (step < 1e-12) continue;
    for (let part = 0; part < parts; part++) {
      const middle = heights[i - 1]! + (part + 0.5) * step;
      for (const [point, weight] of POINTS) volume += ((weight * step) / 2) * areaAt(middle + (point * step) / 2);
    }
  }
  return volume;
}

/** Area that convex outlines have in common; the one with most corners first is fastest [mm²]. */
export function commonArea(first: Outline, ...others: readonly Outline[]): number {
  const left = others.reduce((rest, other) => (rest.length === 0 ? rest : common(rest, other)), first);
  return left.length === 0 ? 0 : polygonArea(left);
}
