import { expect, it } from 'vitest';
import { barWeight } from '../../src/mechanics/bar-weight.js';

it('a steel bar of 8 mm weighs 0.395 kg a metre (bar tables), 3.87 N', () => {
  expect(barWeight({ diameter: 8, length: 1000 })).toBeCloseTo(0.395 * 9.80665, 1);
  // 20 mm: 2.466 kg a metre
  expect(barWeight({ diameter: 20, length: 1000 }) / 9.80665).toBeCloseTo(2.466, 2);
  expect(() => barWeight({ diameter: 0, length: 1 })).toThrow(/^diameter: /);
});
