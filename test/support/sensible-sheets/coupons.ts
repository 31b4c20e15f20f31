import fc from 'fast-check';
import { given, maybe, printing, within } from './draws.js';

/** Coupons of one purpose or several. */
export const sensibleCoupon: fc.Arbitrary<Record<string, unknown>> = fc
  .record({
    purposes: fc.uniqueArray(fc.constantFrom('scale', 'bores', 'thread', 'pockets'), { minLength: 1, maxLength: 4 }),
    screw: fc.constantFrom('Tr8x2', 'Tr10x2', 'Acme 1/2-10', 'M10', 'Tr12x6(P3)'),
    span: maybe(within(20, 120)),
    height: maybe(fc.oneof(fc.constant(0), within(5, 40))),
    bores: maybe(fc.array(within(2, 30), { minLength: 1, maxLength: 8 })),
    steps: maybe(fc.integer({ min: 3, max: 7 })),
    diametral: maybe(within(0.1, 0.6)),
    step: maybe(within(0.02, 0.1)),
    pocket: maybe(fc.constantFrom('M2', 'M3', 'M4', 'M5', 'M6', 'M8')),
    shaft: maybe(within(3, 15)),
    printing,
    material: fc.constantFrom('pla', 'petg', 'pa12'),
  })
  .map((r) =>
    given({
      part: 'coupon',
      name: 'sheet',
      purposes: r.purposes,
      screw: r.purposes.includes('thread') ? r.screw : undefined,
      scale: given({ span: r.span, height: r.height }),
      bores: r.bores,
      thread: given({ steps: r.steps, diametral: r.diametral, step: r.step }),
      pockets: given({ screw: r.pocket, shaft: r.shaft }),
      material: r.material,
      printer: { ...r.printing, layer: 0.12 },
    }),
  );
