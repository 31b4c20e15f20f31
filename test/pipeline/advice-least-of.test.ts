import { describe, expect, it } from 'vitest';
import { leastOf } from '../../src/pipeline/advice/least-of.js';

const cure = (changes: Record<string, number | string>, change: number, costs: readonly string[] = []) => ({
  changes,
  change,
  costs,
});

describe('the least of several cures', () => {
  it('stand in order: those without a price first, then the smallest change', () => {
    const [dear, large, small] = [cure({ a: 1 }, 1, ['grease']), cure({ b: 1 }, 5), cure({ c: 1 }, 2)];
    expect(leastOf([dear, large, small])).toEqual([small, large, dear]);
  });

  it('are one for each set of fields', () => {
    const [near, far] = [cure({ length: 16 }, 2), cure({ length: 40 }, 9)];
    expect(leastOf([far, near])).toEqual([near]);
  });

  it('are none that only adds to another; another value of the same field may want a second', () => {
    const alone = cure({ material: 'pc' }, 8);
    const more = cure({ material: 'pc', feed: 7 }, 9);
    const other = cure({ material: 'pa12', feed: 7 }, 9);
    expect(leastOf([more, other, alone])).toEqual([alone, other]);
  });
});
