import { describe, expect, it } from 'vitest';
import { writeDrawing } from '../../../src/output/drawing/write-drawing.js';
import { writeFormats } from '../../../src/output/formats.js';
import type { PartInHand } from '../../../src/output/part-in-hand.js';
import { box } from '../../../src/parts/common/drawn/strokes.js';
import type { DrawnViews } from '../../../src/parts/draw-views.js';
import type { DrawnView, Point } from '../../../src/parts/part-views.js';

const view = (title: string, [width, height]: Point, [x, y]: Point = [0, 0]): DrawnView => ({
  title,
  strokes: [box('outline', [x, y], [x + width, y + height])],
  hatched: [],
  sizes: [],
  letters: [],
  seenFrom: 1,
});
const alone = (title: string, size: Point, at: Point): DrawnView => ({
  ...view(title, size, at),
  isAlone: true,
  origin: at,
});
const REPORT = { name: 'a', part: 'coupon', applied: 'b' };

function drawn(views: Partial<DrawnViews>): DrawnViews {
  const side = view('side', [5, 60]);
  return {
    side,
    end: view('end', [60, 60]),
    holes: [],
    notes: [],
    material: 'm',
    companions: [],
    cutTowards: 0,
    ...views,
  };
}

const titlesOn = (svg: string) => ['side', 'end', 'strip', 'bar', 'rest'].filter((title) => svg.includes(`>${title}<`));
const scaleOn = (svg: string) => />(\d+:\d+)</.exec(svg)![1];

describe('sheets of a drawing', () => {
  const LONG = alone('strip', [240, 30], [0, 100]);

  it('are one where that shows the part no smaller than it is', () => {
    const sheets = writeDrawing(REPORT, { sizes: 'finished', views: drawn({ further: [LONG] }) });
    expect(sheets).toHaveLength(1);
    expect(sheets[0]).toContain('sheet 1 of 1');
    expect(titlesOn(sheets[0]!)).toEqual(['side', 'end', 'strip']);
  });

  // 370 mm wide take the width of A3 (390 mm in its frame) at 1:1, and A4 (267 mm) at 1:2
  const WIDE = [
    alone('strip', [370, 60], [0, 100]),
    alone('bar', [370, 60], [0, 200]),
    alone('rest', [50, 20], [0, 300]),
  ];
  const views = drawn({
    further: WIDE,
    holes: [{ label: 'T1', at: [7, 209], diameter: 3, note: '' }],
  });

  it('are as many as show each body that stands alone as large as it would be by itself', () => {
    const sheets = writeDrawing(REPORT, { sizes: 'finished', views });
    expect(sheets.map(titlesOn)).toEqual([
      ['side', 'end', 'strip'],
      ['bar', 'rest'],
    ]);
    expect(sheets.map(scaleOn)).toEqual(['1:1', '1:1']);
    for (const [i, svg] of sheets.entries()) expect(svg).toContain(`A3, sheet ${i + 1} of 2`);
  });

  it('have the hole table where the holes are, counted from the corner of their own body', () => {
    const [first, second] = writeDrawing(REPORT, { sizes: 'finished', views });
    expect(first).not.toContain('>T1<');
    expect(second).toMatch(/>T1<[\s\S]*>7\.00<[\s\S]*>9\.00</);
  });

  it('have names of their own, so that all may stand in one page', () => {
    const ids = writeDrawing(REPORT, { sizes: 'finished', views }).flatMap((svg) =>
      [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id),
    );
    expect(ids.length).toBeGreaterThan(4);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('are a file each', async () => {
    const part = { report: REPORT } as PartInHand;
    const files = await writeFormats(part, { formats: ['drawing'], drawn: { sizes: 'finished', views } });
    expect(files.map(({ name }) => name)).toEqual(['drawing.svg', 'drawing-2.svg']);
  });

  it('are one where no view stands alone, however small', () => {
    const further = WIDE.map(({ isAlone: _, ...rest }) => rest);
    expect(writeDrawing(REPORT, { sizes: 'finished', views: { ...views, further } })).toHaveLength(1);
  });
});
