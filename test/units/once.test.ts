import { describe, expect, it } from 'vitest';
import { once, onceFor } from '../../src/units/once.js';

describe('once', () => {
  it('works when first asked, and not again, even where nothing comes of it', () => {
    let calls = 0;
    const value = once(() => {
      calls += 1;
      return undefined;
    });
    expect(calls).toBe(0);
    expect([value(), value()]).toEqual([undefined, undefined]);
    expect(calls).toBe(1);
  });
});

describe('onceFor', () => {
  it('works once for each object, and anew for a copy of it', () => {
    let calls = 0;
    const size = onceFor((pair: readonly number[]) => {
      calls += 1;
      return pair.length;
    });
    const pair = [1, 2];
    expect([size(pair), size(pair), calls]).toEqual([2, 2, 1]);
    expect([size([...pair]), calls]).toEqual([2, 2]);
  });
});
