import { describe, expect, it } from 'vitest';
import { resolveBearing } from '../../../src/parts/end-holder/bearing.js';

type Told = Parameters<typeof resolveBearing>[0];

describe('a bearing', () => {
  it('is known by its designation', () => {
    expect(resolveBearing({ designation: '608' })).toEqual({
      name: '608 (8 × 22 × 7)',
      bore: 8,
      outside: 22,
      width: 7,
      chamfer: 0.3,
    });
  });

  it('is known by what was measured, with the usual chamfer unless that is told', () => {
    const told = { bore: 20, outside: 47, width: 14 };
    expect(resolveBearing(told)).toEqual({ name: '20 × 47 × 14', ...told, chamfer: 0.3 });
    expect(resolveBearing({ ...told, chamfer: 1 }).chamfer).toBe(1);
    expect(resolveBearing({ designation: '6204', chamfer: 0.6 })).toMatchObject({ chamfer: 0.6 });
    // 6204 by its list
    expect(resolveBearing({ designation: '6204' })).toMatchObject({ bore: 20, outside: 47, width: 14, chamfer: 1 });
  });

  it('may be measured up to 0.1 mm off its list, whose sizes then stand, its width by the one in the hand', () => {
    const read = { designation: '608', bore: 8.09, outside: 21.91, width: 7.4 };
    expect(resolveBearing(read)).toMatchObject({ bore: 8, outside: 22, width: 7.4 });
    expect(resolveBearing({ ...read, bore: 7.91, outside: 22.09 })).toMatchObject({ bore: 8, outside: 22 });
    // a tenth itself, which doubles miss on one side or the other
    for (const [bore, outside] of [
      [8.1, 22.1],
      [7.9, 21.9],
    ] as const)
      expect(resolveBearing({ ...read, bore, outside })).toMatchObject({ bore: 8, outside: 22 });
  });

  it.each<[Told, RegExp]>([
    [{ designation: '608', bore: 8.2 }, /^bearing\.bore: 8\.2 mm; does not agree with 608: 8 mm$/],
    [{ designation: '608', outside: 21.8 }, /^bearing\.outside: 21\.8 mm; does not agree with 608: 22 mm$/],
    [{ outside: 22, width: 7 }, /^bearing\.bore: is missing; measure it, or give a designation such as 608$/],
    [{ bore: 8, width: 7 }, /^bearing\.outside: is missing; measure it/],
    [{ bore: 22, outside: 22, width: 7 }, /^bearing\.bore: 22 mm; must be below the outside, 22 mm$/],
    [{ bore: 8, outside: 22 }, /^bearing\.width: is missing; measure it, or give a designation such as 608$/],
    [
      { designation: '688' },
      /^bearing\.width: is missing; 688 is 4 mm wide when open, 5 mm with shields: measure yours$/,
    ],
    [{ designation: '999' }, /^bearing\.designation: 999; is not listed/],
  ])('%j is refused', (told, words) => {
    expect(() => resolveBearing(told)).toThrow(words);
  });
});

describe('a flange on its outer ring', () => {
  it('is there where the designation begins with F, in either case, and nowhere else', () => {
    const flange = { outside: 25, thickness: 1.5 };
    for (const designation of ['F608', 'f608'])
      expect(resolveBearing({ designation })).toEqual({
        name: `${designation} (8 × 22 × 7, flange 25 × 1.5)`,
        bore: 8,
        outside: 22,
        width: 7,
        chamfer: 0.3,
        flange,
      });
    expect(resolveBearing({ designation: '608' })).not.toHaveProperty('flange');
  });

  it('is as it was measured, each size by itself', () => {
    expect(resolveBearing({ designation: 'F608', flange: { outside: 24.8 } }).flange).toEqual({
      outside: 24.8,
      thickness: 1.5,
    });
    expect(resolveBearing({ designation: 'F608', flange: { thickness: 1.4 } }).flange).toEqual({
      outside: 25,
      thickness: 1.4,
    });
    const own = { outside: 28, thickness: 2 };
    expect(resolveBearing({ bore: 10, outside: 26, width: 8, flange: own }).flange).toEqual(own);
    // beyond the ring by 1 mm, and 1 mm less than the width, at the very least
    const least = { outside: 23, thickness: 6 };
    expect(resolveBearing({ designation: '608', flange: least }).flange).toEqual(least);
  });

  it.each<[Told, RegExp]>([
    [{ designation: 'F6000' }, /^bearing\.flange\.outside: is missing; measure the flange, it is not listed$/],
    [
      { designation: 'F6000', flange: { outside: 28 } },
      /^bearing\.flange\.thickness: is missing; measure the flange, it is not listed$/,
    ],
    // without an F the list says nothing of a flange
    [{ designation: '608', flange: { outside: 25 } }, /^bearing\.flange\.thickness: is missing; .* not listed$/],
    [
      { designation: 'F608', flange: { outside: 22.9 } },
      /^bearing\.flange\.outside: 22\.9 mm; must be at least 23 mm, beyond the ring$/,
    ],
    [
      { designation: 'F608', flange: { thickness: 6.1 } },
      /^bearing\.flange\.thickness: 6\.1 mm; must be at most 6 mm, of the whole width$/,
    ],
  ])('%j is refused', (told, words) => {
    expect(() => resolveBearing(told)).toThrow(words);
  });
});
