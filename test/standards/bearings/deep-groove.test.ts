import { describe, expect, it } from 'vitest';
import {
  DEEP_GROOVE_DESIGNATIONS,
  deepGroove,
  innerReach,
  outsideShort,
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

  // ISO 15 from memory, bore × outside × open width, where no public table was at hand
  it.each([
    ['684 4×9×2.5', '694 4×11×4', '604 4×12×4', '624 4×13×5'],
    ['685 5×11×3', '695 5×13×4', '605 5×14×5', '625 5×16×5'],
    ['686 6×13×3.5', '696 6×15×5', '606 6×17×6', '626 6×19×6'],
    ['687 7×14×3.5', '697 7×17×5', '607 7×19×6', '627 7×22×7'],
    ['688 8×16×4', '698 8×19×6', '608 8×22×7', '628 8×24×8'],
    ['689 9×17×4', '699 9×20×6', '609 9×24×7', '629 9×26×8'],
    ['6800 10×19×5', '6900 10×22×6', '6000 10×26×8', '6200 10×30×9'],
    ['6801 12×21×5', '6901 12×24×6', '6001 12×28×8', '6201 12×32×10'],
    ['6802 15×24×5', '6902 15×28×7', '6002 15×32×9', '6202 15×35×11'],
    ['6803 17×26×5', '6903 17×30×7', '6003 17×35×10', '6203 17×40×12'],
    ['6804 20×32×7', '6904 20×37×9', '6004 20×42×12', '6204 20×47×14'],
  ])('of one bore: %s, %s, %s, %s', (...rows) => {
    for (const row of rows) {
      const [name = '', sizes = ''] = row.split(' ');
      const { bore, outside, width, widths } = deepGroove(name);
      expect([bore, outside, widths?.[0] ?? width].join('×')).toBe(sizes);
    }
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
    for (const apart of [' 688ZZ ', '688  ZZ', '688 - ZZ']) expect(deepGroove(apart)).toEqual(deepGroove('688-ZZ'));
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

  // common practice, by hand: D − 0.25·(D − d), below the Da max of the list
  it.each([
    ['608', 18.5, 20],
    ['688', 14, 14.4],
    ['6804', 29, 30],
    ['6204', 40.25, 41.4],
  ])('the usual shoulder of %s is %d mm, at most %d', (name, opening, most) => {
    expect(usualShoulder(deepGroove(name))).toBeCloseTo(opening, 9);
    expect(widestShoulder(deepGroove(name))).toBeLessThanOrEqual(most + 1e-9);
  });

  // common practice, by hand: d + 0.3·(D − d)
  it.each([
    ['608', 12.2],
    ['625', 8.3],
  ])('what turns with the inner ring of %s reaches out to %d mm', (name, most) => {
    expect(innerReach(deepGroove(name))).toBeCloseTo(most, 9);
  });

  it.each(DEEP_GROOVE_DESIGNATIONS)(
    'the usual shoulder of %s backs its outer ring and clears its inner one',
    (name) => {
      const bearing = deepGroove(name);
      expect(usualShoulder(bearing)).toBeLessThanOrEqual(widestShoulder(bearing) + 1e-9);
      expect(usualShoulder(bearing)).toBeGreaterThan(innerReach(bearing));
    },
  );

  // ISO 492, normal class, from memory: outer rings 0/−8, −9, −11, −13 µm
  it.each([
    [9, 0.008],
    [18, 0.008],
    [22, 0.009],
    [30, 0.009],
    [47, 0.011],
    [62, 0.013],
    [90, 0.013],
  ])('of %d mm outside may be %d mm short', (outside, by) => {
    expect(outsideShort(outside)).toBe(by);
  });
});
