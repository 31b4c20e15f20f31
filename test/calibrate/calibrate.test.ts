import { describe, expect, it } from 'vitest';
import type { Results } from '../../src/calibrate/results.js';
import { calibrateRuns, readOldProfile, readResults, refineRuns, writeProfile } from '../../src/pipeline/calibrate.js';
import { InputError } from '../../src/units/faults.js';
import { type Nature, randomNature, readCoupon } from '../support/simulated-printer.js';
import { coverage, truthOf, usualCoupon } from './recovery.js';

const { head, features } = usualCoupon();

/** A printer without chance in it: what is put in can be reckoned by hand. */
const PLAIN: Nature = {
  shrinkX: 0.01,
  shrinkY: 0.008,
  shrinkZ: 0.005,
  hole: [0.2, -0.003],
  post: [0.03, 0.001],
  wall: 0.02,
  squash: 0.15,
  nozzleGap: -0.05,
  form: 0,
  reading: 0,
};

function readings(nature: Nature, more: Partial<Parameters<typeof readCoupon>[3]> = {}): Results {
  return readCoupon(head, features, nature, { seed: 5, ...more });
}

/** The same results with only some of the features read. */
function only(results: Results, marks: RegExp): Results {
  const kept = Object.entries(results.readings ?? {}).filter(([mark]) => marks.test(mark));
  return { ...results, readings: Object.fromEntries(kept) };
}

function changed(results: Results, mark: string, change: (read: readonly number[]) => number[]): Results {
  const rows = Object.entries(results.readings ?? {}).map(([key, row]) => [
    key,
    key === mark ? { ...row, read: change(row.read ?? []) } : row,
  ]);
  return { ...results, readings: Object.fromEntries(rows) };
}

function faultOf(work: () => unknown): string {
  try {
    work();
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
  throw new Error('nothing was refused');
}

describe('calibrateRuns', () => {
  it('finds what was put in where nothing is left to chance', () => {
    const { calibration } = calibrateRuns([readings(PLAIN)]);
    for (const [name, truth] of Object.entries(truthOf(PLAIN))) {
      const found = Object.entries(calibration.solution.estimates).find(([key]) => key === name)![1];
      expect(found.value, name).toBeCloseTo(truth, 9);
    }
    expect(calibration.outliers).toEqual([]);
    expect(calibration.unknown).toEqual([]);
  });

  it('recovers random printers within two standard errors 19 times in 20', () => {
    // 40 printers with 10 figures each; the soak has 200
    const { all, falseAlarms } = coverage(40);
    expect(all).toBeGreaterThan(0.93);
    expect(falseAlarms).toBeLessThan(4);
  });

  it('gives the same for the same readings', () => {
    const text = () => writeProfile('a', 1, calibrateRuns([readings(randomNature(3))]));
    expect(text()).toBe(text());
  });

  it('calls a misread one of three readings an outlier, and says why', () => {
    const off = changed(readings(randomNature(4)), 'B2', ([a, b, c]) => [a!, b! + 0.3, c!]);
    const { calibration } = calibrateRuns([off]);
    expect(calibration.outliers).toHaveLength(1);
    expect(calibration.outliers[0]).toMatchObject({ mark: 'B2' });
    expect(calibration.outliers[0]!.why).toMatch(/0\.\d+ mm off the other readings of the same feature/);
  });

  it.each(['B2', 'P3', 'X2 over', 'Y1 between', 'Z2'])('finds that %s does not follow the others', (mark) => {
    const off = changed(readings(randomNature(6)), mark, (read) => read.map((one) => one + 0.3));
    const { calibration } = calibrateRuns([off]);
    const marks = calibration.outliers.map((one) => one.mark);
    expect(marks[0]).toMatch(mark.slice(0, 1));
    const truth = (randomNature(6).shrinkX + randomNature(6).shrinkY) / 2;
    expect(Math.abs(calibration.plane!.likely - truth)).toBeLessThan(0.001);
  });

  it('names what a part of the readings does not tell, and which feature would', () => {
    const { calibration } = calibrateRuns([only(readings(PLAIN), /^B/)]);
    expect(calibration.plane).toBeUndefined();
    expect(calibration.axial).toBeUndefined();
    expect(calibration.holeOffset).toBeDefined();
    expect(calibration.unknown.join('\n')).toMatch(/in-plane shrink: read over and between/);
    expect(calibration.unknown.join('\n')).toMatch(/rests on the shrink of the preset/);
  });

  it('does not fit a line through one diameter', () => {
    const { calibration } = calibrateRuns([only(readings(PLAIN), /^([XYZ]|B2)/)]);
    expect(calibration.holeOffset).toBeUndefined();
    expect(calibration.unknown.join('\n')).toMatch(/hole offset by diameter: one diameter does not make a line/);
    expect(calibration.plane!.likely).toBeCloseTo(0.009, 6);
  });

  it('does not part shrink from walls where only one outside was read', () => {
    expect(faultOf(() => calibrateRuns([only(readings(PLAIN), /^X2 over/)]))).toMatch(
      /tell nothing yet: in-plane shrink: read over and between the same blocks/,
    );
  });

  it('refuses a single reading', () => {
    const one = changed(only(readings(PLAIN), /^Z1/), 'Z1', (read) => read.slice(0, 1));
    expect(faultOf(() => calibrateRuns([one]))).toMatch(/tell nothing yet: .*axial shrink: read at least two heights/);
  });

  it('refuses an empty file', () => {
    expect(faultOf(() => calibrateRuns([only(readings(PLAIN), /^$/)]))).toMatch(/tell nothing yet/);
  });

  it('refuses two printers in turn within each feature', () => {
    const [one, other] = [readings(PLAIN), readings({ ...PLAIN, shrinkX: 0.002, shrinkY: 0.002, hole: [0.4, 0] })];
    const rows = Object.entries(one.readings ?? {}).map(([mark, row]) => [
      mark,
      { ...row, read: [...(row.read ?? []).slice(0, 1), ...(other.readings?.[mark]?.read ?? []).slice(0, 1)] },
    ]);
    expect(faultOf(() => calibrateRuns([{ ...one, readings: Object.fromEntries(rows) }]))).toMatch(
      /part into groups: are two printers/,
    );
  });

  it('refuses two printers feature by feature', () => {
    const [one, other] = [
      readings(PLAIN),
      readings({ ...PLAIN, shrinkX: 0.002, shrinkY: 0.002, hole: [0.5, 0], post: [-0.2, 0] }),
    ];
    const rows = Object.entries(one.readings ?? {}).map(([mark, row], i) => [
      mark,
      i % 2 === 0 ? row : other.readings![mark],
    ]);
    expect(faultOf(() => calibrateRuns([{ ...one, readings: Object.fromEntries(rows) }]))).toMatch(
      /do not follow one printer/,
    );
  });
});

describe('the slicer', () => {
  it('is suspected where the print hardly shrank', () => {
    const { calibration } = calibrateRuns([readings({ ...PLAIN, shrinkX: 0.0005, shrinkY: 0.0005 })]);
    expect(calibration.warnings.join('\n')).toMatch(/shrank by 0.05 % only.*does the slicer scale/);
  });

  it('is not suspected where it is said to scale', () => {
    const { calibration } = calibrateRuns([readings({ ...PLAIN, shrinkX: 0, shrinkY: 0 }, { answer: 'shrink' })]);
    expect(calibration.warnings).toEqual([]);
  });

  it('is suspected of scaling twice where the print is larger than the file', () => {
    const { calibration } = calibrateRuns([
      readings({ ...PLAIN, shrinkX: -0.008, shrinkY: -0.008 }, { answer: 'both' }),
    ]);
    expect(calibration.warnings.join('\n')).toMatch(/0.8 % larger than the file: .*perhaps twice/);
  });

  it('is doubted where it is said to correct and did not', () => {
    const { calibration } = calibrateRuns([readings({ ...PLAIN, shrinkX: 0.011, shrinkY: 0.011 }, { answer: 'both' })]);
    expect(calibration.warnings.join('\n')).toMatch(/said to take out the shrink, yet/);
    expect(calibration.warnings.join('\n')).toMatch(/said to enlarge holes, yet/);
  });

  it('is suspected of enlarging holes that came out large', () => {
    const { calibration } = calibrateRuns([readings({ ...PLAIN, hole: [-0.15, 0] })]);
    expect(calibration.warnings.join('\n')).toMatch(/larger than in the file: does the slicer enlarge them/);
  });
});

describe('X and Y', () => {
  it('are told apart, warned of, and counted as spread', () => {
    const { calibration } = calibrateRuns([readings(PLAIN)]);
    expect(calibration.warnings.join('\n')).toMatch(/^X shrinks 0.20 % more than Y/);
    expect(calibration.plane!.most - calibration.plane!.likely).toBeGreaterThan(0.001);
  });
});

describe('the hand', () => {
  const feel = (felt: Record<string, 'no' | 'tight' | 'good' | 'loose'>) => (mark: string) => felt[mark] ?? 'tight';

  it('has its clearance as it came out, not as it was drawn', () => {
    // drawn for shrink 1.1 % and offset 0.15, printed with 0.9 % and 0.2 − 0.003·D: at the pitch diameter 7 with
    // c = 0.3, D' = (7.3 + 0.15)/(1 − 0.011) = 7.5329, out D'·(1 − 0.009) − 0.2 + 0.003·7.3 = 7.2870, so 0.287
    const results = readings(PLAIN, { feel: feel({ T1: 'no', T2: 'tight', T3: 'good', T4: 'loose', T5: 'loose' }) });
    const { calibration } = calibrateRuns([results]);
    expect(calibration.thread!.diametral).toBeCloseTo(0.287, 3);
  });

  it('lies between tight and loose where nothing is good', () => {
    const results = readings(PLAIN, { feel: feel({ T1: 'no', T2: 'tight', T3: 'tight', T4: 'loose', T5: 'loose' }) });
    expect(calibrateRuns([results]).calibration.thread!.how).toBe('between T3, tight, and T4, loose');
  });

  it('is not believed where a wider nut is tighter', () => {
    const results = readings(PLAIN, { feel: feel({ T1: 'tight', T2: 'loose', T3: 'tight', T4: 'good', T5: 'loose' }) });
    const { calibration } = calibrateRuns([results]);
    expect(calibration.thread).toBeUndefined();
    expect(calibration.unknown.join('\n')).toMatch(/T3 is tight although it is wider than T2, which is loose/);
  });

  it('asks for other steps where all are tight', () => {
    const { calibration } = calibrateRuns([readings(PLAIN, { feel: () => 'tight' })]);
    expect(calibration.unknown.join('\n')).toMatch(
      /even T5, the widest that was tried, is tight; print steps with more/,
    );
  });
});

describe('refining', () => {
  const nature = randomNature(11);
  const first = readings(nature, { seed: 21 });
  const old = { revision: 3, runs: [first] };

  it('narrows the figures', () => {
    const before = calibrateRuns([first]).calibration.solution.estimates;
    const after = refineRuns(old, [readings(nature, { seed: 22 })]).calibration.solution.estimates;
    for (const name of ['plane', 'axial', 'hole_at_zero'] as const) {
      expect(after[name]!.standardError).toBeLessThan(0.9 * before[name]!.standardError);
    }
  });

  it('completes what the old readings left open', () => {
    const half = { revision: 1, runs: [only(readings(PLAIN), /^([XYBP]|Z1)/)] };
    const { calibration } = refineRuns(half, [only(readings(PLAIN), /^Z3/)]);
    expect(calibration.axial!.likely).toBeCloseTo(0.005, 9);
  });

  it('refuses the readings that are there already', () => {
    expect(faultOf(() => refineRuns(old, [first]))).toMatch(/are in the profile already/);
  });

  it('refuses readings of another printer', () => {
    const other = readings({ ...nature, hole: [nature.hole[0] + 0.3, nature.hole[1]] }, { seed: 23 });
    expect(faultOf(() => refineRuns(old, [other]))).toMatch(/of another printer than the profile: hole offset at 6 mm/);
  });

  it('refuses readings of another state, and of another layer', () => {
    expect(faultOf(() => refineRuns(old, [readings(nature, { seed: 24, state: 'dry' })]))).toMatch(
      /^state: dry; differs/,
    );
    const thicker = { ...readings(nature, { seed: 25 }), printer: { nozzle: 0.4, layer: 0.2, line_width: 0.45 } };
    expect(faultOf(() => refineRuns(old, [thicker]))).toMatch(/^printer.layer: 0.2; differs/);
  });

  it('finds every reading again in a written profile', () => {
    const text = writeProfile('b', 3, calibrateRuns([first]));
    const read = readOldProfile('b', text);
    expect(read.revision).toBe(3);
    const again = calibrateRuns(read.runs).calibration.solution.estimates;
    // a profile holds readings to a tenth of a micrometre
    expect(again.plane!.value).toBeCloseTo(calibrateRuns([first]).calibration.solution.estimates.plane!.value, 6);
    expect(writeProfile('b', 3, calibrateRuns(read.runs))).toBe(text);
  });
});

describe('readResults', () => {
  const text = (lines: readonly string[]) =>
    [
      'results: coupon',
      'coupon: c',
      'material: pa12',
      'printer: {nozzle: 0.4 mm, layer: 0.12 mm, line_width: 0.45 mm}',
      'applied: {plane: 1 %, axial: 0.5 %, hole_offset: {at_zero: 0.15 mm, per_mm: 0}}',
      ...lines,
    ].join('\n');

  it.each([
    [
      'an answer left out',
      ['slicer_compensates:', 'readings: {}'],
      /slicer_compensates: .*must be one of no, shrink, holes, both/,
    ],
    [
      'inches',
      ['slicer_compensates: no', 'readings:', '  B1: {hole: 4 mm, read: [0.15]}'],
      /^8:27 readings.B1.read\[0\]: 0.15 mm; .*if it was read in inches, write "0.15 in"/,
    ],
    [
      'a slip of the digits',
      ['slicer_compensates: no', 'readings:', '  B1: {hole: 8 mm, read: [7.9, 79.1]}'],
      /readings.B1.read\[1\]: 79.1 mm; is far from the 8 mm of the file; a slip/,
    ],
    [
      'the same everywhere',
      ['slicer_compensates: no', 'readings:', '  B1: {hole: 8 mm, read: 8}', '  B2: {hole: 12 mm, read: 8}'],
      /readings.B2.read\[0\]: 8 mm; is far/,
    ],
    [
      'words',
      ['slicer_compensates: no', 'readings:', '  B1: {hole: 8 mm, read: [about 8]}'],
      /readings.B1.read\[0\]: about 8; must be/,
    ],
    [
      'an unknown word of the hand',
      ['slicer_compensates: no', 'tried:', '  H1: {hexagon: 5.6 mm, for: 5.5 mm, felt: fine}'],
      /tried.H1.felt: fine; must be one of no, tight, good, loose/,
    ],
    [
      'threads without their screw',
      ['slicer_compensates: no', 'tried:', '  T1: {thread: {diametral: 0.2 mm, axial: 0.1 mm}, felt: good}'],
      /screw: is missing; threads were tried on it/,
    ],
    [
      'an unknown kind of feature',
      ['slicer_compensates: no', 'readings:', '  B1: {bore: 8 mm, read: [7.9]}'],
      /readings.B1.bore: unknown field/,
    ],
  ])('refuses %s with a line', (_, lines, message) => {
    expect(faultOf(() => readResults(text(lines)))).toMatch(message);
  });
});

describe('slips in one line', () => {
  const base = () => readings(PLAIN);
  const each = (work: (read: readonly number[], mark: string) => number[]): Results => ({
    ...base(),
    readings: Object.fromEntries(
      Object.entries(base().readings ?? {}).map(([mark, row]) => [mark, { ...row, read: work(row.read ?? [], mark) }]),
    ),
  });

  it('a file in inches', () => {
    const told = faultOf(() => calibrateRuns([each((read) => read.map((one) => one / 25.4))]));
    expect(told.split('\n')).toHaveLength(1);
    expect(told).toMatch(/look like inches/);
  });

  it('a digit slip in one row, and two rows swapped', () => {
    const slip = each((read, mark) => (mark === 'B4' ? read.map((one) => one + 10) : [...read]));
    expect(faultOf(() => calibrateRuns([slip])).split('\n')).toHaveLength(1);
    const own = base().readings ?? {};
    const swap = { B1: own.B4?.read ?? [], B4: own.B1?.read ?? [] };
    const swapped = each((read, mark) => [...(swap[mark as 'B1' | 'B4'] ?? read)]);
    const told = faultOf(() => calibrateRuns([swapped]));
    expect(told.split('\n')).toHaveLength(1);
    expect(told).toMatch(/look swapped/);
  });

  it('decimals with a comma in a list', () => {
    const commas = each((read, mark) => (mark === 'B4' ? [Math.floor(read[0]!), 53] : [...read]));
    const told = faultOf(() => calibrateRuns([commas]));
    expect(told).toMatch(/^readings\.B4\.read: \d+, 53; are decimals with a comma: write \d+\.53, with a point$/);
  });

  it('a skew shifts: it is added to the half-width, and a bore goes oval by it', () => {
    const { calibration } = calibrateRuns([base()]);
    // half of 1 % less 0.8 %
    const { plane } = calibration;
    expect(plane!.most - plane!.likely).toBeGreaterThanOrEqual(0.001 + 0.0005);
    expect(calibration.warnings.join()).toMatch(/oval by 0\.04 mm, wider along Y/);
  });
});
