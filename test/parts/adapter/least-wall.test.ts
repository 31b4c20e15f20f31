import { describe, expect, it } from 'vitest';
import { designAdapter } from '../../../src/parts/adapter/dimensions.js';
import { thinnestByArithmetic } from '../../../src/parts/adapter/least-wall.js';
import { adapterSchema } from '../../../src/parts/adapter/sheet.js';
import { TRUE_SIZES } from '../../../src/parts/common/print-sizes.js';
import { wallInFile } from '../../../src/parts/common/wall-in-file.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import { validate } from '../../../src/sheet/validate.js';

const BLANK = {
  part: 'adapter',
  name: 'b',
  kind: 'blank',
  carriage: {
    bore: 19.6,
    thickness: 10,
    holes: { count: 3, circle: 56, diameter: 4.4, screw: 'M4' },
    joint: 'through',
  },
  plate: { thickness: 8, bore: 15.8, outline: { shape: 'round', diameter: 80 } },
  material: 'petg',
  printer: { compensation: 'none' },
};
const thinnest = (changes: object) =>
  thinnestByArithmetic(
    designAdapter(
      validate(adapterSchema, { ...BLANK, ...changes }, () => undefined),
      SHIPPED,
    ),
  );

describe('the thinnest wall of a plate by arithmetic', () => {
  it('is its thickness, less what is sunk from its faces', () => {
    expect(thinnest({}).size).toBeCloseTo(8, 9);
    expect(thinnest({ plate: { ...BLANK.plate, step: { diameter: 24, depth: 3 } } }).size).toBeCloseTo(5, 9);
  });

  it('is what a pocket leaves: 8 mm less the head of an M4, 4 mm', () => {
    expect(thinnest({ carriage: { ...BLANK.carriage, joint: 'counterbore' } }).size).toBeCloseTo(4, 9);
  });

  it('is the rim: its wall of 1.8 mm, or its height of 1 mm', () => {
    expect(thinnest({ register: { carriage: 'rim', depth: 3 } }).size).toBeCloseTo(1.8, 9);
    expect(thinnest({ register: { carriage: 'rim' } }).size).toBeCloseTo(1, 9);
  });

  it('lies between a cut-out and the edge', () => {
    const plate = { ...BLANK.plate, cutouts: [{ at: [0, 34], diameter: 6 }] };
    // 40 mm to the edge, 34 mm to the middle, 3 mm across
    expect(thinnest({ plate }).size).toBeCloseTo(3, 2);
  });

  it('is a prong beside a cut-out that breaks through the edge: 48.5 mm beside a side at 50 mm', () => {
    const plate = {
      ...BLANK.plate,
      bore: 10,
      outline: { shape: 'rectangular', size: [100, 100] },
      cutouts: [{ at: [47, 49], size: [3, 12] }],
    };
    expect(thinnest({ plate }).where).toBe('neck of the outline');
    expect(thinnest({ plate }).size).toBeCloseTo(1.5, 6);
  });

  it('is the neck of a free polygon: an arm 6 mm wide', () => {
    const corners = [
      [-40, -40],
      [40, -40],
      [40, 40],
      [6, 40],
      [6, 60],
      [0, 60],
      [0, 40],
      [-40, 40],
    ];
    expect(thinnest({ plate: { ...BLANK.plate, outline: { shape: 'polygon', corners } } })).toEqual({
      where: 'neck of the outline',
      size: 6,
    });
  });

  it('is no corner of it: two sides that meet under 53° make no wall', () => {
    const corners = [
      [-80, -80],
      [80, -80],
      [0, 80],
    ];
    expect(thinnest({ plate: { ...BLANK.plate, outline: { shape: 'polygon', corners } } }).size).toBeCloseTo(8, 9);
  });
});

describe('a wall in the file', () => {
  it('is the finished one less three chords where nothing is compensated', () => {
    expect(wallInFile({ where: 'wall', size: 2 }, TRUE_SIZES, 0.01).size).toBeCloseTo(1.97, 9);
  });

  it('loses what openings on both sides are enlarged by', () => {
    const larger = { ...TRUE_SIZES, inside: (size: number) => size + 0.15 };
    expect(wallInFile({ where: 'wall', size: 2 }, larger, 0).size).toBeCloseTo(1.85, 9);
  });
});
