import { describe, expect, it } from 'vitest';
import { loosePullOf, pullAsked, pullCures, pullForJam, pullOf } from '../../../src/parts/common/axial-grip.js';
import type { AxialPath } from '../../../src/parts/common/axial-path.js';
import type { Grip } from '../../../src/parts/common/grip.js';
import type { Held, HeldView } from '../../../src/parts/common/held.js';
import { exactly } from '../../../src/units/measured.js';

const clamp = { firstDay: 400, cold: 350, hot: 130, again: 300 };
const held = { shaft: { form: 'round', diameter: exactly(10) } } as Pick<Held, 'shaft'>;
const view = (working: number, retighten = false) =>
  ({ retighten, demand: { working, words: '', motor: 0, falls: false } }) as Pick<HeldView, 'retighten' | 'demand'>;

describe('pull that a clamp holds beside its torque: 2·√(T² − W²)/d', () => {
  it('is by what is left hot, or after a second tightening', () => {
    // 130² − 50² = 120²
    expect(pullOf({ clamp }, held, view(50))).toBeCloseTo((2 * 120) / 10, 9);
    // 300² − 180² = 240²
    expect(pullOf({ clamp }, held, view(180, true))).toBeCloseTo((2 * 240) / 10, 9);
  });

  it('is none where the torque in work takes all of it, or there is no clamp', () => {
    expect(pullOf({ clamp }, held, view(130))).toBe(0);
    expect(pullOf({ clamp }, held, view(131))).toBe(0);
    expect(pullOf({}, held, view(0))).toBe(0);
  });

  it('of a shaft that was measured has no thinner case', () => {
    expect(loosePullOf(held as Held, view(0) as HeldView)).toBeUndefined();
  });
});

describe('pull that a jam wants beside the torque in work: √(F² + (2/d)²·(M² − W²))', () => {
  const demand = (working: number, motor: number) => ({ demand: { working, words: '', motor, falls: false } });

  it('counts what the motor turns with beyond the work', () => {
    // 130² − 50² = 120², 2·120/10 = 24; 24² + 7² = 25²
    expect(pullForJam(7, held, demand(50, 130))).toBeCloseTo(25, 9);
    expect(pullForJam(7, held, demand(130, 130))).toBeCloseTo(7, 9);
  });
});

describe('what would hold more along a shaft', () => {
  const cures = (grip: Grip, retighten = false) => pullCures(grip, 'screw_end', { retighten });

  it('is asked of what is not there', () => {
    const greasy: Grip = { friction: 0.05, clamp: { screw: 'M3', count: 1, washers: false } };
    expect(cures(greasy)).toEqual([
      'a screw washed free of grease (screw_end.degreased: yes)',
      'washers',
      'more or larger screws',
      'one retightening (retighten: yes)',
    ]);
    const full: Grip = { friction: 0.15, clamp: { screw: 'M3', count: 2, washers: true } };
    expect(cures(full, true)).toEqual(['larger screws']);
    expect(cures({ friction: 0.15 }, true)).toEqual(['washers', 'more or larger screws']);
  });
});

describe('what is asked along a shaft: twice what pulls', () => {
  const path: AxialPath = { mounting: 'motor-above', thrustBearing: false, locatingHolder: false };
  const asked = (more: Partial<AxialPath>) => pullAsked({ ...path, ...more });

  it('is the load and the screw, or what lifts it where that is more', () => {
    // 8 mm of steel, 7.85 g/cm³: 3.8695 N a metre
    const screw = { form: 'round', diameter: exactly(8) } as const;
    expect(asked({ load: 20, screw, span: 1000 }).needed).toBeCloseTo(2 * 23.8695, 2);
    expect(asked({ load: 20, screw, span: 1000, mounting: 'horizontal' }).needed).toBeCloseTo(40, 9);
    expect(asked({ load: 20, upward: 19 })).toMatchObject({ needed: 40, words: '20 N' });
    expect(asked({ load: 20, upward: 25 })).toMatchObject({
      needed: 50,
      words: '25 N with which the work lifts it',
    });
    expect(asked({ load: 20, upward: 20 }).words).toBe('20 N');
    expect(asked({ mounting: 'horizontal' })).toMatchObject({ needed: 0, words: 'no load' });
  });

  it('names what is not told: where the motor is, what the load is, and what lifts a screw that does not lie', () => {
    const { mounting: _, ...nowhere } = path;
    expect(pullAsked({ ...nowhere, load: 5 }).missing).toEqual(['mounting']);
    expect(asked({ upward: 0 }).missing).toEqual(['duty.load']);
    expect(asked({ load: 5 }).missing).toEqual(['duty.upward']);
    expect(asked({ load: 5, upward: 0 }).missing).toEqual([]);
    expect(asked({ load: 5, mounting: 'horizontal' }).missing).toEqual([]);
    expect(asked({ load: 5, mounting: 'motor-below' }).missing).toEqual(['duty.upward']);
    expect(asked({ load: 5, mounting: 'motor-below', upward: 0 }).missing).toEqual([]);
  });
});
