import { describe, expect, it } from 'vitest';
import { limitsInForce } from '../../../src/judge/limits-in-force.js';
import { heat, shrinkAppliedOnce } from '../../../src/parts/common/checks.js';
import { holeResidual, planeResidual } from '../../../src/parts/common/residual.js';
import { couplingSheet } from '../../support/coupling-sheets.js';
import { changed } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';
import { CLAMP } from '../../support/sleeve-sheets.js';

type Changes = Record<string, unknown>;
const sleeve = (id: string, changes: Changes = {}) => findingOf(changed(CLAMP, changes), id);
const coupling = (id: string, changes: Changes = {}) => findingOf(couplingSheet(changes), id);
const SCREWED = { motor_hub: { grip: 'set-screw', clamp: undefined }, screw: undefined };

describe('a shaft in its bore, by hand', () => {
  it('reaches in by so many of its diameters', () => {
    // 5 mm and 7 mm long: 1.4 diameters, where one and a half are wanted
    const short = coupling('shaft-engagement', { mounting: 'horizontal', motor: { shaft: { length: 7 } } })!;
    expect(short.value).toBeCloseTo(1.4, 6);
    expect(short.message).toMatch(/^7 mm in the motor hub; the shaft must reach further in/);
    const good = sleeve('shaft-engagement')!;
    expect(good.value).toBeGreaterThanOrEqual(1.5);
    expect(good.message).toMatch(/ mm in the (motor|screw) end$/);
  });

  it('stands aside by half of the play', () => {
    const asked = (bore_clearance: number) => coupling('bore-runout', { motor_hub: { bore_clearance } })!;
    // 0.1 mm more of clearance is 0.05 mm more to one side
    expect(asked(0.3).value! - asked(0.2).value!).toBeCloseTo(0.05, 6);
    expect(asked(0.3).message).toMatch(/; a smaller bore_clearance keeps it in the middle$/);
    expect(asked(0.05).message).toMatch(/mm at most$/);
    // a bore that is tight at its likeliest stands nowhere aside
    expect(asked(-0.1).value).toBeGreaterThanOrEqual(0);
  });

  it('is turned by a key of half the screw: ISO 4762, 2.5 mm for M3', () => {
    expect(sleeve('tool-access')!.message).toBe('straight in from the side with a key of 2.5 mm for M3');
    expect(coupling('tool-access', SCREWED)).toBeUndefined();
    expect(coupling('head-inside', SCREWED)).toBeUndefined();
  });

  it('keeps heads inside a wide outline', () => {
    const inside = sleeve('head-inside', { outside_diameter: 40 })!;
    expect(inside.message).toMatch(/^they keep [\d.]+ mm inside it, so that it catches nothing when it turns$/);
    expect(inside.verdict).toBe('pass');
  });
});

describe('heat and compensation', () => {
  const judged = (duty: object, min?: number) =>
    heat.run({ duty, material: { name: 'abs', softening: 95 } as never }, limitsInForce({ pass: { min: min ?? 20 } }))!;

  it('keep a reserve below where the plastic softens', () => {
    expect(judged({})).toMatchObject({ missing: ['duty.temperature'] });
    expect(judged({ temperature: 75 })).toMatchObject({ value: { likely: 20 } });
    expect(judged({ temperature: 75 })!.message).toBe('abs softens at 95 °C, 75 °C around it');
    expect(judged({ temperature: 76 })!.message).toMatch(/; use a material that softens later/);
  });

  it('tell who takes shrink out', () => {
    const told = (compensationKnown: boolean) =>
      shrinkAppliedOnce.run(
        { printer: { compensation: { shrink: 'file', holes: 'slicer' }, compensationKnown } as never },
        limitsInForce(),
      )!;
    expect(told(true)).toMatchObject({ verdict: 'pass' });
    expect(told(true).message).toBe('shrink is taken out by this file, hole offset by the slicer');
    expect(told(false)).toMatchObject({ verdict: 'caution' });
  });

  it('leave shrink and hole offset where nobody compensates', () => {
    const material = { shrink: { plane: { least: 0.004, likely: 0.006, most: 0.009 } } } as never;
    const printer = (who: 'file' | 'none') =>
      ({ compensation: { shrink: who, holes: who }, holeOffset: 0.2, holeSpread: 0.05 }) as never;
    // 0.006·50 less, ± 0.003·50
    const left = planeResidual({ printer: printer('none'), material }, 50);
    expect(left.likely).toBeCloseTo(-0.3, 9);
    expect(left.most - left.likely).toBeCloseTo(0.15, 9);
    expect(planeResidual({ printer: printer('file'), material }, 50).likely).toBeCloseTo(0, 9);
    const hole = holeResidual({ printer: printer('none'), material }, 50);
    expect(hole.likely).toBeCloseTo(-0.3 - 0.2, 9);
    expect(hole.most - hole.likely).toBeCloseTo(0.15 + 0.05, 9);
    expect(holeResidual({ printer: printer('file'), material }, 50).likely).toBeCloseTo(0, 9);
  });
});
