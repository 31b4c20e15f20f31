import { describe, expect, it } from 'vitest';
import {
  DEEP_GROOVE_DESIGNATIONS,
  deepGroove,
  innerReach,
  ringFlange,
  usualShoulder,
  widestShoulder,
} from '../../../src/standards/bearings/deep-groove.js';

describe('boundary dimensions of deep-groove ball bearings', () => {
  // public tables of miniature and of series 60 and 62 bearings
  it.each([
    ['605', 5, 14, 5],
    ['625', 5, 16, 5],
    ['606', 6, 17, 6],
    ['626', 6, 19, 6],
    ['608', 8, 22, 7],
    ['629', 9, 26, 8],
    ['6000', 10, 26, 8],
    ['6001', 12, 28, 8],
    ['6200', 10, 30, 9],
    ['6201', 12, 32, 10],
    ['6202', 15, 35, 11],
    ['6203', 17, 40, 12],
    ['6204', 20, 47, 14],
  ])('%s: %d × %d × %d', (name, bore, outside, width) => {
    expect(deepGroove(name)).toMatchObject({ bore, outside, width });
  });

  it('knows long names, and refuses others', () => {
    expect(deepGroove('61900')).toEqual(deepGroove('6900'));
    expect(deepGroove('619/8')).toEqual(deepGroove('698'));
    expect(deepGroove('618/8').bore).toBe(8);
    expect(() => deepGroove('6099')).toThrow('is not listed');
    expect(() => deepGroove('toString')).toThrow('is not listed');
    for (const name of ['x618/8', '618/81', 'x61900', '61900x', '61700'])
      expect(() => deepGroove(name)).toThrow(`${name}; is not listed`);
  });

  it('has no width of bearings that are wider with shields', () => {
    expect(deepGroove('688')).toEqual({ bore: 8, outside: 16, widths: [4, 5], chamfer: 0.2 });
  });

  it('reads shields and seals behind a designation', () => {
    expect(deepGroove('608ZZ')).toEqual(deepGroove('608'));
    expect(deepGroove('6900-2RS')).toEqual(deepGroove('6900'));
    // trap: those of the series 68 are wider
    expect(deepGroove('688-ZZ')).toMatchObject({ bore: 8, outside: 16, width: 5 });
    expect(deepGroove(' 688ZZ ')).toEqual(deepGroove('688-ZZ'));
    expect(ringFlange(' 608ZZ ')).toEqual(ringFlange('608'));
  });

  // from memory of ISO 8443
  it.each([
    ['608', 25, 1.5],
    ['625', 18, 1],
    ['688', 18, 1.1],
    ['6900', 25, 1.5],
  ])('the flange of F%s is %d × %d', (name, outside, thickness) => {
    expect(ringFlange(name)).toEqual({ outside, thickness });
  });

  it('lists flanges that reach over their bearing and are thinner than it', () => {
    const listed = DEEP_GROOVE_DESIGNATIONS.filter((name) => ringFlange(name));
    expect(listed).toHaveLength(11);
    for (const name of listed) {
      const { outside, width = 2.5 } = deepGroove(name);
      expect(ringFlange(name)!.outside - outside).toBeGreaterThanOrEqual(1.2);
      expect(ringFlange(name)!.thickness).toBeLessThan(width);
    }
    expect(ringFlange('6000')).toBeUndefined();
  });

  // a bearing list: Da at most 30.8 for 35 × 0.6, 31.4 for 37 × 1.0
  it('backs outer rings by the shoulder of the list', () => {
    expect(widestShoulder({ outside: 35, chamfer: 0.6 })).toBeCloseTo(30.8, 9);
    expect(widestShoulder({ outside: 37, chamfer: 1 })).toBeCloseTo(31.4, 9);
    // between rows the next higher one, above the last that one
    expect(widestShoulder({ outside: 22, chamfer: 0.31 })).toBeCloseTo(22 - 4.2, 9);
    expect(widestShoulder({ outside: 37, chamfer: 1.5 })).toBeCloseTo(31.4, 9);
  });

  it.each(DEEP_GROOVE_DESIGNATIONS)(
    'the usual shoulder of %s backs its outer ring and clears its inner one',
    (name) => {
      const bearing = deepGroove(name);
      expect(usualShoulder(bearing)).toBeLessThanOrEqual(widestShoulder(bearing) + 1e-9);
      expect(usualShoulder(bearing)).toBeGreaterThan(innerReach(bearing));
    },
  );
});
