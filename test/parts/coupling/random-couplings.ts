import fc from 'fast-check';

const within = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((value) => Math.round(value * 100) / 100);

/** A shaft of any form, by its diameter. */
const shaft = (most: number) =>
  fc
    .record({ form: fc.constantFrom('round', 'd', 'double-d', 'keyed', 'hexagon'), diameter: within(3, most) })
    .map(({ form, diameter }) => {
      if (form === 'd') return { diameter, flat: Math.round(90 * diameter) / 100 };
      if (form === 'double-d') return { diameter, flats: Math.round(85 * diameter) / 100 };
      if (form === 'keyed') return { form, diameter: Math.max(6.5, diameter) };
      return form === 'hexagon' ? { across_flats: diameter } : { diameter };
    });

const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined, freq: 2 });

const hub = fc
  .record({
    grip: fc.constantFrom('clamp', 'clamp', 'set-screw', 'both'),
    count: maybe(fc.constantFrom(1, 2)),
    washers: fc.boolean(),
    joint: fc.constantFrom('nut', 'insert'),
    stop: maybe(fc.constantFrom('cone', 'none')),
    more: maybe(within(0, 8)),
  })
  .map(({ grip, count, washers, joint, stop, more }) => ({
    grip,
    ...(count || washers ? { clamp: { ...(count ? { count } : {}), washers: washers ? 'yes' : 'no' } } : {}),
    set_screw: { joint },
    ...(stop ? { stop } : {}),
    ...(more ? { length: 26 + more } : {}),
  }));

const jaws = fc.record(
  {
    count: fc.integer({ min: 2, max: 6 }),
    flank: fc.constantFrom('straight', 'curved'),
    draft: within(0, 2),
    fillet: within(0, 0.6),
    bevel: within(0, 0.7),
  },
  { requiredKeys: ['count'] },
);

/** Sheets of couplings of every kind; most fit, some do not. */
export const randomCoupling = fc
  .record({
    outside: maybe(within(15, 80)),
    bores: fc.constantFrom(5, 8, 12, 16),
    motor: fc.nat(),
    torque: within(0.01, 0.25),
    mounting: fc.constantFrom('motor-below', 'horizontal'),
    pad: maybe(fc.constantFrom('disc', 'ball', 'none')),
    clearance: maybe(within(-0.08, 0.2)),
    lobes: maybe(fc.constantFrom('straight', 'barrelled')),
    solid: fc.boolean(),
    screwHub: fc.boolean(),
    motorHub: fc.boolean(),
  })
  .chain((r) =>
    fc.record({
      r: fc.constant(r),
      motor: shaft(r.bores),
      driven: shaft(r.bores),
      jaws: maybe(jaws),
      motorHub: maybe(hub),
      screwHub: maybe(hub),
    }),
  )
  .map(({ r, motor, driven, jaws: jawSheet, motorHub, screwHub }) => ({
    part: 'coupling',
    name: 'random',
    motor: { torque: r.torque, temperature: 30, ...(r.motorHub || !r.screwHub ? { shaft: motor } : {}) },
    ...(r.screwHub || !r.motorHub ? { shaft: driven } : {}),
    mounting: r.mounting,
    thrust_bearing: 'yes',
    material: 'pc',
    retighten: 'yes',
    duty: { temperature: 25 },
    ...(r.outside ? { hubs: { outside_diameter: r.outside } } : {}),
    ...(jawSheet ? { jaws: jawSheet } : {}),
    ...(motorHub ? { motor_hub: motorHub } : {}),
    ...(screwHub ? { screw_hub: screwHub } : {}),
    insert: {
      ...(r.pad ? { pad: r.pad } : r.solid ? { center: 'solid' } : {}),
      ...(r.clearance ? { flank_clearance: r.clearance } : {}),
      ...(r.lobes ? { lobes: r.lobes } : {}),
    },
    misalignment: { angular: 0.2, parallel: 0.05, axial: 0.1 },
    printer: { nozzle: 0.4, layer: 0.16, compensation: 'file' },
    // strength is for the checks' own tests: here the solids are hunted
    limits: { 'grip-torque': { min: 0 }, 'closing-strain': { max: 10 } },
  }));
