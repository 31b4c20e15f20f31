import { describe, expect, it } from 'vitest';
import { xBreaks, yBreaks } from '../../../../src/solid/exact/lines/breaks.js';
import type { Mark } from '../../../../src/solid/exact/lines/marks.js';

const MARKS: readonly Mark[] = [
  { kind: 'circle', center: [1, 0], radius: 5 },
  { kind: 'line', from: [0, 0], to: [2, 4], isRoot: true },
  { kind: 'line', from: [-3, 4], to: [-3, -5] },
];

describe('places where what lines meet may change', () => {
  it('over one y: a circle of 5 at 1 ± 4 three up, sides where they pass; near ones are one, a root if one is', () => {
    expect(xBreaks(MARKS, 3)).toEqual([
      { at: -3, isRoot: false },
      { at: 1.5, isRoot: true },
      { at: 5, isRoot: false },
    ]);
  });

  it('in y: ends of sides, and both ends of circles as roots', () => {
    expect(yBreaks(MARKS)).toEqual([
      { at: -5, isRoot: true },
      { at: 0, isRoot: true },
      { at: 4, isRoot: true },
      { at: 5, isRoot: true },
    ]);
  });
});
