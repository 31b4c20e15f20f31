import { expect, it } from 'vitest';
import { printTime } from '../../../src/parts/coupon/print-time.js';

// 2160 mm³ by lines of 0.45 × 0.12 mm at 50 mm/s: 2160/2.7 = 800 s
it('a volume takes as long as its line', () => {
  const { minutes, speed } = printTime(2160, { lineWidth: 0.45, layer: 0.12 });
  expect(minutes).toBeCloseTo(800 / 60, 9);
  expect(speed).toBe(50);
});
