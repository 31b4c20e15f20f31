import { describe, expect, it } from 'vitest';
import { boxOf } from '../../../src/output/drawing/bands.js';
import { PAPERS } from '../../../src/output/drawing/paper.js';
import { layOut } from '../../../src/output/drawing/sheet-layout.js';
import { zoneOf } from '../../../src/output/drawing/zones.js';
import { box, line } from '../../../src/parts/common/drawn/strokes.js';
import type { DrawnView } from '../../../src/parts/part-views.js';

const view = (title: string, width: number, height: number): DrawnView => ({
  title,
  strokes: [box('outline', [-width / 2, -height / 2], [width / 2, height / 2]), line('centre', [-99, 0], [99, 0])],
  hatched: [],
  sizes: [],
  letters: [],
});
const [side, end, other] = [view('side', 10, 20), view('end', 20, 20), view('other', 20, 20)];
const strip = view('strip', 200, 10);

describe('layOut', () => {
  it('stands the end on the right by first angle, on the left by third angle, and the other end opposite', () => {
    const titles = (projection: 'first' | 'third') =>
      layOut({ side, end, other }, projection, PAPERS.a4).views.map((placed) => placed.view.title);
    expect(titles('first')).toEqual(['other', 'side', 'end']);
    expect(titles('third')).toEqual(['end', 'side', 'other']);
  });

  it('keeps the views of the row on one axis line', () => {
    const heights = layOut({ side, end, other }, 'first', PAPERS.a4).views.map(({ at }) => at([0, 0])[1]);
    expect(new Set(heights).size).toBe(1);
  });

  it('takes the largest scale at which all views fit, further ones in rows of their own', () => {
    // one strip of 200 mm fits 267 mm of paper at 1:1, not at 2:1
    const { scale, views } = layOut({ side, end, further: [strip] }, 'first', PAPERS.a4);
    expect(scale).toBe(1);
    const [, endPlaced, stripPlaced] = views;
    expect(stripPlaced!.at([0, 5])[1]).toBeGreaterThan(endPlaced!.at([0, -10])[1]);
    for (const placed of views)
      for (const point of [placed.box.min, placed.box.max]) {
        const [x, y] = placed.at(point);
        expect(x).toBeGreaterThan(PAPERS.a4.frame.left);
        expect(x).toBeLessThan(PAPERS.a4.frame.right);
        expect(y).toBeGreaterThan(PAPERS.a4.frame.top);
        expect(y).toBeLessThan(PAPERS.a4.title.top);
      }
  });
});

it('boxOf leaves centre lines out', () => {
  expect(boxOf(side)).toEqual({ min: [-5, -10], max: [5, 10] });
});

it('zoneOf makes room for a title that is wider than its view', () => {
  const title = 'a title much wider than what it stands over';
  expect(zoneOf({ ...side, title }, 1).width).toBeGreaterThan(zoneOf(side, 1).width);
});
