import { nutThread, type ToothForm } from '../../mechanics/thread/nut-thread.js';
import type { Assumptions } from '../../sheet/assumptions.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import { rimAround } from '../../solid/convex.js';
import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import type { HolePlaces } from '../common/hole-pattern.js';
import type { Carriage, Holes, NutDesign } from './nut-design.js';
import type { Flange, NutSizes } from './nut-sizes.js';
import { type BodyPlan, bodyOutline, type FlangePlan, flangeOutline, wallBeside } from './plan.js';
import { boreOf } from './pockets.js';
import { requireRoom, requireSense, requireTooth } from './require-nut.js';
import type { NutSheet } from './sheet.js';

interface Known {
  readonly screw: Screw;
  readonly fit: NutDesign['fit'];
  readonly holes: Holes | undefined;
  readonly carriage: Carriage;
  readonly chordError: number;
}

/** Every size as it must be in use. @throws InputError sizes that cannot be a nut */
export function finishedSizes(sheet: NutSheet, known: Known, assumptions: Assumptions): NutSizes {
  const { screw, fit, holes } = known;
  const thread = nutThread({
    form: screw.form,
    flankAngle: screw.flankAngle,
    screwMajor: screw.major.likely,
    screwPitchDiameter: screw.pitchDiameter.likely,
    pitch: screw.pitch.likely,
    diametralClearance: fit.diametral,
    axialClearance: fit.axial,
  });
  requireTooth(thread, sheet);
  const body = bodyOf(sheet, assumptions);
  const flange = flangeOf(sheet, assumptions);
  requireSense(sheet, { body, flange, thread, holes, chordError: known.chordError });
  const chamfers = chamfersOf(sheet, { body, thread }, assumptions);
  const { carriage, chordError } = known;
  const around = { body, flange, carriage, chordError, relief: chamfers.relief };
  const ends = { ...chamfers, fillet: filletOf(sheet, around, assumptions) };
  requireRoom(sheet, ends, { body, flange, thread });
  return {
    thread,
    lead: thread.pitch * screw.starts,
    body,
    length: sheet.body.length,
    ...(flange ? { flange } : {}),
    ...(holes ? { holes: placesIn(holes, boreOf(holes)) } : {}),
    ...ends,
  };
}

function bodyOf(sheet: NutSheet, assumptions: Assumptions): BodyPlan {
  const { shape, diameter, across_flats, width, flats } = sheet.body;
  return {
    shape: assumptions.or(shape, 'body.shape', 'round', 'not given'),
    across: diameter ?? across_flats ?? width!,
    ...(flats === undefined ? {} : { flats }),
  };
}

function flangeOf(sheet: NutSheet, assumptions: Assumptions): Flange | undefined {
  const given = sheet.flange;
  if (!given) assumptions.note('flange', 'none', 'not given');
  if (!given || given.shape === 'none') return undefined;
  const shape = assumptions.or(given.shape, 'flange.shape', 'round', 'not given') as FlangePlan['shape'];
  const size: readonly [number, number] = given.size ?? [
    given.diameter ?? given.width!,
    given.diameter ?? given.width!,
  ];
  return {
    shape,
    size,
    corner: given.corner ?? 0,
    ear:
      shape === 'two-ear'
        ? assumptions.or(given.ear, 'flange.ear', size[1] / 2, 'half the width across the middle')
        : 0,
    thickness: given.thickness!,
    offset: given.offset ?? 0,
    ...(given.flats === undefined ? {} : { flats: given.flats }),
  };
}

/** Chamfers at the ends; a thin wall, which a check will judge, makes the assumed ones smaller. */
function chamfersOf(
  sheet: NutSheet,
  { body, thread }: { body: BodyPlan; thread: ToothForm },
  assumptions: Assumptions,
) {
  const wall = wallBeside(body, thread);
  const leadIn = assumptions.or(
    sheet.lead_in,
    'lead_in',
    cut(Math.min(0.5, wall / 3)),
    'past the thread at both ends, 45°',
  );
  const relief = assumptions.or(sheet.relief, 'relief', cut(Math.min(0.4, wall / 3)), 'the first layers spread');
  return { leadIn, relief };
}

function cut(size: number): number {
  return Math.floor(size * 100 + 1e-9) / 100;
}

/** A fillet strengthens the corner, but a carriage that the body enters wants to lie flat on the flange. */
function filletOf(
  sheet: NutSheet,
  at: { body: BodyPlan; flange: Flange | undefined; carriage: Carriage; chordError: number; relief: number },
  assumptions: Assumptions,
): number {
  if (!at.flange) return 0;
  const rim = rimAround(bodyOutline(at.body, at.chordError), flangeOutline(at.flange, at.chordError));
  const room = sheet.body.length - at.flange.offset - at.flange.thickness;
  const above = room - at.relief;
  if (sheet.fillet !== undefined) {
    const [space, what] =
      above < rim ? [above, 'the body over the flange below its broken edge'] : [rim, 'the rim beside the body'];
    const most = cut(Math.max(0, 0.9 * space));
    if (sheet.fillet > most)
      throw fault('fillet', `${plain(sheet.fillet)} mm`, `must be at most ${plain(most)} mm, nine tenths of ${what}`);
    return sheet.fillet;
  }
  const isFree = at.carriage.bore === undefined || sheet.stands === 'away';
  const inBore = isFree ? Infinity : Math.max(0, (at.carriage.bore!.least - at.body.across) / 2);
  const fillet = Math.min(1, rim / 2, inBore, room / 3, 0.9 * above);
  const kept = fillet < 0.15 ? 0 : cut(fillet);
  assumptions.note(
    'fillet',
    kept,
    inBore < 1 ? 'small enough for the flange to seat on the carriage' : 'between flange and body',
  );
  return kept;
}

function placesIn({ centres, isRectangle }: HolePlaces, diameter: number): HolePlaces & { diameter: number } {
  return { centres, ...(isRectangle ? { isRectangle } : {}), diameter };
}
