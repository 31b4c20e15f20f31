import fc from 'fast-check';
import { given, maybe, printing, tidy, within } from './draws.js';

/** Gauge rings of trapezoidal, Acme and metric screws. */
export const sensibleGauge: fc.Arbitrary<Record<string, unknown>> = fc
  .record({
    screw: fc.constantFrom('Tr8x2', 'Tr8x8(P2)', 'Tr10x2-LH', 'Tr12x3', 'Acme 3/8-10', 'M8', 'Tr16x4'),
    from: within(0.08, 0.2),
    rings: fc.integer({ min: 2, max: 5 }),
    step: fc.constantFrom(0.05, 0.1),
    turns: maybe(within(0.08, 0.2)),
    printing,
    material: fc.constantFrom('pa12', 'petg', 'pc'),
  })
  .map((r) =>
    given({
      part: 'gauge',
      name: 'sheet',
      screw: r.screw,
      plays: { from: r.from, to: tidy(r.from + (r.rings - 1) * r.step), step: r.step },
      turns_play: r.turns,
      material: r.material,
      printer: { ...r.printing, chord_error: Math.max(0.05, r.printing.chord_error), layer: 0.12 },
    }),
  );
