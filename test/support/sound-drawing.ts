import { expect } from 'vitest';
import { writeDrawing } from '../../src/output/drawing/write-drawing.js';
import { flatSizes } from '../../src/output/flat-sizes.js';
import type { Sizes } from '../../src/parts/part-kind.js';
import { type DrawnView, type PartViews, type SizeChoice, viewsOf } from '../../src/parts/part-views.js';
import type { Kernel } from '../../src/solid/kernel.js';
import { drawnAlone } from './drawn-alone.js';
import { linePoints, linesThroughTexts, paperSize, statedSizes, textsInTheWay } from './read-drawing.js';
import { looseEnds, looseSizes, misstatedSizes } from './witnesses.js';

/** What is drawn. */
interface Drawn {
  readonly part: string;
  readonly sizes: SizeChoice;
  readonly views: PartViews;
  readonly dimensions: Sizes;
}

/**
 * Draws by both projections: every size is that of the dimensions, once and with its spread where it is one in use, no
 * line leaves the frame, and no text lies over another. In each view every size is measured between drawn lines, and
 * every line ends on another.
 * @returns how many sizes are stated
 */
export function expectSoundDrawing(kernel: Kernel, { part, sizes, views: asked, dimensions }: Drawn): number {
  const { views, alone } = drawnAlone(kernel, asked);
  viewsOf<DrawnView>(views).forEach((view, i) => {
    expect(looseSizes(view), view.title).toEqual([]);
    expect(misstatedSizes(view), view.title).toEqual([]);
    expect(looseEnds(view, alone[i]), view.title).toEqual([]);
  });
  const wanted = new Map(flatSizes(dimensions).map(([name, size]) => [name.replace(': ', '.'), size]));
  const svgs = (['first', 'third'] as const).map((projection) =>
    writeDrawing({ name: 'a', part, applied: 'x; y' }, { sizes, views, projection }),
  );
  for (const svg of svgs.flat()) {
    const points = linePoints(svg);
    const [width, height] = paperSize(svg);
    expect(Math.min(...points.map(([x]) => x))).toBeGreaterThanOrEqual(20);
    expect(Math.max(...points.map(([x]) => x))).toBeLessThanOrEqual(width - 10);
    expect(Math.min(...points.map(([, y]) => y))).toBeGreaterThanOrEqual(10);
    expect(Math.max(...points.map(([, y]) => y))).toBeLessThanOrEqual(height - 10);
    expect(textsInTheWay(svg)).toEqual([]);
    expect(linesThroughTexts(svg)).toEqual([]);
  }
  const stated = svgs[0]!.flatMap(statedSizes);
  expect(new Set(stated.map(({ name }) => name)).size).toBe(stated.length);
  for (const { name, text, value } of stated) {
    expect(Math.abs(value - wanted.get(name)!), `${name}: ${text}`).toBeLessThan(0.0051);
    if (sizes === 'finished') expect(text).toMatch(/ ±\d+\.\d\d/);
  }
  return stated.length;
}
