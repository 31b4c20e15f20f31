import { describe, expect, it } from 'vitest';
import type { CouplingDesign } from '../../../src/parts/coupling/dimensions.js';
import { jawHeights, jawsFor } from '../../../src/parts/coupling/lay-jaws.js';
import type { CouplingSheet } from '../../../src/parts/coupling/sheet.js';
import { design } from '../../../src/pipeline/design.js';
import { BOUGHT_HUBS, couplingSheet } from '../../support/coupling-sheets.js';
import { findingOf } from '../../support/one-finding.js';

type Changes = Parameters<typeof couplingSheet>[0];
const sheetWith = (changes: Changes = {}) => couplingSheet(changes) as unknown as CouplingSheet;
const made = (changes: Changes = {}) => design(couplingSheet(changes)) as CouplingDesign;

describe('how high jaws may be', () => {
  it('is 0.38 of the outside, in steps of half a millimetre down to a quarter of it', () => {
    // 0.38·29 = 11.02, 0.25·29 = 7.25
    expect(jawHeights(sheetWith(), 14.5)).toEqual([11, 10.5, 10, 9.5, 9, 8.5, 8, 7.5]);
    // 0.38·12 = 4.56; 0.25·12 = 3, which is less than the least of 4
    expect(jawHeights(sheetWith(), 6)).toEqual([4.5, 4]);
  });

  it('is as given, of jaws or insert, and of a bought half what is usual', () => {
    expect(jawHeights(sheetWith({ jaws: { height: 9 }, insert: { height: 8 } }), 14.5)).toEqual([9]);
    expect(jawHeights(sheetWith({ insert: { height: 8 } }), 14.5)).toEqual([8]);
    for (const half of [{ screw: undefined }, { motor: { shaft: undefined } }])
      expect(jawHeights(sheetWith(half), 14.5)).toEqual([11]);
    expect(jawHeights(sheetWith({ ...BOUGHT_HUBS, jaws: undefined }), 12.5)).toEqual([9.5]);
  });
});

describe('the fillet at the foot of a jaw', () => {
  const fillet = (height: number, own: object = {}) =>
    jawsFor(sheetWith({ jaws: { inner: 10, ...own } }), { radius: 10, core: 0, height }).fillet;

  it('is a quarter of a lobe, an eighth of the height, or as given', () => {
    // three lobes and jaws on a middle circle of 7.5 mm: 0.45·π·7.5/3 = 3.534 mm of lobe
    expect(fillet(8)).toBeCloseTo(3.534 / 4, 3);
    expect(fillet(5)).toBe(0.625);
    expect(fillet(8, { fillet: 0.2 })).toBe(0.2);
    expect(fillet(8, { fillet: 0 })).toBe(0);
  });
});

/**
 * A plain coupling by hand: 300 N·mm on 3 jaws of PC at 70 °C, 29 mm outside, 13.92 mm inside; a lobe of
 * 0.45·π·(6.96 + 14.5)/2/3 = 5.056 mm, jaws 2·(r/2 − 2.528)/cos 30° wide, 7.062 at the radius of an even pressure, 11.171.
 */
function byHand(height: number) {
  const width = (2 * (11.171 / 2 - 2.528)) / Math.cos(Math.PI / 6);
  const fillet = Math.min(2.528 / 2, height / 8);
  // the tables, h/r above 2, 2h/D = 2/3
  const x = width / fillet;
  const of = (a: number, b: number, c: number) => a + b * Math.sqrt(x) + c * x;
  const notch =
    of(1.042, 0.982, -0.036) +
    of(-3.599, 1.619, -0.431) * 0.66667 +
    of(6.084, -5.607, 1.158) * 0.44444 +
    of(-2.527, 3.006, -0.691) * 0.2963;
  // the insert stands 0.05 mm over the fillets; jaws are whole up to a bevel of 0.5 mm
  const [bottom, top] = [fillet + 0.05, height - 0.5];
  const from = Math.sqrt(6.96 ** 2 - 2.528 ** 2);
  const pressure = 300 / (3 * ((from + 14.2) / 2) * (14.2 - from) * (top - bottom));
  // rubber of 41 MPa, as the preset says; a lobe with 0.03 mm at each flank, 0.3° between the shafts
  const squeeze = 0.03 + (pressure * 5.116) / 41;
  const share = Math.min(1, (height * Math.tan((0.3 * Math.PI) / 180)) / squeeze);
  const arm = (top + bottom) / 2 + ((top - bottom) / 2) * share;
  const force = (1.5 * 300) / (3 * 11.171);
  return (notch * force * arm) / ((7.54 * width ** 2) / 6);
}

describe('jaws that would break', () => {
  // PC reversing for years, across the layers: 57.5·0.5·0.12 at 23 °C, times ((147 − 70)/124)^0.75
  const BORNE = 57.5 * 0.5 * 0.12 * (77 / 124) ** 0.75;

  it('are made lower before the outside grows', () => {
    const { jaws, assumptions } = made();
    expect([2 * jaws.outer, jaws.height]).toEqual([29, 7.5]);
    expect(byHand(7.5)).toBeLessThan(BORNE);
    expect(byHand(8)).toBeGreaterThan(BORNE);
    expect(findingOf(couplingSheet(), 'jaw-bending')!.value! / byHand(7.5)).toBeCloseTo(1, 3);
    expect(assumptions.find(({ field }) => field === 'jaws.height')).toMatchObject({ value: 7.5 });
  });

  it('are lower on a given outside too, and as usual where the load is told', () => {
    expect(made({ hubs: { outside_diameter: 29 } }).jaws.height).toBe(7.5);
    // 25 N ask for a fraction of the motor's torque
    expect(made({ duty: { load: 25 } }).jaws.height).toBe(11);
  });

  it('stay as given, and then the outside grows', () => {
    const { jaws } = made({ jaws: { height: 11 } });
    expect(jaws.height).toBe(11);
    expect(byHand(11)).toBeGreaterThan(BORNE);
    expect(jaws.outer).toBeGreaterThan(14.5);
  });

  it('are as high as usual where no height would do', () => {
    expect(made({ hubs: { outside_diameter: 29 }, motor: { torque: 3 } }).jaws.height).toBe(11);
  });
});

describe('what the sheet does not tell of jaws', () => {
  it('is listed, on a given outside too', () => {
    for (const changes of [{}, { hubs: { outside_diameter: 29 } }]) {
      const fields = made(changes).assumptions.map(({ field }) => field);
      expect(fields).toEqual(expect.arrayContaining(['jaws.count', 'jaws.inner', 'jaws.height', 'jaws.fillet']));
    }
    const told = { jaws: { count: 3, inner: 14, height: 9, fillet: 0.8 } };
    const fields = made(told).assumptions.map(({ field }) => field);
    expect(fields.filter((field) => field.startsWith('jaws.'))).toEqual([]);
  });
});
