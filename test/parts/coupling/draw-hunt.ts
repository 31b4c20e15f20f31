import fc from 'fast-check';
import { type CouplingDesign, designCoupling } from '../../../src/parts/coupling/dimensions.js';
import { couplingSchema } from '../../../src/parts/coupling/sheet.js';
import { couplingViews } from '../../../src/parts/coupling/views.js';
import { SHIPPED } from '../../../src/presets/shipped.js';
import type { Kernel } from '../../../src/solid/kernel.js';
import { expectSoundDrawing } from '../../support/sound-drawing.js';
import { randomCoupling } from './random-couplings.js';

/** Draws random couplings, and holds each drawing that can be made. */
export function drawRandomCouplings(kernel: Kernel, runs: number): void {
  fc.assert(
    fc.property(randomCoupling, (sheet) => {
      const made = designed(sheet);
      if (!made) return;
      for (const sizes of ['finished', 'printed'] as const)
        expectSoundDrawing(kernel, {
          part: 'coupling',
          sizes,
          views: couplingViews(made, sizes),
          dimensions: made.dimensions[sizes],
        });
    }),
    { numRuns: runs },
  );
}

function designed(sheet: unknown): CouplingDesign | undefined {
  try {
    return designCoupling(couplingSchema.parse(JSON.parse(JSON.stringify(sheet))), SHIPPED);
  } catch {
    // refused, as other tests look into
    return undefined;
  }
}
