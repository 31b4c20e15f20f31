import { describe, expect, it } from 'vitest';
import { measureAll } from '../identify/bench.js';

describe.each([0.02, 0.03, 0.05])('identify over the whole grid, calipers ± %d mm', (uncertainty) => {
  it('names at least 95 % of the screws, and parts the twins by the measurements it suggests', () => {
    const tally = measureAll(20, uncertainty);
    expect(tally.named / tally.screws, tally.missed.join('\n')).toBeGreaterThanOrEqual(0.95);
    expect(tally.parted / tally.screws).toBeGreaterThanOrEqual(0.95);
  });
});
