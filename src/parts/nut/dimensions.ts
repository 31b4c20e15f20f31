import { nutThread, type ToothForm } from '../../mechanics/thread/nut-thread.js';
import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import type { PresetTexts } from '../../presets/texts.js';
import { type Assumption, Assumptions } from '../../sheet/assumptions.js';
import { measured } from '../../sheet/measured-field.js';
import { resolveScrew, type Screw } from '../../sheet/resolve-screw.js';
import { PULLS, type Pull } from '../../sheet/sections/duty.js';
import { resolveEffects } from '../../sheet/sections/effects.js';
import type { LimitsSheet } from '../../sheet/sections/limits.js';
import { rimAround } from '../../solid/convex.js';
import { fault, InputError } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import { requireFacetBudget } from '../common/facet-budget.js';
import { resolveFit } from '../common/fit-classes.js';
import { type HolePlaces, measuredPattern, ownPattern, rectangleOf } from '../common/hole-pattern.js';
import type { Joint } from '../common/joints.js';
import { pullsOf } from '../common/load-cases.js';
import { printSizes, TRUE_SIZES } from '../common/print-sizes.js';
import { threadInFile } from '../common/thread-in-file.js';
import { workshopOf } from '../common/workshop.js';
import type { Sizes } from '../part-kind.js';
import { nutDrive } from './drive.js';
import { flanksMeet } from './flanks-meet.js';
import { nutFloat, requireFloatHoles, withFloatHoles } from './float.js';
import { requireMarkFits } from './mark.js';
import type { Carriage, HeadSide, Holes, NutDesign } from './nut-design.js';
import type { Flange, NutSizes } from './nut-sizes.js';
import { type BodyPlan, bodyOutline, type FlangePlan, flangeOutline } from './plan.js';
import type { NutSheet } from './sheet.js';
import { catchPocketOf } from './variants/pocket.js';
import { withVariantSizes } from './variants/sizes.js';
import { variantOf } from './variants/variant-of.js';

export type { Carriage, HeadSide, Holes, NutDesign } from './nut-design.js';

export type { Flange, NutSizes } from './nut-sizes.js';

/** A flange that does not reach so far over the body is no flange, mm. */
const LEAST_RIM = 0.2;

/**
 * Works a nut out from its sheet: every size finished and printed, nothing modelled yet.
 * @throws InputError values that contradict each other or cannot be a nut
 */
export function designNut(sheet: NutSheet, presets: PresetTexts): NutDesign {
  const assumptions = new Assumptions();
  const { calipers, material, printer } = workshopOf(sheet, presets, assumptions);
  const screw = resolveScrew(sheet.screw, calipers, assumptions);
  const fit = resolveFit(sheet.fit, assumptions);
  const float = nutFloat(sheet, assumptions);
  const holes = holesOf(float ? withFloatHoles(sheet, float, assumptions) : sheet, printer, assumptions);
  if (float) requireFloatHoles(holes!);
  const carriage = carriageOf(sheet, calipers, assumptions);
  const finished = finishedSizes(sheet, { screw, fit, holes, carriage, chordError: printer.chordError }, assumptions);
  requireStanding(sheet, finished);
  const printed = printedSizes(finished, material, printer);
  const { thread, lead, length } = printed;
  requireFacetBudget({ thread, lead, length, chordError: printer.chordError });
  const duty = sheet.duty ?? {};
  const family = variantOf(sheet.family, { finished, screw, duty }, assumptions);
  const catchPocket = catchPocketOf(sheet.catch_nut, finished, assumptions);
  if (catchPocket && family?.kind === 'twin')
    throw fault(
      'catch_nut',
      undefined,
      'does not belong to a twin nut: its second thread stands where the metal nut would',
    );
  const mark = sheet.mark && { text: sheet.mark.text, style: sheet.mark.style ?? ('raised' as const) };
  requireMarkFits({
    printed,
    carriage,
    printer,
    ...(sheet.stands === 'away' ? { stands: sheet.stands } : {}),
    ...(mark ? { mark } : {}),
    ...(holes ? { holes } : {}),
    ...(family ? { family } : {}),
  });
  const drive = nutDrive({ screw, fit, duty, material });
  const pulls = holes ? pullsOf(duty, mountedPull(sheet), assumptions) : PULLS;
  return {
    part: sheet.part,
    name: sheet.name,
    screw,
    fit,
    finished,
    printed,
    ...(holes ? { holes } : {}),
    carriage,
    ...(float ? { float } : {}),
    ...(sheet.mounting ? { mounting: sheet.mounting } : {}),
    ...(sheet.stands === 'away' ? { stands: sheet.stands } : {}),
    ...(mark ? { mark } : {}),
    material,
    printer,
    duty,
    pulls,
    effects: resolveEffects(sheet.effects),
    calipers,
    drive,
    ...(family ? { family } : {}),
    ...(catchPocket ? { catchPocket } : {}),
    dimensions: {
      finished: withVariantSizes(named(finished), { family, catchPocket, print: TRUE_SIZES }),
      printed: withVariantSizes(named(printed), { family, catchPocket, print: printSizes(material, printer) }),
    },
    assumptions: [...assumptions.list, ...drive.assumptions] satisfies readonly Assumption[],
    limits: (sheet.limits ?? {}) satisfies LimitsSheet,
    densities: { [material.name]: material.density },
  };
}

/**
 * On a vertical axis with the body in the bore, a flange on top hangs its carriage on the screws; one below carries it. Where
 * the body stands away it is the other way round.
 */
function mountedPull({ duty, mounting, carriage, stands }: NutSheet): Pull | undefined {
  if (duty?.axis !== 'vertical' || mounting === undefined) return undefined;
  if (stands === 'away') return mounting === 'flange-up' ? 'onto' : 'away';
  if (stands === undefined && carriage?.bore === undefined) return undefined;
  return mounting === 'flange-up' ? 'away' : 'onto';
}

/** What stands away from the carriage lies on it by its flange, with nothing between. @throws InputError */
function requireStanding({ stands, holes }: NutSheet, { flange }: NutSizes): void {
  if (stands !== 'away') return;
  if (!flange) throw fault('stands', 'away', 'wants a flange to stand on');
  if (holes?.head === 'flange')
    throw fault('holes.head', 'flange', 'would lie between flange and carriage where the body stands away; use body');
}

function holesOf(sheet: NutSheet, { bridging }: Printer, assumptions: Assumptions): Holes | undefined {
  if (!sheet.holes) return undefined;
  const pattern = ownPattern(sheet.holes, 'holes', assumptions);
  const joint = assumptions.or<Joint>(sheet.holes.joint, 'holes.joint', 'through', 'a plain clearance hole');
  const head = assumptions.or<HeadSide>(
    sheet.holes.head,
    'holes.head',
    'body',
    'the tighter side, so nothing is overlooked',
  );
  return { ...pattern, joint, head, ...(bridging === 'none' ? {} : { roof: bridging }) };
}

function carriageOf(sheet: NutSheet, calipers: number, assumptions: Assumptions): Carriage {
  const { bore, thickness, holes } = sheet.carriage ?? {};
  return {
    ...(bore ? { bore: measured(bore, calipers) } : {}),
    ...(thickness ? { thickness: measured(thickness, calipers) } : {}),
    ...(holes ? { holes: measuredPattern(holes, 'carriage.holes', assumptions, calipers) } : {}),
  };
}

interface Known {
  readonly screw: Screw;
  readonly fit: NutDesign['fit'];
  readonly holes: Holes | undefined;
  readonly carriage: Carriage;
  readonly chordError: number;
}

function finishedSizes(sheet: NutSheet, known: Known, assumptions: Assumptions): NutSizes {
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
    ...(holes ? { holes: placesIn(holes, holes.diameter.likely) } : {}),
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

/** Radial wall between the thread's major diameter and the outside of the body. */
function wallBeside(body: BodyPlan, thread: ToothForm): number {
  return (Math.min(body.across, body.flats ?? Infinity) - thread.major) / 2;
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

/** Flanks must not meet before crest and root are reached, neither in the tooth nor in the groove. */
function requireTooth(thread: ToothForm, sheet: NutSheet): void {
  const meet = flanksMeet(thread);
  if (meet === undefined) return;
  const named = { groove: 'screw.pitch_diameter', tooth: 'fit.axial' }[meet];
  throw fault(
    sheet.screw.flank_angle === undefined ? named : 'screw.flank_angle',
    '',
    `leaves no ${meet === 'groove' ? 'groove at the root' : 'tooth at the crest'} of the nut; a smaller flank angle or clearance is needed at this pitch`,
  );
}

interface Solid {
  readonly body: BodyPlan;
  readonly flange: Flange | undefined;
  readonly thread: ToothForm;
}

/** Refuses what cannot be a nut at all; what is merely thin or tight is left to the checks. */
function requireSense(
  sheet: NutSheet,
  { body, flange, thread, holes, chordError }: Solid & { holes: Holes | undefined; chordError: number },
): void {
  const faults: { path: string; value: string; allowed: string }[] = [];
  const refuse = (path: string, value: number, allowed: string) =>
    faults.push({ path, value: `${plain(value)} mm`, allowed });
  const bodyPath =
    sheet.body.diameter !== undefined
      ? 'body.diameter'
      : sheet.body.width !== undefined
        ? 'body.width'
        : 'body.across_flats';
  const thinnest = Math.min(body.across, body.flats ?? Infinity);
  if (thinnest <= thread.major)
    refuse(
      body.across <= thread.major ? bodyPath : 'body.flats',
      thinnest,
      `must be above the nut's thread major, ${plain(thread.major)} mm`,
    );
  if (flange) {
    if (flange.offset + flange.thickness > sheet.body.length) {
      refuse(
        'flange.thickness',
        flange.thickness,
        `must fit in the length over all, ${plain(sheet.body.length)} mm${flange.offset > 0 ? ` less the stub of ${plain(flange.offset)} mm` : ''}`,
      );
    }
    if (flange.corner > Math.min(...flange.size) / 2)
      refuse(
        'flange.corner',
        flange.corner,
        `must be at most half the shorter side, ${plain(Math.min(...flange.size) / 2)} mm`,
      );
    else if (flange.shape === 'two-ear' && flange.ear > Math.min(...flange.size))
      refuse('flange.ear', flange.ear, `must be at most ${plain(Math.min(...flange.size))} mm`);
    else {
      const rim = rimAround(bodyOutline(body, chordError), flangeOutline(flange, chordError));
      const path =
        flange.flats !== undefined
          ? 'flange.flats'
          : { round: 'flange.diameter', square: 'flange.width', rectangular: 'flange.size', 'two-ear': 'flange.size' }[
              flange.shape
            ];
      if (rim < LEAST_RIM)
        refuse(
          path,
          flange.flats ?? Math.min(...flange.size),
          `must reach over the body, which is ${plain(body.across)} mm, by ${LEAST_RIM} mm all around`,
        );
    }
  }
  const plateOffset = flange ? flange.offset : 0;
  if (holes && plateOffset < 0) refuse('flange.offset', plateOffset, 'must be 0 or above');
  if (faults.length > 0) throw new InputError(faults);
}

/** Chamfers must leave something between them. */
function requireRoom(sheet: NutSheet, ends: { leadIn: number; relief: number }, { body, flange, thread }: Solid): void {
  const depth = (thread.major - thread.minor) / 2 + ends.leadIn;
  if (2 * depth >= sheet.body.length) {
    throw fault(
      'body.length',
      `${plain(sheet.body.length)} mm`,
      `must be above ${plain(2 * depth)} mm, the depth of both lead-in chamfers; or give a smaller lead_in`,
    );
  }
  const wall = wallBeside(body, thread);
  if (ends.leadIn + ends.relief >= wall) {
    throw fault(
      sheet.lead_in === undefined ? 'body' : 'lead_in',
      `${plain(ends.leadIn)} mm`,
      `together with relief ${plain(ends.relief)} mm must be below the wall beside the thread, ${plain(wall)} mm`,
    );
  }
  const thinnest = flange ? flange.thickness : sheet.body.length;
  if (ends.relief >= thinnest / 2)
    throw fault(
      'relief',
      `${plain(ends.relief)} mm`,
      `must be below half the thickness it is cut in, ${plain(thinnest)} mm`,
    );
}

/** Every finished size as it must stand in the file. */
function printedSizes(finished: NutSizes, material: Material, printer: Printer): NutSizes {
  const { inside, outside, along, across } = printSizes(material, printer);
  const { body, flange, holes, thread } = finished;
  return {
    thread: threadInFile(thread, finished.lead, { material, printer }),
    lead: along(finished.lead),
    body: {
      ...body,
      across: outside(body.across),
      ...(body.flats === undefined ? {} : { flats: outside(body.flats) }),
    },
    length: along(finished.length),
    ...(flange
      ? {
          flange: {
            ...flange,
            size: [outside(flange.size[0]), outside(flange.size[1])] as const,
            corner: across(flange.corner),
            ear: flange.ear > 0 ? outside(flange.ear) : 0,
            thickness: along(flange.thickness),
            offset: along(flange.offset),
            ...(flange.flats === undefined ? {} : { flats: outside(flange.flats) }),
          },
        }
      : {}),
    ...(holes
      ? {
          holes: {
            ...placesIn(holes, inside(holes.diameter)),
            centres: holes.centres.map(([x, y]) => [across(x), across(y)] as const),
          },
        }
      : {}),
    leadIn: across(finished.leadIn),
    relief: across(finished.relief),
    fillet: across(finished.fillet),
  };
}

/** Sizes under the names of the report. */
function named(sizes: NutSizes): Sizes {
  const { thread, body, flange, holes } = sizes;
  return {
    thread_major: thread.major,
    thread_pitch_diameter: thread.pitchDiameter,
    thread_minor: thread.minor,
    groove_width: thread.grooveWidth,
    pitch: thread.pitch,
    lead: sizes.lead,
    body_diameter: body.across,
    ...(body.flats === undefined ? {} : { body_flats: body.flats }),
    length: sizes.length,
    ...(flange ? flangeNames(flange) : {}),
    ...(holes
      ? {
          hole_diameter: holes.diameter,
          hole_circle: 2 * Math.hypot(...holes.centres[0]!),
          ...holeDistances(holes),
        }
      : {}),
  };
}

function placesIn({ centres, isRectangle }: HolePlaces, diameter: number): HolePlaces & { diameter: number } {
  return { centres, ...(isRectangle ? { isRectangle } : {}), diameter };
}

function holeDistances(places: HolePlaces): Sizes {
  const rectangle = rectangleOf(places);
  return rectangle ? { holes_along_x: rectangle.along_x, holes_along_y: rectangle.along_y } : {};
}

function flangeNames(flange: Flange): Sizes {
  const sizes = flange.shape === 'round' || flange.shape === 'square' ? {} : { flange_width: flange.size[1] };
  return {
    flange_diameter: flange.size[0],
    ...sizes,
    flange_thickness: flange.thickness,
    ...(flange.offset > 0 ? { flange_offset: flange.offset } : {}),
    ...(flange.flats === undefined ? {} : { flange_flats: flange.flats }),
  };
}
