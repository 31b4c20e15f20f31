import { describe, expect, it } from 'vitest';
import { limitsInForce } from '../../../src/judge/limits-in-force.js';
import {
  clampForce,
  clampLeft,
  judgeClamp,
  judgeEngagement,
  judgeHeads,
  judgePosition,
  missRead,
  patternError,
  playLeft,
} from '../../../src/parts/common/bolting.js';
import type { JointHole } from '../../../src/parts/common/joints.js';
import { resolveMaterial } from '../../../src/presets/resolve-material.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import { Assumptions } from '../../../src/sheet/assumptions.js';
import { resolveScrew } from '../../../src/sheet/resolve-screw.js';
import { exactly, type Measured, plusMinus } from '../../../src/units/measured.js';

const material = (preset: string) => resolveMaterial({ preset }, SHIPPED, new Assumptions());
/** At the strength of the worked values. */
const ABS = { ...material('abs'), tensile: 36 };
const washered: JointHole = { joint: 'through', screw: 'M5', diameter: 5.3 };
const LINE = [
  [16, 0],
  [-16, 0],
] as const;
const bolted = { hole: washered, centres: LINE, length: 8 };
const away = { pulls: ['away'], carries: 'away' } as const;

describe('clamp force', () => {
  it('is what the plastic bears while it is tightened: M5, washer 10/5.3 on ABS, 56.5 mm² × 0.5·1.2·36 MPa', () => {
    const clamp = clampForce(washered, 8, ABS)!;
    expect(clamp.fresh).toBeCloseTo(56.48 * 21.6, 0);
    // dry steel: 0.2·F·d
    expect(clamp.torque).toBeCloseTo(0.2 * 5 * 56.48 * 21.6, 0);
    expect(clamp.setBy).toBe('bearing');
  });

  it('relaxes by creep and bedding, apart from any strength: ABS after five years 0.9 × 0.43, PETG 0.50 in all', () => {
    // shares of handbook creep sheets: ABS 0.39, PETG 0.50, PA12 0.33 with the 0.9 of bedding
    for (const [preset, kept] of [
      ['abs', 0.39],
      ['petg', 0.5],
      ['pa12', 0.33],
    ] as const)
      expect(clampLeft({ fresh: 1000, bedded: 0.9 }, material(preset), 23) / 1000).toBeCloseTo(kept, 2);
  });

  it('loses its stiffness too where it is tightened cold and runs hot', () => {
    // PA12 at 60 °C keeps 0.38 of its modulus
    const pa12 = material('pa12');
    const exponent = 0.0677 * 1.37;
    expect(clampLeft({ fresh: 1000, bedded: 0.9 }, pa12, 60)).toBeCloseTo(
      1000 * 0.9 * 0.38 * 0.75 * 43_800 ** -exponent,
      0,
    );
  });

  it('is held by half of the cylinder around an insert, sheared for a moment', () => {
    // M4 insert, bore 5.6 mm, 8 mm long: 0.5·π·5.6·8 = 70.4 mm² × 0.5 × shear
    const petg = material('petg');
    const clamp = clampForce({ joint: 'insert', screw: 'M4', diameter: 4.5 }, 20, petg)!;
    expect(clamp.fresh).toBeCloseTo(70.37 * 0.5 * petg.shear, 0);
  });

  it('never exceeds what the screw is seated with, and is none where the head falls through', () => {
    expect(clampForce({ joint: 'through', screw: 'M2', diameter: 2.2 }, 8, material('pc'))!.setBy).toBe('bearing');
    expect(clampForce({ joint: 'through', screw: 'M3', diameter: 8 }, 8, material('pc'))).toBeUndefined();
    expect(clampForce({ joint: 'through', diameter: 1 }, 8, material('pc'))).toBeUndefined();
  });
});

describe('bolt-clamp', () => {
  const judged = (duty: object, more: object = {}) =>
    judgeClamp(bolted, { material: ABS, duty, ...away, ...more }, limitsInForce());
  // two screws keep 2 × 1220 × 0.39 = 952 N: twice 476 N
  it('fails where the joint opens under twice the load that stands', () => {
    const value = (load: number) => judged({ load, temperature: 23, axis: 'vertical' });
    expect(value(460)).toMatchObject({ limits: { pass: { min: 2 }, fail: { min: 2 } } });
    expect((value(460) as { value: { likely: number } }).value.likely).toBeGreaterThan(2);
    expect((value(500) as { value: { likely: number } }).value.likely).toBeLessThan(2);
  });

  it('fails where the load itself crushes the plastic: 488 N a washer for years at 23 °C, 192 N at 60 °C', () => {
    // hand: 56.5·1.2·36·0.20 = 488; φ(60 °C) of ABS 0.394
    const message = (temperature: number, load: number) => judged({ load, temperature, axis: 'vertical' })!.message;
    expect(message(60, 2 * 200)).toMatch(/bears 192 N a screw|against 400 N/);
    const crushed = judgeClamp(
      bolted,
      {
        material: ABS,
        duty: { load: 2, temperature: 78, axis: 'vertical' },
        ...away,
      },
      limitsInForce(),
    )!;
    // above 75 °C nothing may stand on ABS
    expect(crushed.message).toContain('bears 0 N a screw');
  });

  it('counts the screw that takes most', () => {
    const aside = {
      ...bolted,
      centres: [
        [10, 0],
        [-30, 0],
      ] as const,
    };
    const even = judged({ load: 300, temperature: 23 }) as { value: { likely: number } };
    const odd = judgeClamp(
      aside,
      { material: ABS, duty: { load: 300, temperature: 23 }, ...away },
      limitsInForce(),
    ) as typeof even;
    // three quarters against a half
    expect(odd.value.likely / even.value.likely).toBeCloseTo(0.5 / 0.75, 9);
  });

  it('says that screws shake loose below three times the load that stands, a stall aside', () => {
    // 476 N are kept by each: three times 158.7 N, half of 317 N
    const loose = (duty: object) => judged({ temperature: 23, axis: 'vertical', ...duty })!.message;
    expect(loose({ load: 314 })).not.toContain('shake loose');
    expect(loose({ load: 320 })).toMatch(/shake loose in time: prevailing-torque nuts hold them$/);
    expect(loose({ load: 500 })).toMatch(/shake loose in time: .*; use more or larger screws/);
    const screw = resolveScrew({ designation: 'Tr8x2' }, 0.03, new Assumptions());
    const stalled = { load: 100, motor: { torque: 200 }, temperature: 23 };
    expect(judged(stalled, { screw })!.message).toMatch(/the motor stalled$/);
  });

  it('leaves to the seat what presses on, and asks for what was not told', () => {
    expect(judged({ load: 5000, temperature: 23 }, { pulls: ['onto'] })).toMatchObject({
      kind: 'told',
      verdict: 'pass',
    });
    expect(judged({ temperature: 23 })).toMatchObject({ kind: 'not-judged', missing: ['duty.load'] });
    expect(judged({ load: 100 })).toMatchObject({ kind: 'not-judged', missing: ['duty.temperature'] });
    // what opens in the cold opens in the heat
    expect(judged({ load: 5000 })).toMatchObject({ kind: 'value' });
  });
});

// a square of 34 mm and a load 34 mm from its axis, towards a corner: 1/4 + 2·17·(34/√2)/(4·17²) = 0.25 + 0.7071 of it; the other way round
// the seat bears it, and the far screw holds 0.7071 − 0.25
describe('bolt-clamp of a load with a lever', () => {
  const SQUARE = [
    [17, 17],
    [17, -17],
    [-17, 17],
    [-17, -17],
  ] as const;
  const judged = (lever: number, more: object) =>
    judgeClamp(
      { ...bolted, centres: SQUARE, lever },
      { material: ABS, duty: { load: 100, temperature: 23 }, ...away, ...more },
      limitsInForce(),
    )! as { kind: string; message: string; value: { likely: number } };
  const left = clampLeft(clampForce(washered, 8, ABS)!, ABS, 23);

  it('is that of the screw which it lifts most, either way', () => {
    const carried = judged(34, {});
    expect(carried.value.likely).toBeCloseTo(left / 95.71, 2);
    expect(carried.message).toContain('4 of them, the load 34 mm beside, which pulls up to 0.96 times itself on each,');
    const seated = judged(34, { pulls: ['onto'] });
    expect(seated.value.likely).toBeCloseTo(left / 45.71, 2);
    expect(seated.message).toContain('which pulls up to 0.46 times itself');
    const both = judged(34, { pulls: ['away', 'onto'] });
    expect(both.value.likely).toBe(carried.value.likely);
    expect(both.message).toBe(carried.message);
  });

  // 5 mm beside: 0.25 − 17·2·(5/√2)/1156 = 0.146 of it press there
  it('is none where the seat stays pressed, with a lever or beside a line of screws', () => {
    expect(judged(5, { pulls: ['onto'] })).toMatchObject({ kind: 'told', verdict: 'pass' });
    const LINE_ASIDE = [
      [20, 10],
      [20, -10],
    ] as const;
    const pressed = judgeClamp(
      { ...bolted, centres: LINE_ASIDE, edge: () => 22 },
      { material: ABS, duty: { load: 100, temperature: 23 }, pulls: ['onto'], carries: 'away' },
      limitsInForce(),
    );
    expect(pressed).toMatchObject({ kind: 'told', verdict: 'pass' });
  });
});

describe('heads on holes', () => {
  const head = (across: number, hole: number, screw = 3) => ({
    what: 'washer',
    across,
    hole: plusMinus(hole, 0.05),
    screw,
  });
  const value = (rows: Parameters<typeof judgeHeads>[0]) =>
    judgeHeads(rows, [], limitsInForce()) as { value: { likely: number }; message: string; limits: object };

  it('fall through a hole wider than they are: a washer of M3, 7 mm, and a hole of 8 mm', () => {
    const found = value([head(7, 8)]);
    expect(found.value.likely).toBeCloseTo(-0.5, 9);
    expect(found.message).toContain('falls through');
    expect(found.limits).toMatchObject({ fail: { min: 0.25 } });
  });

  it('bear on a ring that must cover the hole wherever the screw stands', () => {
    // 7 mm on 3.4: 1.8 mm; on 5.2 the ring is 0.9 mm and the screw may stand 1.1 mm aside
    expect(value([head(7, 3.4)])).toMatchObject({ limits: { pass: { min: 0.5 } } });
    expect(value([head(7, 3.4), head(7, 5.2)])).toMatchObject({ limits: { pass: { min: 1.1 } } });
    expect(value([head(7, 3.4), head(7, 5.2)]).value.likely).toBeCloseTo(0.9, 9);
    expect(judgeHeads([], [], limitsInForce())).toBeUndefined();
  });

  it('are not judged where the screw is not told, unless even the largest falls through', () => {
    const untold = ['holes.screw'];
    expect(judgeHeads([], untold, limitsInForce())).toMatchObject({ kind: 'not-judged', missing: untold });
    expect(judgeHeads([head(7, 3.4)], untold, limitsInForce())).toMatchObject({ kind: 'not-judged', missing: untold });
    // 7 mm on 6.6: a ring of 0.2 mm, below 0.25
    expect(judgeHeads([head(7, 6.6)], untold, limitsInForce())).toMatchObject({ kind: 'value' });
    // 7 mm on 6.5: a ring of 0.25 mm, just held
    expect(judgeHeads([head(7, 6.5)], untold, limitsInForce())).toMatchObject({ kind: 'not-judged' });
  });
});

describe('threads in the plastic', () => {
  const pattern = (joint: JointHole['joint'], length: number) => ({
    hole: { joint, diameter: 4, screw: 'M4' as const },
    centres: [],
    length,
  });

  it('are as many diameters long as the shortest is, tapped or in an insert', () => {
    expect(judgeEngagement([pattern('tapped', 10), pattern('insert', 6)], 1, 'plate')).toMatchObject({
      value: { likely: 1.5 },
      message: '1.5 diameters of thread',
    });
    expect(judgeEngagement([pattern('tapped', 4)], 1, 'plate')).toMatchObject({ message: '1 diameters of thread' });
    expect(judgeEngagement([pattern('tapped', 3)], 1, 'plate')).toMatchObject({
      message: '0.75 diameters of thread; a thicker plate holds more',
    });
  });

  it('are none of screws that go through, nor of holes without one', () => {
    const bare = { hole: { joint: 'tapped' as const, diameter: 4 }, centres: [], length: 3 };
    expect(judgeEngagement([pattern('through', 3), bare, pattern('tapped', 8)], 1, 'plate')).toMatchObject({
      message: '2 diameters of thread',
    });
    expect(judgeEngagement([pattern('through', 3), bare], 1, 'plate')).toBeUndefined();
  });
});

describe('hole positions', () => {
  it('state the miss and the cure of a screw that does not go in', () => {
    // 0.4 mm known miss and 0.1 mm scatter against 0.25 mm of play: 0.25 mm too much, holes 0.5 mm larger
    const error = patternError(exactly(0.4), exactly(0));
    const answer = judgePosition(
      { error, play: exactly(0.25), pattern: bolted, cause: '' },
      { material: material('petg') },
      limitsInForce(),
    );
    expect(answer.message).toContain('misses by 0.25 mm: use holes 0.5 mm larger');
    expect(answer.message).toMatch(/pushed aside with up to \d+ N/);
  });

  it('count how holes may come out as uncertainty', () => {
    const error = patternError(exactly(0.1), exactly(0));
    const answer = judgePosition(
      { error, play: plusMinus(0.21, 0.025), pattern: bolted, cause: '' },
      { material: material('petg') },
      limitsInForce(),
    );
    expect(answer).toMatchObject({
      value: { likely: 0.2, most: expect.closeTo(0.225, 9) },
      limits: { pass: { max: 0.21 } },
    });
  });
});

describe('the play that a printed pattern leaves, by hand', () => {
  const triple = (least: number, likely: number, most: number) => ({
    least: expect.closeTo(least, 12),
    likely: expect.closeTo(likely, 12),
    most: expect.closeTo(most, 12),
  });
  const left = (shrink: Measured, miss: Measured = exactly(0), play: Measured = exactly(0.5)) =>
    playLeft(play, miss, shrink);

  it('is less by half of what its spacing comes out off, and at the worst by 0.1 mm of scatter', () => {
    expect(left(exactly(0))).toEqual(triple(0.4, 0.5, 0.5));
    // an error to either side may be none
    expect(left(plusMinus(0, 0.2))).toEqual(triple(0.5 - 0.1 - 0.1, 0.5, 0.5));
    expect(left({ least: -0.1, likely: 0.05, most: 0.3 })).toEqual(triple(0.5 - 0.15 - 0.1, 0.475, 0.5));
    // too near or too far is the same
    expect(left({ least: -0.4, likely: -0.3, most: -0.2 })).toEqual(triple(0.5 - 0.2 - 0.1, 0.35, 0.4));
    expect(left({ least: 0.2, likely: 0.3, most: 0.4 })).toEqual(triple(0.5 - 0.2 - 0.1, 0.35, 0.4));
  });

  it('is less by what it misses, as surely as both are known', () => {
    expect(left(exactly(0), plusMinus(0.2, 0.05), plusMinus(0.5, 0.1))).toEqual(
      triple(0.4 - 0.25 - 0.1, 0.3, 0.6 - 0.15),
    );
  });

  it('misses half of what a reading of its spacing may be off', () => {
    expect(missRead(plusMinus(27, 0.06))).toEqual(triple(0, 0, 0.03));
  });
});
