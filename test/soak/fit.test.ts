import { describe, expect, it } from 'vitest';
import { SCREWS, sharesWithin } from '../support/made-screws.js';

// each screw anywhere within its class; a share of 10,000 has a standard deviation of 0.2 points
describe.each(['close', 'running', 'loose'] as const)('fit: %s', (fit) => {
  describe.each(['nothing', 'crest', 'all'] as const)('read: %s', (read) => {
    it.each(SCREWS)('$name: 19 of 20 of 10,000 nuts lie within every stated range, within 1.5 points', (screw) => {
      for (const [figure, share] of Object.entries(sharesWithin(screw, read, fit, 10_000, 11)))
        expect.soft(Math.abs(share - 0.95), `${figure} ${share}`).toBeLessThanOrEqual(0.015);
    });
  });
});
