import { describe, expect, it } from 'vitest';
import { measureAll } from './bench.js';

// A thinned grid: every screw of every series once, with seeded errors; the whole grid runs in soak.
describe('identify over the series', () => {
  it('names at least 95 % of the screws, and parts the twins by the measurement it suggests', () => {
    const tally = measureAll(2, 0.03, 2);
    expect(tally.named / tally.screws, tally.missed.join('\n')).toBeGreaterThanOrEqual(0.95);
    expect(tally.parted / tally.screws).toBeGreaterThanOrEqual(0.95);
  });

  // The control: with errors ten times as large as the person says, names must go wrong.
  it('fails when the calipers are far worse than told', () => {
    const tally = measureAll(1, 0.3, 1, 0.03);
    expect(tally.named / tally.screws).toBeLessThan(0.95);
  });
});
