import { describe, expect, it } from 'vitest';
import { check, design } from '../../../src/index.js';
import type { Finding } from '../../../src/judge/check.js';
import { strongNut as nutSheet } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';

function findings(changes: Record<string, unknown>): readonly Finding[] {
  return check(design(nutSheet(changes))).checks;
}

function finding(id: string, changes: Record<string, unknown> = {}): Finding {
  const found = findingOf(nutSheet(changes), id);
  if (!found) throw new Error(`${id} did not run`);
  return found;
}

/** A Tr8x2 by its readings: everything measured but the hand. */
const MEASURED = { form: 'trapezoidal', major: 7.95, pitch: 2, starts: 1, pitch_diameter: 6.95 };
/** A Tr10x2 of which every size was read exactly. */
const READ = {
  designation: 'Tr10x2',
  major: '10 ± 0 mm',
  pitch: '2 ± 0 mm',
  pitch_diameter: '9 ± 0 mm',
  minor: '7.5 ± 0 mm',
};
/** A coarse V of which only the crest was read. */
const V16 = { form: 'metric-v', major: 11.9, pitch: 1.75, starts: 1, hand: 'right' };
const OWN_PATTERN = { count: 4, circle: 27, start: 45, diameter: 3.6, screw: 'M3' };

/**
 * [check, what breaks it, verdict, its neighbour that passes]. Limits by common practice; the neighbour differs in the
 * one figure that the check is about.
 */
const CASES: readonly [string, Record<string, unknown>, 'caution' | 'fail', Record<string, unknown>][] = [
  [
    'thread-clearance',
    { screw: READ, fit: { diametral: 0.1, axial: 0.2 } },
    'fail',
    { screw: READ, fit: { diametral: 0.3, axial: 0.2 } },
  ],
  [
    'thread-clearance',
    { screw: READ, fit: { diametral: 0.2, axial: 0.2 } },
    'caution',
    { screw: READ, fit: { class: 'close', axial: 0.2 } },
  ],
  [
    'thread-pitch-error',
    { body: { length: 40 }, fit: { diametral: 0.3, axial: 0.05 } },
    'fail',
    { body: { length: 18 } },
  ],
  ['thread-axial', { screw: READ, fit: { diametral: 0.25, axial: 0.02 }, body: { length: 10 } }, 'caution', {}],
  [
    'thread-pitch-error',
    { screw: V16, fit: 'close', body: { diameter: 20 } },
    'fail',
    { screw: V16, fit: 'loose', body: { diameter: 20 } },
  ],
  ['thread-running-in', { printer: { layer: 0.25 } }, 'caution', { printer: { layer: 0.08 } }],
  ['thread-backlash', { fit: { axial: 0.3 } }, 'caution', {}],
  ['thread-backlash', { duty: { axis: 'horizontal' } }, 'caution', { duty: { axis: 'vertical' } }],
  ['screw-lead', { screw: { designation: 'Tr10x2', lead: 3 } }, 'fail', { screw: { designation: 'Tr10x2', lead: 4 } }],
  [
    'screw-series',
    { screw: { ...MEASURED, hand: 'right', major: 8.4 } },
    'caution',
    { screw: { ...MEASURED, hand: 'right' } },
  ],
  ['screw-hand', { screw: MEASURED }, 'caution', { screw: { ...MEASURED, hand: 'left' } }],
  ['print-layers', { printer: { nozzle: 0.6, layer: 0.4 } }, 'fail', {}],
  ['print-layers', { printer: { nozzle: 0.6, layer: 0.25 } }, 'caution', { printer: { nozzle: 0.6, layer: 0.2 } }],
  ['print-thread-depth', { screw: 'M5', body: { diameter: 12 } }, 'fail', { screw: 'Tr10x2' }],
  ['print-thread-depth', { screw: 'M8', body: { diameter: 14 } }, 'caution', { screw: 'Tr10x2' }],
  ['print-overhang', { printer: { layer: 0.15 } }, 'caution', {}],
  ['thread-lead-in', { lead_in: 0.2 }, 'caution', { lead_in: 0.3 }],
  ['wall', { body: { diameter: 13.8 } }, 'fail', { body: { diameter: 14.2 } }],
  ['hole-position', { holes: { fit: undefined, diameter: 3.1 } }, 'fail', {}],
  [
    'hole-position',
    { carriage: { holes: { ...OWN_PATTERN, circle: 24 } } },
    'fail',
    { carriage: { holes: { ...OWN_PATTERN, circle: '27 ± 0 mm' } } },
  ],
  ['hole-clearance', { holes: { head: 'body', circle: 23 } }, 'fail', { holes: { head: 'body', circle: 27 } }],
  ['hole-edge', { flange: { diameter: 31.5 } }, 'fail', { flange: { diameter: 36 } }],
  ['hole-edge', { flange: { diameter: 35 } }, 'caution', { flange: { diameter: 36 } }],
  ['hole-spacing', { holes: { count: 20, head: 'none' } }, 'fail', { holes: { count: 8, head: 'none' } }],
  [
    'drive-holding',
    {},
    'caution',
    { screw: 'Tr24x3', body: { diameter: 32, length: 40 }, flange: { diameter: 52 }, holes: { circle: 42 } },
  ],
  ['drive-torque', { duty: { load: 300 } }, 'caution', {}],
  ['drive-speed', { duty: { feed: 11 } }, 'caution', { duty: { feed: 10 } }],
  ['drive-torque', { duty: { load: 60, grease: 'dry' } }, 'caution', { duty: { load: 30, grease: 'dry' } }],
  ['drive-whirl', { duty: { span: 1200 } }, 'caution', {}],
  ['drive-whirl', { duty: { span: 1300, feed: 7 } }, 'fail', { duty: { span: 800 } }],
  ['drive-column', { duty: { span: 1400 } }, 'caution', { duty: { span: 900 } }],
  ['drive-column', { duty: { load: 30, span: 1600 } }, 'fail', { duty: { load: 10, span: 1600 } }],
  ['drive-layer-grid', { duty: { layer_heights: [0.1, 0.125] } }, 'caution', {}],
  ['mount-bore', { carriage: { bore: 16.9 } }, 'fail', { carriage: { bore: 17.6 } }],
  ['mount-bore', { carriage: { bore: 17.1 } }, 'caution', { carriage: { bore: 17.6 } }],
  ['mount-seat', { carriage: { bore: 17.6 }, fillet: 1 }, 'caution', { carriage: { bore: 17.6 } }],
  ['mount-float', { holes: { fit: 'fine' } }, 'caution', { holes: { fit: undefined, diameter: 3.9 } }],
  ['pocket-wall', { holes: { joint: 'insert', circle: 33 } }, 'fail', { holes: { joint: 'insert' } }],
  [
    'pocket-floor',
    { holes: { joint: 'counterbore' }, flange: { thickness: 3.2 } },
    'fail',
    { holes: { joint: 'counterbore' } },
  ],
  ['heat', { duty: { temperature: 90 } }, 'fail', { duty: { temperature: 40 } }],
  ['shrink-applied-once', { printer: { compensation: undefined } }, 'caution', {}],
];

describe('the checks of a nut', () => {
  it.each(CASES)('%s notices %j as a %s, and lets its neighbour pass', (id, broken, verdict, neighbour) => {
    expect(finding(id, broken).verdict).toBe(verdict);
    expect(finding(id, neighbour).verdict).toBe('pass');
  });

  it('every check of the sound nut has a message and, where it measures, a limit and a margin', () => {
    for (const row of findings({})) {
      expect(row.message).not.toBe('');
      expect(row.source).not.toBe('');
      if (row.limit) expect(row.margin).not.toBeNull();
    }
  });
});

describe('what a check reports', () => {
  it('states backlash as c·tan(flank) + a', () => {
    // hand: 0.3 × tan 15° + 0.1 = 0.0804 + 0.1
    expect(finding('thread-backlash', { screw: READ, effects: 'off' }).value).toBeCloseTo(0.18038, 4);
  });

  it('whirl and column take the thinnest root of the class, and a rolled one for the worst', () => {
    // Tr10x2 7e: 7.5 − (1.25·0.19 + 0.071) = 7.1915, rolled 0.3 less; 180 rpm at 6 mm/s
    const whirl = (root: number) => (1.209e8 * 0.36 * root) / 260 ** 2;
    const row = finding('drive-whirl');
    expect(row.value).toBeCloseTo(180 / whirl(7.1915), 4);
    expect(row.most).toBeCloseTo(180 / whirl(6.8915), 4);
    const column = (root: number) => (0.25 * Math.PI ** 2 * 207000 * Math.PI * root ** 4) / 64 / 260 ** 2;
    expect(finding('drive-column').value).toBeCloseTo(30 / column(7.1915), 4);
    expect(finding('drive-column').most).toBeCloseTo(30 / column(6.8915), 4);
    expect(finding('drive-column', { screw: { designation: 'Tr10x2', minor: '7.4 ± 0.1 mm' } }).most).toBeCloseTo(
      30 / column(7.3),
      4,
    );
  });

  it('says what a dry print may ask of the motor, and a dry nut passes only if that is enough', () => {
    // T = F·dm/2·(l + π·f·dm·sec α)/(π·dm − f·l·sec α), textbook
    const raise = (friction: number) => {
      const f = friction / Math.cos(Math.PI / 12);
      return (30 * 4.5 * (2 + Math.PI * f * 9)) / (Math.PI * 9 - f * 2);
    };
    const dry = finding('drive-torque', { duty: { grease: 'dry' } });
    expect(dry.value).toBeCloseTo(raise(0.5), 6);
    expect(dry.most).toBeCloseTo(raise(1.1), 6);
    expect(dry.message).toContain(`a dry print may reach 1.1, then it takes ${raise(1.1).toFixed(0)} N·mm`);
    expect(finding('drive-torque').most).toBeCloseTo(raise(0.5), 6);
  });

  it('takes the residual shrink over the whole length from the play: all of it in one nut of twenty', () => {
    // hand: 0.18038 − 0.005 × 18 − 0.001 × 18 at worst; one in forty is below
    const { value } = finding('thread-pitch-error', {
      screw: READ,
      effects: { moisture: 'off', temperature: 'off' },
    });
    expect(value).toBeGreaterThan(0.075);
    expect(value).toBeLessThan(0.0904);
  });

  it('states one range, in the check and in the predicted fit', () => {
    const report = check(design(nutSheet({ screw: 'Tr8x8(P2)', body: { diameter: 15 }, duty: { feed: undefined } })));
    const row = report.checks.find(({ id }) => id === 'thread-backlash')!;
    expect([row.least, row.value, row.most]).toEqual(
      [report.fit!.backlash.least, report.fit!.backlash.likely, report.fit!.backlash.most].map((figure) =>
        expect.closeTo(figure, 5),
      ),
    );
    expect(report.checks.find(({ id }) => id === 'thread-pitch-error')!.value).toBeCloseTo(
      report.fit!.axial_clearance.least,
      5,
    );
  });

  it('says what must be measured, and which fit is enough without it', () => {
    const { message } = finding('thread-pitch-error', { screw: V16, fit: 'close', body: { diameter: 20 } });
    expect(message).toMatch(
      /measure the pitch diameter \(screw\.pitch_diameter, or screw\.wires\).*fit: running is enough/,
    );
  });

  it('passes at the limit exactly', () => {
    // 4.5 mm from centre to edge, M3: 1.5 diameters
    expect(finding('hole-edge', { flange: { diameter: 36 } })).toMatchObject({
      verdict: 'pass',
      value: 1.5,
      margin: 0,
    });
  });

  it('adds the whole shrink and offset where nobody compensates', () => {
    const bare = finding('thread-clearance', {
      screw: READ,
      printer: { compensation: 'none' },
      effects: { moisture: 'off', facets: 'off', temperature: 'off' },
    });
    // hand: 0.3 − 0.15 − 0.01 × 9.3
    expect(bare.value).toBeCloseTo(0.057, 3);
    expect(bare.verdict).toBe('fail');
  });

  it('cannot judge what it has no figure for, and says which', () => {
    expect(finding('drive-torque', { duty: { load: undefined } })).toMatchObject({
      verdict: 'caution',
      value: null,
      message: 'not judged: duty.load is missing',
    });
    expect(finding('heat', { duty: { temperature: undefined } }).message).toBe(
      'not judged: duty.temperature is missing',
    );
  });

  it('leaves out what does not apply', () => {
    const ids = findings({
      holes: undefined,
      flange: undefined,
      duty: { axis: 'horizontal', layer_heights: undefined },
    }).map(({ id }) => id);
    for (const id of ['hole-position', 'hole-edge', 'mount-float', 'drive-holding', 'drive-layer-grid', 'pocket-wall'])
      expect(ids).not.toContain(id);
  });

  it('names a miscounted crest', () => {
    // 10 pitches of 2 mm measured as 11
    const row = finding('screw-series', {
      screw: { form: 'trapezoidal', major: 7.95, crests: { count: 11, length: 20.02 }, hand: 'right' },
    });
    expect(row.verdict).toBe('caution');
    expect(row.message).toContain('over 10');
  });

  it('takes limits from the sheet, and tells so', () => {
    const row = finding('hole-edge', { flange: { diameter: 34 }, limits: { 'hole-edge': { min: 1.1 } } });
    expect(row).toMatchObject({ verdict: 'pass', limit: { min: 1.1 }, replaced_limit: { min: 1.5 } });
    expect(row.source).toContain('the sheet');
  });
});
