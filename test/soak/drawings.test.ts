import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import type { BrowserContext } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { inLetters, PAPERS } from '../../src/output/drawing/paper.js';
import { layOut } from '../../src/output/drawing/sheet-layout.js';
import { roomForViews } from '../../src/output/drawing/tables.js';
import { writeDrawing } from '../../src/output/drawing/write-drawing.js';
import { drawViews } from '../../src/parts/draw-views.js';
import { type DrawnView, viewsOf } from '../../src/parts/part-views.js';
import { check } from '../../src/pipeline/check.js';
import { type Design, design } from '../../src/pipeline/design.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import type { Printer } from '../../src/presets/printer.js';
import { createKernel, type Kernel } from '../../src/solid/kernel.js';
import { InputError } from '../../src/units/faults.js';
import { openBrowser } from '../support/browser.js';
import { drawnAlone } from '../support/drawn-alone.js';
import { leaderFaults } from '../support/leader-faults.js';
import { linePoints, linesThroughTexts, paperSize, textsInTheWay } from '../support/read-drawing.js';
import {
  sensibleAdapter,
  sensibleCollar,
  sensibleCoupling,
  sensibleCoupon,
  sensibleEndHolder,
  sensibleGauge,
  sensibleMotorPlate,
  sensibleNut,
  sensibleSleeve,
} from '../support/sensible-sheets/index.js';
import { looseEnds, looseSizes, misstatedSizes } from '../support/witnesses.js';

const OF_A_KIND = 12;
/** Of these many parts of each kind, the drawing is rendered twice. */
const RENDERED = 4;
/** Every so many of them states inches beside mm. */
const IN_INCHES = 3;

let kernel: Kernel;
let browser: BrowserContext;
const folder = mkdtempSync(join(tmpdir(), 'drawings-'));
beforeAll(async () => {
  kernel = await createKernel();
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true });
});

/** The first parts of a kind that can be designed. */
function designs(sheets: fc.Arbitrary<unknown>): Design[] {
  const made: Design[] = [];
  for (const sheet of fc.sample(sheets, 20 * OF_A_KIND)) {
    try {
      made.push(design(sheet as object));
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
    }
    if (made.length === OF_A_KIND) break;
  }
  return made;
}

const KINDS_OF_SHEETS = {
  nut: sensibleNut,
  adapter: sensibleAdapter,
  coupling: sensibleCoupling,
  sleeve: sensibleSleeve,
  collar: sensibleCollar,
  'end-holder': sensibleEndHolder,
  'motor-plate': sensibleMotorPlate,
  coupon: sensibleCoupon,
  gauge: sensibleGauge,
} as const;

describe.each(Object.entries(KINDS_OF_SHEETS))('drawings of random parts: %s', (_, sheets) => {
  const made = designs(sheets);

  it('are sound: every size measured, no text over a text or under a line, leaders free', () => {
    expect(made).toHaveLength(OF_A_KIND);
    const [crossed, led]: [string[], string[]] = [[], []];
    for (const [number, one] of made.entries()) {
      const asked = kindOfDesign(KINDS, one).views(one, 'finished');
      const { views, alone } = drawnAlone(kernel, asked);
      const sheet = JSON.stringify({ name: one.name, finished: one.dimensions.finished });
      const { chordError } = (one as Design & { readonly printer: Printer }).printer;
      // of a part that must not be made, a pocket may take away the hole whose size is stated
      const isSound = check(one).verdict !== 'fail';
      viewsOf<DrawnView>(views).forEach((view, i) => {
        expect(misstatedSizes(view), sheet).toEqual([]);
        expect(looseEnds(view, alone[i], chordError), sheet).toEqual([]);
        if (isSound) expect(looseSizes(view, chordError), sheet).toEqual([]);
      });
      for (const name of ['a4', 'a3'] as const) {
        const paper = inLetters(PAPERS[name]);
        const laid = layOut(views, 'first', paper, roomForViews(views, paper, false));
        led.push(...laid.views.flatMap((view) => leaderFaults(view).map((fault) => `${fault}: ${sheet}`)));
      }
      const inches = number % IN_INCHES === 0 ? { units: 'inch' as const } : {};
      const sheets = writeDrawing({ name: 'a', part: one.part, applied: 'a', ...inches }, { sizes: 'finished', views });
      for (const svg of sheets) {
        expect(textsInTheWay(svg), sheet).toEqual([]);
        crossed.push(...linesThroughTexts(svg));
        const points = linePoints(svg);
        expect(Math.min(...points.map(([x]) => x))).toBeGreaterThanOrEqual(20);
        expect(Math.max(...points.map(([x]) => x))).toBeLessThanOrEqual(paperSize(svg)[0] - 10);
      }
    }
    expect(crossed).toEqual([]);
    expect(led).toEqual([]);
  });

  it('look alike in a browser and by rsvg-convert', async () => {
    for (const one of made.slice(0, RENDERED)) {
      const views = drawViews(kernel, kindOfDesign(KINDS, one).views(one, 'finished'));
      const [svg = ''] = writeDrawing({ name: one.name, part: one.part, applied: 'a' }, { sizes: 'finished', views });
      const { inked, apart } = await compared(svg);
      expect(inked, one.name).toBeGreaterThan(500);
      expect(apart / inked, one.name).toBeLessThan(0.02);
    }
  });
});

/**
 * Squares of a millimetre of paper that hold ink by either reader, and those whose shares of ink are apart by more than
 * letters and grey edges explain.
 */
async function compared(svg: string): Promise<{ inked: number; apart: number }> {
  const [file, png] = [join(folder, 'drawing.svg'), join(folder, 'drawing.png')];
  writeFileSync(file, svg);
  execFileSync('rsvg-convert', ['-w', '1188', '-h', '840', '-b', 'white', file, '-o', png]);
  const theirs = readFileSync(png).toString('base64');
  const blank = await browser.newPage();
  try {
    return await blank.evaluate(
      async ([ours, other]) => {
        const cells = async (src: string): Promise<Float64Array> => {
          const image = new Image();
          image.src = src;
          await image.decode();
          const canvas = new OffscreenCanvas(1188, 840);
          const pen = canvas.getContext('2d')!;
          pen.fillStyle = 'white';
          pen.fillRect(0, 0, 1188, 840);
          pen.drawImage(image, 0, 0, 1188, 840);
          const { data } = pen.getImageData(0, 0, 1188, 840);
          const shares = new Float64Array(297 * 210);
          for (let y = 0; y < 840; y++)
            for (let x = 0; x < 1188; x++)
              shares[(y >> 2) * 297 + (x >> 2)]! += (255 - data[4 * (y * 1188 + x)]!) / 255 / 16;
          return shares;
        };
        const [a, b] = [await cells(ours!), await cells(other!)];
        let [inked, apart] = [0, 0];
        a.forEach((share, i) => {
          if (Math.max(share, b[i]!) > 0.05) inked++;
          if (Math.abs(share - b[i]!) > 0.25) apart++;
        });
        return { inked, apart };
      },
      [`data:image/svg+xml;base64,${Buffer.from(svg).toString('base64')}`, `data:image/png;base64,${theirs}`],
    );
  } finally {
    await blank.close();
  }
}
