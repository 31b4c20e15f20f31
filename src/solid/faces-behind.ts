import { axialSection } from './axial-section.js';
import type { PaperPoint } from './drawn.js';
import { polygonArea } from './outline.js';
import type { Shape } from './recipe.js';
import { joinedRegions, lessRegions, type Region } from './regions.js';

/** Planes so far behind the cut show what stands behind slits and gaps, mm. */
const DEPTHS = [1, 2];
/**
 * Faces that show behind a section where nothing is cut: the walls of slits and gaps, with the holes in them.
 *
 * @param shapes  as they stand                                    [mm]
 * @param planes  of the section, by their angles                  [degrees]
 * @param cut     the section itself, the axis on y = 0            [mm]
 * @returns their outlines on the paper, holes with them           [mm]
 */
export function facesBehind(shapes: readonly Shape[], planes: readonly [number, number], cut: Region): Region {
  let [seen, faces]: [Region, Region] = [cut, []];
  for (const depth of DEPTHS) {
    const there = joinedRegions(shapes.map((shape) => axialSection(shape, planes, depth)));
    const fresh = withoutStrips(lessRegions(there, [seen]), depth);
    seen = joinedRegions([seen, fresh]);
    faces = [...faces, ...fresh];
  }
  return faces;
}

/** A round wall comes nearer by less than the depth: what is no wider than that is none of the faces. */
function withoutStrips(region: Region, depth: number): Region {
  const outer = region.filter((loop) => polygonArea(loop) > 0 && width(loop) > depth);
  const holes = region.filter((loop) => polygonArea(loop) < 0 && outer.some((around) => holds(around, loop[0]!)));
  return [...outer, ...holes];
}

/** That of a strip with this area and length of edge. */
function width(loop: readonly PaperPoint[]): number {
  const edge = loop.reduce((sum, [x, y], i) => {
    const [u, v] = loop[(i + 1) % loop.length]!;
    return sum + Math.hypot(u - x, v - y);
  }, 0);
  return (2 * polygonArea(loop)) / edge;
}

/** Whether a point lies inside a loop. */
function holds(loop: readonly PaperPoint[], [x, y]: PaperPoint): boolean {
  const right = loop.filter(([x0, y0], i) => {
    const [x1, y1] = loop[(i + 1) % loop.length]!;
    return y0 > y !== y1 > y && x0 + ((y - y0) / (y1 - y0)) * (x1 - x0) > x;
  });
  return right.length % 2 === 1;
}
