import { describe, expect, it } from 'vitest';
import { layerOnGrid, layerStops } from '../../src/mechanics/layer-grid.js';

// Common practice on the 0.04 grid of lead 8.
describe('grid of 0.04', () => {
  it('0.15 is 3.75 full steps, so layers stop at 3/4, 1/2, 1/4 and 0 of a step', () => {
    const grid = layerOnGrid({ height: 0.15, fullStep: 0.04 });
    expect(grid).toMatchObject({
      fullSteps: 3.75,
      onGrid: false,
      nearest: [0.12, 0.16],
      repeatsAfter: 4,
      worstOff: 0.02,
    });
    const stops = layerStops({ height: 0.15, fullStep: 0.04, layers: 4 });
    expect(stops.map((stop) => stop.layer)).toEqual([1, 2, 3, 4]);
    expect(stops.map((stop) => stop.phase)).toEqual([0.75, 0.5, 0.25, 0]);
    // 0.15 → 0.16 (4 steps), 0.30 → half way of 7 and 8, 0.45 → 0.44 (11), 0.60 → 0.60 (15)
    expect(stops.map((stop) => stop.off)).toEqual([-0.01, -0.02, 0.01, 0]);
    expect(stops.map((stop) => stop.thickness)).toEqual([0.16, 0.16, 0.12, 0.16]);
  });

  it.each([
    [0.12, 3],
    [0.16, 4],
    [0.2, 5],
    [0.24, 6],
    [0.28, 7],
  ])('%s is %s whole steps', (height, steps) => {
    const grid = layerOnGrid({ height, fullStep: 0.04 });
    expect(grid).toMatchObject({ fullSteps: steps, onGrid: true, nearest: [height], repeatsAfter: 1, worstOff: 0 });
  });

  it('0.10 is 2.5 steps', () => {
    expect(layerOnGrid({ height: 0.1, fullStep: 0.04 })).toMatchObject({
      fullSteps: 2.5,
      onGrid: false,
      repeatsAfter: 2,
    });
  });

  it('below one step only the step itself is left', () => {
    expect(layerOnGrid({ height: 0.03, fullStep: 0.04 })).toMatchObject({ onGrid: false, nearest: [0.04] });
    // a hundredth of a step is near to none, which is no height
    expect(layerOnGrid({ height: 0.0003, fullStep: 0.04 })).toMatchObject({ onGrid: false, nearest: [0.04] });
    expect(layerOnGrid({ height: 0.04, fullStep: 0.04 })).toMatchObject({ onGrid: true, nearest: [0.04] });
  });
});

it('every height of two decimals is on the grid of lead 2', () => {
  for (let hundredths = 4; hundredths <= 40; hundredths += 1) {
    expect(layerOnGrid({ height: hundredths / 100, fullStep: 0.01 }).onGrid).toBe(true);
  }
});

it('an inch screw is off: 0.2 on 1/16 in is 25.2 steps, 0.1984 and 0.2064 are on', () => {
  const grid = layerOnGrid({ height: 0.2, fullStep: 0.0079375 });
  expect(grid.fullSteps).toBeCloseTo(25.2, 1);
  expect(grid.onGrid).toBe(false);
  expect(grid.nearest[0]).toBeCloseTo(0.1984, 4);
  expect(grid.nearest[1]).toBeCloseTo(0.2064, 4);
  // 0.2/0.0079375 = 3200/127: 61·3200/127 = 1537.008, the first multiple within 1 % of a whole step
  expect(grid.repeatsAfter).toBe(61);
});

it('counts a height within 1 % of a step as whole, and no further', () => {
  expect(layerOnGrid({ height: 0.0505, fullStep: 0.05 }).onGrid).toBe(true);
  expect(layerOnGrid({ height: 0.0506, fullStep: 0.05 }).onGrid).toBe(false);
});

it('never adds errors up: no layer is off by more than half a step', () => {
  for (const height of [0.07, 0.113, 0.2, 0.31]) {
    for (const stop of layerStops({ height, fullStep: 0.04, layers: 500 })) {
      expect(Math.abs(stop.off)).toBeLessThanOrEqual(0.02 + 1e-9);
    }
  }
});

it('refuses values outside their ranges', () => {
  expect(() => layerOnGrid({ height: 0, fullStep: 0.04 })).toThrow(/^height: /);
  expect(() => layerOnGrid({ height: 0.1, fullStep: Number.NaN })).toThrow(/^fullStep: /);
  expect(() => layerStops({ height: 0.1, fullStep: 0.04, layers: 0 })).toThrow(/^layers: /);
});
