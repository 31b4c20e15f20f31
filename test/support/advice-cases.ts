import { expect } from 'vitest';
import { parse } from 'yaml';
import { check, design } from '../../src/index.js';
import type { Advice } from '../../src/judge/advice.js';
import { advise } from '../../src/pipeline/advise.js';
import { couplingSheet } from './coupling-sheets.js';
import { nutSheet } from './nut-sheets.js';

/** A Tr10x2 with its flanks measured. */
export const READ = { designation: 'Tr10x2', pitch_diameter: '9 ± 0 mm' };
const PATTERN = { count: 4, circle: '27 ± 0 mm', start: 45, diameter: 3.6, screw: 'M3' };

/** A level axis does not fall, which would be one more thing to look into. */
export const LONG = { body: { length: 40 }, fit: { diametral: 0.3, axial: 0.05 }, duty: { axis: 'horizontal' } };

/** Failing sheets of the checks' own tests that a size of the part can cure. */
export const CURABLE: readonly [string, Record<string, unknown>][] = [
  ['thread-clearance', { screw: READ, fit: { diametral: 0.1, axial: 0.2 } }],
  ['thread-pitch-error', LONG],
  ['print-layers', { printer: { nozzle: 0.6, layer: 0.4 } }],
  ['wall', { body: { diameter: 13.8 } }],
  ['hole-position', { holes: { fit: undefined, diameter: 3.1 } }],
  ['hole-position', { carriage: { holes: { ...PATTERN, circle: 24 } } }],
  ['hole-clearance', { holes: { head: 'body', circle: 23 } }],
  ['hole-edge', { flange: { diameter: 31.5 } }],
  ['hole-spacing', { holes: { count: 18, head: 'none' } }],
  ['mount-bore', { carriage: { bore: 16.9 } }],
];

/** The same, on which it takes seconds to try what there is. */
export const CURABLE_LONG: readonly [string, Record<string, unknown>][] = [
  ['print-thread-depth', { screw: 'M5', body: { diameter: 12 }, duty: { motor: { torque: '0.1 N m' } } }],
  [
    'thread-pressure',
    {
      duty: { load: 280, motor: { torque: '0.36 N m' } },
      flange: { thickness: 16, diameter: 50 },
      body: { diameter: 28 },
      holes: { circle: 38 },
    },
  ],
];

/** Failing sheets that no size of the part can cure. */
export const HOPELESS: readonly [string, Record<string, unknown>, RegExp][] = [
  ['screw-lead', { screw: { designation: 'Tr10x2', lead: 3 } }, /hangs on screw\.lead/],
];

/** The same, likewise. */
export const HOPELESS_LONG: readonly [string, Record<string, unknown>, RegExp][] = [
  ['heat', { duty: { axis: 'horizontal', temperature: 90 } }, /hangs on duty\.temperature, material/],
];

const SLEEVE = {
  part: 'sleeve',
  name: 'a',
  form: 'clamp',
  motor: { shaft: { diameter: 5, flat: 4.5 }, torque: 0.3 },
  shaft: { diameter: 8 },
  material: 'pa12',
  printer: { compensation: 'file' },
};
const ADAPTER = {
  part: 'adapter',
  name: 'a',
  nut: {
    body: 10.2,
    length: 15,
    flange: { diameter: 22, thickness: 3.5 },
    holes: { count: 4, circle: 16, start: 45, screw: 'M3' },
  },
  carriage: { bore: 10.8, thickness: 8, holes: { count: 4, circle: 32, screw: 'M3' } },
  material: 'pa12',
  printer: { compensation: 'file' },
};

/** Sheets of the other kinds, each with a check that a size of the part can cure. */
export const OTHERS: readonly [string, string, Record<string, unknown>][] = [
  [
    'coupling',
    'insert-stress',
    couplingSheet({ motor: { torque: 0.6 }, hubs: { outside_diameter: 30 }, insert: { height: 3 } }),
  ],
  ['coupling', 'coupling-play', couplingSheet({ insert: { flank_clearance: 0.6 } })],
  ['coupling', 'assembly-entry', couplingSheet({ jaws: { bevel: 0 }, insert: { flank_clearance: 0 } })],
  ['adapter', 'hole-edge', { ...ADAPTER, plate: { outline: { rim: 0.8 } } }],
  ['adapter', 'thread-engagement', { ...ADAPTER, plate: { thickness: 2, outline: 'hull' } }],
  ['adapter', 'mount-bore', { ...ADAPTER, plate: { bore: 10.1 } }],
];

/** The same, likewise. */
export const OTHERS_LONG: readonly [string, string, Record<string, unknown>][] = [
  ['coupling', 'jaw-bending', couplingSheet({ motor: { torque: 4 }, hubs: { outside_diameter: 30 } })],
  ['coupling', 'bore-runout', couplingSheet({ screw_hub: { bore_clearance: 0.5 } })],
  ['sleeve', 'wall', { ...SLEEVE, printer: { ...SLEEVE.printer, nozzle: 0.8 } }],
];

const known = new Map<string, Advice>();

/** Advice on a sheet, looked for once where several tests ask. */
export function adviceOn(sheet: Record<string, unknown>): Advice {
  const key = JSON.stringify(sheet);
  const advice = known.get(key) ?? advise(sheet);
  known.set(key, advice);
  return advice;
}

/** The sheet with the printed lines in place of its own. */
export function pasted(sheet: Record<string, unknown>, lines: readonly string[]): Record<string, unknown> {
  return Object.assign({}, sheet, ...lines.map((line) => parse(line)));
}

/** The lines that advice prints, pasted in, end the fail. */
export function expectCured(id: string, changes: Record<string, unknown>): void {
  const sheet = nutSheet(changes);
  const before = check(design(sheet)).checks.find((row) => row.id === id);
  expect(before?.verdict).toBe('fail');
  const advice = adviceOn(sheet);
  const own = advice.checks.find((row) => row.check === id)!;
  expect(own.none).toBeUndefined();
  for (const cure of own.cures) {
    const after = check(design(pasted(sheet, cure.lines))).checks.find((row) => row.id === id);
    expect(after?.verdict).toBe(cure.reaches);
  }
  const report = check(design(pasted(sheet, advice.together!.lines)));
  expect(report.checks.filter(({ verdict }) => verdict === 'fail')).toEqual([]);
  expect(advice.together!.verdict).not.toBe('fail');
}

/** The same of another kind: they bring the check where it is said. */
export function expectBrought(id: string, sheet: Record<string, unknown>): void {
  const before = check(design(sheet)).checks.find((row) => row.id === id);
  expect(before?.verdict).not.toBe('pass');
  const own = adviceOn(sheet).checks.find((row) => row.check === id)!;
  expect(own.cures).not.toEqual([]);
  for (const cure of own.cures) {
    const after = check(design(pasted(sheet, cure.lines))).checks;
    expect(after.find((row) => row.id === id)?.verdict).toBe(cure.reaches);
    expect(cure.reaches).not.toBe(before?.verdict);
  }
}

/** That nothing cures is said with what it hangs on. */
export function expectHopeless(id: string, changes: Record<string, unknown>, why: RegExp): void {
  const own = adviceOn(nutSheet(changes)).checks.find((row) => row.check === id)!;
  expect(own.cures).toEqual([]);
  expect(own.none).toMatch(why);
}
