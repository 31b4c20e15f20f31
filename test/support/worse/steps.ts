/** From what a sheet tells, what is harder on the part; nothing where that cannot be said. */
export type Step = (told: unknown) => readonly unknown[];

const number = (told: unknown) => Number.parseFloat(String(told));
const unit = (told: unknown) => String(told).replace(/^[-\d.\s]+/, '');

/** A figure changed, in the unit that the sheet has. */
function changed(told: unknown, change: (value: number) => number): unknown[] {
  const value = number(told);
  if (!Number.isFinite(value)) return [];
  const harder = Number(change(value).toFixed(6));
  return [typeof told === 'number' ? harder : `${harder} ${unit(told)}`];
}

const times =
  (...factors: readonly number[]): Step =>
  (told) =>
    factors.flatMap((factor) => changed(told, (value) => factor * value));
const plus =
  (...steps: readonly number[]): Step =>
  (told) =>
    steps.flatMap((step) => changed(told, (value) => value + step));

/** The words that come after the one that is told. */
const after =
  (...order: readonly string[]): Step =>
  (told) =>
    order.includes(String(told)) ? order.slice(order.indexOf(String(told)) + 1) : [];
const YES = after('no', 'yes');
const NO = after('yes', 'no');

/** Half of the screws, on the same circle. */
const half: Step = (told) => (typeof told === 'number' && told > 2 && told % 2 === 0 ? [told / 2] : []);

/** What makes it harder, by the field that is told. */
export const STEPS: Readonly<Record<string, Step>> = {
  'duty.load': times(1.3, 2, 5),
  'duty.upward': plus(30, 200),
  'duty.temperature': plus(8, 20),
  'duty.feed': times(1.5, 3),
  'duty.speed': times(1.5, 4),
  'duty.span': times(1.4, 2.5),
  'duty.ends': after('fixed-fixed', 'fixed-supported', 'supported', 'fixed-free'),
  'duty.shock': after('none', 'light', 'moderate', 'heavy'),
  'duty.reversing': YES,
  'duty.starts': times(10, 100),
  'duty.moving': times(1.5),
  'duty.dust': YES,
  'duty.grease': after('greased', 'dry'),
  'duty.regrease': NO,
  'duty.motor.torque': times(1.4, 3),
  'motor.torque': times(1.4, 3),
  'motor.temperature': plus(8, 20),
  'motor.axial_limit': times(0.7, 0.2),
  'motor.weight': times(2),
  'motor.length': times(1.5),
  'motor.shaft.length': times(0.8, 0.6),
  'motor.shaft.flat_length': times(0.7),
  'shaft.length': times(0.8),
  belt_pull: times(2),
  retighten: NO,
  thrust_bearing: NO,
  ...Object.fromEntries(
    ['motor_hub', 'screw_hub', 'motor_end', 'screw_end', 'hold'].map((end) => [`${end}.degreased`, NO]),
  ),
  'motor_hub.clamp.washers': NO,
  'screw_hub.clamp.washers': NO,
  'flange.thickness': times(0.85, 0.6),
  'nut.flange.thickness': times(0.6),
  'plate.thickness': times(0.85, 0.6),
  'frame.thickness': times(0.7),
  'holes.count': half,
  'holes.diameter': plus(0.4, 1.5),
  'nut.holes.diameter': plus(0.4, 1.5),
  'carriage.holes.diameter': plus(0.4, 1.5),
  'carriage.holes.circle': times(1.25, 1.7),
  'carriage.bore': times(1.15),
  'machine.opening': times(1.3),
  'family.lever': times(2),
  runout: times(2),
  offset: times(2),
  nut_gap: times(0.5),
  end_room: times(0.3),
  'misalignment.angular': times(2),
  'misalignment.parallel': times(2),
  'misalignment.axial': times(2),
  'lengths.travel': times(1.05),
  'lengths.moving': plus(8),
};
