import { describe, expect, it } from 'vitest';
import { STARTS as ALL } from '../support/untold/bases.js';
import { betterAt, betterThough } from '../support/worse/compare.js';

/** Those that most laws judge; the others are looked at where there is more time. */
const STARTS = ALL.filter(([kind]) => ['start nut', 'start adapter', 'start end-holder'].includes(kind));

/** No check reads better, or has more left to its limit, where more is asked of a part or less of it is there. */
describe('what is harder on a part makes no check better', () => {
  it.each(STARTS)('of the start sheet of %s', (_, sheet) => {
    expect(betterThough(sheet)).toEqual([]);
  });

  it('and what would is found: less load in place of more', () => {
    const [, nut] = STARTS.find(([kind]) => kind === 'start nut')!;
    expect(betterAt(nut, 'duty.load', () => [1]).join('; ')).toMatch(
      /duty.load: 1: creep has [\d.]+ of its limit left/,
    );
  });
});
