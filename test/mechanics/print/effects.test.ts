import { describe, expect, it } from 'vitest';
import { facetOpening } from '../../../src/mechanics/print/facet-chord.js';
import { firstLayerIntrusion } from '../../../src/mechanics/print/first-layer.js';
import { layerStepping } from '../../../src/mechanics/print/layer-stepping.js';
import { moistureGrowth } from '../../../src/mechanics/print/moisture.js';
import { type PrintOffset, printedInside } from '../../../src/mechanics/print/printed-size.js';
import { thermalGrowth } from '../../../src/mechanics/print/thermal.js';
import { asPrintedThread } from '../../../src/mechanics/thread/as-printed-thread.js';
import { nutThread } from '../../../src/mechanics/thread/nut-thread.js';
import { printedThread } from '../../../src/mechanics/thread/printed-thread.js';

const TR8 = nutThread({
  form: 'trapezoidal',
  flankAngle: 15,
  screwMajor: 8,
  screwPitchDiameter: 7,
  pitch: 2,
  diametralClearance: 0.3,
  axialClearance: 0.1,
});

describe('as printed', () => {
  it('is as modelled without shrink and offset', () => {
    expect(asPrintedThread(TR8, { plane: 0, axial: 0, offset: 0, leadSlope: 0.1 })).toEqual(TR8);
  });

  it('takes back what compensation put in, with the offset a number or a line', () => {
    // what comes out is m·(1 − s) less the offset at the finished size
    const out = (offset: PrintOffset) => printedInside({ finished: 8, shrink: 0.011, offset }) * (1 - 0.011);
    expect(out(0.15) - 0.15).toBeCloseTo(8, 12);
    expect(out({ at_zero: 0.25, per_mm: -0.008 }) - (0.25 - 0.008 * 8)).toBeCloseTo(8, 12);
    const by = { plane: 0.011, axial: 0.0055, offset: 0.15, leadSlope: 0.36 };
    const back = asPrintedThread(printedThread(TR8, by), by);
    for (const key of ['minor', 'pitchDiameter', 'major', 'pitch', 'grooveWidth', 'flankSlope'] as const)
      expect(back[key]).toBeCloseTo(TR8[key], 12);
  });
});

describe('facets', () => {
  it('5 % at 10 sides, 1 % at 22 (published for inscribed circles: cos 18° = 0.951, cos 8.18° = 0.990)', () => {
    expect(1 - 1 / (1 + facetOpening({ diameter: 1, sides: 10 }))).toBeCloseTo(0.049, 3);
    expect(1 - 1 / (1 + facetOpening({ diameter: 1, sides: 22 }))).toBeCloseTo(0.01, 3);
  });
});

describe('layers', () => {
  it('lose one layer on a flank that lies flat, nothing on one that stands upright', () => {
    // β → 0: (1 − sin 0)/cos 0 = 1, with lines wide enough to carry the reach
    expect(layerStepping({ layer: 0.1, flankAngle: 0.01, leadAngle: 0, line: 1e6 })).toBeCloseTo(0.1, 4);
    expect(layerStepping({ layer: 0.1, flankAngle: 0, leadAngle: 88, line: 0.4 })).toBeLessThan(0.002);
  });

  it('30° of slope: h·(1 − 0.5)/0.8660 = 0.5774·h', () => {
    expect(layerStepping({ layer: 0.1, flankAngle: 30, leadAngle: 0, line: 0.45 })).toBeCloseTo(0.05774, 5);
  });

  it('hang by what the reach exceeds the line, and by no more than one layer', () => {
    // slope tan 15° = 0.26795; bulge √(1 + 0.0718) − 0.26795 = 0.76733
    const at = (layer: number) => layerStepping({ layer, flankAngle: 15, leadAngle: 0, line: 0.45 });
    // reach 0.15/(0.45·0.26795) = 1.24402; 0.15·(0.76733 + 0.24402)
    expect(at(0.15)).toBeCloseTo(0.1517, 4);
    // reach 2.488: 0.3·(0.76733 + 1)
    expect(at(0.3)).toBeCloseTo(0.5302, 4);
  });

  it('grow with the layer, and hang where a layer reaches further than its line', () => {
    const at = (layer: number) => layerStepping({ layer, flankAngle: 15, leadAngle: 0, line: 0.45 });
    // reach h/tan 15° = 3.732·h is one line at h = 0.1206
    expect(at(0.12) / 0.12).toBeCloseTo(at(0.06) / 0.06, 9);
    expect(at(0.15) / 0.15).toBeGreaterThan(at(0.12) / 0.12 + 0.2);
  });
});

it('the first layer stands in the bore only past its chamfer', () => {
  expect(firstLayerIntrusion({ chamfer: 0.3 })).toBe(0);
  expect(firstLayerIntrusion({ chamfer: 0 })).toBeCloseTo(0.4, 12);
});

it('moisture opens a free ring and closes a held one', () => {
  // PA6 in room air, 0.7 %: an 8 mm bore opens by 0.056; a wall of 3 mm held outside closes it by 0.042
  const nut = { growth: 0.007, diameter: 8, wall: 3 };
  expect(moistureGrowth({ ...nut, held: false })).toBeCloseTo(0.056, 12);
  expect(moistureGrowth({ ...nut, held: true })).toBeCloseTo(-0.042, 12);
});

it('heat opens a plastic bore on steel, cold closes it', () => {
  expect(thermalGrowth({ temperature: 20 })).toBe(0);
  // (90 − 12)·10⁻⁶ × 50
  expect(thermalGrowth({ temperature: 70 })).toBeCloseTo(0.0039, 12);
  expect(thermalGrowth({ temperature: -20 })).toBeCloseTo(-0.00312, 12);
});

it('refuses values outside their ranges', () => {
  expect(() => facetOpening({ diameter: 8, sides: 2 })).toThrow(/^sides: /);
  expect(() => layerStepping({ layer: 0.1, flankAngle: 0, leadAngle: 0, line: 0.4 })).toThrow(/together/);
  expect(() => layerStepping({ layer: 0, flankAngle: 15, leadAngle: 0, line: 0.4 })).toThrow(/^layer: /);
  expect(() => firstLayerIntrusion({ chamfer: -1 })).toThrow(/^chamfer: /);
  expect(() => moistureGrowth({ growth: 0.1, diameter: 8, wall: 3, held: true })).toThrow(/^growth: /);
  expect(() => thermalGrowth({ temperature: 900 })).toThrow(/^temperature: /);
});
