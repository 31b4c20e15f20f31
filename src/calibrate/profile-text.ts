import type { Material } from '../presets/material.js';
import type { Printer } from '../presets/printer.js';
import { plain } from '../units/format.js';
import { CALIPERS, halfWidth, type Measured } from '../units/measured.js';
import type { Believed, Calibration } from './calibration.js';
import { type Results, readOf } from './results.js';
import { resultsLines } from './results-text.js';

/** What a profile is called, and how often it was refined. */
export interface ProfileHead {
  readonly id: string;
  readonly revision: number;
}

const mm = (value: number, places = 3) => `${plain(value, places)} mm`;

/**
 * A calibration as a profile file: figures as a part sheet would have them, where each comes from, and every reading
 * they rest on. What nobody has measured is there as the preset has it, and says so.
 */
export function profileText({ id, revision }: ProfileHead, calibration: Calibration, believed: Believed): string {
  const { state, slicer, runs, thread, pockets } = calibration;
  const { material, printer } = believed;
  const held = Object.entries(pockets).map(([kind, fit]) => `${kind}: ${mm(fit.clearance)} ± ${mm(fit.half)}`);
  return [
    `# Measured by leadwright calibrate. In a part sheet: profile: ${id}`,
    `id: ${id}`,
    'kind: profile',
    `title: '${material.name}, ${plain(printer.nozzle)} mm nozzle, ${plain(printer.layer)} mm layers, read ${WHEN[state]}'`,
    `revision: ${revision}`,
    `state: ${state}`,
    `slicer_compensates: ${slicer}`,
    ...materialLines(calibration, material),
    ...printerLines(calibration, printer),
    ...(thread ? [`fit: {diametral: ${mm(thread.diametral)}, axial: ${mm(thread.axial)}}`] : []),
    ...(held.length > 0 ? [`pockets: {${held.join(', ')}}`] : []),
    ...provenanceLines(calibration),
    'runs:',
    ...runs.flatMap((run) => resultsLines(run).map((line, i) => `${i === 0 ? '  - ' : '    '}${line}`)),
    '',
  ].join('\n');
}

const WHEN = { dry: 'dry', room: 'in room air', wet: 'wet' } as const;

function materialLines({ plane, axial }: Calibration, { name, shrink }: Material): string[] {
  return [
    'material:',
    `  preset: ${name}`,
    `  shrink: {plane: ${percent(plane ?? shrink.plane)}, axial: ${percent(axial ?? shrink.axial)}}`,
  ];
}

function percent(share: Measured): string {
  const half = Math.ceil(1e4 * halfWidth(share) - 1e-6) / 100;
  return `${plain(100 * share.likely)} ± ${plain(half)} %`;
}

function printerLines({ holeOffset, outsideOffset, firstLayer }: Calibration, printer: Printer): string[] {
  const hole = holeOffset ?? { ...printer.holeOffset, spread: printer.holeSpread };
  const outside = outsideOffset ?? printer.outsideOffset;
  const layer = firstLayer ?? printer.firstLayer;
  const spread = Math.ceil(1000 * hole.spread - 1e-6) / 1000;
  return [
    'printer:',
    `  nozzle: ${mm(printer.nozzle)}`,
    `  layer: ${mm(printer.layer)}`,
    `  line_width: ${mm(printer.lineWidth)}`,
    `  hole_offset: {at_zero: ${mm(hole.at_zero, 4)}, per_mm: ${plain(hole.per_mm, 5)}, spread: ${mm(spread)}}`,
    `  outside_offset: {at_zero: ${mm(outside.at_zero, 4)}, per_mm: ${plain(outside.per_mm, 5)}}`,
    ...(layer === undefined ? [] : [`  first_layer: ${mm(layer)}`]),
  ];
}

function provenanceLines(calibration: Calibration): string[] {
  const { runs, plane, axial, holeOffset, outsideOffset } = calibration;
  const source = [...new Set(runs.map(({ coupon }) => coupon))].join(' and ');
  const guess = (path: string, known: unknown) =>
    known === undefined
      ? [`  ${path}: {type: assumption, source: common-practice, where: 'not read yet; as the presets have it'}`]
      : [];
  const line = (path: string, kind: 'hole' | 'post', known: unknown) =>
    known === undefined
      ? guess(path, known)
      : [`  ${path}: {${measured(`line over the diameter, read ${reachOf(runs, kind)}`)}}`];
  const measured = (where: string) =>
    `type: measured, source: ${JSON.stringify(`coupon ${source}`)}, where: '${where}', tolerance: 'spreads and ± as stated beside the figures, 19 times in 20'`;
  return [
    'provenance:',
    `  '*': {${measured('settings as printed; figures by least squares over the readings under runs')}}`,
    ...guess('material.shrink.plane', plane),
    ...guess('material.shrink.axial', axial),
    ...line('printer.hole_offset', 'hole', holeOffset),
    ...line('printer.outside_offset', 'post', outsideOffset),
    `  runs: {type: measured, source: calipers, where: 'the printed coupons', tolerance: 'as each run states under calipers, ± ${CALIPERS} mm where it does not'}`,
  ];
}

/** Diameters between which a line was read: `from 4 to 16 mm`. */
function reachOf(runs: readonly Results[], kind: 'hole' | 'post'): string {
  const read = runs.flatMap(({ readings = {} }) => Object.values(readings).map(readOf));
  const sizes = read.filter((one) => one.kind === kind && one.read.length > 0).map(({ modelled }) => modelled);
  return `from ${plain(Math.min(...sizes))} to ${plain(Math.max(...sizes))} mm`;
}
