import fc from 'fast-check';
import { shaft } from './couplings.js';
import { given, maybe, printing, tidy, within } from './draws.js';

const BEARINGS = {
  Tr8x2: ['F8-16', 'F8-19', 51100],
  Tr10x2: ['F10-18', 51100, 51101],
  Tr12x3: ['AXK1226', 51101, 51102],
};
const SCREWS = Object.keys(BEARINGS) as (keyof typeof BEARINGS)[];

/** Collars that hold by friction or by the screw's own thread, with and without a bearing. */
export const sensibleCollar: fc.Arbitrary<Record<string, unknown>> = fc
  .record({
    screw: fc.constantFrom(...SCREWS),
    shaft: maybe(shaft(4, 16)),
    threaded: fc.boolean(),
    halves: fc.boolean(),
    pin: maybe(fc.constantFrom(1.5, 2, 2.5)),
    bearing: maybe(fc.nat(2)),
    measured: maybe(fc.tuple(within(0, 3), within(6, 14), within(4, 10))),
    mounting: fc.constantFrom('horizontal', 'motor-above', 'motor-below'),
    backed: fc.boolean(),
    load: within(0, 30),
    outside: maybe(within(10, 16)),
    count: maybe(fc.constantFrom(1, 2)),
    washers: fc.constantFrom('yes', 'no'),
    degreased: fc.boolean(),
    printing,
    material: fc.constantFrom('pa12', 'petg', 'pc', 'abs'),
  })
  .map((r) => {
    const major = Number(/\d+/.exec(r.screw)![0]);
    const threaded = r.shaft === undefined && r.threaded;
    const across = r.shaft === undefined ? major : (r.shaft.diameter ?? 1.16 * r.shaft.across_flats!);
    const known = r.bearing === undefined ? undefined : BEARINGS[r.screw][r.bearing];
    const free = r.measured && {
      bore: tidy(across + r.measured[0]),
      outside: tidy(1.4 * across + r.measured[0] + r.measured[1]),
      height: r.measured[2],
    };
    return given({
      part: 'collar',
      name: 'sheet',
      ...(r.shaft === undefined ? { screw: r.screw } : { shaft: r.shaft }),
      bore: threaded ? 'thread' : 'plain',
      form: r.halves && (r.shaft === undefined || Object.keys(r.shaft).join() === 'diameter') ? 'halves' : undefined,
      pin: threaded ? r.pin : undefined,
      bearing: r.shaft === undefined ? (known ?? free) : free,
      mounting: r.mounting,
      pair: 'yes',
      backed_by: r.backed ? 'metal-collar' : undefined,
      hold: given({
        clamp: given({ count: r.count, washers: r.washers }),
        degreased: threaded ? undefined : r.degreased ? 'yes' : 'no',
      }),
      outside_diameter: r.outside === undefined ? undefined : tidy(across + 2 * r.outside),
      retighten: 'yes',
      material: r.material,
      printer: { ...r.printing, layer: 0.16 },
      duty: { load: r.load, upward: 0, span: 200, temperature: 25 },
    });
  });
