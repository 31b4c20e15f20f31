import { expect, it } from 'vitest';
import { greasedIn } from '../../../src/parts/common/held.js';

it('greases shafts of one section of which nobody tells, and no others', () => {
  const untold = { name: 'motor end', grip: { friction: 0.15, greaseUntold: true } } as const;
  const washed = { name: 'screw end', grip: { friction: 0.15 } } as const;
  // grease leaves steel in plastic a friction of 0.05: common practice
  const greasy = { ...untold, grip: { friction: 0.05, greaseUntold: true } };
  expect(greasedIn([untold, washed], 'motor_end')).toEqual([greasy, washed]);
  expect(greasedIn([untold, washed], 'screw_end')).toBeUndefined();
  const both = [untold, { ...untold, name: 'screw end', section: 'hold' }] as const;
  expect(greasedIn(both, 'hold')).toEqual([untold, { ...greasy, name: 'screw end', section: 'hold' }]);
});
