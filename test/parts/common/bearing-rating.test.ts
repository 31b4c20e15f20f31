import { describe, expect, it } from 'vitest';
import { judgeBearingLoad } from '../../../src/parts/common/bearing-rating.js';

const carries = { forGood: 200, moment: 500, turning: 464.1588833612779 };
const said = (changes: object) =>
  judgeBearingLoad({ load: 0, jam: 0, carries, missing: [], cure: 'take another', ...changes }, { max: 1 });

describe('the load of a bearing along its axis', () => {
  // 464.159/100^(1/3) = 100
  it.each([
    [
      'for good',
      { load: 80, carries: { ...carries, forGood: 50 } },
      1.6,
      /^80 N for good of 50 N; take another; the list/,
    ],
    ['turning', { load: 80 }, 0.8, /^80 N of the 100 N with which it lasts 100 million turns$/],
    ['in a jam', { load: 80, jam: 450 }, 0.9, /^450 N of 500 N when the axis jams$/],
  ] as const)('is judged by what is worst: %s', (_, changes, value, words) => {
    const row = said(changes) as { value: { likely: number }; message: string };
    expect(row.value.likely).toBeCloseTo(value, 9);
    expect(row.message).toMatch(words);
  });

  it('is open while something is not told, but for a fail', () => {
    const missing = ['duty.load'];
    expect(said({ jam: 450, missing })).toEqual(expect.objectContaining({ missing }));
    expect(said({ jam: 550, missing })).not.toEqual(expect.objectContaining({ missing }));
  });
});
