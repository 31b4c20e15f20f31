import { describe, expect, it } from 'vitest';
import {
  nutPocket,
  nutPocketOutline,
  nutPocketReach,
  screwHolding,
  thinCatch,
} from '../../../src/parts/common/bought-nut.js';
import { Assumptions } from '../../../src/sheet/assumptions.js';
import { resolveScrew } from '../../../src/sheet/resolve-screw.js';

describe('a bought metal nut', () => {
  // two turns of 2 mm
  it('wants two turns of its thread', () => {
    expect(thinCatch(4, 2)).toBeUndefined();
    expect(thinCatch(3.8, 2)).toMatch(
      /^the metal nut is 3\.8 mm high, 1\.9 turns of its thread, and may not hold what falls on it;.*\(catch_nut\.height\)$/,
    );
  });

  it('gets a pocket 0.2 mm wider across its flats, and deeper by what it stands off', () => {
    const nut = { across_flats: { value: 13 }, height: { value: 6.5 } };
    expect(nutPocket(nut)).toEqual({
      shape: 'hexagon',
      acrossFlats: 13.2,
      depth: 6.5,
      nut: { acrossFlats: 13, height: 6.5 },
    });
    expect(nutPocket({ ...nut, shape: 'square' }, 0.8)).toMatchObject({ shape: 'square', depth: 7.3 });
  });

  // over the corners s/√3 from the middle, of a square s/√2
  it('reaches to its corners', () => {
    expect(nutPocketReach({ shape: 'hexagon', acrossFlats: 13.2 })).toBeCloseTo(13.2 / 1.7320508, 5);
    expect(nutPocketReach({ shape: 'square', acrossFlats: 13.2 })).toBeCloseTo(13.2 / Math.SQRT2, 5);
    const hexagon = nutPocketOutline({ shape: 'hexagon' }, 13.2);
    expect(hexagon).toHaveLength(6);
    expect(Math.max(...hexagon.map(([x]) => x))).toBeCloseTo(13.2 / 1.7320508, 5);
    const square = nutPocketOutline({ shape: 'square' }, 13.2);
    expect(square).toHaveLength(4);
    expect(square.flat().map(Math.abs)).toEqual(Array(8).fill(6.6));
  });

  // leads of 1.25 of 8 mm and tan λ 0.055, of 2 of 8 mm and 0.091, of 8 of 8 mm
  it('is wanted by a screw that does not surely hold', () => {
    const holds = (designation: string) => screwHolding(resolveScrew({ designation }, 0.03, new Assumptions()));
    expect(holds('M8')).toBe('holds');
    expect(holds('Tr8x2')).toBe('may-creep');
    expect(holds('Tr8x8(P2)')).toBe('falls');
  });
});
