import * as z from 'zod';
import type { Duty } from '../drive/duty.js';
import { MOTOR_PLACES } from '../drive/levelling.js';
import { PURPOSES } from '../drive/rank-screws.js';
import { driveDuty } from '../parts/common/drive-view.js';
import type { GivenFit } from '../parts/common/fit-classes.js';
import { driveSection } from '../pipeline/drive-sheet.js';
import { map, quantity, reading, whole, word } from '../sheet/fields.js';
import { type Fields, isFields } from '../sheet/fields-map.js';
import { replaced } from '../sheet/merge.js';
import { listed } from '../sheet/plain-value.js';
import { validate } from '../sheet/validate.js';
import { fault } from '../units/faults.js';
import type { DriveSource } from './drive-source.js';
import { namingOptions, type TypedField, typedFields } from './typed.js';

const DUTY = {
  axis: { path: 'duty.axis' },
  load: { path: 'duty.load' },
  moving: { path: 'duty.moving' },
  feed: { path: 'duty.feed' },
  steps: { path: 'duty.motor.steps' },
  microsteps: { path: 'duty.motor.microsteps' },
  gear: { path: 'duty.motor.gear' },
  torque: { path: 'duty.motor.torque' },
  'motor-speed': { path: 'duty.motor.speed' },
  current: { path: 'duty.motor.current' },
  inductance: { path: 'duty.motor.inductance' },
  voltage: { path: 'duty.motor.voltage' },
  span: { path: 'duty.span' },
  ends: { path: 'duty.ends' },
  'layer-heights': { path: 'duty.layer_heights', read: listed },
  fit: { path: 'fit', read: typedFit },
} as const satisfies Record<string, TypedField>;

/** A class by its name, or the diametral and the axial clearance. */
function typedFit(text: string, option: string): unknown {
  const [diametral, axial, ...more] = listed(text);
  if (axial === undefined) return text;
  if (more.length > 0) throw fault(option, text, 'must be a class or two clearances: running, or 0.3,0.1');
  return { diametral, axial };
}

/** The duty of a sheet with the options in its place, and the fit where the options give one. */
export function readDuty(
  args: Fields,
  sheet: DriveSource['sheet'],
): { readonly duty: Duty; readonly fit: GivenFit | undefined } {
  const typed = typedFields(args, DUTY);
  // A duty that is no map is refused as it stands, before options could take its place.
  if (sheet !== undefined && !isFields(sheet.duty)) validate(driveSection, { duty: sheet.duty }, sheet.locate);
  const fields = sheet === undefined ? typed : replaced({ duty: sheet.duty }, typed);
  const { duty = {}, fit } = namingOptions(args, DUTY, () => validate(driveSection, fields, sheet?.locate));
  return { duty: driveDuty(duty), fit };
}

const QUESTION = {
  purpose: { path: 'purpose' },
  'old-steps-per-mm': { path: 'oldStepsPerMm' },
  'steps-per-mm': { path: 'stepsPerMm' },
  commanded: { path: 'commanded' },
  measured: { path: 'measured' },
  'end-difference': { path: 'endDifference' },
  motor: { path: 'motor' },
  lifts: { path: 'lifts' },
  'lift-height': { path: 'liftHeight' },
  acceleration: { path: 'acceleration' },
} as const satisfies Record<string, TypedField>;

const perMm = z.number('must be a number').positive('must be above 0').max(1e7, 'must be at most 10000000');

const questionSection = map({
  purpose: word(PURPOSES).optional(),
  oldStepsPerMm: perMm.optional(),
  stepsPerMm: perMm.optional(),
  commanded: quantity('length', { least: -10_000, most: 10_000 }).optional(),
  measured: reading('length', { least: -300_000, most: 300_000 }).optional(),
  endDifference: quantity('length', { least: -100, most: 100 }).optional(),
  motor: word(MOTOR_PLACES).optional(),
  lifts: whole(1, 1e9).optional(),
  liftHeight: quantity('length', { above: 0, most: 10_000 }).optional(),
  acceleration: z.number('must be a number, mm/s²').positive('must be above 0').max(1e6).optional(),
});

/** What is asked beyond the figures of the screws. */
export type DriveQuestion = z.output<typeof questionSection>;

/**
 * What the options ask.
 * @throws InputError a value that cannot be, or an option without the one it belongs to
 */
export function readQuestion(args: Fields & { readonly screws: readonly string[] }): DriveQuestion {
  const question = namingOptions(args, QUESTION, () => validate(questionSection, typedFields(args, QUESTION)));
  const { commanded, measured } = question;
  const isAlone = args.screws.length === 1;
  const refuse = (name: string, isWrong: boolean, allowed: string) => {
    if (args[name] !== undefined && isWrong) throw fault(`--${name}`, args[name], allowed);
  };
  refuse('commanded', measured === undefined, 'needs --measured LENGTH, what came of it');
  refuse('measured', commanded === undefined, 'needs --commanded LENGTH, what was asked for');
  refuse('commanded', commanded === 0, 'must be a length other than 0');
  refuse('measured', measured?.value === 0, 'must be a length other than 0');
  refuse('commanded', !isAlone, 'goes with one screw, the one in the machine');
  refuse('steps-per-mm', commanded === undefined, 'goes with --commanded and --measured');
  refuse('old-steps-per-mm', args.from === undefined && isAlone, 'needs --from SCREW, the one that was in before');
  const ofLifts = ['lifts', 'lift-height', 'acceleration', 'feed'];
  const missing = ofLifts.filter((name) => args[name] === undefined);
  for (const name of ofLifts.slice(0, 3))
    refuse(
      name,
      missing.length > 0,
      `needs ${missing.map((one) => `--${one}`).join(', ')} too; --feed is that of the old screw`,
    );
  refuse('lifts', args.from === undefined && isAlone, 'needs --from SCREW, the one that was in before');
  refuse('motor', args['end-difference'] === undefined, 'goes with --end-difference');
  return question;
}
