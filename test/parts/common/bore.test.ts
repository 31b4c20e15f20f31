import { describe, expect, it } from 'vitest';
import { boreFor, boreReach, fitted, roomyBoreFor, roundShaft, type Shaft } from '../../../src/parts/common/bore.js';
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
    expect(inBore(untold, 22.3, 16.6)).toMatchObject({ shaft: untold, bore: { form: 'd' } });
  });

  it('loses flats of which less than a diameter lies in the bore', () => {
    // 16.6 − (22.3 − 11.2 + 0.5) = 5 mm, and 4.9
    expect(inBore({ ...D_SHAFT, flatLength: 11.2 }, 22.3, 16.6).bore.form).toBe('d');
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
  });

  it('has its walls beside the round, which reaches further than the flat', () => {
    const { bore } = inBore(D_SHAFT, 22.3, 16.6);
    expect(boreReach(bore)).toMatchObject({ far: 2.55, slit: 2.55 });
    const { flatFrom: _, ...whole } = bore;
    expect(boreReach(whole).far).toBeLessThan(2.2);
  });
});
