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
    expect(thinnest({})!.size).toBeCloseTo(8, 9);
    expect(thinnest({ plate: { ...BLANK.plate, step: { diameter: 24, depth: 3 } } })!.size).toBeCloseTo(5, 9);
  });

  it('is what a pocket leaves: 8 mm less the head of an M4, 4 mm', () => {
    expect(thinnest({ carriage: { ...BLANK.carriage, joint: 'counterbore' } })!.size).toBeCloseTo(4, 9);
  });

  it('is the rim: its wall of 1.8 mm, or its height of 1 mm', () => {
    expect(thinnest({ register: { carriage: 'rim', depth: 3 } })!.size).toBeCloseTo(1.8, 9);
    expect(thinnest({ register: { carriage: 'rim' } })!.size).toBeCloseTo(1, 9);
  });

  it('lies between a cut-out and the edge', () => {
    const plate = { ...BLANK.plate, cutouts: [{ at: [0, 34], diameter: 6 }] };
    // 40 mm to the edge, 34 mm to the middle, 3 mm across
    expect(thinnest({ plate })!.size).toBeCloseTo(3, 2);
  });

  it('is not known where a cut-out breaks through the edge, 38 mm out of 40 and 3 mm across', () => {
    expect(thinnest({ plate: { ...BLANK.plate, cutouts: [{ at: [0, 38], diameter: 6 }] } })).toBeUndefined();
  });

  it('is not known of a free polygon, whose own necks no check sees', () => {
    const corners = [
      [-40, -40],
      [40, -40],
      [0, 60],
    ];
    expect(thinnest({ plate: { ...BLANK.plate, outline: { shape: 'polygon', corners } } })).toBeUndefined();
  });
});

describe('a wall in the file', () => {
  it('is the finished one less three chords where nothing is compensated', () => {
    expect(wallInFile(2, TRUE_SIZES, 0.01)).toBeCloseTo(1.97, 9);
  });

  it('loses what openings on both sides are enlarged by', () => {
    const larger = { ...TRUE_SIZES, inside: (size: number) => size + 0.15 };
    expect(wallInFile(2, larger, 0)).toBeCloseTo(1.85, 9);
  });
});
