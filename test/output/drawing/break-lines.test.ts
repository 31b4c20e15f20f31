import { describe, expect, it } from 'vitest';
import { breakLines } from '../../../src/output/drawing/break-lines.js';
import { circleInk, type Ink, lineInk, textInk } from '../../../src/output/drawing/ink.js';
import { textWidth } from '../../../src/output/drawing/text-width.js';
import type { Point } from '../../../src/parts/part-views.js';

const text = textInk('12.5', { at: [10, 10], height: 2.5, anchor: 'middle' });
const half = textWidth('12.5', 2.5) / 2;
const lines = (ink: readonly Ink[]) => ink.flatMap((one) => (one.kind === 'line' ? [one] : []));

describe('lines and texts', () => {
  it('breaks a line that runs through a text, and leaves one that runs past it', () => {
    const broken = lines(breakLines([lineInk('narrow', [0, 9], [20, 9]), text]));
    expect(broken).toHaveLength(2);
    expect(broken[0]!.points[1]![0]).toBeCloseTo(10 - half - 0.3, 9);
    expect(broken[1]!.points[0]![0]).toBeCloseTo(10 + half + 0.3, 9);
    // the dimension line itself runs 0.8 below
    expect(lines(breakLines([lineInk('narrow', [0, 10.8], [20, 10.8]), text]))).toHaveLength(1);
  });

  it('opens a closed outline only where the text stands', () => {
    const square: Point[] = [
      [10, 0],
      [30, 0],
      [30, 20],
      [10, 20],
    ];
    const broken = lines(breakLines([{ kind: 'line', pen: 'wide', points: square, closed: true }, text]));
    const length = broken
      .flatMap(({ points }) => points.slice(1).map((to, i) => [points[i]!, to] as const))
      .reduce((sum, [a, b]) => sum + Math.hypot(a[0] - b[0], a[1] - b[1]), 0);
    // 80 all around, less the height of the text, its descent and the room about it
    expect(length).toBeCloseTo(80 - (2.5 * 1.1 + 0.6), 9);
  });

  it('breaks circles, and texts that are turned', () => {
    const arcs = breakLines([circleInk('wide', [10, 19], 10), text]).filter(({ kind }) => kind === 'arc');
    expect(arcs).toHaveLength(1);
    const turned = textInk('12.5', { at: [10, 10], height: 2.5, anchor: 'middle', turn: 90 });
    expect(lines(breakLines([lineInk('narrow', [0, 9], [20, 9]), turned]))).toHaveLength(2);
    expect(lines(breakLines([lineInk('narrow', [0, 15], [20, 15]), turned]))).toHaveLength(1);
  });
});
