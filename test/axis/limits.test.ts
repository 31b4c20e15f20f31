import { describe, expect, it } from 'vitest';
import type { AxisDesign } from '../../src/axis/axis-design.js';
import { told } from '../../src/axis/known.js';
import { limitsOf } from '../../src/axis/limits.js';

/** 258 mm to move in, 240 wanted, 5 mm of room at either end. */
const axisWith = (limits: object) =>
  ({
    limits,
    parts: [],
    sheet: {},
    along: { room: told(258, ''), moving: told(20, ''), nearGap: 5, farGap: 5, travel: 240 },
  }) as unknown as AxisDesign;

describe('limits of the checks across parts', () => {
  it('are none where the sheet changes none', () => {
    expect(limitsOf(axisWith({}))).toEqual({});
  });

  it('may be changed where a check finds its own by the design', () => {
    expect(limitsOf(axisWith({ 'axis-travel': { min: '255 mm' } }))).toEqual({ 'axis-travel': { min: 255 } });
    expect(() => limitsOf(axisWith({ 'axis-travel': { max: '255 mm' } }))).toThrow(
      /^limits\.axis-travel\.max: 255 mm; this check has no max, only a min$/,
    );
  });

  it('are those of checks that an axis has', () => {
    expect(() => limitsOf(axisWith({ 'axis-travl': { min: 1 } }))).toThrow(/did you mean axis-travel\?/);
    expect(() => limitsOf(axisWith({ wall: { min: 1 } }))).toThrow(/^limits\.wall: unknown check; known: axis-/);
  });
});
