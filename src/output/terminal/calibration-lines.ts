import type { Believed, Calibration } from '../../calibrate/calibration.js';
import type { Parameter } from '../../calibrate/print-model.js';
import { howMany, plain } from '../../units/format.js';
import { halfWidth, type Measured } from '../../units/measured.js';
import { beside, columns, WIDTH, wrapped } from './layout.js';

/** What a calibration came to, for people. */
export function calibrationLines(calibration: Calibration, believed: Believed, width?: number): string[] {
  const { outliers, unknown, warnings, solution } = calibration;
  const sections: [string, string[]][] = [
    ['', wrapped(headLine(calibration), 0, width)],
    ['Figures', figureLines(calibration, believed, width)],
    ['By hand', handLines(calibration, width)],
    ['Left out', outliers.flatMap(({ mark, why }) => beside(`  ${mark}`, 16, why, width))],
    ['Not yet known', unknown.flatMap((line) => beside('  –', 4, line, width))],
    ['Read less expected', residualLines(calibration, width)],
    ['Mind', [...warnings, ...scatterWords(solution.scatter)].flatMap((line) => beside('  –', 4, line, width))],
  ];
  return sections
    .filter(([, lines]) => lines.length > 0)
    .flatMap(([title, lines], i) => [...(i === 0 ? [] : ['']), ...(title === '' ? [] : [title]), ...lines]);
}

function headLine({ runs, state }: Calibration): string {
  const rows = runs.flatMap(({ readings = {} }) => Object.values(readings).map(({ read = [] }) => read.length));
  const read = rows.filter((count) => count > 0);
  const when = { dry: 'dry', room: 'in room air', wet: 'wet' }[state];
  const coupons = [...new Set(runs.map(({ coupon }) => coupon))].join(', ');
  return `${coupons}: ${howMany(
    read.reduce((sum, count) => sum + count, 0),
    'reading',
  )} of ${howMany(read.length, 'feature')}, read ${when}`;
}

interface Row {
  readonly name: Parameter;
  readonly what: string;
  readonly factor: number;
  readonly unit: string;
  readonly places: number;
}

const ROWS: readonly Row[] = [
  { name: 'plane', what: 'in-plane shrink', factor: 100, unit: '%', places: 3 },
  { name: 'skew', what: 'X more than Y, half', factor: 100, unit: '%', places: 3 },
  { name: 'axial', what: 'axial shrink', factor: 100, unit: '%', places: 3 },
  { name: 'hole_at_zero', what: 'holes small by, at ⌀ 0', factor: 1, unit: 'mm', places: 3 },
  { name: 'hole_per_mm', what: '  and per mm', factor: 1, unit: 'mm', places: 4 },
  { name: 'post_at_zero', what: 'outsides small by, at ⌀ 0', factor: 1, unit: 'mm', places: 3 },
  { name: 'post_per_mm', what: '  and per mm', factor: 1, unit: 'mm', places: 4 },
  { name: 'wall', what: 'walls stand out by', factor: 1, unit: 'mm', places: 3 },
  { name: 'first_layer', what: 'first layer, a side', factor: 1, unit: 'mm', places: 3 },
  { name: 'height_error', what: 'every height', factor: 1, unit: 'mm', places: 3 },
];

function figureLines({ solution, holeOffset }: Calibration, { material, printer }: Believed, width = WIDTH): string[] {
  const preset: Partial<Record<Parameter, string>> = {
    plane: share(material.shrink.plane),
    axial: share(material.shrink.axial),
    hole_at_zero: `${plain(printer.holeOffset.at_zero)} ± ${plain(printer.holeSpread)} mm`,
  };
  const rows = ROWS.flatMap(({ name, what, factor, unit, places }) => {
    const estimate = solution.estimates[name];
    if (!estimate) return [];
    const show = (value: number) => `${(factor * value).toFixed(places)} ${unit}`;
    const borrowed = solution.borrowed.includes(name) ? 'not told apart: as the preset' : (preset[name] ?? '');
    return [[`  ${what}`, show(estimate.value), show(estimate.standardError), borrowed]];
  });
  if (rows.length === 0) return [];
  const spread = holeOffset
    ? wrapped(`a hole comes out within ± ${plain(holeOffset.spread)} mm of what is wanted, 19 times in 20`, 2, width)
    : [];
  return [...columns([['  ', 'value', 'std. error', 'before'], ...rows], { right: [1, 2], width }), ...spread];
}

function share(value: Measured): string {
  return `${plain(100 * value.likely)} ± ${plain(100 * halfWidth(value))} %`;
}

function handLines({ thread, pockets }: Calibration, width?: number): string[] {
  const rows = Object.entries(pockets).map(([kind, { clearance, half, how }]) => [
    `  ${kind.replace('_', ' ')}`,
    `${plain(clearance, 2)} ± ${plain(half, 2)} mm`,
    how,
  ]);
  const threads = thread
    ? [
        [
          '  thread',
          `${plain(thread.diametral, 2)} ± ${plain(thread.half, 2)} mm`,
          `axial ${plain(thread.axial, 2)} mm; ${thread.how}`,
        ],
      ]
    : [];
  const all = [...threads, ...rows];
  const [label, figure] = [0, 1].map((i) => Math.max(0, ...all.map((row) => row[i]!.length)) + 2);
  return all.flatMap(([name, size = '', how = '']) =>
    beside(`${name!.padEnd(label!)}${size}`, label! + figure!, how, width),
  );
}

function residualLines({ solution }: Calibration, width?: number): string[] {
  const cells = solution.residuals.map(
    ({ mark, residual }) => `${mark} ${residual >= 0 ? '+' : '−'}${Math.abs(residual).toFixed(3)}`,
  );
  return cells.length === 0 ? [] : wrapped(`${cells.join(', ')} mm`, 2, width);
}

function scatterWords(scatter: number): string[] {
  return scatter < 1.5
    ? []
    : [
        `The readings scatter ${plain(scatter, 1)} times as much as calipers and a good print do; the errors above count that.`,
      ];
}
