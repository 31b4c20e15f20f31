import { describe, expect, it } from 'vitest';
import { slidingPerTravel, slidingSpeed } from '../../src/mechanics/sliding.js';
import { feedAtSpeed, fullStepTravel, stepsPerMm } from '../../src/mechanics/travel.js';

// Table of common practice, arithmetic: 200 steps, 16 microsteps.
describe('table of hobby screws', () => {
  it.each([
    [1.5, 0.0075, 2133.33],
    [2, 0.01, 1600],
    [4, 0.02, 800],
    [8, 0.04, 400],
    [3, 0.015, 1066.67],
    [1.5875, 0.0079375, 2015.748],
    [0.8, 0.004, 4000],
    [1.25, 0.00625, 2560],
  ])('lead %s: full step %s, %s steps a mm', (lead, step, steps) => {
    expect(fullStepTravel({ lead, steps: 200 })).toBeCloseTo(step, 10);
    expect(stepsPerMm({ lead, steps: 200, microsteps: 16 })).toBeCloseTo(steps, 2);
  });
});

it('a gear makes steps finer, a slower feed', () => {
  expect(fullStepTravel({ lead: 8, steps: 400, gear: 2 })).toBeCloseTo(0.01, 12);
  expect(stepsPerMm({ lead: 8, steps: 400, microsteps: 16, gear: 2 })).toBe(1600);
  expect(feedAtSpeed({ lead: 8, speed: 300, gear: 2 })).toBe(20);
});

it('300 rpm is 10 mm/s at lead 2 and 40 at lead 8 (common practice)', () => {
  expect(feedAtSpeed({ lead: 2, speed: 300 })).toBe(10);
  expect(feedAtSpeed({ lead: 8, speed: 300 })).toBe(40);
});

it('flanks slide 11 mm a mm at lead 2 on 8 mm, 2.9 at lead 8; 300 rpm of lead 2 is 0.11 m/s (common practice)', () => {
  expect(slidingPerTravel({ lead: 2, meanDiameter: 7 })).toBeCloseTo(11, 0);
  expect(slidingPerTravel({ lead: 8, meanDiameter: 7 })).toBeCloseTo(2.9, 1);
  expect(slidingSpeed({ feed: 10, lead: 2, meanDiameter: 7 }) / 1000).toBeCloseTo(0.11, 2);
  // per turn: √(l² + (π·dm)²), the unrolled helix
  expect(slidingPerTravel({ lead: 2, meanDiameter: 7 }) * 2).toBeCloseTo(Math.hypot(2, Math.PI * 7), 10);
});

it('refuses values outside their ranges', () => {
  expect(() => fullStepTravel({ lead: 0, steps: 200 })).toThrow(/^lead: /);
  expect(() => fullStepTravel({ lead: 2, steps: 1.5 })).toThrow(/^steps: /);
  expect(() => stepsPerMm({ lead: 2, steps: 200, microsteps: 0 })).toThrow(/^microsteps: /);
  expect(() => stepsPerMm({ lead: 2, steps: 200, microsteps: 16, gear: 0 })).toThrow(/^gear: /);
  expect(() => feedAtSpeed({ lead: 2, speed: -1 })).toThrow(/^speed: /);
  expect(() => slidingSpeed({ feed: -1, lead: 2, meanDiameter: 7 })).toThrow(/^feed: /);
});
