import fc from 'fast-check';
import { given, maybe, printing, tidy, within } from './draws.js';

/** A shaft of any form, by its diameter. */
export const shaft = (least: number, most: number) =>
  fc
    .record({
      form: fc.constantFrom('round', 'round', 'd', 'double-d', 'keyed', 'hexagon'),
      diameter: within(least, most),
    })
    .map(({ form, diameter }) => {
      if (form === 'd') return { diameter, flat: tidy(0.9 * diameter) };
      if (form === 'double-d') return { diameter, flats: tidy(0.84 * diameter) };
      if (form === 'keyed') return { form, diameter: Math.max(6.5, diameter) };
      return form === 'hexagon' ? { across_flats: diameter } : { diameter };
    });

const hub = fc
  .record({
    grip: fc.constantFrom('clamp', 'clamp', 'set-screw', 'both', undefined),
    count: maybe(fc.constantFrom(1, 2)),
    joint: fc.constantFrom('nut', 'insert', undefined),
    stop: maybe(fc.constantFrom('cone', 'none')),
    clearance: maybe(within(0, 0.2)),
  })
  .map(({ grip, count, joint, stop, clearance }) =>
    given({
      grip,
      ...(count && grip !== 'set-screw' ? { clamp: { count } } : {}),
      ...(joint && grip !== 'clamp' ? { set_screw: { joint } } : {}),
      stop,
      bore_clearance: clearance,
    }),
  );

const jaws = fc
  .record({
    count: fc.integer({ min: 2, max: 6 }),
    flank: maybe(fc.constantFrom('straight', 'curved')),
    draft: maybe(within(0, 2)),
    fillet: maybe(within(0, 0.6)),
    bevel: maybe(within(0, 0.7)),
    height: maybe(within(5, 12)),
  })
  .map(given);

/** Jaws of bought hubs as they are measured. */
const boughtHubs = fc
  .record({
    outside: within(20, 60),
    count: fc.integer({ min: 2, max: 5 }),
    inner: within(0.4, 0.6),
    share: within(0.52, 0.62),
  })
  .map(({ outside, count, inner, share }) => ({
    hubs: { outside_diameter: outside },
    jaws: {
      count,
      height: tidy(0.35 * outside),
      width: tidy((share * Math.PI * outside * (1 + inner)) / 2 / (2 * count)),
      inner: tidy(inner * outside),
    },
  }));

/** Inserts for two bought hubs. */
const insertAlone = (r: Readonly<Record<string, unknown>>, bought: object) =>
  given({
    part: 'coupling',
    name: 'sheet',
    motor: { torque: r.torque, axial_limit: 30, temperature: 35 },
    mounting: r.mounting,
    thrust_bearing: 'yes',
    ...bought,
    insert: given({ center: r.solid, flank_clearance: r.clearance, lobes: r.lobes }),
    misalignment: given({ angular: r.angular, parallel: r.parallel }),
    printer: { ...(r.printing as object), layer: 0.16 },
    duty: { load: 5, temperature: 25, speed: 120 },
  });

/** Jaw couplings with hubs and inserts of all forms. */
export const sensibleCoupling: fc.Arbitrary<Record<string, unknown>> = fc
  .record({
    outside: maybe(within(24, 60)),
    motor: shaft(4, 14),
    driven: shaft(4, 14),
    screw: fc.constantFrom(undefined, undefined, 'Tr8x2', 'Tr10x2', 'Tr12x3'),
    torque: within(0.02, 0.4),
    mounting: fc.constantFrom('motor-below', 'motor-above', 'horizontal'),
    pad: maybe(fc.constantFrom('disc', 'ball', 'none', 'soft')),
    clearance: maybe(fc.oneof(within(-0.1, 0.2), fc.constantFrom(0, 0.01, 0.02, 0.05))),
    lobes: maybe(fc.constantFrom('straight', 'barrelled')),
    height: maybe(within(5, 12)),
    solid: fc.constantFrom(undefined, undefined, 'solid', 'ring'),
    jaws: maybe(jaws),
    motorHub: maybe(hub),
    screwHub: maybe(hub),
    alone: fc.constantFrom(false, false, false, true),
    bought: fc.oneof({ weight: 5, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: boughtHubs }),
    angular: maybe(within(0, 0.6)),
    parallel: maybe(within(0, 0.2)),
    printing,
    material: fc.constantFrom('pa12', 'petg', 'pc', 'abs'),
  })
  .map((r) =>
    r.bought
      ? insertAlone(r, r.bought)
      : given({
          part: 'coupling',
          name: 'sheet',
          motor: { torque: r.torque, axial_limit: 30, temperature: 35, ...(r.alone ? {} : { shaft: r.motor }) },
          ...(r.screw ? { screw: r.screw } : { shaft: r.driven }),
          mounting: r.mounting,
          thrust_bearing: 'yes',
          hubs: r.outside ? { outside_diameter: r.outside } : undefined,
          jaws: r.jaws,
          motor_hub: r.motorHub,
          screw_hub: r.screwHub,
          insert: given({
            pad: r.solid ? undefined : r.pad,
            center: r.solid,
            flank_clearance: r.clearance,
            lobes: r.lobes,
            height: r.height,
          }),
          misalignment: given({ angular: r.angular, parallel: r.parallel }),
          material: r.material,
          printer: { ...r.printing, layer: 0.16 },
          duty: { load: 5, temperature: 25, speed: 120 },
        }),
  );
