import { leafSection, type OntoPaper } from './leaf-section.js';
import { acrossAxis, type Look } from './look.js';
import { matrixWithin } from './mesh.js';
import type { Shape } from './recipe.js';
import { commonRegion, evenOdd, joinedRegions, lessRegions, type Region } from './regions.js';

/** Half-planes whose angles differ from a straight line by less are one plane, degrees. */
const STRAIGHT = 0.05;

/** Beyond any part, mm. */
const FAR = 2000;

/** Whether two half-planes from the axis are one plane. */
export function isStraight([up, down]: readonly [number, number]): boolean {
  return Math.abs(((((down - up) % 360) + 360) % 360) - 180) < STRAIGHT;
}

/**
 * Section of a recipe by two half-planes from the axis, turned into one, without the kernel: its leaves are cut one by
 * one and put together in the plane. Threads are cylinders at their least radius.
 *
 *     S(a ∪ b) = S(a) ∪ S(b),  S(a ∖ b) = S(a) ∖ S(b),  S(a ∩ b) = S(a) ∩ S(b)
 *
 * @param shape   the solid                                                              [mm]
 * @param planes  angles of the half-planes from +X, the upper one first                 [degrees]
 * @param behind  how far behind those planes it is cut, along them                      [mm]
 * @returns what is cut, on the paper: the axis lies on y = 0, +Z to the left; to 0.0001 mm
 */
export function axialSection(shape: Shape, planes: readonly [number, number], behind = 0): Region {
  const [up, down] = planes;
  const upper = sectionIn(shape, acrossAxis(up), behind);
  if (isStraight(planes)) return upper;
  const lower = sectionIn(shape, acrossAxis(down, -1), behind);
  return joinedRegions([commonRegion(upper, half(1)), commonRegion(lower, half(-1))]);
}

function half(side: 1 | -1): Region {
  const [low, high] = side === 1 ? [0, FAR] : [-FAR, 0];
  return [
    [
      [-FAR, low],
      [FAR, low],
      [FAR, high],
      [-FAR, high],
    ],
  ];
}

/** Section in the plane of the paper, or so far behind it. */
function sectionIn(shape: Shape, { right, up, toward }: Look, behind: number): Region {
  return regionOf(shape, [...right, 0, ...up, 0, ...toward, behind]);
}

function regionOf(shape: Shape, onto: OntoPaper): Region {
  switch (shape.kind) {
    case 'feature':
      return regionOf(shape.shape, onto);
    case 'moved':
      return regionOf(shape.shape, matrixWithin(onto, shape));
    case 'union':
      return joinedRegions(shape.of.map((part) => regionOf(part, onto)));
    case 'intersection':
      return shape.of.map((part) => regionOf(part, onto)).reduce(commonRegion);
    case 'difference': {
      const [first, ...others] = shape.of;
      const region = regionOf(first!, onto);
      return region.length === 0
        ? region
        : lessRegions(
            region,
            others.map((part) => regionOf(part, onto)),
          );
    }
    case 'strokes':
      return joinedRegions(leafSection(shape, onto).map((loop) => evenOdd([loop])));
    default:
      return evenOdd(leafSection(shape, onto));
  }
}
