import { describe, expect, it } from 'vitest';
import { SCREWS, sharesWithin } from '../support/made-screws.js';

// each screw anywhere within its class; a screw that is read needs a design of its own, so fewer of them are drawn and
// chance is given its room besides
describe.each(['close', 'running', 'loose'] as const)('fit: %s', (fit) => {
  it.each(SCREWS)('$name, read $read: 19 of 20 nuts lie within every stated range, within 1.5 points', (screw) => {
    const [count, within] = screw.read === 'nothing' ? [10_000, 0.015] : [1000, 0.025];
    for (const [figure, share] of Object.entries(sharesWithin(screw, fit, count, 11)))
      expect(Math.abs(share - 0.95), `${figure} ${share}`).toBeLessThanOrEqual(within);
  });
});
