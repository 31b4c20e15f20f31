import { expect, it } from 'vitest';
import { randomFaults, recovered } from '../calibrate/trial-bench.js';

// the errors of the hand leave both with a standard deviation of a third of these bounds: 1 of 400 misses by chance, hardly 6
it('recovers 400 printers with unknown faults in at most three nuts: shrink to 0.1 %, play to 0.03 mm', () => {
  const rows = Array.from({ length: 400 }, (_, i) => recovered(randomFaults(i + 5000, 0.0055), i + 5000));
  const share = (is: (row: (typeof rows)[number]) => boolean) => rows.filter(is).length / rows.length;
  expect(share(({ shrink }) => Math.abs(shrink) <= 0.001)).toBeGreaterThanOrEqual(0.985);
  expect(share(({ play }) => Math.abs(play) <= 0.03)).toBeGreaterThanOrEqual(0.985);
});
