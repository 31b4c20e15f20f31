import { describe, expect, it } from 'vitest';
import { STARTS as ALL } from '../support/untold/bases.js';
import { findsOf, readBetter } from '../support/untold/compare.js';

/** Those whose verdicts hang on most facts; the others are looked at where there is more time. */
const STARTS = ALL.filter(([kind]) => ['start nut', 'start coupling', 'start motor-plate'].includes(kind));

/** Not told is not safe: no check reads better for a fact that is left out than for the worst that may be told. */
describe('a fact that is not told makes no check better', () => {
  it.each(STARTS)('of the start sheet of a %s', (_, sheet) => {
    expect(findsOf(sheet)).toEqual([]);
  });

  it('and what would is found: a choice in place of a fact', () => {
    const [, nut] = STARTS[0]!;
    const coarse = { path: 'printer.layer', told: () => [0.32] };
    expect(readBetter(nut, [coarse]).map(({ check }) => check)).toContain('print-layers');
  });
});
