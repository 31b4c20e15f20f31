import { describe, expect, it } from 'vitest';
import { gripDemand, gripLimits, noteUntoldShock } from '../../../src/parts/common/grip-demand.js';
import { Assumptions } from '../../../src/sheet/assumptions.js';
import { resolveScrew } from '../../../src/sheet/resolve-screw.js';

const screwOf = (designation: string) => resolveScrew({ designation }, 0.03, new Assumptions());
const TR8X2 = screwOf('Tr8x2');
const base = { motor: 300, shock: 'none', lies: false } as const;

describe('the torque that a grip must hold', () => {
  it('is that of load and screw at high friction, with shock', () => {
    // Tr8x2, 60 N, µ 0.5: µ' = 0.5176, tan λ = 0.0909: 60·3.5·(0.0909 + 0.5176)/(1 − 0.0909·0.5176) = 134.1 N·mm
    expect(gripDemand({ ...base, screw: TR8X2, load: 60 }).working).toBeCloseTo(134.1, 0);
    expect(gripDemand({ ...base, screw: TR8X2, load: 60, shock: 'medium' }).working).toBeCloseTo(134.1 * 1.8, 0);
    expect(gripDemand({ ...base, screw: TR8X2, load: 60, shock: 'medium' }).words).toMatch(/shock × 1.8/);
    expect(gripDemand({ ...base, screw: TR8X2, load: 60 }).words).toBe(
      '60 N on the screw at friction 0.5, a dry print may reach 1.1',
    );
    expect(gripDemand({ ...base, load: 60 }).words).toMatch(/load or screw is not told$/);
  });

  it('is that of heavy shock where nobody tells of any, and says what it is without', () => {
    const untold = gripDemand({ ...base, shock: undefined, screw: TR8X2, load: 60 });
    expect(untold.working).toBeCloseTo(134.1 * 2.2, 0);
    expect(untold.smooth!.working).toBeCloseTo(134.1, 0);
    expect(untold.words).toMatch(/shock × 2.2 at most, since none is told$/);
    expect(gripDemand({ ...base, screw: TR8X2, load: 60, shock: 'heavy' }).words).toMatch(/shock × 2.2$/);
    expect(gripDemand({ ...base, screw: TR8X2, load: 60 }).smooth).toBeUndefined();
  });

  it('stands among the assumptions where nobody tells of shock', () => {
    const noted = (shock?: 'none') => {
      const assumptions = new Assumptions();
      noteUntoldShock(shock, assumptions);
      return assumptions.list.map(({ field, value }) => [field, value]);
    };
    expect(noted()).toEqual([['duty.shock', 'heavy']]);
    expect(noted('none')).toEqual([]);
  });

  it("is the motor's where load or screw is not told, and never more than that", () => {
    for (const told of [{}, { screw: TR8X2 }, { load: 60 }, { screw: TR8X2, load: 0 }, { screw: TR8X2, load: 400 }])
      expect(gripDemand({ ...base, ...told })).toMatchObject({
        working: 300,
        words: expect.stringMatching(/the motor's/),
      });
  });

  it('counts an axis as one that falls by its screw, or where nobody knows it', () => {
    expect(gripDemand({ ...base, screw: TR8X2 }).falls).toBe(false);
    expect(gripDemand({ ...base, screw: screwOf('Tr8x8(P2)') }).falls).toBe(true);
    expect(gripDemand(base).falls).toBe(true);
    expect(gripDemand({ ...base, lies: true }).falls).toBe(false);
    expect(gripDemand({ ...base, lies: true, screw: screwOf('Tr8x8(P2)') }).falls).toBe(false);
    // friction that slips around holds nothing along
    expect(gripDemand({ ...base, screw: TR8X2, hangs: true }).falls).toBe(true);
  });
});

describe('its limits', () => {
  it("fail below 1.3 × the work, or 1.5 × the motor's where the axis falls", () => {
    const demand = { working: 100, motor: 300, words: '' };
    expect(gripLimits({ ...demand, falls: false })).toEqual({ pass: { min: 450 }, fail: { min: 130 } });
    expect(gripLimits({ ...demand, falls: true })).toEqual({ pass: { min: 450 }, fail: { min: 450 } });
  });
});
