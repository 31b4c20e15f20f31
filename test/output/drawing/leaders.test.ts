import { expect, it } from 'vitest';
import { type Ink, textInk } from '../../../src/output/drawing/ink.js';
import { leadersInk } from '../../../src/output/drawing/leaders.js';
import { PAPERS } from '../../../src/output/drawing/paper.js';
import { layOut } from '../../../src/output/drawing/sheet-layout.js';
import type { DrawnView, Point, SizeMark } from '../../../src/parts/part-views.js';

type Line = readonly [Point, Point];

function crossing([a, b]: Line, [c, d]: Line): boolean {
  const side = (p: Point, q: Point, r: Point) =>
    Math.sign((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]));
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

it('no two leaders cross, whichever way their tips lie', () => {
  const leader = (name: string, to: Point): SizeMark => ({ name, value: 1, from: to, to, side: 'leader' });
  // the second lies to the right of the first, and lower: the farther left would get the outer shelf
  const sizes = [leader('circle', [13, -2]), leader('hole', [12, -9]), leader('other', [9, -4])];
  const outline = { kind: 'circle', line: 'outline', center: [0, 0], radius: 20 } as const;
  const end: DrawnView = { title: 'a', strokes: [outline], hatched: [], sizes, letters: [] };
  const placed = layOut({ side: { ...end, sizes: [] }, end }, 'first', PAPERS.a4).views.find(
    ({ view }) => view === end,
  )!;
  const ink = leadersInk(placed, (mark, at) => textInk(mark.name, { at, height: 2.5 }));
  const tips = sizes.map(({ to }) => placed.at(to));
  const lines = ink.flatMap((one: Ink): Line[] =>
    one.kind === 'line' && tips.some(([x, y]) => x === one.points[0]![0] && y === one.points[0]![1])
      ? [[one.points[0]!, one.points[1]!]]
      : [],
  );
  expect(lines).toHaveLength(3);
  for (const [i, one] of lines.entries())
    for (const other of lines.slice(i + 1)) expect(crossing(one, other)).toBe(false);
});
