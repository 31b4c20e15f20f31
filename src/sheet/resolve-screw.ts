import { type Designation, parseDesignation } from '../standards/threads/designation.js';
import { designationText } from '../standards/threads/designation-text.js';
import { FLANK_ANGLES } from '../standards/threads/form.js';
import { meantWords } from '../standards/threads/trade-words.js';
import { trapezoidalClearance } from '../standards/threads/trapezoidal.js';
import { pitchDiameterOverWires, steepLeadDoubt } from '../standards/three-wire.js';
import { type LeastRoot, leastRoot, leastRootOf } from '../standards/tolerances/least-root.js';
import { type Fault, InputError, shown } from '../units/faults.js';
import { plain } from '../units/format.js';
import { exactly, halfWidth, type Measured, plusMinus, scaled, shifted, widened } from '../units/measured.js';
import type { Quantity } from '../units/quantity.js';
import type { Assumptions } from './assumptions.js';
import { measured, shared, stated } from './measured-field.js';
import type { ScrewForm } from './screw-form.js';
import { type ClassedSize, rolled, type ScrewInHand, screwInHand, toothSpread } from './screw-in-hand.js';
import type { ScrewSheet } from './sections/screw.js';

export type { ScrewForm } from './screw-form.js';

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

type Named = Designation;

/**
 * Joins designation and readings; a reading replaces the designation's value of the same name.
 * @throws InputError a designation that cannot be read, values that contradict each other
 */
export function resolveScrew(sheet: ScrewSheet, instrument: number, assumptions: Assumptions): Screw {
  const named = sheet.designation === undefined ? undefined : readDesignation(sheet.designation);
  requireAgreement(sheet, named);
  const form = formOf(sheet, named);
  const flankAngle = sheet.flank_angle ?? named?.flankAngle ?? (form === 'free' ? 15 : FLANK_ANGLES[form]);
  const read = pitchOf(sheet, named, instrument);
  const major = given(sheet.major, instrument) ?? exactly(named!.major);
  const lead = leadReading(sheet, instrument);
  const turn = turnOf(sheet, named, { pitch: read.likely, lead: lead?.likely }, assumptions);
  const pitch = surerPitch(read, lead, { starts: turn.starts, named, sheet }, assumptions);
  const pitchDiameter = pitchDiameterOf(
    sheet,
    named,
    { major, pitch, flankAngle, form, instrument, lead: pitch.likely * turn.starts },
    assumptions,
  );
  const minor = minorOf(sheet, named, { major, pitch, form, instrument }, assumptions);
  requireOrder(sheet, { major, pitchDiameter, minor });
  const inHand = screwInHand({
    form,
    starts: turn.starts,
    ...(named ? { named } : {}),
    basic: { major, pitchDiameter, minor, pitch },
    read: readSizes(sheet, pitch),
  });
  noteClass(named, inHand, assumptions);
  return {
    ...(named ? { designation: nameOf(named, turn.starts, assumptions) } : {}),
    form,
    flankAngle,
    major,
    pitchDiameter,
    minor,
    leastRoot: thinnestRoot(sheet, named, { minor, pitch, form }),
    pitch,
    inHand,
    ...turn,
    lead: pitch.likely * turn.starts,
    pitchRead: read.likely,
    hand: sheet.hand ?? named?.hand ?? 'right',
    handKnown: sheet.hand !== undefined || named !== undefined,
    ...(sheet.crests ? { crests: { count: sheet.crests.count, length: sheet.crests.length.value } } : {}),
  };
}

function readDesignation(text: string): Named {
  try {
    return parseDesignation(text);
  } catch (error) {
    if (error instanceof InputError) {
      throw new InputError(
        error.faults.map((fault) => ({
          ...fault,
          path: 'screw.designation',
          value: shown(text),
          allowed: `${fault.allowed}${meantWords(text)}`,
        })),
      );
    }
    throw error;
  }
}

/** A name that says one start stands for its profile where the sheet says more: the whole screw has another name. */
function nameOf(named: Named, starts: number, assumptions: Assumptions): string {
  if (starts === named.starts) return named.text;
  const text = designationText({ ...named, starts });
  assumptions.note(
    'screw.designation',
    text,
    `${named.text} with ${starts} start${starts === 1 ? '' : 's'}, as the sheet says`,
  );
  return text;
}

function formOf(sheet: ScrewSheet, named: Named | undefined): ScrewForm {
  const form = sheet.form ?? named?.form;
  if (sheet.flank_angle === undefined) return form ?? 'free';
  return form !== undefined && FLANK_ANGLES[form] === sheet.flank_angle ? form : 'free';
}

function given(reading: Quantity | undefined, instrument: number): Measured | undefined {
  return reading && measured(reading, instrument);
}

function pitchOf(sheet: ScrewSheet, named: Named | undefined, instrument: number): Measured {
  if (sheet.crests) return shared(sheet.crests.length, sheet.crests.count, instrument);
  return sheet.pitch ? stated(sheet.pitch) : exactly(named!.pitch);
}

function leadReading({ travel, lead }: ScrewSheet, instrument: number): Measured | undefined {
  if (travel) return shared(travel.length, travel.turns, instrument);
  return lead && stated(lead);
}

/** A travel that is further from the lead of a designation than this is of another screw, or misread. */
const OF_ONE_NAME = 0.005;

/**
 * The pitch, or the lead over the starts where that is at least as sure and says nearly the same: an error of the pitch
 * comes back in the lead as many times over as there are starts. What is only named keeps what ordinary screws keep. A
 * reading that is not used is listed.
 */
function surerPitch(
  pitch: Measured,
  lead: Measured | undefined,
  { starts, named, sheet }: { starts: number; named: Designation | undefined; sheet: ScrewSheet },
  assumptions: Assumptions,
): Measured {
  if (lead === undefined || apart(lead.likely, starts * pitch.likely)) return pitch;
  const isNamed = named !== undefined && !sheet.pitch && !sheet.crests;
  const known = isNamed || (sheet.pitch && sheet.pitch.half === undefined) ? rolled(pitch) : pitch;
  const shareOfLead = scaled(lead, 1 / starts);
  const other = sheet.travel && Math.abs(lead.likely / (starts * pitch.likely) - 1) > OF_ONE_NAME && isNamed;
  if (!other && halfWidth(shareOfLead) <= halfWidth(known)) return shareOfLead;
  if (sheet.travel && Math.abs(lead.likely - starts * pitch.likely) > 1e-9)
    assumptions.note(
      'screw.travel',
      `${plain(lead.likely)} mm a turn`,
      `set aside: ${isNamed ? named.text : 'the pitch'} says ${plain(starts * pitch.likely)} mm${other ? ', more than a true lead is off' : ' and is surer'}`,
    );
  return pitch;
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
function noteClass(
  named: Named | undefined,
  { tolerance, pitchDiameter, level }: ScrewInHand,
  assumptions: Assumptions,
): void {
  if (!named || !tolerance || !level.includes('pitchDiameter')) return;
  assumptions.note(
    'screw.tolerance',
    tolerance.class,
    `${tolerance.source}: its pitch diameter may be ${plain(pitchDiameter.least)} to ${plain(pitchDiameter.most)} mm; the fit is judged over all of them`,
  );
}

function turnOf(
  sheet: ScrewSheet,
  named: Named | undefined,
  { pitch, lead }: { readonly pitch: number; readonly lead: number | undefined },
  assumptions: Assumptions,
) {
  const starts = sheet.starts ?? (lead === undefined ? named?.starts : Math.max(1, Math.round(lead / pitch)));
  const counted =
    starts ??
    assumptions.or<number>(
      undefined,
      'screw.starts',
      1,
      'not given; one start unless lead, travel or starts say otherwise',
    );
  return { starts: counted, leadOverPitch: lead === undefined ? counted : lead / pitch };
}

interface Known {
  readonly major: Measured;
  readonly pitch: Measured;
  readonly form: ScrewForm;
  readonly instrument: number;
}

function pitchDiameterOf(
  sheet: ScrewSheet,
  named: Named | undefined,
  known: Known & { flankAngle: number; lead: number },
  assumptions: Assumptions,
): Measured {
  const { major, pitch, form, flankAngle, instrument, lead } = known;
  if (sheet.pitch_diameter) return measured(sheet.pitch_diameter, instrument);
  if (sheet.wires) {
    const { wire, over } = sheet.wires;
    const diameter = pitchDiameterOverWires({ flankAngle, pitch: pitch.likely, lead, wire, over: over.value });
    const { least, likely, most } = plusMinus(diameter, over.half ?? instrument);
    return { least, likely, most: most + steepLeadDoubt({ wire, lead, pitchDiameter: diameter }) };
  }
  if (named) {
    assumptions.note('screw.pitch_diameter', plain(named.pitchDiameter), `basic size of ${named.text}`);
    return exactly(named.pitchDiameter);
  }
  const depth = form === 'metric-v' ? 0.6495 : 0.5;
  const estimate = widened(shifted(major, -depth * pitch.likely), toothSpread(pitch.likely));
  assumptions.note(
    'screw.pitch_diameter',
    plain(estimate.likely),
    `major − ${depth} × pitch, ± ${plain(toothSpread(pitch.likely), 2)} mm since crest and flank are made apart; three wires would tell`,
  );
  return estimate;
}

function minorOf(
  sheet: ScrewSheet,
  named: Named | undefined,
  { major, pitch, form, instrument }: Known,
  assumptions: Assumptions,
): Measured {
  if (sheet.minor) return measured(sheet.minor, instrument);
  if (named && !sheet.major && !sheet.pitch && !sheet.crests) {
    assumptions.note('screw.minor', plain(named.minor), `basic size of ${named.text}`);
    return exactly(named.minor);
  }
  const depth = rootDepth(form, pitch.likely);
  const root = shifted(major, -depth);
  assumptions.note('screw.minor', plain(root.likely), 'from the form');
  return root;
}

/** A root that was measured is as thin as it may be; another is as thin as its class allows. */
function thinnestRoot(
  sheet: ScrewSheet,
  named: Named | undefined,
  { minor, pitch, form }: { readonly minor: Measured; readonly pitch: Measured; readonly form: ScrewForm },
): LeastRoot {
  if (sheet.minor) return { cut: minor.least, rolled: minor.least };
  if (!named) return leastRootOf({ root: minor.least, pitch: pitch.likely, form });
  const { cut, rolled } = leastRoot(named);
  return { cut: Math.min(cut, minor.least), rolled: Math.min(rolled, minor.least) };
}

/** Diametral depth of a screw's thread, crest to root, from its form. */
function rootDepth(form: ScrewForm, pitch: number): number {
  if (form === 'metric-v') return 1.226869 * pitch;
  if (form === 'acme') return pitch + (pitch >= 2.54 - 1e-9 ? 0.508 : 0.254);
  return pitch + 2 * trapezoidalClearance(pitch);
}

/** Two statements of one thing must say the same: 3 % is what careless reading explains. */
function requireAgreement(sheet: ScrewSheet, named: Named | undefined): void {
  const faults: Fault[] = [];
  const lead = sheet.travel ? sheet.travel.length.value / sheet.travel.turns : sheet.lead?.value;
  const pitch = sheet.crests ? sheet.crests.length.value / sheet.crests.count : (sheet.pitch?.value ?? named?.pitch);
  const path = sheet.travel ? 'screw.travel' : 'screw.lead';
  if (sheet.starts !== undefined && lead !== undefined && pitch !== undefined && apart(lead, sheet.starts * pitch)) {
    faults.push({
      path,
      value: `${plain(lead)} mm a turn`,
      allowed: `does not agree with starts ${sheet.starts} × pitch ${plain(pitch)} mm = ${plain(sheet.starts * pitch)} mm`,
    });
  }
  if (named) faults.push(...againstName(sheet, named));
  if (named && sheet.form !== undefined && sheet.form !== named.form) {
    faults.push({
      path: 'screw.form',
      value: sheet.form,
      allowed: `does not agree with ${named.text}, which is ${named.form}`,
    });
  }
  if (named && sheet.hand !== undefined && sheet.hand !== named.hand && named.hand === 'left') {
    faults.push({
      path: 'screw.hand',
      value: sheet.hand,
      allowed: `does not agree with ${named.text}, which is left-hand`,
    });
  }
  if (faults.length > 0) throw new InputError(faults);
}

/** A reading that the named screw cannot give. */
function againstName(sheet: ScrewSheet, named: Named): Fault[] {
  const { crests, pitch: stated, major } = sheet;
  const pitch = crests ? crests.length.value / crests.count : stated?.value;
  const faults: Fault[] = [];
  if (pitch !== undefined && apart(pitch, named.pitch))
    faults.push({
      path: crests ? 'screw.crests' : 'screw.pitch',
      value: `${plain(pitch)} mm${crests ? ' a crest' : ''}`,
      allowed: `does not agree with ${named.text}, whose pitch is ${plain(named.pitch)} mm`,
    });
  if (major && Math.abs(major.value - named.major) > named.pitch / 2)
    faults.push({
      path: 'screw.major',
      value: `${plain(major.value)} mm`,
      allowed: `does not agree with ${named.text}, which is ${plain(named.major)} mm over its crests`,
    });
  return faults;
}

function apart(a: number, b: number): boolean {
  return Math.abs(a / b - 1) > 0.03;
}

function requireOrder(
  sheet: ScrewSheet,
  { major, pitchDiameter, minor }: { major: Measured; pitchDiameter: Measured; minor: Measured },
): void {
  const faults: Fault[] = [];
  if (minor.likely <= 0)
    faults.push({
      path: 'screw.pitch',
      value: '',
      allowed: `is too coarse for a major diameter of ${plain(major.likely)} mm: nothing is left of the core`,
    });
  else if (minor.likely >= major.likely) {
    faults.push({
      path: 'screw.minor',
      value: `${plain(minor.likely)} mm`,
      allowed: `must be below the major diameter, ${plain(major.likely)} mm`,
    });
  } else if (!sheet.wires && !sheet.pitch_diameter && sheet.major && pitchDiameter.likely >= major.likely) {
    faults.push({
      path: 'screw.major',
      value: `${plain(major.likely)} mm`,
      allowed: `must be above the pitch diameter, ${plain(pitchDiameter.likely)} mm`,
    });
  } else if (pitchDiameter.likely >= major.likely || pitchDiameter.likely <= minor.likely) {
    const path = sheet.wires ? 'screw.wires' : 'screw.pitch_diameter';
    faults.push({
      path,
      value: `${plain(pitchDiameter.likely)} mm`,
      allowed: `must lie between minor ${plain(minor.likely)} mm and major ${plain(major.likely)} mm`,
    });
  }
  if (faults.length > 0) throw new InputError(faults);
}
