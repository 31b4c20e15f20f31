import { describe, expect, it } from 'vitest';
import { ahead } from '../../../src/work/fleet/ahead.js';

describe('ahead', () => {
  it('gives every item with its own result, in order, with no more in hand than told', async () => {
    let [inHand, most] = [0, 0];
    const work = async (item: number) => {
      most = Math.max(most, ++inHand);
      // later items end first
      await new Promise((resolve) => setTimeout(resolve, 10 - item));
      inHand--;
      return item * item;
    };
    const found: (readonly [number, number])[] = [];
    for await (const one of ahead([1, 2, 3, 4, 5, 6], 3, work)) found.push(one);
    expect(found).toEqual([1, 2, 3, 4, 5, 6].map((item) => [item, item * item]));
    expect(most).toBe(3);
  });

  it('begins nothing more once nobody asks', async () => {
    const begun: number[] = [];
    const work = async (item: number) => begun.push(item);
    for await (const [item] of ahead([1, 2, 3, 4, 5, 6], 2, work)) if (item === 2) break;
    expect(begun).toEqual([1, 2, 3]);
  });

  it('is empty where nothing is given', async () => {
    for await (const one of ahead([], 2, async () => 0)) throw new Error(String(one));
  });
});
