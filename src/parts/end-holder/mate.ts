import { SOLID_GROUP } from '../../judge/accept.js';
import { type Finding, hard, valued } from '../../judge/check.js';
import { finding } from '../../judge/run-checks.js';
import type { Kernel } from '../../solid/kernel.js';
import { NO_COMMON_VOLUME } from '../../solid/mate.js';
import { circleOutline, sidesFor } from '../../solid/outline.js';
import { cylinder, type Shape } from '../../solid/recipe.js';
import { exactly } from '../../units/measured.js';
import type { EndHolderDesign } from './dimensions.js';
import { ringHeights, seatDiameter } from './plan.js';
import { endHolderBodies } from './solid.js';

const LOOSE = 0.01;
const CHORD = 0.005;
const BEYOND = 5;

/**
 * Tries bearing, screw and screws of the frame in holder and plate at finished sizes; a press fit at the size it is pressed to.
 *
 *     V = volume in common of the holder and one of bearing, screw and bolts, or of the plate and a bolt, the largest
 */
export function mateEndHolder(design: EndHolderDesign, kernel: Kernel): Finding[] {
  const { finished } = design;
  const [body, cover] = endHolderBodies(design, 'finished').map(({ recipe }) => recipe.shape);
  const volumes = [
    ...[...bearingIn(design), ...screwIn(design), ...boltsIn(design, finished.thickness)].map((one) => [body!, one]),
    ...(cover && finished.cover ? boltsIn(design, finished.cover.thickness).map((one) => [cover, one]) : []),
  ].flatMap(([a, b]) => kernel.commonVolumes(a!, b!, [{}]));
  const about = {
    id: 'solid-mate',
    group: SOLID_GROUP,
    question: 'prints',
    title: 'Common volume of the holder with bearing, screw and bolts',
    unit: 'mm³',
    source: 'derived: the solids themselves',
    limits: hard({ max: NO_COMMON_VOLUME }),
    moves: 'bearing, bore, holes',
  };
  return [finding(about, valued(exactly(Math.max(...volumes)), 'at finished sizes, the bearing on its shoulder'))];
}

/** The outer ring on its shoulder, as wide as the pocket gives; its bore as it is. */
function bearingIn({ bearing, finished }: EndHolderDesign): Shape[] {
  if (!bearing) return [];
  const { from, to, flangeFrom } = ringHeights(finished, bearing);
  const bore = circleOutline({ radius: bearing.bore / 2, sides: sidesFor(bearing.bore / 2, CHORD) });
  const disc = (radius: number, low: number, high: number): Shape => ({
    kind: 'prism',
    outlines: [circleOutline({ radius, sides: sidesFor(radius, CHORD) }), bore],
    from: low,
    to: high,
  });
  return [
    disc(seatDiameter(finished, bearing) / 2 - LOOSE, from + LOOSE, to),
    ...(bearing.flange && flangeFrom !== undefined ? [disc(bearing.flange.outside / 2, flangeFrom + LOOSE, to)] : []),
  ];
}

function screwIn({ held, finished: { thickness } }: EndHolderDesign): Shape[] {
  return [bar(held.diameter.most, [0, 0], thickness)];
}

function boltsIn({ pattern, finished: { holes } }: EndHolderDesign, thickness: number): Shape[] {
  if (pattern.screwDiameter === 0) return [];
  return holes.centres.map((at) => bar(Math.min(pattern.screwDiameter, holes.diameter - LOOSE), at, thickness));
}

function bar(diameter: number, [x, y]: readonly [number, number], thickness: number): Shape {
  const radius = diameter / 2;
  const shape = cylinder({
    radius,
    sides: sidesFor(radius, CHORD),
    circumscribed: false,
    from: -BEYOND,
    to: thickness + BEYOND,
  });
  return { kind: 'moved', shape, by: [x, y, 0] };
}
