import fc from 'fast-check';
import { shaft } from './couplings.js';
import { given, maybe, printing, tidy, within } from './draws.js';

const across = (one: { diameter?: number; across_flats?: number }) => one.diameter ?? 1.16 * one.across_flats!;

/** Bushes for bores that are too large, and clamp sleeves that join two shafts. */
export const sensibleSleeve: fc.Arbitrary<Record<string, unknown>> = fc
  .record({
    bush: fc.boolean(),
    shaft: shaft(3, 16),
    motor: shaft(3, 16),
    screw: fc.constantFrom(undefined, undefined, 'Tr8x2', 'Tr10x2'),
    wall: within(1.7, 6),
    length: maybe(within(1.2, 3)),
    torque: within(0.02, 0.4),
    outside: maybe(within(9, 16)),
    count: maybe(fc.constantFrom(1, 2)),
    offset: maybe(within(0, 0.05)),
    printing,
    material: fc.constantFrom('pa12', 'petg', 'pc', 'abs'),
  })
  .map((r) => {
    const thick = r.screw ? 12 : across(r.shaft);
    const common = {
      part: 'sleeve',
      name: 'sheet',
      ...(r.screw ? { screw: r.screw } : { shaft: r.shaft }),
      material: r.material,
      printer: { ...r.printing, layer: 0.16 },
      duty: { load: 0, temperature: 25, speed: 60 },
    };
    if (r.bush)
      return given({
        ...common,
        form: 'bush',
        bore: tidy(thick + 2 * r.wall),
        length: r.length === undefined ? undefined : tidy(r.length * thick),
      });
    return given({
      ...common,
      form: 'clamp',
      motor: { shaft: r.motor, torque: r.torque, temperature: 35 },
      outside_diameter: r.outside === undefined ? undefined : tidy(Math.max(thick, across(r.motor)) + 2 * r.outside),
      motor_end: r.count ? { clamp: { count: r.count } } : undefined,
      offset: r.offset,
    });
  });
