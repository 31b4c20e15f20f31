import type { Comparison } from '../../drive/compare-screws.js';
import type { Duty } from '../../drive/duty.js';
import type { ByFriction, DriveNumbers } from '../../drive/numbers.js';
import { COLUMN_SHARE } from '../../mechanics/column.js';
import { DRY_PRINT_MOST, FRICTION } from '../../mechanics/friction.js';
import { USABLE_TORQUE_SHARE } from '../../mechanics/stepper.js';
import { DERATING } from '../../mechanics/whirl.js';
import { howMany, plain } from '../../units/format.js';
import { figure } from '../figures.js';

/** A line of the table: what it says, and each screw's answer, empty where it has none. */
export interface ComparedRow {
  readonly label: string;
  readonly cells: readonly string[];
}

/**
 * The figures of all screws, a line each and a cell a screw; lines to which no screw has an answer are left out.
 *
 * @param comparison the screws, at one duty
 * @param duty as it was given
 */
export function comparedRows(comparison: Comparison, duty: Duty): readonly ComparedRow[] {
  return rowsFor(comparison, duty)
    .map(({ label, cell }) => ({ label, cells: comparison.screws.map((one, place) => cell(one, place) ?? '') }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
}

/** What the signs of the table mean: friction first, then what is in this one. */
export function tableLegend({ screws }: Comparison, rows: readonly ComparedRow[]): readonly string[] {
  const isMarked = rows.some(({ cells }) => cells.some((cell) => cell.endsWith(NOT_ENOUGH)));
  const isDriven = screws.some(({ torque_lower }) => torque_lower !== undefined && torque_lower.low < 0);
  const isOff = screws.some(({ layers }) => layers.some(({ on_grid }) => !on_grid));
  const further = [
    ...(isMarked ? ['! not enough for this duty'] : []),
    ...(isDriven ? ['below 0 the load drives the screw'] : []),
    ...(isOff ? ['off: mm from a full step at worst'] : []),
  ];
  return [
    `friction ${FRICTION.low}, freshly greased / ${FRICTION.nominal}, usual / ${FRICTION.high}, dry print (some reach ${DRY_PRINT_MOST})`,
    ...(further.length === 0 ? [] : [further.join('; ')]),
  ];
}

interface Row {
  readonly label: string;
  readonly cell: (numbers: DriveNumbers, place: number) => string | undefined;
}

const HOLDING = { falls: 'falls', 'may-creep': 'may creep', holds: 'holds' } as const;

function rowsFor(comparison: Comparison, duty: Duty): readonly Row[] {
  const { difference, turns } = comparison.end_difference;
  return [
    { label: 'lead, mm a turn', cell: ({ lead, lead_angle }) => `${figure(lead)} at ${plain(lead_angle, 1)}°` },
    { label: 'full step, mm', cell: ({ full_step }) => plain(full_step, 6) },
    { label: 'steps per mm', cell: ({ steps_per_mm }) => plain(steps_per_mm, 3) },
    { label: 'without power', cell: ({ holding }) => HOLDING[holding] },
    { label: 'efficiency, %', cell: ({ efficiency }) => three(efficiency, 100) },
    ...torqueRows(duty),
    ...feedRows(duty),
    ...spanRows(duty),
    {
      label: 'play at the axis, mm',
      cell: ({ play }) => play && `${plain(play.axial, 2)}, ${howMany(plain(play.full_steps, 1), 'step')}`,
    },
    {
      label: `${plain(difference)} mm at one end`,
      cell: (_, place) => `${plain(turns[place]!.degrees, 1)}° of turn`,
    },
    ...layerRows(duty),
  ];
}

function torqueRows(duty: Duty): readonly Row[] {
  const load = duty.load === undefined ? '' : ` ${plain(duty.load)} N`;
  return [
    {
      label: `raise${load}, N·mm`,
      cell: ({ torque_raise, torque_lower }) => (torque_raise ? three(torque_raise) : torque_lower && 'jams where dry'),
    },
    { label: 'lower it, N·mm', cell: ({ torque_lower }) => torque_lower && three(torque_lower) },
    { label: 'hold it, N·mm', cell: ({ torque_hold }) => torque_hold && three(torque_hold) },
    {
      label: 'share of motor, %',
      cell: ({ motor_share }) =>
        motor_share && `${three(motor_share, 100)}${unless(motor_share.high <= USABLE_TORQUE_SHARE)}`,
    },
    { label: 'push, half torque, N', cell: ({ push_force }) => push_force && three(push_force) },
  ];
}

function feedRows({ feed }: Duty): readonly Row[] {
  return [
    {
      label: 'feed up to, mm/s',
      cell: ({ feed_limit: { value, set_by } }) =>
        `${plain(value, value < 10 ? 1 : 0)}, ${set_by}${unless(feed === undefined || feed <= value)}`,
    },
    ...(feed === undefined
      ? []
      : [
          {
            label: `at ${plain(feed)} mm/s, rpm`,
            cell: ({ motor_rpm }: DriveNumbers) => (motor_rpm === undefined ? undefined : plain(motor_rpm, 0)),
          },
        ]),
  ];
}

function spanRows({ load }: Duty): readonly Row[] {
  return [
    {
      label: 'whirl 80 %, column 50 %',
      cell: ({ whirl_rpm, column_load }) => {
        if (whirl_rpm === undefined || column_load === undefined) return undefined;
        const allowed = COLUMN_SHARE * column_load;
        const enough = unless(load === undefined || load <= allowed);
        return `${plain(DERATING * whirl_rpm, 0)} rpm, ${plain(allowed, 0)} N${enough}`;
      },
    },
  ];
}

function layerRows({ layerHeights = [] }: Duty): readonly Row[] {
  return layerHeights.map((height, i) => ({
    label: `layer ${plain(height)} mm, steps`,
    cell: ({ layers }) => {
      const { full_steps, on_grid, worst_off } = layers[i]!;
      return `${plain(full_steps, 2)}${on_grid ? '' : `, off ${plain(worst_off, 4)}`}`;
    },
  }));
}

const NOT_ENOUGH = ' !';

/** A mark where a figure does not do for the duty. */
function unless(isEnough: boolean): string {
  return isEnough ? '' : NOT_ENOUGH;
}

/** `15 / 27 / 56`: at low, usual and high friction. */
function three(by: ByFriction<number>, factor = 1): string {
  return [by.low, by.nominal, by.high].map((value) => short(value * factor)).join(' / ');
}

function short(value: number): string {
  const size = Math.abs(value);
  return plain(value, size >= 9.95 ? 0 : 1).replace('-', '−');
}
