import { describe, expect, it } from 'vitest';
import { type CarriageOpening, judgeCarriageWall } from '../../../src/parts/common/carriage-wall.js';
import { exactly, plusMinus } from '../../../src/units/measured.js';

const LIMITS = { pass: { min: 1 }, fail: { min: 0 }, of: (own: object) => own } as never;
const FOUR = [
  [13.5, 0],
  [0, 13.5],
  [-13.5, 0],
  [0, -13.5],
] as const;

function wallOf(opening: Partial<CarriageOpening>, centres: readonly (readonly [number, number])[] = FOUR) {
  return judgeCarriageWall({ offset: [0, 0], ...opening }, { centres, across: exactly(3.4) }, LIMITS) as {
    value: { least: number; likely: number; most: number };
    message: string;
  };
}

describe('what a carriage has beside its opening', () => {
  it('is the circle less both radii: 13.5 − 8 − 1.7 mm', () => {
    expect(wallOf({ bore: exactly(16) }).value.likely).toBeCloseTo(3.8, 9);
  });

  it('is surely no more than the reading of the bore allows', () => {
    // half of ± 0.4 mm on the diameter
    const { value } = wallOf({ bore: plusMinus(16, 0.4) });
    expect(value.least).toBeCloseTo(3.6, 9);
    expect(value.most).toBeCloseTo(4, 9);
  });

  it('counts where the opening stands: 5 mm aside, the hole there is at 8.5 − 8 − 1.7', () => {
    expect(wallOf({ bore: exactly(16), offset: [5, 0] }).value.likely).toBeCloseTo(-1.2, 9);
    expect(wallOf({ bore: exactly(16), offset: [0, -5] }).value.likely).toBeCloseTo(-1.2, 9);
  });

  it('is more on the far side: a lone hole at 13.5 + 5 − 8 − 1.7', () => {
    expect(wallOf({ bore: exactly(16), offset: [-5, 0] }, [[13.5, 0]]).value.likely).toBeCloseTo(8.8, 9);
    expect(wallOf({ bore: exactly(16), offset: [0, 5] }, [[0, -13.5]]).value.likely).toBeCloseTo(8.8, 9);
  });

  it('says between what, and offers a cure below a millimetre, or what the sheet asks for', () => {
    expect(wallOf({ bore: exactly(16) }).message).toBe('3.8 mm between its holes and a bore of 16 mm');
    expect(wallOf({ slot: [20.2, 20] }).message).toBe('1.7 mm between its holes and a slot of 20.2 × 20 mm');
    expect(wallOf({ bore: exactly(22) }).message).toBe(
      '0.8 mm between its holes and a bore of 22 mm; use holes further out, or a smaller opening',
    );
    const anyRoom = { pass: {}, of: (own: object) => own } as never;
    const asked = (bore: number) =>
      judgeCarriageWall({ bore: exactly(bore), offset: [0, 0] }, { centres: FOUR, across: exactly(3.4) }, anyRoom)!;
    expect(asked(22).message).not.toContain('further out');
    expect(asked(24).message).toContain('further out');
  });

  it('says that screws in the bore hold on to nothing', () => {
    const { value, message } = wallOf({ bore: exactly(34) });
    expect(value.likely).toBeCloseTo(13.5 - 17 - 1.7, 9);
    expect(message).toContain(
      'its holes lie in a bore of 34 mm, where screws hold on to nothing; use holes further out',
    );
  });

  it('measures to the sides of a slot, and to its corners', () => {
    // 13.5 − 20/2 − 1.7 to the long side; the other two stand within the slot, 20 − 13.5 from its end
    expect(wallOf({ slot: [20, 20] }).value.likely).toBeCloseTo(1.8, 9);
    expect(wallOf({ slot: [40, 20] }).value.likely).toBeCloseTo(-(20 - 13.5) - 1.7, 9);
    // 3, 4, 5: the corner at (10, 6), the hole at (13, 10)
    expect(wallOf({ slot: [20, 12] }, [[13, 10]]).value.likely).toBeCloseTo(5 - 1.7, 9);
  });

  it('has nothing to say where no opening is told', () => {
    expect(wallOf({})).toBeUndefined();
    expect(wallOf({ bore: exactly(16) }, [])).toBeUndefined();
  });
});
