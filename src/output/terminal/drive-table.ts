import type { Comparison } from '../../drive/compare-screws.js';
import type { Duty } from '../../drive/duty.js';
import type { ByFriction, DriveNumbers } from '../../drive/numbers.js';
import { DRY_PRINT_MOST, FRICTION } from '../../mechanics/friction.js';
import { USABLE_TORQUE_SHARE } from '../../mechanics/stepper.js';
import { DERATING } from '../../mechanics/whirl.js';
import { plain } from '../../units/format.js';
import { figure } from '../figures.js';
import { columns, wrapped } from './layout.js';
import type { Paint } from './paint.js';

/** A line of the table: what it says, and each screw's answer; left out where no screw has one. */
interface Row {
  readonly label: string;
  readonly cell: (numbers: DriveNumbers, place: number) => string | undefined;
}

const GAP = 2;
const HOLDING = { falls: 'falls', 'may-creep': 'may creep', holds: 'holds' } as const;

/** The figures of all screws, a column each; more screws than fit side by side stand below each other. */
export function driveTable(comparison: Comparison, duty: Duty, style: Paint, width: number): string[] {
  const rows = rowsFor(comparison, duty);
  const cells = comparison.screws.map((numbers, place) => [
    numbers.designation,
    ...rows.map(({ cell }) => cell(numbers, place) ?? ''),
  ]);
  const told = rows.map((_, i) => cells.some((column) => column[i + 1] !== ''));
  const kept = (_: string, i: number) => i === 0 || told[i - 1] === true;
  const labels = ['', ...rows.map(({ label }) => `  ${label}`)].filter(kept);
  const blocks = inBlocks(
    labels,
    cells.map((column) => column.filter(kept)),
    width,
  );
  return [
    ...blocks.flatMap((block, i) => [...(i === 0 ? [] : ['']), ...blockLines(labels, block, style)]),
    ...legend(
      comparison,
      cells.some((column) => column.some((cell) => cell.endsWith(NOT_ENOUGH))),
      width,
    ).map(style.dim),
  ];
}

function blockLines(labels: readonly string[], block: readonly (readonly string[])[], style: Paint): string[] {
  const [head = '', ...lines] = columns(
    labels.map((label, i) => [label, ...block.map((column) => column[i]!)]),
    { gap: GAP },
  );
  return [style.bold(head), ...lines];
}

function legend({ screws }: Comparison, anyMarked: boolean, width: number): string[] {
  const driven = screws.some(({ torque_lower }) => torque_lower !== undefined && torque_lower.low < 0);
  const off = screws.some(({ layers }) => layers.some(({ on_grid }) => !on_grid));
  const further = [
    ...(anyMarked ? ['! not enough for this duty'] : []),
    ...(driven ? ['below 0 the load drives the screw'] : []),
    ...(off ? ['off: mm from a full step at worst'] : []),
  ];
  return [
    ...wrapped(
      `friction ${FRICTION.low}, freshly greased / ${FRICTION.nominal}, usual / ${FRICTION.high}, dry print (some reach ${DRY_PRINT_MOST})`,
      2,
      width,
    ),
    ...wrapped(further.join('; '), 2, width),
  ];
}

/** Columns that fit side by side, in their order. */
function inBlocks(
  labels: readonly string[],
  screws: readonly (readonly string[])[],
  most: number,
): readonly (readonly (readonly string[])[])[] {
  const widthOf = (column: readonly string[]) => Math.max(...column.map((cell) => cell.length));
  const blocks: (readonly string[])[][] = [[]];
  let width = widthOf(labels);
  for (const column of screws) {
    const wanted = GAP + widthOf(column);
    if (width + wanted > most && blocks.at(-1)!.length > 0) {
      blocks.push([]);
      width = widthOf(labels);
    }
    blocks.at(-1)!.push(column);
    width += wanted;
  }
  return blocks;
}

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
      cell: ({ play }) => play && `${plain(play.axial, 2)}, ${plain(play.full_steps, 1)} steps`,
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
      label: '80 % of whirl, column',
      cell: ({ whirl_rpm, column_load }) => {
        if (whirl_rpm === undefined || column_load === undefined) return undefined;
        const allowed = DERATING * column_load;
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
