import { expect, it } from 'vitest';
import { layersPerPitch, threadDepthInLines } from '../../../src/mechanics/print/resolution.js';

it('a pitch of 2 at 0.08 to 0.12 has 25 to 16 layers (common practice)', () => {
  expect(layersPerPitch({ pitch: 2, layer: 0.08 })).toBeCloseTo(25, 9);
  expect(Math.floor(layersPerPitch({ pitch: 2, layer: 0.12 }))).toBe(16);
});

it('two lines of 0.45 need a trapezoid of pitch 1.8, half of it deep (common practice)', () => {
  expect(threadDepthInLines({ depth: 0.5 * 1.8, line: 0.45 })).toBeCloseTo(2, 12);
});

it('refuses values outside their ranges', () => {
  expect(() => layersPerPitch({ pitch: 0, layer: 0.1 })).toThrow(/^pitch: /);
  expect(() => layersPerPitch({ pitch: 2, layer: -0.1 })).toThrow(/^layer: /);
  expect(() => threadDepthInLines({ depth: -1, line: 0.4 })).toThrow(/^depth: /);
  expect(() => threadDepthInLines({ depth: 1, line: 0 })).toThrow(/^line: /);
});
