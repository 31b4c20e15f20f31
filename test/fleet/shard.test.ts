import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { inShard, parseShard } from '../../src/fleet/shard.js';

describe('shards', () => {
  it.each(['', '3', '0/3', '4/3', '1/0', '-1/3', 'a/b', '1/1000000'])('refuses %j', (text) => {
    expect(() => parseShard(text)).toThrow('--shard');
  });

  it('every address is in exactly one share, and the shares are about equal', () => {
    const addresses = Array.from({ length: 4000 }, (_, i) => createHash('sha256').update(`${i}`).digest('hex'));
    const sizes = Array.from(
      { length: 16 },
      (_, i) => addresses.filter((one) => inShard(one, { index: i + 1, count: 16 })).length,
    );
    expect(sizes.reduce((a, b) => a + b)).toBe(4000);
    // 250 expected; five standard deviations of a fair draw are 77
    for (const size of sizes) expect(Math.abs(size - 250)).toBeLessThan(77);
  });
});
