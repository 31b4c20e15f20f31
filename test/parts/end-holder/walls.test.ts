import { describe, expect, it } from 'vitest';
import type { HolderPlan } from '../../../src/parts/end-holder/plan.js';
import { thinnestWall, wallAround } from '../../../src/parts/end-holder/walls.js';

/** 60 × 40 × 12 mm with a pocket of 22 mm whose lead-in of 0.6 mm opens by 0.6·tan 30° = 0.3464 mm on the radius. */
const PLAN: HolderPlan = {
  length: 60,
  width: 40,
  thickness: 12,
  corner: 3,
  bore: 10,
  chamfer: 0.5,
  pocket: { diameter: 22, depth: 7, leadIn: 0.6 },
  holes: {
    diameter: 4.5,
    centres: [
      [24, 12],
      [-24, -12],
    ],
  },
};
const holes = (...centres: readonly (readonly [number, number])[]) => ({ holes: { diameter: 4.5, centres } });
const thinnest = (changes: Partial<HolderPlan>) => thinnestWall({ ...PLAN, ...changes });

describe('the walls of an end holder', () => {
  // 40/2 − 11, or √(24² + 12²) − 2.25 − 11; without a pocket 20 − 10/2
  it('are nearest beside edge or hole', () => {
    expect(wallAround(PLAN)).toBe(9);
    expect(wallAround({ ...PLAN, width: 60 })).toBeCloseTo(26.8328 - 13.25, 3);
    const { pocket: _, ...bush } = PLAN;
    expect(wallAround(bush)).toBe(15);
  });

  it.each<[string, number, Partial<HolderPlan>]>([
    // 30 − 24 − 2.25; 12 − 9; 5 − 4.5; 14.5 − 2.25 − 11.3464; 12 − 11.3464
    ['hole and edge', 3.75, holes([24, 12], [-20, -12])],
    ['thickness', 3, { pocket: { diameter: 22, depth: 9, leadIn: 0.6 } }],
    ['holes', 0.5, holes([24, 2.5], [24, -2.5], [-24, 0])],
    ['middle and hole', 0.9036, holes([-24, 0], [14.5, 0])],
    ['middle and edge', 0.6536, { width: 24, ...holes([24, 0]) }],
    ['middle and edge', 0.6536, { length: 24, ...holes([0, 14.5]), width: 60 }],
    // 26.8328 − 2.25 − 23; 11 + 1.2 − (10 + 0.3464)
    ['plate over the bearing', 2, { cover: { thickness: 2, bore: 20 } }],
    ['opening of the plate and hole', 1.5828, { cover: { thickness: 3, bore: 46 } }],
    [
      'ring of the lip',
      1.8536,
      {
        pocket: {
          diameter: 22,
          depth: 7,
          leadIn: 0.6,
          lip: { diameter: 20, from: 5, land: 1, ring: 1.2, groove: 1 },
        },
      },
    ],
  ])('are thinnest: %s, %d mm', (where, size, changes) => {
    const found = thinnest(changes);
    expect(found.where).toBe(where);
    expect(found.size).toBeCloseTo(size, 3);
  });

  // the opening of a bush with its chamfer: 6.2 − 5 − 0.5; as thick as the plate: 3
  it('are those of a bush beside its mouth', () => {
    const { pocket: _, ...bush } = PLAN;
    expect(thinnestWall({ ...bush, width: 12.4, ...holes([24, 0]) })).toEqual({
      where: 'middle and edge',
      size: expect.closeTo(0.7, 9),
    });
    expect(thinnestWall({ ...bush, thickness: 3 })).toEqual({ where: 'thickness', size: 3 });
  });
});
