import { describe, expect, it } from 'vitest';
import type { Drawn } from '../../../src/fit/stack/monte-carlo.js';
import { monteCarlo } from '../../../src/fit/stack/monte-carlo.js';
import { chanceAbove } from '../../../src/fit/stack/probability.js';
import { propagate } from '../../../src/fit/stack/propagate.js';
import { check, design } from '../../../src/index.js';
import type { NutDesign } from '../../../src/parts/nut/dimensions.js';
import { nutFit } from '../../../src/parts/nut/fit-block.js';
import { judgedFit, type NutResult, nutChain, predictFit } from '../../../src/parts/nut/stack.js';
import { nutSheet } from '../../support/nut-sheets.js';

function nut(changes: Record<string, unknown> = {}): NutDesign {
  return design(nutSheet(changes)) as NutDesign;
}

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
  const still = { effects: 'off', material: { shrink: { plane: '1 ± 0 %', axial: '0.6 ± 0 %' } } };

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
    expect(nutFit(nut(still)).probabilities).toEqual({ starts: 1, turns: 1, under_wanted_play: 1 });
  });
});

describe('effects', () => {
  const spread = (changes: Record<string, unknown>) => {
    const { axial_clearance: clearance } = nutFit(nut(changes));
    return clearance.most - clearance.least;
  };

  it.each(['shrink', 'hole_offset', 'layers', 'moisture'])(
    '%s widens the axial clearance, unless it is off',
    (effect) => {
      expect(spread({ effects: { [effect]: 'off' } })).toBeLessThan(spread({}) - 0.005);
    },
  );

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
    const judged = judgedFit(nut());
    const rows = new Map(check(design(nutSheet())).checks.map((row) => [row.id, row]));
    expect(rows.get('thread-clearance')).toMatchObject({ value: 0.3 });
    expect(rows.get('thread-clearance')!.least).toBeCloseTo(judged.diametral.least, 5);
    expect(rows.get('thread-backlash')!.most).toBeCloseTo(judged.play.most, 5);
    // ± 0.05 of hole offset, ± 0.5 % of 9.3 mm and a little for the offset that shrinks along
    expect(judged.diametral.least).toBeCloseTo(0.3 - 0.05 - 0.005 * 9.45, 9);
  });

  it('nobody compensates: 0.15 of offset and 1 % of 9.3 mm are missing', () => {
    const { diametral } = judgedFit(nut({ printer: { compensation: 'none' } }));
    expect(diametral.likely).toBeCloseTo(0.3 - 0.15 - 0.093, 9);
  });

  it('a slicer that compensates does as well as the file', () => {
    const of = (compensation: string) => judgedFit(nut({ printer: { compensation } })).diametral.likely;
    expect(of('slicer')).toBeCloseTo(of('file'), 12);
  });
});

describe('first order against drawing', () => {
  const DRAWS = 20_000;
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
      const chance = chanceAbove(group.map((key) => first[key]));
      const share = drawn.chanceAbove(group);
      expect(share).toBeGreaterThan(chance.least - 0.015);
      expect(share).toBeLessThan(chance.most + 0.015);
    }
  });
});

describe('the fit in the report', () => {
  it('names the five largest causes of spread in order', () => {
    const { contributors } = nutFit(nut({ material: 'pa6', duty: { temperature: 60 } }));
    expect(contributors).toHaveLength(5);
    const shares = contributors.map(({ share }) => share);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    expect(contributors[0]!.name).toBe('shrink along the axis');
  });

  it('says it will turn, only with luck, or not', () => {
    expect(nutFit(nut({ fit: 'loose' })).outlook).toBe('pass');
    expect(nutFit(nut({ fit: 'close', body: { length: 20 } })).outlook).toBe('caution');
    expect(nutFit(nut({ fit: { diametral: 0.05, axial: 0 } })).outlook).toBe('fail');
  });

  it('a screw to 7e of ISO 2903 adds es and Td2: Tr10x2 has d2 8.739 to 8.929 (basic 9, es 0.071, Td2 0.19)', () => {
    const { screw_tolerance: adds, diametral_clearance: bare } = nutFit(nut());
    expect(adds).toMatchObject({ tolerance: '7e', source: 'ISO 2903' });
    expect(adds!.diametral_clearance.least).toBeCloseTo(bare.least + 0.071, 3);
    expect(adds!.diametral_clearance.most).toBeCloseTo(bare.most + 0.261, 3);
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
