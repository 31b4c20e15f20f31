import { expect, it } from 'vitest';
import { travelTime } from '../../src/mechanics/travel-time.js';

// by hand: 0.4/3 + 3/100, 0.4/2 + 2/100; at 20 mm/s² 3 mm/s is never reached: 2·√(0.4/20); 2 mm/s just is
it.each([
  [3, 100, 0.16333],
  [2, 100, 0.22],
  [3, 20, 0.28284],
  [2, 20, 0.3],
  [3, 50, 0.19333],
])('0.4 mm at %d mm/s and %d mm/s² take %d s', (feed, acceleration, seconds) => {
  expect(travelTime({ distance: 0.4, feed, acceleration })).toBeCloseTo(seconds, 5);
});

it('refuses what is no move', () => {
  expect(() => travelTime({ distance: 0, feed: 1, acceleration: 1 })).toThrow(/distance/);
});
