import type { ByFriction, DriveNumbers } from '../../drive/numbers.js';
import { howMany } from '../../units/format.js';
import { figure } from '../figures.js';
import { xmlText } from '../xml-text.js';
import { chart, label, px, ticksOf } from './chart.js';
import { list, table } from './html.js';

const HOLDING = { holds: 'holds', 'may-creep': 'may creep', falls: 'falls' };
const WIDTH = 640;
const HEIGHT = 168;
/** Height axis: where its plot begins and ends, and where the axis lies. */
const PLOT = { left: 24, right: WIDTH - 24, axis: 118, top: 16 };

/** What the controller must know, what the motor must give, and which layer heights fall on whole steps. */
export function driveSection(drive: DriveNumbers | undefined): string {
  if (!drive) return '';
  return [
    list(drive.words),
    table('Drive numbers', ['', ''], singles(drive), [1]),
    table('By friction', ['', 'low 0.08', 'usual 0.2', 'high 0.5'], byFriction(drive), [1, 2, 3]),
    gridPlot(drive),
  ].join('\n');
}

function singles(drive: DriveNumbers): string[][] {
  const rows: [string, string | undefined][] = [
    ['screw', drive.designation],
    ['lead', `${figure(drive.lead)} mm a turn, ${drive.hand}-hand`],
    ['steps per mm', figure(drive.steps_per_mm)],
    ['full step', `${figure(drive.full_step)} mm`],
    [
      'feed up to',
      `${figure(drive.feed_limit.value)} mm/s, set by the ${drive.feed_limit.set_by === 'sliding' ? 'sliding speed' : drive.feed_limit.set_by}`,
    ],
    ['motor at the feed wanted', drive.motor_rpm === undefined ? undefined : `${figure(drive.motor_rpm)} rpm`],
    [
      'screw whirls from',
      drive.whirl_rpm === undefined ? undefined : `${figure(drive.whirl_rpm)} rpm; stay below 80 %`,
    ],
    [
      'screw buckles at',
      drive.column_load === undefined ? undefined : `${figure(drive.column_load)} N; stay below half of it`,
    ],
    ['without power', HOLDING[drive.holding]],
    ['jump when power goes', `up to ${figure(drive.power_off_jump)} mm`],
  ];
  return rows.flatMap(([name, text]) => (text === undefined ? [] : [[name, xmlText(text)]]));
}

function byFriction(drive: DriveNumbers): string[][] {
  const cells = (name: string, by: ByFriction<number> | undefined, unit: string, factor = 1): string[][] =>
    by
      ? [
          [
            name,
            ...[by.low, by.nominal, by.high].map(
              (value) => `${figure(Number((factor * value).toPrecision(3)))} ${unit}`,
            ),
          ],
        ]
      : [];
  const { low, nominal, high } = drive.holding_at;
  return [
    ...cells('torque to raise', drive.torque_raise, 'N·mm'),
    ...cells('torque to lower', drive.torque_lower, 'N·mm'),
    ...cells('share of the motor', drive.motor_share, '%', 100),
    ...cells('push at half torque', drive.push_force, 'N'),
    ...cells('efficiency', drive.efficiency, '%', 100),
    ['at rest', HOLDING[low], HOLDING[nominal], HOLDING[high]],
  ];
}

/** Layer heights that are whole full steps, and those that were asked for. */
function gridPlot({ grid_heights, layers, full_step }: DriveNumbers): string {
  if (layers.length === 0) return '';
  const heights = [...grid_heights, ...layers.map(({ height }) => height)];
  const [low, high] = [Math.min(...heights) - 0.01, Math.max(...heights) + 0.01];
  const x = (height: number) => PLOT.left + ((height - low) / (high - low)) * (PLOT.right - PLOT.left);
  const axis = [
    `<line class="axis" x1="${PLOT.left}" y1="${PLOT.axis}" x2="${PLOT.right}" y2="${PLOT.axis}"/>`,
    ...ticksOf(low, high, 8).map((tick) => label(x(tick), PLOT.axis + 18, figure(tick), 'middle')),
    label(WIDTH / 2, HEIGHT - 8, 'layer height, mm', 'middle'),
  ];
  const grid = grid_heights.map(
    (height) =>
      `<line class="step" x1="${px(x(height))}" y1="${PLOT.axis - 34}" x2="${px(x(height))}" y2="${PLOT.axis}"/>`,
  );
  const asked = layers.flatMap(({ height, on_grid, full_steps, nearest }, i) => {
    const y = PLOT.top + 16 * (i % 3) + 8;
    const arrows = on_grid
      ? []
      : nearest.map(
          (to) => `<path class="hint" d="M${px(x(height))} ${PLOT.axis - 12}L${px(x(to))} ${PLOT.axis - 12}"/>`,
        );
    return [
      `<line class="asked" x1="${px(x(height))}" y1="${y + 4}" x2="${px(x(height))}" y2="${PLOT.axis}"/>`,
      `<circle class="${on_grid ? 'on' : 'off'}" cx="${px(x(height))}" cy="${PLOT.axis - 12}" r="6"/>`,
      ...arrows,
      label(x(height), y, `${figure(height)}: ${howMany(figure(full_steps), 'step')}`, 'middle'),
    ];
  });
  const told = layers.map(
    ({ height, on_grid, full_steps, nearest, worst_off }) =>
      `${figure(height)} mm is ${figure(full_steps)} full steps, ${on_grid ? 'on the grid' : `up to ${figure(worst_off)} mm off; on the grid: ${nearest.map(figure).join(' or ')} mm`}`,
  );
  return [
    '<h3>Layer heights on the step grid</h3>',
    chart(WIDTH, HEIGHT, `Layer heights of whole full steps and those asked for. ${told.join('. ')}`, [
      ...grid,
      ...axis,
      ...asked,
    ]),
    `<p class="key"><span class="swatch tick"></span> whole full steps of ${figure(full_step)} mm <span class="swatch on"></span> asked for, on the grid <span class="swatch off"></span> asked for, off the grid</p>`,
    list(told),
  ].join('\n');
}
