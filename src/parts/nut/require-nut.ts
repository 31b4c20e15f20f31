import type { ToothForm } from '../../mechanics/thread/nut-thread.js';
import { rimAround } from '../../solid/convex.js';
import { type Fault, fault, InputError } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import { flanksMeet } from './flanks-meet.js';
import type { Holes } from './nut-design.js';
import type { Flange } from './nut-sizes.js';
import { type BodyPlan, bodyOutline, flangeOutline, wallBeside } from './plan.js';
import type { NutSheet } from './sheet.js';

/** A flange that does not reach so far over the body is no flange, mm. */
const LEAST_RIM = 0.2;

/** Flanks must not meet before crest and root are reached, neither in the tooth nor in the groove. */
export function requireTooth(thread: ToothForm, sheet: NutSheet): void {
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
export function requireSense(
  sheet: NutSheet,
  { holes, chordError, ...solid }: Solid & { holes: Holes | undefined; chordError: number },
): void {
  const { flange } = solid;
  const faults = [
    ...bodyFaults(sheet, solid),
    ...(flange ? flangeFaults(sheet, { ...solid, flange, chordError }) : []),
  ];
  const plateOffset = flange ? flange.offset : 0;
  if (holes && plateOffset < 0) faults.push(refused('flange.offset', plateOffset, 'must be 0 or above'));
  if (faults.length > 0) throw new InputError(faults);
}

function refused(path: string, value: number, allowed: string): Fault {
  return { path, value: `${plain(value)} mm`, allowed };
}

/** The thread's groove must leave something of the body. */
function bodyFaults(sheet: NutSheet, { body, thread }: Solid): Fault[] {
  const thinnest = Math.min(body.across, body.flats ?? Infinity);
  if (thinnest > thread.major) return [];
  const { diameter, width } = sheet.body;
  const bodyPath = diameter !== undefined ? 'body.diameter' : width !== undefined ? 'body.width' : 'body.across_flats';
  return [
    refused(
      body.across <= thread.major ? bodyPath : 'body.flats',
      thinnest,
      `must be above the nut's thread major, ${plain(thread.major)} mm`,
    ),
  ];
}

/** A flange lies within the length over all, is itself a shape, and reaches over the body. */
function flangeFaults(sheet: NutSheet, at: Solid & { flange: Flange; chordError: number }): Fault[] {
  const { flange } = at;
  const { length } = sheet.body;
  const isLong = flange.offset + flange.thickness > length;
  const stub = flange.offset > 0 ? ` less the stub of ${plain(flange.offset)} mm` : '';
  const within = `must fit in the length over all, ${plain(length)} mm${stub}`;
  return [...(isLong ? [refused('flange.thickness', flange.thickness, within)] : []), ...flangePlanFaults(at)];
}

function flangePlanFaults({ body, flange, chordError }: Solid & { flange: Flange; chordError: number }): Fault[] {
  const shorter = Math.min(...flange.size);
  if (flange.corner > shorter / 2)
    return [refused('flange.corner', flange.corner, `must be at most half the shorter side, ${plain(shorter / 2)} mm`)];
  if (flange.shape === 'two-ear' && flange.ear > shorter)
    return [refused('flange.ear', flange.ear, `must be at most ${plain(shorter)} mm`)];
  const rim = rimAround(bodyOutline(body, chordError), flangeOutline(flange, chordError));
  if (rim >= LEAST_RIM) return [];
  const path = flange.flats !== undefined ? 'flange.flats' : ACROSS[flange.shape];
  const over = `must reach over the body, which is ${plain(body.across)} mm, by ${LEAST_RIM} mm all around`;
  return [refused(path, flange.flats ?? shorter, over)];
}

/** The field that tells how wide a flange is. */
const ACROSS: Readonly<Record<Flange['shape'], string>> = {
  round: 'flange.diameter',
  square: 'flange.width',
  rectangular: 'flange.size',
  'two-ear': 'flange.size',
};

/** Chamfers must leave something between them. */
export function requireRoom(
  sheet: NutSheet,
  ends: { leadIn: number; relief: number },
  { body, flange, thread }: Solid,
): void {
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
