import { expect, it } from 'vitest';
import { slidingLimits } from '../../../src/parts/common/sliding-limits.js';

it('lets a plastic slide three times as fast as is usual at most, and none faster than 500 mm/s, common practice', () => {
  expect(slidingLimits({ speedLimit: 100 })).toEqual({ usual: 100, most: 300 });
  expect(slidingLimits({ speedLimit: 400 })).toEqual({ usual: 400, most: 500 });
  // one that a maker rates higher keeps to its rating
  expect(slidingLimits({ speedLimit: 600 })).toEqual({ usual: 600, most: 600 });
});
