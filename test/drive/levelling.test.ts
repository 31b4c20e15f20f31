import { expect, it } from 'vitest';
import { levelling } from '../../src/drive/levelling.js';

it('left end low, right-hand, seen from above: the left screw clockwise by 360°·0.35/2', () => {
  const found = levelling({ hand: 'right', lead: 2 }, -0.35);
  expect(found).toMatchObject({ low_end: 'left', seen_from_above: 'clockwise' });
  expect(found.degrees).toBeCloseTo(63, 9);
  expect(found.words).toMatch(/left end is 0\.35 mm low.*turn the left screw 63° clockwise as seen from above/);
});

it('a left-hand screw the other way; looking up at a motor above turns what one sees round again', () => {
  expect(levelling({ hand: 'left', lead: 8 }, 0.35)).toMatchObject({
    low_end: 'right',
    seen_from_above: 'counter-clockwise',
    degrees: expect.closeTo(15.75, 9),
  });
  expect(levelling({ hand: 'right', lead: 4 }, 0.25, 'above').words).toMatch(/from below, counter-clockwise/);
  expect(levelling({ hand: 'right', lead: 4 }, 0).words).toBe('Both ends are level.');
});
