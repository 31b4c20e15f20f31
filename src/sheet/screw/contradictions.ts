import type { Designation } from '../../standards/threads/designation.js';
import { type Fault, fault, InputError } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import type { Measured } from '../../units/measured.js';
import type { ScrewSheet } from '../sections/screw.js';
import type { Given } from './given.js';
import { apart } from './pitch-and-lead.js';
import { type ScrewInHand, toothSpread } from './screw-in-hand.js';

/** @throws InputError the sheet says one thing twice, and not the same */
export function requireAgreement({ sheet, named }: Given, pitch: Measured, lead: Measured | undefined): void {
  const faults = againstStarts(sheet, pitch.likely, lead?.likely);
  if (named) faults.push(...againstSizes(sheet, named, pitch.likely), ...againstKind(sheet, named));
  if (faults.length > 0) throw new InputError(faults);
}

function againstStarts({ starts, travel }: ScrewSheet, pitch: number, lead: number | undefined): Fault[] {
  if (starts === undefined || lead === undefined || !apart(lead, starts * pitch)) return [];
  return [
    {
      path: travel ? 'screw.travel' : 'screw.lead',
      value: `${mm(lead)} a turn`,
      allowed: `does not agree with starts ${starts} × pitch ${mm(pitch)} = ${mm(starts * pitch)}`,
    },
  ];
}

/** Readings that the named screw cannot give. */
function againstSizes({ crests, major }: ScrewSheet, named: Designation, pitch: number): Fault[] {
  const faults: Fault[] = [];
  if (apart(pitch, named.pitch))
    faults.push({
      path: crests ? 'screw.crests' : 'screw.pitch',
      value: `${mm(pitch)}${crests ? ' a crest' : ''}`,
      allowed: `does not agree with ${named.text}, whose pitch is ${mm(named.pitch)}`,
    });
  if (major && Math.abs(major.value - named.major) > named.pitch / 2)
    faults.push({
      path: 'screw.major',
      value: mm(major.value),
      allowed: `does not agree with ${named.text}, which is ${mm(named.major)} over its crests`,
    });
  return faults;
}

function againstKind({ form, hand }: ScrewSheet, named: Designation): Fault[] {
  const faults: Fault[] = [];
  if (form !== undefined && form !== named.form)
    faults.push({
      path: 'screw.form',
      value: form,
      allowed: `does not agree with ${named.text}, which is ${named.form}`,
    });
  if (hand === 'right' && named.hand === 'left')
    faults.push({
      path: 'screw.hand',
      value: hand,
      allowed: `does not agree with ${named.text}, which is left-hand`,
    });
  return faults;
}

/** @throws InputError minor, pitch and major diameter do not rise in this order */
export function requireOrder(
  { sheet }: Given,
  sizes: { readonly major: Measured; readonly pitchDiameter: Measured; readonly minor: Measured },
): void {
  const [minor, pitchDiameter, major] = [sizes.minor.likely, sizes.pitchDiameter.likely, sizes.major.likely];
  if (minor <= 0)
    throw fault('screw.pitch', '', `is too coarse for a major diameter of ${mm(major)}: nothing is left of the core`);
  if (minor >= major) throw fault('screw.minor', mm(minor), `must be below the major diameter, ${mm(major)}`);
  if (!sheet.wires && !sheet.pitch_diameter && sheet.major && pitchDiameter >= major)
    throw fault('screw.major', mm(major), `must be above the pitch diameter, ${mm(pitchDiameter)}`);
  if (pitchDiameter >= major || pitchDiameter <= minor) {
    const path = sheet.wires ? 'screw.wires' : 'screw.pitch_diameter';
    throw fault(path, mm(pitchDiameter), `must lie between minor ${mm(minor)} and major ${mm(major)}`);
  }
}

/**
 * Flanks that were read must be those of the name: worn ones may be thinner by three times what crest and flank are usually apart,
 * ones of another class thicker by as much once.
 * @throws InputError they are further off than reading, wear and rolling explain
 */
export function requireNamedFlanks(
  { sheet, named }: Given,
  { least, likely, most }: Measured,
  { namedFlanks: own }: ScrewInHand,
): void {
  if (!named || !own || (!sheet.pitch_diameter && !sheet.wires)) return;
  const spread = toothSpread(named.pitch);
  if (most >= own.least - 3 * spread && least <= own.most + spread) return;
  throw fault(
    sheet.pitch_diameter ? 'screw.pitch_diameter' : 'screw.wires',
    mm(likely),
    `does not agree with ${named.text}, whose pitch diameter is ${plain(own.least, 2)} to ${mm(own.most)}`,
  );
}

function mm(length: number): string {
  return `${plain(length)} mm`;
}
