import { describe, expect, it } from 'vitest';
import { limitsInForce } from '../../../src/judge/limits-in-force.js';
import {
  type AxialPath,
  carriedWords,
  isUpright,
  judgeMotorThrust,
  judgeStanding,
  ownWeight,
} from '../../../src/parts/common/axial-path.js';
import { exactly } from '../../../src/units/measured.js';

const PATH: AxialPath = {
  mounting: 'motor-below',
  thrustBearing: false,
  locatingHolder: false,
  screw: { form: 'round', diameter: exactly(8) },
};
// 8 mm steel: 0.395 kg a metre
const METRE = 0.395 * 9.80665;

describe('what carries a screw', () => {
  it('is a bearing or a holder, else nothing', () => {
    expect(carriedWords(PATH)).toBeUndefined();
    expect(carriedWords({ ...PATH, thrustBearing: true })).toMatch(/thrust bearing/);
    expect(carriedWords({ ...PATH, locatingHolder: true })).toMatch(/holder/);
  });
});

describe('the weight of a screw', () => {
  it('is that of a steel bar over its length, or of 125 diameters, a metre of 8 mm', () => {
    expect(ownWeight({ ...PATH, span: 600 }).force).toBeCloseTo(0.6 * METRE, 2);
    expect(ownWeight(PATH).force).toBeCloseTo(METRE, 2);
    expect(ownWeight(PATH).words).toMatch(/duty.span not being told/);
    expect(ownWeight({ ...PATH, span: 600 }).words).not.toMatch(/duty.span/);
    const { screw: _, ...unknown } = PATH;
    expect(ownWeight(unknown).force).toBe(0);
  });
});

it('a screw stands or hangs where its motor is below or above', () => {
  expect([isUpright('motor-below'), isUpright('motor-above')]).toEqual([true, true]);
  expect([isUpright('horizontal'), isUpright(undefined)]).toEqual([false, false]);
});

describe('a standing screw', () => {
  const judge = (more: Partial<AxialPath>) => judgeStanding({ ...PATH, ...more }, { max: 0 }, 'CURE');

  it('is an open question where nobody tells what lifts it, or what weighs on it', () => {
    expect(judge({})).toMatchObject({ kind: 'not-judged', missing: ['duty.upward'] });
    expect(judge({ upward: 3 })).toMatchObject({ kind: 'not-judged', missing: ['duty.load'] });
  });

  it('stays where nothing lifts it', () => {
    expect(judge({ upward: 0 })).toMatchObject({ kind: 'value', value: exactly(0) });
  });

  it('is held down by its load, and by itself where its length is told', () => {
    expect(judge({ upward: 30, load: 25 })).toMatchObject({
      value: exactly(5),
      message: expect.stringMatching(/CURE/),
    });
    expect(judge({ upward: 20, load: 25 })).toMatchObject({ value: exactly(-5) });
    const own = judge({ upward: 25, load: 25, span: 1000 });
    expect(own.kind === 'value' && own.value.likely).toBeCloseTo(-METRE, 2);
    expect(own.message).not.toMatch(/CURE/);
  });
});

describe("the motor's bearing", () => {
  const judge = (more: Partial<AxialPath>, axialLimit?: number, jam: number | undefined = 0) =>
    judgeMotorThrust({ ...PATH, ...more }, { axialLimit, jam }, limitsInForce());

  it('asks for load and limit, both where both are missing', () => {
    expect(judge({})).toMatchObject({ missing: ['duty.load', 'motor.axial_limit'] });
    expect(judge({ load: 5 })).toMatchObject({ missing: ['motor.axial_limit'] });
    expect(judge({}, 5)).toMatchObject({ missing: ['duty.load'] });
  });

  it('carries nothing where something else does', () => {
    expect(judge({ load: 5, thrustBearing: true }, 1)).toBeUndefined();
    expect(judge({ load: 5, locatingHolder: true }, 1)).toBeUndefined();
  });

  it('carries load and screw; of a level screw the load alone', () => {
    const standing = judge({ load: 5, span: 1000 }, 6)!;
    expect(standing.kind === 'value' && standing.value.likely).toBeCloseTo(5 + METRE, 2);
    expect(standing.message).toMatch(
      /stand on the motor shaft, which may carry 6 N; carry the screw by a thrust bearing/,
    );
    expect(standing.message).toMatch(/^8\.9 N \(5 N and 3\.9 N of its own weight .*\) stand on/);
    const level = judge({ mounting: 'horizontal', load: 5, span: 1000 }, 6)!;
    expect(level).toMatchObject({ value: exactly(5), limits: { pass: { max: 6 }, fail: { max: 6 } } });
    expect(level.message).toBe('5 N pull or push the motor shaft, which may carry 6 N');
    const { mounting: _, ...unknown } = PATH;
    expect(judgeMotorThrust({ ...unknown, load: 5 }, { axialLimit: 9, jam: 0 }, limitsInForce())!.message).toMatch(
      /hang from/,
    );
  });

  it('carries what the work lifts with through a rigid joint, where that is more than what weighs on it', () => {
    const rigid = (more: Partial<AxialPath>, axialLimit: number) =>
      judgeMotorThrust({ ...PATH, ...more }, { axialLimit, jam: 0, isPulled: true }, limitsInForce())!;
    const lifted = rigid({ load: 20, span: 250, upward: 90 }, 60);
    expect(lifted).toMatchObject({ value: exactly(90), limits: { pass: { max: 60 } } });
    expect(lifted.message).toBe(
      '90 N with which the work lifts the screw pull the motor shaft, which may carry 60 N; carry the screw by a thrust bearing and a collar',
    );
    // 20 N and 0.97 N of the screw weigh more than 20.5
    expect(rigid({ load: 20, span: 250, upward: 20.5 }, 60).message).toMatch(/^21 N \(20 N and 1 N .*\) stand on/);
    expect(rigid({ load: 20, span: 250, upward: 21.5 }, 60).message).toMatch(/^21\.5 N with which .* pull/);
    // untold, a lift is asked for where it decides
    expect(rigid({ load: 20, span: 250 }, 60)).toMatchObject({ missing: ['duty.upward'] });
    expect(rigid({ load: 20, span: 250 }, 20)).toMatchObject({ kind: 'value' });
    // below its motor the screw is pushed into it; what lies is not lifted, and jaws come apart before they pull
    const hung = { mounting: 'motor-above', load: 20, span: 250 } as const;
    expect(rigid({ ...hung, upward: 90 }, 60).message).toMatch(/^90 N with which the work lifts the screw push the/);
    expect(rigid({ ...hung, upward: 0 }, 60).message).toMatch(/hang from/);
    expect(rigid(hung, 60)).toMatchObject({ missing: ['duty.upward'] });
    expect(rigid({ mounting: 'horizontal', load: 20, upward: 90 }, 60)).toMatchObject({ value: exactly(20) });
    const { mounting: _, ...untold } = PATH;
    const anyhow = judgeMotorThrust(
      { ...untold, load: 20, upward: 90 },
      { axialLimit: 60, jam: 0, isPulled: true },
      limitsInForce(),
    );
    expect(anyhow).toMatchObject({ value: exactly(90) });
    expect(judge({ load: 20, span: 250, upward: 90 }, 60)!.message).toMatch(/^21 N .* stand on/);
  });

  it('says that a jam is assumed to do no harm, where it pushes harder than is told to be carried', () => {
    const level = { mounting: 'horizontal', load: 5 } as const;
    expect(judge(level, 60, 60)!.message).toMatch(/may carry 60 N$/);
    expect(judge(level, 60, 502)!.message).toMatch(
      /may carry 60 N; that it bears a jam, up to 502 N for a moment, is assumed/,
    );
    const { mounting: _, ...path } = PATH;
    const unknown = judgeMotorThrust({ ...path, ...level }, { axialLimit: 60, jam: undefined }, limitsInForce())!;
    expect(unknown.message).toMatch(/; that it bears a jam, which pushes harder for a moment, is assumed$/);
    // what fails is told its cure, which takes the jam too
    expect(judge(level, 4, 502)!.message).toMatch(/; carry the screw by a thrust bearing and a collar$/);
  });
});
