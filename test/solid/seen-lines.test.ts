import { beforeAll, describe, expect, test } from 'vitest';
import type { Drawn, PaperPoint } from '../../src/solid/drawn.js';
import type { Kernel } from '../../src/solid/kernel.js';
import { acrossAxis, alongAxis, below, halfBehind, wholeBehind } from '../../src/solid/look.js';
import { circleOutline, polygonArea, rectangleOutline } from '../../src/solid/outline.js';
import { cylinder, type Shape, withoutFeatures } from '../../src/solid/recipe.js';
import { seenLines } from '../../src/solid/seen-lines.js';
import { sharedKernel } from '../support/shared-kernel.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

const disc = (radius: number, from: number, to: number, circumscribed = false): Shape =>
  cylinder({ radius, sides: 96, circumscribed, from, to });
const block = (
  size: readonly [number, number],
  from: number,
  to: number,
  center?: readonly [number, number],
): Shape => ({
  kind: 'prism',
  outlines: [rectangleOutline({ size, ...(center ? { center } : {}) })],
  from,
  to,
});
const less = (...of: Shape[]): Shape => ({ kind: 'difference', of });
const named = (name: string, shape: Shape): Shape => ({ kind: 'feature', name, shape });

function seen(shape: Shape, look: Parameters<typeof seenLines>[1], drawing?: Parameters<typeof seenLines>[2]) {
  return seenLines(kernel.surfaced([shape]), look, drawing);
}

const circles = (lines: readonly Drawn[]) =>
  lines.flatMap((one) => (one.kind === 'circle' ? [one.radius] : [])).sort((a, b) => a - b);

/** Straight pieces of all paths, their ends rounded, in order. */
function pieces(lines: readonly Drawn[]): string[] {
  return lines
    .flatMap((one) => {
      if (one.kind !== 'path') return [];
      const ends = one.closed ? [...one.points, one.points[0]!] : one.points;
      return ends.slice(1).map((to, i) => piece(ends[i]!, to));
    })
    .sort();
}
function piece(a: PaperPoint, b: PaperPoint): string {
  const text = (point: PaperPoint) => point.map((value) => (Math.round(value * 100) / 100 + 0).toString()).join();
  return [text(a), text(b)].sort().join(' ');
}
const areaOf = (loops: readonly (readonly PaperPoint[])[]) =>
  Math.abs(loops.reduce((sum, one) => sum + polygonArea(one), 0));

describe('lines of a solid', () => {
  test('a ring from above is two circles at the radii that are meant', () => {
    const { visible, hidden } = seen(less(disc(10, 0, 5), disc(4, -1, 6, true)), alongAxis(1));
    expect(circles(visible)).toEqual([4, 10]);
    expect(visible).toHaveLength(2);
    expect(hidden).toEqual([]);
  });

  test('a body that stands in several places is drawn in each as if it were alone there', () => {
    const body = less(block([20, 12], 0, 8), named('pocket', disc(3, 5, 9, true)), disc(2, -1, 9, true));
    const placed = (more: object): Shape => ({ kind: 'moved', shape: body, ...more });
    const over = placed({ tilt: 180, turn: 60, by: [1, 2, 30] });
    const lying = placed({ tilt: 90, by: [0, 0, 4] });
    const together = kernel.surfaced([body, over, wholeBehind(over, 0), lying]);
    const looks = [alongAxis(-1), alongAxis(1), acrossAxis(0), acrossAxis(90)] as const;
    for (const [i, shape] of [body, over, wholeBehind(over, 0), lying].entries()) {
      const alone = seenLines(kernel.surfaced([structuredClone(shape)]), looks[i]!, { hidden: ['pocket'] });
      const shared = seenLines([together[i]!], looks[i]!, { hidden: ['pocket'] });
      for (const kind of ['visible', 'hidden'] as const) {
        expect(pieces(shared[kind]), `${i} ${kind}`).toEqual(pieces(alone[kind]));
        expect(circles(shared[kind]), `${i} ${kind}`).toEqual(circles(alone[kind]));
      }
    }
    // turned over, the pocket is seen from above where it was hidden from below
    expect(circles(seenLines([together[0]!], alongAxis(-1), { hidden: ['pocket'] }).hidden)).toEqual([3]);
    expect(circles(seenLines([together[1]!], alongAxis(1)).visible)).toEqual([2]);
    expect(circles(seenLines([together[1]!], alongAxis(-1)).visible)).toEqual([2, 3]);
  });

  test('a cylinder from the side is its four sides', () => {
    const { visible } = seen(disc(10, 0, 5), acrossAxis(90));
    expect(pieces(visible)).toEqual(['-5,-10 -5,10', '-5,-10 0,-10', '-5,10 0,10', '0,-10 0,10']);
  });

  test('what stands before hides what lies behind, to the end of its own outline', () => {
    // seen from +Z: the lower block reaches out on the left of the upper one
    const both: Shape = { kind: 'union', of: [block([10, 4], 0, 5), block([4, 8], 3, 9, [2, 0])] };
    const { visible } = seen(both, alongAxis(1));
    expect(pieces(visible)).toContain('-5,2 0,2');
    expect(pieces(visible)).not.toContain('0,2 4,2');
    expect(pieces(visible)).toContain('4,-2 5,-2');
  });

  test('a blind hole from below is drawn only where it is asked for', () => {
    const blind = less(block([20, 20], 0, 5), named('pocket', disc(3, 3, 6, true)));
    expect(circles(seen(blind, alongAxis(-1)).visible)).toEqual([]);
    const asked = seen(blind, alongAxis(-1), { hidden: ['pocket'] });
    expect(circles(asked.hidden)).toEqual([3]);
    expect(circles(seen(blind, alongAxis(1), { hidden: ['pocket'] }).visible)).toEqual([3]);
    expect(seen(blind, alongAxis(1), { hidden: ['pocket'] }).hidden).toEqual([]);
  });

  test('features that are left out leave no line', () => {
    const marked: Shape = { kind: 'union', of: [block([20, 20], 0, 5), named('mark', block([1, 4], 4, 6))] };
    expect(pieces(seen(withoutFeatures(marked, ['mark']), alongAxis(1)).visible)).toHaveLength(4);
    expect(pieces(seen(marked, alongAxis(1)).visible)).toHaveLength(8);
  });

  test('a broken edge is one line from above and shows from the side', () => {
    const contour = [
      [10, 0],
      [10, 4],
      [9, 5],
    ] as const;
    const broken: Shape = { kind: 'lathe', sides: 96, circumscribed: false, contour, broken: [1] };
    expect(circles(seen(broken, alongAxis(1)).visible)).toEqual([10]);
    expect(circles(seen({ ...broken, broken: [] }, alongAxis(1)).visible)).toEqual([9, 10]);
    expect(pieces(seen(broken, acrossAxis(0)).visible)).toContain('-4,-10 -4,10');
  });

  test('a straight side runs into a round corner without an edge', () => {
    const rounded: Shape = {
      kind: 'prism',
      outlines: [rectangleOutline({ size: [20, 10], radius: 3, sides: 48 })],
      from: 0,
      to: 4,
    };
    expect(pieces(seen(rounded, acrossAxis(90)).visible)).toHaveLength(4);
    const arcs = seen(rounded, alongAxis(1)).visible.filter(({ kind }) => kind === 'arc');
    expect(arcs).toHaveLength(4);
    for (const arc of arcs) expect(arc).toMatchObject({ radius: 3 });
  });

  test('every moved shape keeps its own surfaces', () => {
    const hole = disc(2, -1, 6, true);
    const at = (x: number): Shape => ({ kind: 'moved', by: [x, 0, 0], shape: hole });
    const { visible } = seen(less(block([20, 10], 0, 5), at(-5), at(5)), alongAxis(1));
    const centers = visible.flatMap((one) => (one.kind === 'circle' ? [one.center[0]] : [])).sort((a, b) => a - b);
    expect(centers).toEqual([-5, 5]);
  });

  test('a thread counts as a cylinder at its least radius', () => {
    const thread: Shape = {
      kind: 'thread',
      thread: {
        ridge: [
          [0.3, 4],
          [0.7, 3],
          [1.3, 3],
          [1.7, 4],
        ],
        pitch: 2,
        starts: 1,
        hand: 'right',
        columns: 96,
        from: -1,
        to: 11,
        airSide: 'inside',
        circumscribed: true,
      },
    };
    expect(circles(seen(less(disc(8, 0, 10), thread), alongAxis(1)).visible)).toEqual([3, 8]);
  });
});

describe('a section', () => {
  const pipe = less(disc(10, 0, 5), disc(4, -1, 6, true));

  test('through the axis opens both walls, and shows the edge of the bore behind', () => {
    const { regions, visible } = seen(wholeBehind(pipe, 30), acrossAxis(30));
    expect(areaOf(regions[0]!)).toBeCloseTo(2 * 6 * 5, 1);
    expect(regions[0]).toHaveLength(2);
    expect(pieces(visible)).toContain('0,-10 0,10');
  });

  test('in two half-planes turns them into one', () => {
    // a hole on 90° alone: the half towards it is open, the half towards 210° is not
    const holed = less(pipe, { kind: 'moved', by: [0, 7, 0], shape: disc(1, -1, 6, true) });
    const [upper, lower] = [
      seen(halfBehind(holed, 90, 1), acrossAxis(90)),
      seen(halfBehind(holed, 210, -1), acrossAxis(210, -1)),
    ];
    expect(areaOf(upper.regions[0]!)).toBeCloseTo(5 * 6 - 5 * 2, 1);
    expect(areaOf(lower.regions[0]!)).toBeCloseTo(5 * 6, 1);
    for (const point of upper.regions[0]!.flat()) expect(point[1]).toBeGreaterThan(0);
    for (const point of lower.regions[0]!.flat()) expect(point[1]).toBeLessThan(0);
    // nothing is drawn on the axis, where the halves meet
    const onAxis = (lines: readonly Drawn[]) =>
      lines
        .flatMap((one) => (one.kind === 'path' ? [one.points] : []))
        .filter((path) => path.every(([, y]) => Math.abs(y) < 1e-6));
    expect([...onAxis(upper.visible), ...onAxis(lower.visible)]).toEqual([]);
  });

  test('across the axis opens what the outline says', () => {
    const hexagon: Shape = { kind: 'prism', outlines: [circleOutline({ radius: 6, sides: 6 })], from: 0, to: 9 };
    const { regions } = seen(below(hexagon, 4), alongAxis(1));
    expect(areaOf(regions[0]!)).toBeCloseTo((3 * Math.sqrt(3) * 36) / 2, 2);
  });
});
