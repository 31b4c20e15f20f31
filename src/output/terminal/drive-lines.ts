import type { ByFriction, DriveNumbers, LayerNumbers } from '../../drive/numbers.js';
import { figure } from '../figures.js';
import { beside, columns, WIDTH, wrapped } from './layout.js';

const COLUMN = 18;

/** Drive numbers: single ones a line each, those that depend on friction as a table, then layers and plain words. */
export function driveLines(drive: DriveNumbers, width?: number): string[] {
  return [
    ...singles(drive).flatMap(([label, text]) => beside(`  ${label}`, COLUMN, text, width)),
    '',
    ...frictionTable(drive, width),
    ...(drive.layers.length > 0 ? [''] : []),
    ...drive.layers.flatMap((layer) => beside(`  layer ${figure(layer.height)} mm`, COLUMN, layerText(layer), width)),
    ...(drive.words.length > 0 ? [''] : []),
    ...drive.words.flatMap((sentence) => wrapped(sentence, 2, width)),
  ];
}

function singles(drive: DriveNumbers): [string, string][] {
  const { whirl_rpm, column_load } = drive;
  return [
    ['lead', `${figure(drive.lead)} mm a turn, lead angle ${figure(drive.lead_angle)}°`],
    ['full step', `${figure(drive.full_step)} mm, ${figure(drive.steps_per_mm)} steps per mm with microsteps`],
    ...row('whirl', whirl_rpm, (rpm) => `from ${figure(rpm)} rpm; stay below 80 % of it`),
    ...row('column', column_load, (load) => `buckles at ${figure(load)} N; stay below half of it`),
  ];
}

function row<T>(label: string, value: T | undefined, text: (value: T) => string): [string, string][] {
  return value === undefined ? [] : [[label, text(value)]];
}

function frictionTable(drive: DriveNumbers, width = WIDTH): string[] {
  const rows: [string, ByFriction<string> | undefined][] = [
    ['  friction', { low: 'low 0.08', nominal: 'usual 0.2', high: 'high 0.5' }],
    ['  torque to raise', figures(drive.torque_raise, 'N·mm')],
    ['  torque to lower', figures(drive.torque_lower, 'N·mm')],
    ['  brake to hold', figures(drive.torque_hold, 'N·mm')],
    ['  share of motor', figures(drive.motor_share, '%', 100)],
    ['  push at half torque', figures(drive.push_force, 'N')],
    ['  efficiency', figures(drive.efficiency, '%', 100)],
    ['  at rest', drive.holding_at],
  ];
  const cells = rows.flatMap(([label, by]) => (by ? [[label, by.low, by.nominal, by.high]] : []));
  return columns(cells, { right: [1, 2, 3], gap: 3, width });
}

function figures(by: ByFriction<number> | undefined, unit: string, factor = 1): ByFriction<string> | undefined {
  if (!by) return undefined;
  const text = (value: number) => `${(value * factor).toFixed(Math.abs(value * factor) >= 100 ? 0 : 1)} ${unit}`;
  return { low: text(by.low), nominal: text(by.nominal), high: text(by.high) };
}

function layerText({ full_steps, on_grid, nearest, worst_off }: LayerNumbers): string {
  if (on_grid) return `${figure(full_steps)} full steps, on the grid`;
  return `${figure(full_steps)} full steps, up to ${figure(worst_off)} mm off; on the grid: ${nearest.map(figure).join(' or ')} mm`;
}
