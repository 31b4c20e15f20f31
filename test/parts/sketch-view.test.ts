import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { drawViews } from '../../src/parts/draw-views.js';
import type { DrawnView, PartViews } from '../../src/parts/part-views.js';
import { sketchView } from '../../src/parts/sketch-view.js';
import { design } from '../../src/pipeline/design.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import type { Kernel } from '../../src/solid/kernel.js';
import { polygonArea } from '../../src/solid/outline.js';
import { InputError } from '../../src/units/faults.js';
import * as sheets from '../support/sensible-sheets/index.js';
import { sharedKernel } from '../support/shared-kernel.js';

const OF_A_KIND = 4;
/** What a section without the kernel may be off the kernel's, mm²: corners lie within 0.0001 mm of theirs. */
const AREA = 0.02;

let kernel: Kernel;
beforeAll(async () => {
  kernel = await sharedKernel;
});

/** The first parts of a kind that can be designed, as they are asked for. */
function asked(arbitrary: fc.Arbitrary<unknown>, isWanted: (views: PartViews) => boolean = () => true): PartViews[] {
  const made: PartViews[] = [];
  for (const sheet of fc.sample(arbitrary, 20 * OF_A_KIND)) {
    try {
      const one = design(sheet as object);
      const views = kindOfDesign(KINDS, one).views(one, 'finished');
      if (isWanted(views)) made.push(views);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
    }
    if (made.length === OF_A_KIND) break;
  }
  return made;
}

const areas = ({ hatched, crossHatched = [] }: DrawnView) =>
  [hatched, crossHatched].map((regions) => regions.flat().reduce((sum, loop) => sum + polygonArea(loop), 0));

/** Halves of a collar are looked at from their joint: nothing is cut there. */
const isCut = ({ side }: PartViews) => side.solid?.sight.kind === 'section';

// a coupon has no section; the parts of an axis are cut as the kinds that they are
const { sensibleCoupon, sensibleAxis, ...cut } = sheets;

describe('a section without the kernel', () => {
  it.each(Object.entries(cut))('cuts what the kernel cuts: %s', (_, arbitrary) => {
    const made = asked(arbitrary, isCut);
    expect(made).toHaveLength(OF_A_KIND);
    for (const views of made) {
      const [quick, solid] = [areas(sketchView(views.side)!), areas(drawViews(kernel, views).side)];
      quick.forEach((area, i) => {
        expect(Math.abs(area - Math.abs(solid[i]!))).toBeLessThan(AREA);
      });
    }
  });

  it('draws no side that is not cut', () => {
    expect(sketchView(asked(sensibleCoupon)[0]!.side)).toBeUndefined();
  });
});
