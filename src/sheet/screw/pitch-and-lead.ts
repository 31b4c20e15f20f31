import { plain } from '../../units/format.js';
import { exactly, halfWidth, type Measured, scaled } from '../../units/measured.js';
import { shared, stated } from '../measured-field.js';
import type { Given } from './given.js';
import { rolled } from './screw-in-hand.js';

/** The pitch that the sheet gives, or that of its designation. */
export function readPitch({ sheet, named, instrument }: Given): Measured {
  if (sheet.crests) return shared(sheet.crests.length, sheet.crests.count, instrument);
  return sheet.pitch ? stated(sheet.pitch) : exactly(named!.pitch);
}

/** The travel per turn that the sheet gives. */
export function readLead({ sheet: { travel, lead }, instrument }: Given): Measured | undefined {
  if (travel) return shared(travel.length, travel.turns, instrument);
  return lead && stated(lead);
}

/** Starts as the sheet says, or as its lead has them, and how many its lead has. */
export function startsOf({ sheet, named, assumptions }: Given, pitch: Measured, lead: Measured | undefined) {
  const leadOverPitch = lead && lead.likely / pitch.likely;
  const starts =
    sheet.starts ??
    (leadOverPitch === undefined ? named?.starts : Math.max(1, Math.round(leadOverPitch))) ??
    assumptions.or<number>(
      undefined,
      'screw.starts',
      1,
      'not given; one start unless lead, travel or starts say otherwise',
    );
  return { starts, leadOverPitch: leadOverPitch ?? starts };
}

/** A travel that is further from the lead of a designation than this is of another screw, or misread. */
const OF_ONE_NAME = 0.005;

/**
 * The pitch, or the lead over the starts where that is at least as sure and says nearly the same: an error of the pitch
 * comes back in the lead as many times over as there are starts. What is only named keeps what ordinary screws keep. A
 * reading that is not used is listed.
 */
export function surerPitch(
  { sheet, named, assumptions }: Given,
  pitch: Measured,
  lead: Measured | undefined,
  starts: number,
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

/** Two statements of one thing must say the same: 3 % is what careless reading explains. */
export function apart(a: number, b: number): boolean {
  return Math.abs(a / b - 1) > 0.03;
}
