import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { writeDrawing } from '../../src/output/drawing/write-drawing.js';
import { flatSizes } from '../../src/output/flat-sizes.js';
import { type DrawnViews, drawViews } from '../../src/parts/draw-views.js';
import type { SizeChoice } from '../../src/parts/part-views.js';
import { design } from '../../src/pipeline/design.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { sharedKernel } from '../support/shared-kernel.js';

const NUT = readFileSync(join(import.meta.dirname, '../../presets/sheets/demo-nut.yaml'), 'utf8');
const FACTS = { name: 'a', part: 'nut', applied: 'shrink applied; hole offset applied' };

describe.each(['finished', 'printed'] as const)('the drawing of a nut, %s sizes', (sizes: SizeChoice) => {
  let views: DrawnViews;
  let svg = '';
  const made = design(NUT);
  beforeAll(async () => {
    views = drawViews(await sharedKernel, kindOfDesign(KINDS, made).views(made, sizes));
    [svg = ''] = writeDrawing(FACTS, { sizes, views });
  });

  it('states the dimensions', () => {
    const wanted = new Map(flatSizes(made.dimensions[sizes]));
    const texts = [...svg.matchAll(/data-size="([^"]+)"[^>]*>([^<]+)</g)];
    expect(texts.length).toBeGreaterThanOrEqual(8);
    for (const [, name, text] of texts) {
      const figure = Number(/([\d.]+)(?: ±[\d.]+)?(?: over the holes)?$/.exec(text!)![1]);
      expect(Math.abs(figure - wanted.get(name!)!), `${name}: ${text}`).toBeLessThan(0.0051);
    }
  });

  it('keeps all lines inside its frame', () => {
    const numbers = [...svg.matchAll(/ d="([^"]+)"/g)].flatMap(([, data]) =>
      [...data!.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map((m) => [Number(m[1]), Number(m[2])] as const),
    );
    const drawn = numbers;
    expect(Math.min(...drawn.map(([x]) => x))).toBeGreaterThanOrEqual(20);
    expect(Math.max(...drawn.map(([x]) => x))).toBeLessThanOrEqual(287);
    expect(Math.min(...drawn.map(([, y]) => y))).toBeGreaterThanOrEqual(10);
    expect(Math.max(...drawn.map(([, y]) => y))).toBeLessThanOrEqual(200);
  });

  it('is A4 with a bar of 50 mm, and shows the projection', () => {
    expect(svg).toContain('width="297mm" height="210mm" viewBox="0 0 297 210"');
    const [, from, to] = /id="scale-bar" d="M([\d.]+) [\d.]+L([\d.]+) /.exec(svg)!;
    expect(Number(to) - Number(from)).toBeCloseTo(50, 6);
    expect(svg).toContain('id="projection-first"');
    const [third] = writeDrawing(FACTS, { sizes, views, projection: 'third' });
    expect(third).toContain('id="projection-third"');
  });

  it.each(['first', 'third'] as const)('shows the symbol of the %s angle as ISO 5456-2 does', (projection) => {
    const [drawn = ''] = writeDrawing(FACTS, { sizes, views, projection });
    const [, symbol = ''] = drawn.match(new RegExp(`<g id="projection-${projection}">([\\s\\S]*?)</g>`)) ?? [];
    const [, narrow, wide] = symbol.match(/d="M([\d.]+) [\d.]+L([\d.]+) /)!.map(Number) as [number, number, number];
    const circles = [...symbol.matchAll(/cx="([\d.]+)"/g)].map((m) => Number(m[1]));
    // both circles are seen from the narrow end, on the left: behind the cone by first angle, before it by third
    expect(narrow).toBeLessThan(wide);
    expect(new Set(circles).size).toBe(1);
    if (projection === 'first') expect(circles[0]).toBeGreaterThan(wide);
    else expect(circles[0]).toBeLessThan(narrow);
  });

  it('draws the flange to scale', () => {
    const scale = Number(/>(\d+):1</.exec(svg)![1]);
    const width = Math.max(
      ...views.end.strokes.flatMap((one) => (one.kind === 'circle' && one.line === 'outline' ? [2 * one.radius] : [])),
    );
    // the sheet's flange is 37 mm; in the file it is (37 + 0) / (1 − 0.011) = 37.4115
    expect(width).toBeCloseTo(sizes === 'finished' ? 37 : 37.4115, 3);
    expect(scale * width).toBeLessThan(267);
  });
});

describe('on paper', () => {
  const made = design(NUT);
  const drawnOn = async (sheet: 'a4' | 'a3', facts: object = {}): Promise<string> => {
    const views = drawViews(await sharedKernel, kindOfDesign(KINDS, made).views(made, 'finished'));
    const sheets = writeDrawing({ ...FACTS, ...facts }, { sizes: 'finished', sheet, views });
    expect(sheets).toHaveLength(1);
    return sheets[0]!;
  };

  // ISO 216: A3 is 420 by 297; ISO 5457: 20 mm to bind, 10 mm elsewhere
  it('A3 keeps the margins of the standard and says so', async () => {
    const svg = await drawnOn('a3');
    expect(svg).toContain('width="420mm" height="297mm" viewBox="0 0 420 297"');
    expect(svg).toContain('d="M20 10L410 10L410 287L20 287Z"');
    expect(svg).toContain('>A3, sheet 1 of 1<');
  });

  it('tells the revision', async () => {
    expect(await drawnOn('a4', { revision: 'C' })).toContain('>C<');
  });

  it('breaks a long name, and cuts none', async () => {
    const name = 'nut-of-the-left-hand-screw-of-the-second-bed-in-the-greenhouse-7';
    const svg = await drawnOn('a4', { name });
    const shown = [...svg.matchAll(/font-weight="bold"[^>]*>([^<]+)</g)].map(([, text]) => text).join('');
    expect(shown).toContain(name);
    expect(svg).not.toContain('…');
  });

  // Tr10x2 with the clearances of the sheet: what is asked for of a detail, each with its spread
  it('has a detail of the thread at 5:1 or more', async () => {
    const svg = await drawnOn('a4');
    expect(svg).toMatch(/>T \((?:5|10|20|50):1\)</);
    for (const size of ['thread_minor', 'thread_pitch_diameter', 'thread_major', 'groove_width', 'pitch'])
      expect(svg).toMatch(new RegExp(`data-size="${size}"[^>]*>[^<]* ±0\\.\\d\\d<`));
  });

  it('puts into brackets what a dimension states', async () => {
    const svg = await drawnOn('a4');
    expect(svg.match(/>\(−?9\.55\)</g)).toHaveLength(8);
    expect(svg.match(/>\(3\.90\)</g)).toHaveLength(4);
  });
});

it('escapes what the sheet calls the part', async () => {
  const made = design(NUT);
  const views = drawViews(await sharedKernel, kindOfDesign(KINDS, made).views(made, 'finished'));
  const [svg] = writeDrawing({ ...FACTS, name: '<script>' }, { sizes: 'finished', views });
  expect(svg).not.toContain('<script>');
});
