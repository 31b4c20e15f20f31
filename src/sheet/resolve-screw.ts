import type { Designation } from '../standards/threads/designation.js';
import { FLANK_ANGLES } from '../standards/threads/form.js';
import type { LeastRoot } from '../standards/tolerances/least-root.js';
import { plain } from '../units/format.js';
import { halfWidth, type Measured } from '../units/measured.js';
import type { Assumptions } from './assumptions.js';
import { requireAgreement, requireNamedFlanks, requireOrder } from './screw/contradictions.js';
import { majorOf, minorOf, pitchDiameterOf, thinnestRoot } from './screw/diameters.js';
import type { Given } from './screw/given.js';
import { readLead, readPitch, startsOf, surerPitch } from './screw/pitch-and-lead.js';
import type { ScrewForm } from './screw/screw-form.js';
import { type ClassedSize, type ScrewInHand, screwInHand } from './screw/screw-in-hand.js';
import { nameOf, readDesignation } from './screw/screw-name.js';
import type { ScrewSheet } from './sections/screw.js';

/** A screw as a part needs it, from its designation and from what was measured. */
export interface Screw {
  /** as the sheet named it, in standard spelling */
  readonly designation?: string;
  readonly form: ScrewForm;
  /** one flank against the normal to the axis */
  readonly flankAngle: number;
  readonly major: Measured;
  readonly pitchDiameter: Measured;
  readonly minor: Measured;
  /** the thinnest its root may be: what whirls and buckles */
  readonly leastRoot: LeastRoot;
  readonly pitch: Measured;
  /** what it may measure, where the sizes above are those that parts are cut for */
  readonly inHand: ScrewInHand;
  readonly starts: number;
  /** travel per turn: pitch × starts */
  readonly lead: number;
  /** pitch as it was given or measured, before a surer lead had its say */
  readonly pitchRead: number;
  /** lead as it was given or measured, over that pitch; whole when all is well */
  readonly leadOverPitch: number;
  readonly hand: 'right' | 'left';
  /** false where nobody stated the hand */
  readonly handKnown: boolean;
  /** the crest reading, kept so that a miscount can be named */
  readonly crests?: { readonly count: number; readonly length: number };
}

/**
 * Joins designation and readings; a reading replaces the designation's value of the same name.
 * @throws InputError a designation that cannot be read, values that contradict each other
 */
export function resolveScrew(sheet: ScrewSheet, instrument: number, assumptions: Assumptions): Screw {
  const named = sheet.designation === undefined ? undefined : readDesignation(sheet.designation);
  const given: Given = { sheet, named, instrument, assumptions };
  const [read, leadRead] = [readPitch(given), readLead(given)];
  requireAgreement(given, read, leadRead);
  const form = formOf(sheet, named);
  const flankAngle = sheet.flank_angle ?? named?.flankAngle ?? (form === 'free' ? 15 : FLANK_ANGLES[form]);
  const major = majorOf(given);
  const turn = startsOf(given, read, leadRead);
  const pitch = surerPitch(given, read, leadRead, turn.starts);
  const lead = pitch.likely * turn.starts;
  const pitchDiameter = pitchDiameterOf(given, { major, pitch, form, flankAngle, lead });
  const minor = minorOf(given, { major, pitch, form });
  requireOrder(given, { major, pitchDiameter, minor });
  const inHand = screwInHand({
    form,
    starts: turn.starts,
    ...(named ? { named } : {}),
    basic: { major, pitchDiameter, minor, pitch },
    read: readSizes(sheet, pitch),
  });
  requireNamedFlanks(given, pitchDiameter, inHand);
  noteClass(given, inHand);
  return {
    ...(named ? { designation: nameOf(named, turn.starts, assumptions) } : {}),
    form,
    flankAngle,
    major,
    pitchDiameter,
    minor,
    leastRoot: thinnestRoot(given, { minor, pitch, form }),
    pitch,
    inHand,
    ...turn,
    lead,
    pitchRead: read.likely,
    hand: sheet.hand ?? named?.hand ?? 'right',
    handKnown: sheet.hand !== undefined || named !== undefined,
    ...(sheet.crests ? { crests: { count: sheet.crests.count, length: sheet.crests.length.value } } : {}),
  };
}

function formOf(sheet: ScrewSheet, named: Designation | undefined): ScrewForm {
  const form = sheet.form ?? named?.form;
  if (sheet.flank_angle === undefined) return form ?? 'free';
  return form !== undefined && FLANK_ANGLES[form] === sheet.flank_angle ? form : 'free';
}

/** Sizes that were read, or stated with an uncertainty of their own. */
function readSizes(sheet: ScrewSheet, pitch: Measured): ClassedSize[] {
  const isRead: Readonly<Record<ClassedSize, boolean>> = {
    major: sheet.major !== undefined,
    pitchDiameter: sheet.pitch_diameter !== undefined || sheet.wires !== undefined,
    minor: sheet.minor !== undefined,
    pitch: halfWidth(pitch) > 0 || sheet.pitch?.half !== undefined,
  };
  return (Object.keys(isRead) as ClassedSize[]).filter((size) => isRead[size]);
}

/** A named screw is not an exact screw: what its class allows is listed beside the basic size that parts are cut for. */
function noteClass({ named, assumptions }: Given, { tolerance, pitchDiameter, level }: ScrewInHand): void {
  if (!named || !tolerance || !level.includes('pitchDiameter')) return;
  assumptions.note(
    'screw.tolerance',
    tolerance.class,
    `${tolerance.source}: its pitch diameter may be ${plain(pitchDiameter.least)} to ${plain(pitchDiameter.most)} mm; the fit is judged over all of them`,
  );
}
