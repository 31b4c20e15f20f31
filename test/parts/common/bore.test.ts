import { describe, expect, it } from 'vitest';
import {
  type Bore,
  boreFor,
  boreOutlines,
  boreReach,
  fitted,
  fittedThrough,
  flatsOf,
  noteUntoldFlat,
  printedBore,
  resolveShaft,
  roomyBoreFor,
  roundReach,
  roundShaft,
  type Shaft,
} from '../../../src/parts/common/bore.js';
import { Assumptions } from '../../../src/sheet/assumptions.js';
import { polygonArea } from '../../../src/solid/outline.js';
import { exactly } from '../../../src/units/measured.js';

const D_SHAFT: Shaft = { form: 'd', diameter: exactly(5), across: exactly(4.5), flatLength: 15 };
const inBore = (shaft: Shaft, depth: number, bored = depth) => fitted(shaft, boreFor(shaft, 0.1), { depth, bored });

describe('a shaft whose flat is shorter than it goes in', () => {
  it('gets a bore that is round up to half a millimetre past where its flat begins', () => {
    // 22.3 mm in, 15 of them flat: round for 7.3 and 0.5 mm; a bore of 16.6 mm holds 8.8 mm of the flat
    const { shaft, bore } = inBore(D_SHAFT, 22.3, 16.6);
    expect(bore).toMatchObject({ form: 'd', diameter: 5.1, flatFrom: 7.8 });
    expect(shaft.flatLength).toBeCloseTo(8.8, 9);
    // two flats alike
    const two: Shaft = { ...D_SHAFT, form: 'double-d', across: exactly(4) };
    expect(inBore(two, 22.3, 16.6).bore).toMatchObject({ form: 'double-d', flatFrom: 7.8 });
  });

  it('keeps its flats where they reach to the mouth', () => {
    expect(inBore(D_SHAFT, 15).bore.flatFrom).toBeUndefined();
    expect(inBore(D_SHAFT, 15).shaft.flatLength).toBe(15);
    expect(inBore({ ...D_SHAFT, flatLength: 40 }, 15).shaft.flatLength).toBe(15);
    const { flatLength: _, ...untold } = D_SHAFT;
    expect(inBore(untold, 22.3, 16.6)).toStrictEqual({ shaft: untold, bore: boreFor(untold, 0.1) });
  });

  it('loses flats of which less than a diameter lies in the bore', () => {
    // 16.6 − (22.3 − 11.2 + 0.5) = 5 mm, and 4.9
    expect(inBore({ ...D_SHAFT, flatLength: 11.2 }, 22.3, 16.6).bore.form).toBe('d');
    // 10 − (20 − 15.5 + 0.5) is a diameter to the last bit
    expect(inBore({ ...D_SHAFT, flatLength: 15.5 }, 20, 10).bore.form).toBe('d');
    const { shaft, bore } = inBore({ ...D_SHAFT, flatLength: 11.1 }, 22.3, 16.6);
    expect(bore).toEqual({ form: 'round', diameter: 5.1 });
    expect(shaft).toEqual(roundShaft(exactly(5)));
  });

  it('counts of a key what lies in the bore', () => {
    const keyed: Shaft = { form: 'keyed', diameter: exactly(8), key: { width: 2, depth: 1 }, flatLength: 12 };
    // 22.3 − 12 = 10.3 mm in it begins, at 16.6 the bore ends
    const { shaft, bore } = inBore(keyed, 22.3, 16.6);
    expect(shaft.flatLength).toBeCloseTo(6.3, 9);
    expect(bore.flatFrom).toBeUndefined();
    expect(inBore({ ...keyed, flatLength: 4 }, 22.3, 16.6).shaft.flatLength).toBe(0);
    expect(inBore({ ...keyed, flatLength: 40 }, 22.3, 16.6).shaft.flatLength).toBe(16.6);
  });

  it('is given room for a round mouth before its depth is known', () => {
    const two: Shaft = { ...D_SHAFT, form: 'double-d', across: exactly(4) };
    expect(boreReach(roomyBoreFor(two, 0.1)).slit).toBeCloseTo(2.55, 9);
    expect(boreReach(boreFor(two, 0.1)).slit).toBeCloseTo(2.05, 9);
    const { flatLength: _, ...untold } = two;
    expect(roomyBoreFor(untold, 0.1)).toEqual(boreFor(untold, 0.1));
    expect(fitted(two, roomyBoreFor(two, 0.1), { depth: 15, bored: 15 }).bore).toEqual(boreFor(two, 0.1));
    expect(roomyBoreFor(roundShaft(exactly(5)), 0.1).flatFrom).toBeUndefined();
    expect(roomyBoreFor(D_SHAFT, 0.1).flatFrom).toBe(0);
    const keyed: Shaft = { form: 'keyed', diameter: exactly(8), key: { width: 2, depth: 1 }, flatLength: 12 };
    expect(roomyBoreFor(keyed, 0.1).flatFrom).toBeUndefined();
  });

  it('has its walls beside the round, which reaches further than the flat', () => {
    const { bore } = inBore(D_SHAFT, 22.3, 16.6);
    expect(boreReach(bore)).toMatchObject({ far: 2.55, slit: 2.55 });
    const { flatFrom: _, ...whole } = bore;
    expect(boreReach(whole).far).toBeLessThan(2.2);
  });
});

describe('a shaft as it was measured', () => {
  const read = (sheet: Parameters<typeof resolveShaft>[0]) => {
    const notes = new Assumptions();
    return { shaft: resolveShaft(sheet, 'shaft', 0.03, notes), noted: notes.list.map(({ field }) => field) };
  };

  it('has the error of the calipers, and of its length the field where that is not told', () => {
    const { shaft, noted } = read({ diameter: { value: 5 } });
    expect(shaft).toStrictEqual({
      form: 'round',
      diameter: { least: expect.closeTo(4.97, 9), likely: 5, most: expect.closeTo(5.03, 9) },
      lengthField: 'shaft.length',
    });
    expect(noted).toEqual([]);
    const d = read({ diameter: { value: 5 }, flat: { value: 4.5 }, flat_length: 15, length: 20 }).shaft;
    expect(d).toMatchObject({ form: 'd', across: { likely: 4.5 }, flatLength: 15, length: 20 });
    expect(d.lengthField).toBeUndefined();
    expect(read({ diameter: { value: 5 }, flats: { value: 4 } }).shaft).toMatchObject({ across: { likely: 4 } });
  });

  // s·2/√3 over the corners
  it('is a hexagon by its flats', () => {
    const { shaft } = read({ across_flats: { value: 6 } });
    expect(shaft).toMatchObject({ form: 'hexagon', across: { likely: 6 } });
    const corner = 2 / 1.7320508;
    expect(shaft.diameter.least).toBeCloseTo(5.97 * corner, 6);
    expect(shaft.diameter.likely).toBeCloseTo(6 * corner, 6);
    expect(shaft.diameter.most).toBeCloseTo(6.03 * corner, 6);
  });

  // DIN 6885: over 6 to 8 mm a key 2 wide, 1 mm deep in the hub; 17 to 22 mm 6 and 2.8
  it('has the key of its diameter where none is told', () => {
    const keyed = (value: number) => read({ form: 'keyed', diameter: { value } });
    expect(keyed(8).shaft.key).toEqual({ width: 2, depth: 1 });
    expect(keyed(20).shaft.key).toEqual({ width: 6, depth: 2.8 });
    expect(keyed(20).noted).toEqual(['shaft.key.width']);
    expect(() => keyed(6)).toThrow('shaft.diameter: 6 mm; must be above 6 mm for a parallel key');
    const told = read({ form: 'keyed', diameter: { value: 6 }, key: { width: 3, hub_depth: 1.4 } });
    expect(told.shaft.key).toEqual({ width: 3, depth: 1.4 });
    expect(told.noted).toEqual([]);
  });

  it('lists a flat of which nobody tells how long it is', () => {
    const noted = (shaft: Shaft) => {
      const notes = new Assumptions();
      noteUntoldFlat(shaft, 'shaft', 12.34, notes);
      return notes.list.map(({ field, value }) => [field, value]);
    };
    const { flatLength: _, ...untold } = D_SHAFT;
    expect(noted(untold)).toEqual([['shaft.flat_length', '12.3']]);
    expect(noted({ ...untold, form: 'double-d' })).toEqual([['shaft.flat_length', '12.3']]);
    expect(noted(D_SHAFT)).toEqual([]);
    expect(noted(roundShaft(exactly(5)))).toEqual([]);
    expect(roundShaft(exactly(5), 30).length).toBe(30);
    expect(roundShaft(exactly(5))).toStrictEqual({ form: 'round', diameter: exactly(5) });
  });
});

const TWO: Shaft = { form: 'double-d', diameter: exactly(5), across: exactly(4) };
const HEXAGON: Shaft = { form: 'hexagon', diameter: exactly(12 / 1.7320508), across: exactly(6) };

describe('the bore for a shaft', () => {
  // a flat plays 0.075 mm at least: on the D half by the round, half by the flat
  it('centres by its round, its flats a little freer', () => {
    expect(boreFor(D_SHAFT, 0.1)).toEqual({ form: 'd', diameter: 5.1, across: 4.6 });
    expect(boreFor(D_SHAFT, 0.055)).toEqual({ form: 'd', diameter: 5.055, across: 4.565 });
    expect(boreFor(TWO, 0.05)).toEqual({ form: 'double-d', diameter: 5.05, across: 4.075 });
    expect(boreFor(TWO, 0.2).across).toBe(4.2);
    expect(boreFor(HEXAGON, 0.05).across).toBe(6.05);
    const key = { width: 2, depth: 1 };
    expect(boreFor({ form: 'keyed', diameter: exactly(8), key }, 0.1)).toEqual({ form: 'keyed', diameter: 8.1, key });
  });

  it('is round all along where flats do not reach through it', () => {
    const form = (shaft: Shaft, length: number) => fittedThrough(shaft, roomyBoreFor(shaft, 0.1), length).bore;
    expect(form(D_SHAFT, 15)).toEqual(boreFor(D_SHAFT, 0.1));
    expect(form(D_SHAFT, 15.1)).toEqual({ form: 'round', diameter: 5.1 });
    expect(form({ ...TWO, flatLength: 15 }, 15.1).form).toBe('round');
    expect(form(TWO, 15.1).form).toBe('double-d');
    expect(form({ form: 'keyed', diameter: exactly(8), key: { width: 2, depth: 1 }, flatLength: 5 }, 10).form).toBe(
      'keyed',
    );
  });

  // 1 % and 0.2 mm larger inside, 2 % longer along; of a keyway the depth alone, without the 0.2 mm
  it('stands in the file as its sizes do', () => {
    const same = (size: number) => size;
    const sizes = { inside: (size: number) => 1.01 * size + 0.2, along: (size: number) => 1.02 * size };
    const inFile = (bore: Bore) => printedBore(bore, { ...sizes, outside: same, across: same });
    const d = inFile({ form: 'd', diameter: 5, across: 4.5, flatFrom: 10 });
    expect(d.diameter).toBeCloseTo(5.25, 9);
    expect(d.across).toBeCloseTo(4.745, 9);
    expect(d.flatFrom).toBeCloseTo(10.2, 9);
    const keyed = inFile({ form: 'keyed', diameter: 8, key: { width: 2, depth: 1.8 } });
    expect(keyed.key!.width).toBeCloseTo(2.22, 9);
    expect(keyed.key!.depth).toBeCloseTo(1.818, 9);
    expect(Object.keys(inFile({ form: 'round', diameter: 5 }))).toEqual(['form', 'diameter']);
  });

  it('is drawn with its flats or its keyway on −X', () => {
    const bounds = (bore: Bore) =>
      boreOutlines(bore, 0.001).map((outline) => {
        const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
        return [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)].map((one) =>
          Number(one.toFixed(2)),
        );
      });
    expect(bounds({ form: 'round', diameter: 5 })).toEqual([[-2.5, 2.5, -2.5, 2.5]]);
    expect(bounds({ form: 'd', diameter: 5, across: 4.5 })).toEqual([[-2, 2.5, -2.5, 2.5]]);
    expect(bounds({ form: 'double-d', diameter: 5, across: 4 })).toEqual([[-2, 2, -2.5, 2.5]]);
    expect(bounds({ form: 'hexagon', diameter: 12 / 1.7320508, across: 6 })).toEqual([[-3, 3, -3.46, 3.46]]);
    expect(bounds({ form: 'keyed', diameter: 8, key: { width: 2, depth: 1 } })).toEqual([
      [-4, 4, -4, 4],
      [-5, 0, -1, 1],
    ]);
    // chords stand around the round, so that its shaft goes in
    const [round] = boreOutlines({ form: 'round', diameter: 5 }, 0.001);
    expect(Math.abs(polygonArea(round))).toBeGreaterThan(Math.PI * 6.25);
    const [hexagon] = boreOutlines({ form: 'hexagon', diameter: 12 / 1.7320508, across: 6 }, 0.001);
    expect(Math.abs(polygonArea(hexagon))).toBeCloseTo((1.7320508 / 2) * 36, 5);
  });

  it('reaches as far as its form on either side', () => {
    expect(boreReach({ form: 'round', diameter: 5 })).toEqual({ slit: 2.5, corner: 2.5, far: 2.5, most: 2.5 });
    expect(boreReach({ form: 'd', diameter: 5, across: 4.5 })).toEqual({ slit: 2.5, corner: 2.5, far: 2, most: 2.5 });
    expect(boreReach({ form: 'double-d', diameter: 5, across: 4 })).toEqual({
      slit: 2,
      corner: 2.5,
      far: 2,
      most: 2.5,
    });
    const hexagon = boreReach({ form: 'hexagon', diameter: 12 / 1.7320508, across: 6 });
    expect(hexagon).toMatchObject({ slit: 3, far: 3 });
    expect(hexagon.corner).toBeCloseTo(6 / 1.7320508, 6);
    expect(hexagon.most).toBe(hexagon.corner);
    // over the keyway's corners √(5² + 1²)
    const keyed = boreReach({ form: 'keyed', diameter: 8, key: { width: 2, depth: 1 } });
    expect(keyed).toMatchObject({ slit: 4, corner: 4, far: 5 });
    expect(keyed.most).toBeCloseTo(Math.sqrt(26), 9);
    expect(roundReach(4)).toEqual({ slit: 4, corner: 4 });
  });
});

// by hand: of a D what is missing of the round, of two flats and a hexagon half of it
it('counts the flats that carry torque, and how deep they are', () => {
  expect(flatsOf(D_SHAFT)).toEqual({ count: 1, depth: 0.5 });
  expect(flatsOf(TWO)).toEqual({ count: 2, depth: 0.5 });
  expect(flatsOf(HEXAGON)).toEqual({ count: 6, depth: expect.closeTo((12 / 1.7320508 - 6) / 2, 6) });
  expect(flatsOf(roundShaft(exactly(5)))).toEqual({ count: 0, depth: 0 });
});
