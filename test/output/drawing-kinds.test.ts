import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { writeDrawing } from '../../src/output/drawing/write-drawing.js';
import { flatSizes } from '../../src/output/flat-sizes.js';
import { type DrawnViews, drawViews } from '../../src/parts/draw-views.js';
import { type DrawnView, type SizeChoice, viewsOf } from '../../src/parts/part-views.js';
import { design } from '../../src/pipeline/design.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import type { Kernel } from '../../src/solid/kernel.js';
import { ADAPTERS, PRINT, SLEEVES } from '../support/odd-sheets.js';
import { linePoints, paperSize, statedSizes, textsInTheWay } from '../support/read-drawing.js';
import { sharedKernel } from '../support/shared-kernel.js';
import { looseEnds, looseSizes } from '../support/witnesses.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

const shipped = (name: string) => readFileSync(join(import.meta.dirname, `../../presets/sheets/${name}.yaml`), 'utf8');

const coupon = (more: object) => ({ part: 'coupon', name: 'a', ...PRINT, ...more });

const SHEETS: Readonly<Record<string, string | object>> = {
  'shipped sleeve': shipped('demo-sleeve'),
  ...SLEEVES,
  'shipped adapter': shipped('demo-adapter'),
  ...ADAPTERS,
  'shipped coupon': shipped('demo-coupon'),
  'coupon with everything': coupon({
    purposes: ['scale', 'bores', 'thread', 'pockets'],
    screw: 'Tr8x2',
    pockets: { steps: 5 },
  }),
  'coupon of bores': coupon({ purposes: ['bores'], bores: [2, 3, 4, 6, 8, 12, 20, 30] }),
  'coupon of pockets': coupon({ purposes: ['pockets'], pockets: { steps: 7, screw: 'M2' } }),
  'coupon without steps, wide lines': coupon({
    purposes: ['scale', 'thread'],
    screw: 'M3',
    scale: { span: 200, height: 0 },
    printer: { nozzle: 0.8, layer: 0.3 },
  }),
};

describe.each(Object.keys(SHEETS))('the drawing of: %s', (name) => {
  const made = design(SHEETS[name]!);
  const kind = kindOfDesign(KINDS, made);
  const drawn: { [sizes in SizeChoice]?: DrawnViews } = {};
  const viewsAs = (sizes: SizeChoice): DrawnViews => {
    drawn[sizes] ??= drawViews(kernel, kind.views(made, sizes));
    return drawn[sizes];
  };

  it.each(['finished', 'printed'] as const)('states the %s sizes as the report does, each once', (sizes) => {
    const [svg = ''] = writeDrawing({ name: 'a', part: made.part, applied: 'b' }, { sizes, views: viewsAs(sizes) });
    const wanted = new Map(flatSizes(made.dimensions[sizes]));
    const stated = statedSizes(svg);
    expect(stated.length).toBeGreaterThan(0);
    expect(new Set(stated.map((one) => one.name)).size).toBe(stated.length);
    for (const { name: size, text, value } of stated)
      expect(Math.abs(value - wanted.get(size.replace('.', ': '))!), `${size}: ${text}`).toBeLessThan(0.0051);
  });

  it('ends its sizes and lines on lines', () => {
    for (const view of viewsOf<DrawnView>(viewsAs('finished'))) {
      expect(looseSizes(view), view.title).toEqual([]);
      expect(looseEnds(view), view.title).toEqual([]);
    }
  });

  it.each(['first', 'third'] as const)('stays in its frame by %s angle, texts clear of each other', (projection) => {
    const views = viewsAs('finished');
    const [svg = ''] = writeDrawing(
      { name: 'a', part: made.part, applied: 'b' },
      { sizes: 'finished', views, projection },
    );
    const [width, height] = paperSize(svg);
    for (const [x, y] of linePoints(svg)) {
      expect(x).toBeGreaterThanOrEqual(20);
      expect(x).toBeLessThanOrEqual(width - 10);
      expect(y).toBeGreaterThanOrEqual(10);
      expect(y).toBeLessThanOrEqual(height - 10);
    }
    expect(textsInTheWay(svg)).toEqual([]);
  });
});
