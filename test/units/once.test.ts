import { describe, expect, it } from 'vitest';
import { once } from '../../src/units/once.js';

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
