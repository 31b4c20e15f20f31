import { describe, expect, it } from 'vitest';
import {
  offsetAt,
  printedAxial,
  printedDistance,
  printedInside,
  printedOutside,
} from '../../../src/mechanics/print/printed-size.js';

describe('a printer that shrinks by s and prints holes h too small gives back the finished size', () => {
  const cases = [
    { finished: 3.4, shrink: 0.003, offset: 0.2 },
    { finished: 10.2, shrink: 0.01, offset: 0.15 },
    { finished: 22, shrink: 0, offset: 0 },
    { finished: 8, shrink: -0.002, offset: -0.05 },
  ];
  it.each(cases)('$finished mm, shrink $shrink, offset $offset', ({ finished, shrink, offset }) => {
    expect(printedInside({ finished, shrink, offset }) * (1 - shrink) - offset).toBeCloseTo(finished, 12);
    expect(printedOutside({ finished, shrink, offset }) * (1 - shrink) - offset).toBeCloseTo(finished, 12);
    expect(printedDistance({ finished, shrink }) * (1 - shrink)).toBeCloseTo(finished, 12);
    expect(printedAxial({ finished, shrink }) * (1 - shrink)).toBeCloseTo(finished, 12);
  });
});

it('by hand: (10 + 0.15)/0.99 = 10.2525, 15/0.994 = 15.0905', () => {
  expect(printedInside({ finished: 10, shrink: 0.01, offset: 0.15 })).toBeCloseTo(10.2525, 4);
  expect(printedAxial({ finished: 15, shrink: 0.006 })).toBeCloseTo(15.0905, 4);
});

it('reads an offset off its line at the finished diameter', () => {
  const offset = { at_zero: 0.1, per_mm: 0.005 };
  expect(offsetAt(offset, 10)).toBeCloseTo(0.15, 12);
  expect(printedInside({ finished: 10, shrink: 0.01, offset })).toBeCloseTo(10.15 / 0.99, 12);
});

it('an outside has no offset unless one is known', () => {
  expect(printedOutside({ finished: 22, shrink: 0 })).toBe(22);
});

it('refuses values outside their ranges', () => {
  expect(() => printedInside({ finished: 0, shrink: 0.01, offset: 0 })).toThrow(/^finished: /);
  expect(() => printedInside({ finished: 8, shrink: 0.4, offset: 0 })).toThrow(/^shrink: /);
  expect(() => printedInside({ finished: 8, shrink: 0, offset: Number.NaN })).toThrow(/^offset: /);
  expect(() => printedOutside({ finished: -1, shrink: 0 })).toThrow(/^finished: /);
  expect(() => printedDistance({ finished: Number.NaN, shrink: 0 })).toThrow(/^finished: /);
  expect(() => offsetAt(0.1, 0)).toThrow(/^diameter: /);
});
