import { describe, expect, it } from 'vitest';
import {
  platePocket,
  THRUST_DESIGNATIONS,
  type ThrustDesignation,
  thrustBearing,
} from '../../../src/standards/bearings/thrust-bearing.js';
import { springPinLength } from '../../../src/standards/fasteners/spring-pin.js';

describe('thrust bearings', () => {
  it.each([
    // published table of miniature thrust ball bearings
    ['F4-10', 4, 10, 4],
    ['F5-10', 5, 10, 4],
    ['F5-12', 5, 12, 4],
    ['F6-12', 6, 12, 4.5],
    // trade sizes and the rest of the rows of ISO 104, from memory
    ['F6-14', 6, 14, 5],
    ['F8-16', 8, 16, 5],
    ['F8-19', 8, 19, 7],
    ['F9-20', 9, 20, 7],
    ['F10-18', 10, 18, 5.5],
    ['51102', 15, 28, 9],
    ['51103', 17, 30, 9],
    ['51200', 10, 26, 11],
    ['51201', 12, 28, 11],
    ['51202', 15, 32, 12],
    ['51203', 17, 35, 12],
    ['51204', 20, 40, 14],
    // published lists of spares that repeat ISO 104
    ['51100', 10, 24, 9],
    ['51101', 12, 26, 9],
    ['51104', 20, 35, 10],
    // lists of needle cages: bore and outside; 2 mm of needles and two washers of 1 mm
    ['AXK1730', 17, 30, 4],
    ['AXK2035', 20, 35, 4],
  ] as const)('%s is %d × %d × %d', (designation, bore, outside, height) => {
    expect(thrustBearing(designation)).toEqual({ bore, outside, height });
  });

  it('of a series grow with their bore', () => {
    for (const series of ['511', '512', 'AXK']) {
      const rows = THRUST_DESIGNATIONS.filter((one) => one.startsWith(series)).map(thrustBearing);
      expect(rows.length).toBeGreaterThanOrEqual(5);
      for (const [i, row] of rows.entries()) {
        expect(row.outside).toBeGreaterThan(row.bore + 9);
        if (i > 0) expect(row.outside).toBeGreaterThan(rows[i - 1]!.outside);
      }
    }
  });

  it('refuses a designation that it does not know', () => {
    expect(() => thrustBearing('51199' as ThrustDesignation)).toThrow(/51199.*must be one of/);
  });

  // common practice: a needle stack of 2 + 1 + 1 = 4.0 in a pocket of 3.5; 0.3 to 0.5 around a bearing on its shaft
  it('lie in a pocket that leaves the collar clear of the plate', () => {
    expect(platePocket(thrustBearing('AXK0821')).depth).toBe(3.5);
    const { diameter } = platePocket(thrustBearing('51100'));
    expect(diameter).toBeGreaterThanOrEqual(24.3);
    expect(diameter).toBeLessThanOrEqual(24.5);
  });
});

it('takes the longest spring pin that fits', () => {
  expect(springPinLength(2, 21.9)).toBe(20);
  expect(springPinLength(2, 22)).toBe(22);
  expect(springPinLength(1.5, 28)).toBe(20);
  expect(springPinLength(2, 5)).toBeUndefined();
});
