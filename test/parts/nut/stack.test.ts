import { describe, expect, it } from 'vitest';
import { chanceAbove } from '../../../src/fit/stack/probability.js';
import { propagate } from '../../../src/fit/stack/propagate.js';
import { spreadLessDrift, spreadOf } from '../../../src/fit/stack/spread.js';
import { check, design } from '../../../src/index.js';
import type { NutDesign } from '../../../src/parts/nut/dimensions.js';
import { nutFit } from '../../../src/parts/nut/fit-block.js';
import { fitFigures } from '../../../src/parts/nut/fit-figures.js';
import { type NutResult, nutChain, predictFit } from '../../../src/parts/nut/stack.js';
import { type Drawn, monteCarlo } from '../../support/monte-carlo.js';
import { nutSheet } from '../../support/nut-sheets.js';

function nut(changes: Record<string, unknown> = {}): NutDesign {
  return design(nutSheet(changes)) as NutDesign;
}

/** A Tr10x2 of which every size was read exactly, and the effects that are left on. */
const EXACT = {
  screw: {
    designation: 'Tr10x2',
    major: '10 ± 0 mm',
    pitch: '2 ± 0 mm',
    pitch_diameter: '9 ± 0 mm',
    minor: '7.5 ± 0 mm',
  },
};
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
    const judged = fitFigures(nut());
    const rows = new Map(check(design(nutSheet())).checks.map((row) => [row.id, row]));
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
