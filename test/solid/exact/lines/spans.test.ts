import { describe, expect, it } from 'vitest';
import { type Joining, joinedSpans, type Spans } from '../../../../src/solid/exact/lines/spans.js';

const CASES: readonly [Joining, Spans, Spans, Spans][] = [
  ['union', [0, 2], [1, 3], [0, 3]],
  ['union', [0, 1], [1, 2], [0, 2]],
  ['union', [], [4, 5], [4, 5]],
  ['union', [0, 1, 6, 7], [2, 3], [0, 1, 2, 3, 6, 7]],
  ['difference', [0, 5], [1, 2, 3, 4], [0, 1, 2, 3, 4, 5]],
  ['difference', [0, 5], [-1, 6], []],
  ['difference', [0, 5], [0, 2], [2, 5]],
  ['difference', [0, 5], [], [0, 5]],
  ['intersection', [0, 5, 8, 9], [4, 10], [4, 5, 8, 9]],
  ['intersection', [0, 1], [1, 2], []],
  ['intersection', [0, 1], [], []],
];

describe('stretches of a line', () => {
  it.each(CASES)('%s of %j and %j', (kind, a, b, wanted) => {
    expect(joinedSpans(kind, a, b)).toEqual(wanted);
  });
});
