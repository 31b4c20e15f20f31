import { describe, expect, it } from 'vitest';
import { limitsInForce } from '../../../src/judge/limits-in-force.js';
import { clampForce, judgeClamp, judgeHeads, judgePosition, patternError } from '../../../src/parts/common/bolting.js';
import type { JointHole } from '../../../src/parts/common/joints.js';
import { resolveMaterial } from '../../../src/presets/resolve-material.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import { Assumptions } from '../../../src/sheet/assumptions.js';
import { resolveScrew } from '../../../src/sheet/resolve-screw.js';
import { exactly, plusMinus } from '../../../src/units/measured.js';

/** At the strength of the worked values. */
const ABS = { ...resolveMaterial({ preset: 'abs' }, SHIPPED, new Assumptions()), tensile: 36 };
const washered: JointHole = { joint: 'through', screw: 'M5', diameter: 5.3 };
const bolted = {
  hole: washered,
  centres: [
    [16, 0],
    [-16, 0],
  ],
  length: 8,
} as const;
const away = { pulls: ['away'], carries: 'away' } as const;
const SCREW = resolveScrew({ designation: 'Tr8x2' }, 0.03, new Assumptions());
const likely = (outcome: unknown) => (outcome as { value: { likely: number } }).value.likely;

describe('the force of a clamp screw, by hand', () => {
  it('beds in more on a bridge over air', () => {
    expect(clampForce(washered, 8, ABS)!.bedded).toBe(0.9);
    expect(clampForce({ ...washered, roof: 'membrane' }, 8, ABS)!.bedded).toBe(0.75);
  });

  it('is held in a tapped hole by half of the cylinder around its thread, as long as the plastic is', () => {
    // 0.5·π·5·4 = 31.4 mm²
    const tapped = clampForce({ joint: 'tapped', screw: 'M5', diameter: 4.2 }, 4, ABS)!;
    expect(tapped.by).toBe('pull-out');
    expect(tapped.perMPa).toBeCloseTo(31.416, 2);
    expect(tapped.fresh).toBeCloseTo(31.416 * 0.5 * ABS.shear, 1);
  });

  it('is set by the screw where the plastic bears more than its torque gives', () => {
    const hard = { ...ABS, tensile: 5000 };
    const steel = clampForce(washered, 8, hard)!;
    expect(steel.setBy).toBe('the screw');
    // torque = 0.2·F·d
    expect(steel.torque).toBeCloseTo(0.2 * steel.fresh * 5, 6);
  });

  it('is none where no screw is known, or a head is as wide as its hole', () => {
    expect(clampForce({ joint: 'insert', diameter: 4 }, 8, ABS)).toBeUndefined();
    expect(clampForce({ ...washered, diameter: 10 }, 8, ABS)).toBeUndefined();
  });
});

describe('what a clamp is said to do', () => {
  const judged = (duty: object, more: object = {}, limits = limitsInForce()) =>
    judgeClamp(bolted, { material: ABS, duty, ...away, ...more }, limits)!;

  it('tells torque, force and what is left, and a cure only where it fails', () => {
    // 56.48 mm² · 21.6 MPa = 1220 N, 0.2·1220·5 = 1.22 N·m
    const holds = judged({ load: 300, temperature: 23, axis: 'vertical' });
    expect(holds.message).toMatch(
      /^M5 at 1\.22 N·m clamps 1220 N, set by bearing, and \d+ N after years at 23 °C; 2 of them against 300 N$/,
    );
    const opens = judged({ load: 900, temperature: 23, axis: 'vertical' });
    expect(opens.message).toMatch(/; use more or larger screws/);
  });

  it('tells how far a load passes beside a line of screws, and what that does to each', () => {
    const line = {
      ...bolted,
      centres: [
        [15, 9],
        [15, -9],
      ],
      edge: () => 22,
    } as const;
    const beside = judgeClamp(
      line,
      { material: ABS, duty: { load: 300, temperature: 23, axis: 'vertical' }, ...away },
      limitsInForce(),
    )!;
    // half of 22/(22 − 15)
    expect(beside.message).toContain(
      '2 of them, 15 mm beside the load, which pries up to 1.6 times itself on each, against 300 N',
    );
    expect(beside.message).toMatch(/; use screws on the other side too, more or larger screws/);
  });

  it('needs twice a load that stands, once a stall of a moment', () => {
    // 100 N·mm stall Tr8x2 at 199.3 N, greased: more than the load, but only for a moment
    const stall = { motor: { torque: 400 }, load: 1, temperature: 23, axis: 'vertical' };
    const stalled = judged(stall, { screw: SCREW });
    expect(stalled).toMatchObject({ limits: { pass: { min: 1 }, fail: { min: 1 } } });
    expect(stalled.message).toMatch(/against 797 N, the motor stalled/);
    const standing = judged({ ...stall, load: 400 }, { screw: SCREW });
    expect(standing).toMatchObject({ limits: { pass: { min: 2 } } });
    expect(standing.message).not.toContain('stalled');
  });

  it('fails by the limit of the sheet', () => {
    const asked = limitsInForce({ pass: {} }, { min: 6 });
    expect(judged({ load: 300, temperature: 23, axis: 'vertical' }, {}, asked).message).toMatch(/; use more/);
    // without a temperature as well
    expect(judged({ load: 300, axis: 'vertical' }, {}, asked)).toMatchObject({ kind: 'value' });
    expect(judged({ load: 300, axis: 'vertical' })).toMatchObject({ missing: ['duty.temperature'] });
  });

  it('is nothing where no screw clamps', () => {
    const bare = { ...bolted, hole: { joint: 'through', diameter: 1 } as const };
    expect(judgeClamp(bare, { material: ABS, duty: {}, ...away }, limitsInForce())).toBeUndefined();
  });
});

describe('what is said of heads and holes', () => {
  const head = (across: number, hole: number, screw = 3) => ({
    what: 'washer',
    across,
    hole: plusMinus(hole, 0.1),
    screw,
  });

  it('tells the ring with its spread, and a cure only where it is too narrow', () => {
    // (7 − 3.4 ∓ 0.1)/2
    const good = judgeHeads([head(7, 3.4)], [], limitsInForce())!;
    expect(good).toMatchObject({
      value: { least: expect.closeTo(1.75, 9), likely: expect.closeTo(1.8, 9), most: expect.closeTo(1.85, 9) },
    });
    expect(good.message).toBe('the washer, 7 mm across, bears on a ring 1.8 mm wide around a hole of 3.4 mm');
    expect(judgeHeads([head(7, 6.5)], [], limitsInForce())!.message).toMatch(
      /ring 0\.25 mm wide .*; use larger screws/,
    );
    expect(judgeHeads([head(7, 7)], [], limitsInForce())!.message).toMatch(/falls through/);
  });

  it('is the worst of them against what each wants', () => {
    // 1.4 mm where 0.5 is wanted; 1.2 mm where (4.6 − 3)/2 = 0.8 is wanted
    for (const rows of [
      [head(7, 4.6), head(4.8, 2, 2)],
      [head(4.8, 2, 2), head(7, 4.6)],
    ])
      expect(likely(judgeHeads(rows, [], limitsInForce()))).toBeCloseTo(1.2, 9);
  });

  it('tells no cure of holes that meet', () => {
    const answer = (error: number, play: number, hole: JointHole = washered) =>
      judgePosition(
        { error: exactly(error), play: exactly(play), pattern: { ...bolted, hole }, cause: ', CAUSE' },
        { material: ABS },
        limitsInForce(),
      ).message;
    expect(answer(0.1, 0.2)).toBe('holes may be 0.1 mm off, CAUSE; half the play is 0.2 mm');
    expect(answer(0.25, 0.25)).not.toContain('does not go in');
    // no screw is known: nothing is said of its push
    expect(answer(0.5, 0.25, { joint: 'through', diameter: 5.3 })).toMatch(/or an adapter$/);
    expect(answer(0.5, 0.25)).toMatch(/0\.5 mm larger.*pushed aside/);
  });

  it('is worded from the limit that the sheet puts in place of the own one', () => {
    const error = exactly(0.3);
    const at = (max: number) =>
      judgePosition(
        { error, play: exactly(0.25), pattern: bolted, cause: '' },
        { material: ABS },
        limitsInForce({ pass: {} }, { max }),
      ).message;
    expect(at(0.4)).toBe('holes may be 0.3 mm off; half the play is 0.25 mm, 0.4 mm are allowed by the sheet');
    expect(at(0.2)).toMatch(/0\.2 mm are allowed by the sheet; .*misses by 0\.1 mm: use holes 0\.2 mm larger/);
    const ring = (min: number) => judgeHeads([head(7, 5)], [], limitsInForce({ pass: {} }, { min }))!.message;
    expect(ring(0.9)).toMatch(/a ring 1 mm wide around a hole of 5 mm$/);
    expect(ring(1.1)).toMatch(/; use larger screws/);
  });

  it('adds half of the greater shrink, whichever way, and 0.1 mm of scatter to a miss', () => {
    const shrink = (least: number, most: number) => ({ least, likely: 0, most });
    expect(patternError(exactly(0.4), shrink(-0.2, 0.1)).likely).toBeCloseTo(0.4 + 0.1 + 0.1, 9);
    expect(patternError(exactly(0.4), shrink(-0.1, 0.3)).likely).toBeCloseTo(0.4 + 0.15 + 0.1, 9);
  });
});
