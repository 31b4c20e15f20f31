import { describe, expect, it } from 'vitest';
import { judgeSpeed, UNBALANCED } from '../../../src/parts/common/turning-speed.js';

describe('a body with clamp screws on one side', () => {
  const at = (rpm: number | undefined) => judgeSpeed(rpm, UNBALANCED.pass, 'a balanced one');

  it('may shake above 1500 turns a minute, which is common practice', () => {
    expect(UNBALANCED).toEqual({ pass: { max: 1500 } });
    expect(at(1500)).toMatchObject({
      value: { least: 1500, likely: 1500, most: 1500 },
      message: '1500 rpm; screws on one side are not balanced: above 1500 rpm it may shake',
    });
    expect(at(1501)).toMatchObject({
      message: expect.stringMatching(/it may shake; turn slower, or use a balanced one$/),
    });
  });

  it('is not asked how fast it turns', () => {
    expect(at(undefined)).toBeUndefined();
  });
});
