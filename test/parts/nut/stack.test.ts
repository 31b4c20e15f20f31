import { describe, expect, it } from 'vitest';
import { chanceAbove } from '../../../src/fit/stack/probability.js';
import { propagate } from '../../../src/fit/stack/propagate.js';
import { spreadLessDrift, spreadOf } from '../../../src/fit/stack/spread.js';
import { check, design } from '../../../src/index.js';
import type { NutDesign } from '../../../src/parts/nut/dimensions.js';
import { nutFit } from '../../../src/parts/nut/fit-block.js';
import { fitFigures } from '../../../src/parts/nut/fit-figures.js';
import {
  boreGrowth,
  isHeld,
  type NutInput,
  type NutResult,
  nutChain,
  predictFit,
} from '../../../src/parts/nut/stack.js';
import { workOut } from '../../../src/pipeline/work-out.js';
import { EXACT_SCREW } from '../../support/exact-nut.js';
import { type Drawn, monteCarlo } from '../../support/monte-carlo.js';
import { nutSheet } from '../../support/nut-sheets.js';

function nut(changes: Record<string, unknown> = {}): NutDesign {
  return workOut(nutSheet(changes)) as NutDesign;
}

/** A Tr10x2 of which every size was read exactly, and the effects that are left on. */
const EXACT = { screw: EXACT_SCREW };
const SHRINK_AND_HOLES = { layers: 'off', first_layer: 'off', moisture: 'off', temperature: 'off', facets: 'off' };

const SHEETS: readonly [string, Record<string, unknown>][] = [
  ['sound', {}],
  ['tight', { fit: { diametral: 0.08, axial: 0.02 } }],
  ['four starts', { screw: 'Tr8x8(P2)', body: { diameter: 15 } }],
  ['V', { screw: 'M12', fit: 'close' }],
  ['Acme, measured', { screw: { designation: 'Acme 1/2-10', major: '12.6 ± 0.05 mm', pitch_diameter: 11.3 } }],
  ['PA6 in a pocket', { material: 'pa6', carriage: { bore: 17.05 } }],
  ['nobody compensates', { printer: { compensation: 'none' } }],
  ['long', { body: { length: 60 }, material: 'pom' }],
  ['warm', { duty: { temperature: 70 } }],
];

describe('with every effect off, as printed is as wanted', () => {
  const still = { ...EXACT, effects: 'off', material: { shrink: { plane: '1 ± 0 %', axial: '0.6 ± 0 %' } } };

  it('gives the clearances of the sheet, on a screw known exactly', () => {
    const { diametral, play, drift, crestGap } = predictFit(nut(still));
    for (const { worst } of [diametral, play, drift, crestGap]) expect(worst.most - worst.least).toBeLessThan(1e-12);
    expect(diametral.worst.likely).toBeCloseTo(0.3, 12);
    // 0.3·tan 15° + 0.1
    expect(play.worst.likely).toBeCloseTo(0.180385, 6);
    expect(drift.worst.likely).toBeCloseTo(0, 12);
    // ISO 2901 leaves a_c = 0.25 over the crest at P 2, and half of c besides
    expect(crestGap.worst.likely).toBeCloseTo(0.25 + 0.15, 12);
  });

  it('and chances of 1', () => {
    expect(nutFit(nut(still)).probabilities).toEqual({
      starts: 1,
      turns: 1,
      turns_run_in: 1,
      under_wanted_play: 1,
    });
  });
});

describe('effects', () => {
  const spread = (changes: Record<string, unknown>) => {
    const { axial_clearance: clearance } = nutFit(nut(changes));
    return clearance.most - clearance.least;
  };

  it('edges of the layers count in full for a fresh print, and not at all for one that has run in', () => {
    const at = (layers: string) => nutFit(nut({ effects: { layers } }));
    const { layers } = nutChain(nut());
    // 0.08·(1 − sin β)/cos β + 0.08·(r − 1), β from 15° and the lead angle 4.05°, r = 0.08/(0.45·tan β) below 1
    expect(layers).toBeCloseTo(0.08 * (Math.hypot(1, 0.2771) - 0.2771), 4);
    expect(at('on').axial_clearance).toEqual(at('off').axial_clearance);
    expect(at('on').axial_clearance_fresh.likely).toBeCloseTo(at('off').axial_clearance.likely - layers, 9);
    expect(at('on').axial_clearance_fresh.most).toBeCloseTo(at('off').axial_clearance.most - layers, 9);
  });

  it.each(['shrink', 'hole_offset', 'moisture'])('%s widens the axial clearance, unless it is off', (effect) => {
    expect(spread({ effects: { [effect]: 'off' } })).toBeLessThan(spread({}) - 0.001);
  });

  it('facets open the diameter, the first layer closes the entry past its chamfer', () => {
    expect(nutFit(nut({ effects: { facets: 'off' } })).diametral_clearance.most).toBeLessThan(
      nutFit(nut()).diametral_clearance.most,
    );
    const entry = (lead_in: number) => predictFit(nut({ lead_in })).entry.worst.least;
    // 2·(0.2 − 0.05)
    expect(entry(0.3) - entry(0.05)).toBeCloseTo(0.3, 9);
  });

  it('heat opens the bore: (90 − 12)·10⁻⁶ × 50 × 9.3 mm', () => {
    const at = (temperature: number) => predictFit(nut({ duty: { temperature } })).diametral.worst.likely;
    expect(at(70) - at(20)).toBeCloseTo(78e-6 * 50 * 9.3, 6);
  });

  it('a moist nut closes where it is held, and opens where it is free', () => {
    const bore = (carriage: number) => predictFit(nut({ material: 'pa6', carriage: { bore: carriage } })).diametral;
    expect(bore(17.02).mean).toBeLessThan(bore(17.6).mean);
  });

  it('those that are off are told', () => {
    const report = check(design(nutSheet({ effects: { layers: 'off' } })));
    expect(report.fit?.effects_off).toEqual(['layers']);
    expect(report.cautions.join(' ')).toMatch(/leaves out: layers/);
  });
});

describe('the checks', () => {
  it('judge by what the fit is worked out from', () => {
    // as warm as its air, since nobody drives it
    const still = { duty: { feed: undefined } };
    const judged = fitFigures(nut(still));
    const rows = new Map(check(design(nutSheet(still))).checks.map((row) => [row.id, row]));
    expect(rows.get('thread-clearance')!.value).toBeCloseTo(judged.diametral.likely, 5);
    expect(rows.get('thread-clearance')!.least).toBeCloseTo(judged.diametral.least, 5);
    expect(rows.get('thread-backlash')!.most).toBeCloseTo(judged.play.most, 5);
    expect(rows.get('thread-running-in')!.least).toBeCloseTo(judged.freshAxial.least, 5);
  });

  it('take ± 0.05 of hole offset and ± 0.5 % of 9.3 mm as two standard deviations, and as bounds', () => {
    const { diametral } = fitFigures(nut({ ...EXACT, effects: SHRINK_AND_HOLES }));
    // a little for the offset that shrinks along
    expect(diametral.worst[0]).toBeCloseTo(0.3 - 0.05 - 0.005 * 9.45, 9);
    expect(diametral.least).toBeCloseTo(0.3 - (1.96 / 2) * Math.hypot(0.05, 0.005 * 9.45), 4);
  });

  it('count a named screw by its class: 7e of Tr10x2 puts d2 evenly between 8.739 and 8.929 (basic 9, es 0.071, Td2 0.19)', () => {
    const { diametral } = fitFigures(nut({ effects: SHRINK_AND_HOLES }));
    expect(diametral.likely).toBeCloseTo(0.3 + 0.071 + 0.095, 3);
    expect(diametral.worst[1]).toBeCloseTo(0.3 + 0.261 + 0.05 + 0.005 * 9.45, 3);
  });

  it('M8 of 7.85 mm: 6g has d2 7.042 to 7.160, so its likely backlash is 0.1 + (0.3 + 7.188 − 7.101)·tan 30°', () => {
    const made = nut({
      screw: { designation: 'M8', major: 7.85 },
      body: { diameter: 16 },
      material: { preset: 'pla', shrink: undefined },
      effects: SHRINK_AND_HOLES,
    });
    expect(fitFigures(made).play.likely).toBeCloseTo(0.3234, 3);
    // evenly over ± 0.034, and ± 0.05 and ± 0.002·7.5 on the diameter besides: about one in eight
    expect(nutFit(made).probabilities.under_wanted_play).toBeGreaterThan(0.1);
    expect(nutFit(made).probabilities.under_wanted_play).toBeLessThan(0.2);
  });

  it('nobody compensates: 0.15 of offset and 1 % of 9.3 mm are missing', () => {
    const { diametral } = fitFigures(nut({ ...EXACT, effects: SHRINK_AND_HOLES, printer: { compensation: 'none' } }));
    expect(diametral.likely).toBeCloseTo(0.3 - 0.15 - 0.093, 4);
  });

  it('a slicer that compensates does as well as the file', () => {
    const of = (compensation: string) => fitFigures(nut({ printer: { compensation } })).diametral.likely;
    expect(of('slicer')).toBeCloseTo(of('file'), 5);
  });
});

describe('the chain, by hand', () => {
  /** tan 15° */
  const K = 2 - Math.sqrt(3);
  /** by how much a millimetre of hole offset narrows grooves of this flank whose lead rises 2 mm on π · 9.3 */
  const narrowing = (slope: number) => Math.hypot(slope, 2 / (Math.PI * 9.3)) - slope;
  /** a Tr10x2 as it is called; what the printer leaves of the file is 0.15 mm of hole offset, which the file puts in */
  const AT: Readonly<Record<NutInput, number>> = {
    hole_offset: 0.15,
    shrink_plane: 0,
    shrink_axial: 0,
    screw_pitch_diameter: 9,
    screw_major: 10,
    screw_minor: 7.5,
    screw_pitch: 2,
    screw_crest: 0,
    first_layer: 0,
    moisture: 0,
    temperature: 0,
    facets: 0,
  };
  type Changes = Record<string, unknown>;
  const chain = (changes: Changes = {}) => nutChain(nut({ ...EXACT, ...changes }));
  const threadsAt = (at: Partial<typeof AT>, changes: Changes = {}, state?: 'run-in' | 'fresh') =>
    chain(changes).threads({ ...AT, ...at }, state);
  const resultsAt = (at: Partial<typeof AT>, changes: Changes = {}) => chain(changes).model({ ...AT, ...at });
  const MOIST = { material: { moisture_growth: '2 %' } };
  const FREE = { ...MOIST, carriage: { bore: 17.6 } };

  it.each<[string, Partial<typeof AT>, Changes, Record<string, number>]>([
    [
      'as wanted: 0.3 and 0.1 mm of room',
      {},
      {},
      { minor: 8.3, pitchDiameter: 9.3, major: 10.8, pitch: 2, grooveWidth: 1.1, flankSlope: K },
    ],
    // (9.3 + 0.15) · 0.99 − 0.15; a groove leans by 1/0.99 more
    [
      'a hundredth more of shrink in the plane',
      { shrink_plane: 0.01 },
      {},
      { minor: 8.2155, pitchDiameter: 9.2055, major: 10.6905, pitch: 2, grooveWidth: 1.1, flankSlope: K / 0.99 },
    ],
    [
      'a hundredth more of shrink along the axis',
      { shrink_axial: 0.01 },
      {},
      { minor: 8.3, pitchDiameter: 9.3, major: 10.8, pitch: 1.98, grooveWidth: 1.089, flankSlope: 0.99 * K },
    ],
    [
      'holes that come out 0.5 mm smaller yet',
      { hole_offset: 0.65 },
      {},
      { minor: 7.8, pitchDiameter: 8.8, major: 10.3, pitch: 2, grooveWidth: 1.1 - 0.5 * narrowing(K), flankSlope: K },
    ],
    [
      'heat, by 0.4 %',
      { temperature: 0.004 },
      {},
      { minor: 8.3332, pitchDiameter: 9.3372, major: 10.8432, pitch: 2.008, grooveWidth: 1.1044, flankSlope: K },
    ],
    // held: the wall of (17 − 10.8)/2 = 3.1 mm grows inwards from both sides, 2 · 2 % · 3.1; free: 2 % · 9.3
    ['moist air, held', { moisture: 1 }, MOIST, { minor: 8.176, pitchDiameter: 9.176, major: 10.676, pitch: 2.04 }],
    ['half as moist', { moisture: 0.5 }, MOIST, { pitchDiameter: 9.238, pitch: 2.02, grooveWidth: 1.111 }],
    ['moist air, free', { moisture: 1 }, FREE, { minor: 8.486, pitchDiameter: 9.486, major: 10.986, pitch: 2.04 }],
    [
      'moist air that is left out',
      { moisture: 1 },
      { ...FREE, effects: { moisture: 'off' } },
      { minor: 8.3, pitchDiameter: 9.3, pitch: 2, grooveWidth: 1.1 },
    ],
    // shrink of 1 % and 0.6 %
    [
      'no shrink compensated',
      {},
      { printer: { compensation: { shrink: 'none', holes: 'file' } } },
      {
        pitchDiameter: 9.2055,
        pitch: 1.988,
        grooveWidth: (1.1 + 0.15 * narrowing(K)) * 0.994 - 0.15 * narrowing((K * 0.994) / 0.99),
        flankSlope: (K * 0.994) / 0.99,
      },
    ],
    [
      'no holes compensated',
      {},
      { printer: { compensation: { shrink: 'file', holes: 'none' } } },
      { minor: 8.15, pitchDiameter: 9.15, major: 10.65, pitch: 2, grooveWidth: 1.1 - 0.15 * narrowing(K) },
    ],
  ])('the nut: %s', (_, at, changes, wanted) => {
    const { nut: made } = threadsAt(at, changes);
    for (const [size, value] of Object.entries(wanted))
      expect(made[size as keyof typeof made], size).toBeCloseTo(value, 4);
  });

  it('the nut fresh from the printer: the edges of its layers narrow its grooves, unless they are left out', () => {
    const groove = (state: 'run-in' | 'fresh' | undefined, changes: Changes = {}) =>
      threadsAt({}, changes, state).nut.grooveWidth;
    // slope of the flank with the lead, 2 mm on π · 9: 0.2771
    expect(groove('fresh')).toBeCloseTo(1.1 - 0.08 * (Math.hypot(1, 0.2771) - 0.2771), 4);
    expect([groove('run-in'), groove(undefined)]).toEqual([1.1, 1.1].map((one) => expect.closeTo(one, 9)));
    expect(groove('fresh', { effects: { layers: 'off' } })).toBeCloseTo(1.1, 9);
  });

  it('the screw: what was read; flanks and root go with the crest where it alone was read', () => {
    const at = { screw_major: 9.95, screw_crest: 0.02, screw_pitch: 2.01 };
    const screw = (sheet: Changes) => threadsAt(at, { screw: sheet }).screw;
    const sizes = { major: 9.95, pitch: 2.01, grooveWidth: 1.005, flankSlope: expect.closeTo(K, 9) };
    expect(screw(EXACT.screw)).toEqual({ ...sizes, pitchDiameter: 9, minor: 7.5 });
    // the crest was read as 9.9 mm: 0.05 off, and 0.02 between crest and flank
    const crest = { form: 'trapezoidal', major: 9.9, pitch: 2 };
    const off = { pitchDiameter: expect.closeTo(9.07, 9), minor: expect.closeTo(7.57, 9) };
    expect(screw(crest)).toMatchObject(off);
    expect(screw({ ...crest, minor: 7.4 })).toMatchObject({ ...off, minor: 7.5 });
    expect(screw({ ...crest, pitch_diameter: 9 })).toMatchObject({ pitchDiameter: 9, minor: 7.5 });
  });

  const RESULTS = {
    diametral: 0.3,
    play: 0.1 + 0.3 * K,
    clear: 0.1 + 0.3 * K,
    drift: 0,
    crestGap: 0.4,
    rootGap: 0.4,
    entry: 0.8,
    playLessDrift: 0.1 + 0.3 * K,
    playPlusDrift: 0.1 + 0.3 * K,
  };

  it.each<[string, Partial<typeof AT>, Changes, Partial<typeof RESULTS>]>([
    ['as wanted', {}, {}, {}],
    ['facets', { facets: 0.02 }, {}, { diametral: 0.32, crestGap: 0.41, rootGap: 0.41, entry: 0.82 }],
    ['a squashed first layer', { first_layer: 0.3 }, {}, { entry: 0.5 }],
    // 1 % of 18 mm; the ends of a nut whose pitch is off keep the groove of the true pitch
    [
      'a short pitch',
      { shrink_axial: 0.01 },
      {},
      {
        play: 0.089 + 0.297 * K,
        clear: 0.1 + 0.297 * K,
        drift: -0.18,
        playLessDrift: 0.28 + 0.297 * K,
        playPlusDrift: -0.08 + 0.297 * K,
      },
    ],
    // 18 · (2/2.01 − 1); 1.1 · 2.01/2 − 1.005
    [
      'a screw of long pitch',
      { screw_pitch: 2.01 },
      {},
      {
        play: 0.095 + 0.3 * K,
        clear: 0.1005 + 0.3 * K,
        drift: -0.08955,
        playLessDrift: 0.19005 + 0.3 * K,
        playPlusDrift: 0.01095 + 0.3 * K,
      },
    ],
    [
      'a second thread 0.05 mm off its helix',
      {},
      { body: { length: 44 }, family: { kind: 'twin', apart: 32, shift: 0.05 } },
      Object.fromEntries(['play', 'clear', 'playLessDrift', 'playPlusDrift'].map((one) => [one, 0.05 + 0.3 * K])),
    ],
  ])('what comes of it: %s', (_, at, changes, differs) => {
    const found = resultsAt(at, changes);
    for (const [name, value] of Object.entries({ ...RESULTS, ...differs }))
      expect(found[name as NutResult], name).toBeCloseTo(value, 4);
  });

  const inputs = (changes: Changes = {}) =>
    Object.fromEntries(
      chain(changes).inputs.map(({ name, value: { least, likely, most } }) => [name, [least, likely, most]]),
    ) as Record<NutInput, number[]>;
  const near = (values: readonly number[]) => values.map((value) => expect.closeTo(value, 6));

  it.each<[NutInput, string, readonly number[], Changes]>([
    ['hole_offset', 'hole_offset', [0.1, 0.15, 0.2], {}],
    ['shrink_plane', 'shrink', [-0.005, 0, 0.005], {}],
    ['shrink_axial', 'shrink', [-0.003, 0, 0.003], { material: { shrink: { axial: '0.6 ± 0.3 %' } } }],
    // 2 · (0.25 − 0.05)
    ['first_layer', 'first_layer', [0, 0.2, 0.4], { lead_in: 0.05, printer: { first_layer: 0.25 } }],
    ['moisture', 'moisture', [0, 0.5, 1], {}],
    // 60, 90 and 120 less 12 millionths a degree, 10 degrees above 20
    ['temperature', 'temperature', [0.00048, 0.00078, 0.00108], {}],
    ['temperature', 'temperature', [-0.00108, -0.00078, -0.00048], { duty: { temperature: 10 } }],
    // 9.3 · (1/cos(180°/96) − 1), half at the middle: of facets at least 96 are drawn
    ['facets', 'facets', [0, 0.002491, 0.004982], {}],
  ])('input %s, which the effect %s counts', (name, effect, wanted, changes) => {
    expect(inputs(changes)[name]).toEqual(near(wanted));
    const none = name === 'hole_offset' ? 0.15 : 0;
    expect(inputs({ ...changes, effects: { [effect]: 'off' } })[name]).toEqual(near([none, none, none]));
  });

  it('inputs that there are none of: heat that nobody told, a plastic that takes up no water', () => {
    expect(inputs({ duty: { temperature: undefined } }).temperature).toEqual([0, 0, 0]);
    expect(inputs({ material: { moisture_growth: '0 %' } }).moisture).toEqual([0, 0, 0]);
  });

  it('inputs of which only bounds are known: effects, and what no reading but a class tells of the screw', () => {
    const level = (changes: Changes) =>
      chain(changes)
        .inputs.filter((one) => one.level)
        .map(({ name }) => name);
    const effects = ['screw_crest', 'first_layer', 'moisture', 'temperature', 'facets'];
    expect(level({})).toEqual(effects);
    expect(level({ screw: 'Tr10x2' })).toEqual([
      'screw_pitch_diameter',
      'screw_major',
      'screw_minor',
      'screw_pitch',
      ...effects,
    ]);
    // 7e by ISO 2903
    expect(inputs({ screw: 'Tr10x2' }).screw_pitch_diameter).toEqual(near([8.739, 8.834, 8.929]));
  });

  // 2 % of 17 mm are 0.34; a bore by calipers may be 0.03 smaller
  it.each<[string, Changes, boolean]>([
    ['in a bore that nobody told', {}, true],
    ['in a bore of 17.36 mm', { carriage: { bore: 17.36 } }, true],
    ['in a bore of 17.38 mm', { carriage: { bore: 17.38 } }, false],
    ['that stands away', { stands: 'away', holes: { head: 'body' } }, false],
  ])('a moist body %s is held: %s %s', (_, changes, held) => {
    const made = nut({ ...MOIST, ...changes });
    expect(isHeld(made)).toBe(held);
    expect(boreGrowth(made)).toBeCloseTo(held ? -0.124 : 0.186, 9);
  });
});

const DRAWS = 20_000;

describe('first order against drawing', () => {
  const RESULTS: readonly NutResult[] = ['diametral', 'play', 'drift', 'crestGap', 'rootGap', 'playLessDrift'];

  it.each(SHEETS)('%s: mean within 0.002 mm, spread within 3 %%', (_, changes) => {
    const { inputs, model } = nutChain(nut(changes));
    const first = propagate(inputs, model);
    const drawn = monteCarlo(inputs, model, { draws: DRAWS, seed: 1 });
    for (const key of RESULTS) {
      expect(Math.abs(drawn.mean[key] - first[key].mean)).toBeLessThan(0.002);
      expect(Math.abs(drawn.sigma[key] / first[key].sigma - 1)).toBeLessThan(0.03);
    }
  });

  it.each(SHEETS)('%s: chances lie between their bounds, within 0.015', (_, changes) => {
    const made = nut(changes);
    const { inputs, model } = nutChain(made);
    const first = propagate(inputs, model);
    const drawn: Drawn<NutResult> = monteCarlo(inputs, model, { draws: DRAWS, seed: 2 });
    const groups: readonly (readonly NutResult[])[] = [
      ['diametral', 'crestGap', 'rootGap', 'entry', 'play'],
      ['diametral', 'playLessDrift', 'playPlusDrift'],
    ];
    for (const group of groups) {
      const chance = chanceAbove(group.map((key) => spreadOf(first[key])));
      const share = drawn.chanceAbove(group);
      expect(share).toBeGreaterThan(chance.least - 0.015);
      expect(share).toBeLessThan(chance.most + 0.015);
    }
  });
});

describe('distributions against drawing', () => {
  it.each(SHEETS)('%s: 19 of 20 lie within what is stated, within a point', (_, changes) => {
    const { inputs, model } = nutChain(nut(changes));
    const first = propagate(inputs, model);
    const within = (spread: ReturnType<typeof spreadOf>, values: readonly number[]) => {
      const [least, most] = [spread.quantile(0.025), spread.quantile(0.975)];
      return values.filter((value) => value >= least && value <= most).length / values.length;
    };
    const { rows } = monteCarlo(inputs, model, { draws: DRAWS, seed: 3 });
    for (const key of ['diametral', 'play', 'crestGap', 'rootGap'] as const) {
      const share = within(
        spreadOf(first[key]),
        rows.map((row) => row[key]),
      );
      expect(Math.abs(share - 0.95)).toBeLessThan(0.01);
    }
    const share = within(
      spreadLessDrift(first.clear, first.drift),
      rows.map(({ playLessDrift, playPlusDrift }) => Math.min(playLessDrift, playPlusDrift)),
    );
    expect(Math.abs(share - 0.95)).toBeLessThan(0.01);
  });
});

describe('the fit in the report', () => {
  it('names the five largest causes of spread in order', () => {
    const { contributors } = nutFit(nut({ material: 'pa6', duty: { temperature: 60 } }));
    expect(contributors).toHaveLength(5);
    const shares = contributors.map(({ share }) => share);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    expect(contributors.slice(0, 2).map(({ name }) => name)).toContain('shrink along the axis');
  });

  it('says it will turn, only with luck, or not', () => {
    expect(nutFit(nut({ fit: 'loose' })).outlook).toBe('pass');
    expect(nutFit(nut({ fit: 'close', body: { length: 20 } })).outlook).toBe('caution');
    expect(nutFit(nut({ ...EXACT, fit: { diametral: 0.05, axial: 0 } })).outlook).toBe('fail');
  });

  it('names the class that stands for a pitch diameter which was not measured', () => {
    expect(nutFit(nut()).screw_tolerance).toEqual({ tolerance: '7e', source: 'ISO 2903' });
    expect(nutFit(nut({ screw: 'Tr10x2 - 8e' })).screw_tolerance).toMatchObject({ tolerance: '8e' });
    expect(nutFit(nut({ screw: { designation: 'Tr10x2', pitch_diameter: 8.9 } })).screw_tolerance).toBeUndefined();
  });

  it('each hole may be off by shrink and scatter: 0.5 % of 13.5 mm and 0.1', () => {
    const { holes } = nutFit(nut());
    expect(holes).toHaveLength(4);
    expect(holes![0]!.most).toBeCloseTo(0.005 * 13.5 + 0.1, 9);
  });

  it('the wanted play is the limit of the sheet', () => {
    expect(nutFit(nut()).wanted_play).toBe(0.3);
    expect(nutFit(nut({ duty: { axis: 'horizontal' } })).wanted_play).toBe(0.1);
    const own = nutFit(nut({ limits: { 'thread-backlash': '0.18 mm' } }));
    expect(own.wanted_play).toBe(0.18);
    expect(own.probabilities.under_wanted_play).toBeLessThan(nutFit(nut()).probabilities.under_wanted_play);
  });
});

it('tells one play, in the fit and among the numbers of the drive', () => {
  const report = check(design(nutSheet({ screw: 'M8', fit: 'running', body: { diameter: 16 } })));
  const { backlash } = report.fit!;
  // by the basic size alone it would be 0.3·tan 30° + 0.1 = 0.273 mm
  expect(backlash.likely).toBeGreaterThan(0.3);
  expect(report.drive!.play!.axial).toBeCloseTo(backlash.likely, 6);
  expect(report.drive!.words.filter((one) => /play is/.test(one))).toEqual([
    expect.stringContaining(`play is ${Number(backlash.likely.toFixed(3))} mm`),
  ]);
});
