import { SOLID_GROUP } from '../../judge/accept.js';
import { type CheckFacts, type Finding, hard, valued } from '../../judge/check.js';
import { finding } from '../../judge/run-checks.js';
import type { Kernel } from '../../solid/kernel.js';
import { NO_COMMON_VOLUME } from '../../solid/mate.js';
import { cylinder, type Shape } from '../../solid/recipe.js';
import { fastenerThread } from '../../standards/fasteners/sizes.js';
import { plain } from '../../units/format.js';
import { exactly } from '../../units/measured.js';
import { type FloatTrial, floatFinding, floatPins, LEAST_TRIED } from '../common/float-mate.js';
import { turned } from '../common/hole-pattern.js';
import { boreOf, holdsThread } from '../common/joints.js';
import { TRUE_SIZES } from '../common/print-sizes.js';
import type { AdapterDesign } from './dimensions.js';
import { finishedFloat, floatStop } from './float-stop.js';
import type { PatternHoles, Point } from './plan.js';
import { flangeShape } from './seated-nut.js';
import { plateSolid } from './solid.js';

/**
 * What goes into the plate must find its openings there.
 *
 *     V = volume in common of the plate and all screws, and the nut's body where it passes through, together
 */
const MATE: CheckFacts = {
  id: 'solid-mate',
  group: SOLID_GROUP,
  question: 'prints',
  title: 'Common volume of the plate with all screws and the nut in place',
  unit: 'mm³',
  source: 'derived: the solids themselves',
  limits: hard({ max: NO_COMMON_VOLUME }),
  moves: 'nut.holes, carriage.holes, plate.bore',
};

/** Faces that lie on one another are kept apart by this, mm. */
const AIR = 0.01;

/** Puts every screw, and the nut's body, where they were measured, into the plate at finished sizes. */
export function mateAdapter(design: AdapterDesign, kernel: Kernel): Finding[] {
  const { plate } = design.layout;
  const drawing = { print: TRUE_SIZES, chordError: design.printer.chordError };
  const { shape } = plateSolid(plate, drawing);
  const pins = pinsOf(design);
  const [common] = kernel.commonVolumes(shape, { kind: 'union', of: pins }, [{ by: [0, 0, 0], turn: 0 }]);
  const message = `${pins.length} screws and bodies stand in the plate at finished sizes`;
  const stands = finding(MATE, valued(exactly(common!), `${message}, ${plain(common!)} mm³ of them in its plastic`));
  return [stands, ...floatTrial(design, shape).map((trial) => floatFinding(trial, kernel))];
}

/** The bought nut, its flange over what stands in its holes and its body in the bore, moved against the plate. */
function floatTrial(design: AdapterDesign, plate: Shape): FloatTrial[] {
  const { nut, spacers, seatHeight, layout } = design;
  if (!nut || !spacers) return [];
  const { turn } = layout.clocking;
  const around = (points: readonly Point[]) => points.map((point) => turned(point, turn));
  const [from, to] =
    nut.seat === 'outside'
      ? [seatHeight + AIR, seatHeight + nut.flangeThickness]
      : [seatHeight - nut.flangeThickness, seatHeight - AIR];
  const flange: Shape = { kind: 'prism', outlines: [around(flangeShape(nut.flange))], from, to };
  const holes = nut.pattern.centres.map((at) => pin(turned(at, turn), nut.pattern.diameter.likely, to));
  const body = nut.stands === 'through' ? [pin([0, 0], nut.body.likely, layout.plate.thickness)] : [];
  const pins = floatPins(around(nut.pattern.centres), { pin: spacers.pin, from: from - 1, to: to + 1 });
  const stop = floatStop(design);
  const free = finishedFloat(design);
  if (free < LEAST_TRIED) return [];
  return [
    {
      still: [plate, pins],
      // a hole that was drilled into the body's side has taken that off too
      moving: { kind: 'difference', of: [{ kind: 'union', of: [flange, ...body] }, ...holes] },
      free,
      stop: stop.sideways.likely,
      radius: stop.radius,
    },
  ];
}

/** Screws at the measured places, turned with the nut; where the plate itself holds the thread, as thick as its bore. */
function pinsOf({ nut, carriage, layout: { plate, clocking } }: AdapterDesign): Shape[] {
  const nutPins =
    nut && plate.nutHoles
      ? pins(
          nut.pattern.centres.map((centre) => turned(centre, clocking.turn)),
          plate.nutHoles,
        )
      : [];
  const body = nut?.stands === 'through' ? [pin([0, 0], nut.body.likely, plate.thickness)] : [];
  return [...nutPins, ...pins(carriage.pattern.centres, plate.carriageHoles), ...body];
}

function pins(centres: readonly Point[], holes: PatternHoles): Shape[] {
  const { hole, opens, from, to, blind } = holes;
  const held = holdsThread(hole.joint);
  const diameter =
    hole.screw === undefined ? hole.diameter - 0.1 : held ? boreOf(hole) - 0.05 : fastenerThread(hole.screw).diameter;
  const length = Math.min(to - from, blind ?? Infinity) - 0.1;
  return centres.map((centre): Shape => {
    const low = blind === undefined ? from - 5 : opens === 'low' ? from - 5 : to - length;
    const high = blind === undefined ? to + 5 : opens === 'low' ? from + length : to + 5;
    return moved(centre, cylinder({ radius: diameter / 2, sides: 48, circumscribed: true, from: low, to: high }));
  });
}

function pin(at: Point, diameter: number, thickness: number): Shape {
  return moved(at, cylinder({ radius: diameter / 2, sides: 96, circumscribed: true, from: -10, to: thickness + 10 }));
}

function moved([x, y]: Point, shape: Shape): Shape {
  return { kind: 'moved', by: [x, y, 0], shape };
}
