import { controllerChange } from '../../drive/controller-change.js';
import { driveNumbers } from '../../drive/drive-numbers.js';
import { type Check, notJudged, soft, told, valued } from '../../judge/check.js';
import { verdictOf } from '../../judge/run-checks.js';
import { USABLE_TORQUE_SHARE } from '../../mechanics/stepper.js';
import { isUpright } from '../../parts/common/axial-path.js';
import { BELOW_BUCKLING, BELOW_WHIRL, judgeColumn, judgeWhirl } from '../../parts/common/drive-limits.js';
import { driveDuty, driveView } from '../../parts/common/drive-view.js';
import { liftedDuty, liftedToo } from '../../parts/common/lifted.js';
import { plain } from '../../units/format.js';
import { exactly } from '../../units/measured.js';
import type { AxisDesign } from '../axis-design.js';

type AxisCheck = Check<AxisDesign>;
const about = { group: 'runs', question: 'runs', source: 'common practice' } as const;

/** What the controller is to be told. */
const steps: AxisCheck = {
  ...about,
  id: 'axis-steps',
  title: 'Steps and direction to set',
  unit: '1/mm',
  source: 'derived: from the definitions',
  moves: 'motor.steps, motor.microsteps, motor.gear, screw, old',
  run: ({ drive, duty: { motor = {} }, screw, old }) => {
    const missing = [
      ...(motor.steps === undefined ? ['motor.steps'] : []),
      ...(motor.microsteps === undefined ? ['motor.microsteps'] : []),
    ];
    if (missing.length > 0) return notJudged(...missing);
    const rate = drive.steps_per_mm;
    const set = `${plain(rate, 3)} steps per mm at a lead of ${plain(screw.lead, 3)} mm, ${screw.hand}-hand`;
    return told('pass', `${set}; ${changeWords(screw, old)}`, rate);
  },
};

function changeWords(screw: AxisDesign['screw'], old: AxisDesign['old']): string {
  if (!old?.screw) return 'if the screw that is taken out was of the other hand, the direction turns round';
  const change = controllerChange({
    oldLead: old.screw.lead,
    newLead: screw.lead,
    oldStepsPerMm: old.stepsPerMm,
    reverses: old.screw.hand !== screw.hand,
  });
  return lowered(change.words);
}

function lowered(words: string): string {
  return `${words.slice(0, 1).toLowerCase()}${words.slice(1).replace(/\.$/, '')}`;
}

/**
 * A figure that is set now and does not follow from motor and old screw belongs to another drive.
 *
 *     ratio = steps per mm set now / due; due = full steps · microsteps · gear / lead of the old screw
 */
const oldSteps: AxisCheck = {
  ...about,
  id: 'axis-old-steps',
  title: 'Steps set now, over those due',
  unit: '',
  trifle: true,
  source: 'derived: from the definitions',
  limits: soft({ min: 0.999, max: 1.001 }),
  moves: 'old.steps_per_mm, old.screw, motor.steps, motor.microsteps, motor.gear',
  run: ({ drive, screw, old, duty: { motor = {} } }) => {
    if (!old?.screw || old.stepsPerMm === undefined) return undefined;
    if (motor.steps === undefined || motor.microsteps === undefined) return undefined;
    const expected = (drive.steps_per_mm * screw.lead) / old.screw.lead;
    const share = old.stepsPerMm / expected;
    const cure =
      Math.abs(share - 1) > 0.001
        ? '; steps, microsteps or gear are not as told, or the old screw is another one: count them before anything is set'
        : '';
    return valued(exactly(share), `${plain(old.stepsPerMm, 3)} of ${plain(expected, 3)} steps per mm${cure}`);
  },
};

/**
 * Feed against what motor, whirl and sliding allow.
 *
 *     most = least of lead · n/(60 · gear), 0.8 · lead · n_whirl/60 and v/r
 *     n = useful speed of the motor, v = sliding speed borne, r = way that the flanks slide a mm of travel
 */
const feed: AxisCheck = {
  ...about,
  id: 'axis-feed',
  title: 'Feed',
  unit: 'mm/s',
  moves: 'duty.feed, duty.load, motor.speed, screw, lengths',
  run: ({ duty, drive }, limits) => {
    const { value, set_by } = drive.feed_limit;
    if (duty.feed === undefined) return notJudged('duty.feed');
    const own = soft({ max: value });
    const { max = value } = limits.of(own).pass;
    if (duty.span === undefined && duty.feed <= max) return notJudged('duty.span');
    const by = { motor: 'what the motor is useful for', whirl: 'whirl', sliding: 'the sliding speed of plastic' };
    const cure = duty.feed > max ? '; feed slower, or take a coarser lead' : '';
    return valued(
      exactly(duty.feed),
      `${plain(max, 1)} mm/s are set by ${max === value ? by[set_by] : 'the sheet'}${cure}`,
      own,
    );
  },
};

const whirl: AxisCheck = {
  ...about,
  id: 'axis-whirl',
  title: 'Speed over the whirling speed',
  unit: '',
  limits: BELOW_WHIRL,
  moves: 'duty.feed, lengths, end holder, screw.minor',
  run: judgeWhirl,
};

/** Work that lifts more than weighs on the nut pushes on the screw too: of a screw that hangs or stands that is asked. */
const column: AxisCheck = {
  ...about,
  id: 'axis-column',
  title: 'Load over the buckling force',
  unit: '',
  limits: BELOW_BUCKLING,
  moves: 'duty.load, lengths, end holder, screw.minor',
  run: (design, limits) => {
    const found = judgeColumn(design, limits) ?? notJudged('duty.span');
    const isAsked = isUpright(design.sheet.mounting) && design.duty.upward === undefined;
    return isAsked && verdictOf(column, found, limits) === 'pass' ? notJudged('duty.upward') : found;
  },
};

/**
 * A bought nut is judged here; a printed one judges its own torque.
 *
 *     share = torque that raises the load / (torque of the motor · gear), at friction 0.08 to 0.5, 0.5 taken as likely
 */
const torque: AxisCheck = {
  ...about,
  id: 'axis-torque',
  title: 'Share of the motor that raising takes',
  unit: '',
  limits: soft({ max: USABLE_TORQUE_SHARE }, { max: 1 }),
  moves: 'duty.load, motor.torque, screw.lead',
  run: ({ parts, drive, duty }, { pass }) => {
    if (parts.some(({ facts }) => facts.nut?.printed)) return undefined;
    const missing = [
      ...(duty.load === undefined ? ['duty.load'] : []),
      ...(duty.motor?.torque === undefined ? ['motor.torque'] : []),
    ];
    if (missing.length > 0) return notJudged(...missing);
    const share = drive.motor_share;
    if (!share) return told('fail', 'at friction 0.5 no torque raises the load; take a finer lead');
    const cure = share.high > (pass.max ?? 0) ? '; a finer lead, a stronger motor, a gear or less load' : '';
    return valued(
      { least: share.low, likely: share.high, most: share.high },
      `${plain(100 * share.nominal, 0)} % at friction 0.2, ${plain(100 * share.high, 0)} % at 0.5${cure}`,
    );
  },
};

/** Whether it moves as it is told. */
export const RUN_CHECKS: readonly AxisCheck[] = liftedToo([steps, oldSteps, feed, whirl, column, torque], asLiftedAxis);

/** The same axis as the work lifts what its nut carries; undefined where the weight keeps it down. */
function asLiftedAxis(design: AxisDesign): AxisDesign | undefined {
  const duty = liftedDuty(design.duty);
  return duty && { ...design, duty, drive: driveNumbers(driveView(design.screw), driveDuty(duty)) };
}
