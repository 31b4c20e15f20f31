import { expect, it } from 'vitest';
import type { NutDesign } from '../../../src/parts/nut/dimensions.js';
import { longer } from '../../../src/parts/nut/engagement.js';

const family = (kind?: string) => longer({ family: kind && { kind } } as unknown as NutDesign);

it('more flank is had by a longer nut; of two nuts with a spring by the follower and a softer spring too', () => {
  expect(family()).toBe('a longer nut');
  expect(family('twin')).toBe('a longer nut');
  expect(family('anti-backlash')).toMatch(/family\.follower.*softer spring/);
});
