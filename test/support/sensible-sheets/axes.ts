import fc from 'fast-check';
import { given, maybe, tidy, within } from './draws.js';

const MAJORS = { Tr8x2: 8, 'Tr8x8(P2)': 8, Tr10x2: 10, 'Tr12x3-LH': 12 } as const;
const SCREWS = Object.keys(MAJORS) as (keyof typeof MAJORS)[];
const BEARINGS = { 8: '608', 10: '6000', 12: '6001' } as const;

/** What a thoughtful person makes of an axis, by what carries its screw; else it is as it comes. */
const PLANS = {
  sleeve: { joint: 'sleeve', end: 'free', collar: false },
  disc: { joint: 'coupling', pad: 'disc', end: 'free', collar: false, mounting: 'motor-below' },
  holder: { joint: 'coupling', pad: 'none', end: 'locating', collar: false },
  collar: { joint: 'coupling', pad: 'none', end: 'guiding', collar: true },
} as const;

const drawn = fc.record({
  screw: fc.constantFrom(...SCREWS),
  plan: fc.constantFrom('sleeve', 'disc', 'holder', 'collar', 'none', 'none'),
  mounting: fc.constantFrom('motor-below', 'motor-above', 'horizontal'),
  joint: fc.constantFrom('coupling', 'coupling', 'sleeve', 'none'),
  end: fc.constantFrom('free', 'guiding', 'locating', 'none'),
  collar: fc.boolean(),
  pad: fc.constantFrom('disc', 'none'),
  plate: maybe(fc.constantFrom(5.5, 8, 10)),
  gauge: fc.boolean(),
  nut: fc.constantFrom('nut', 'nut', 'twin-nut'),
  floats: fc.boolean(),
  pinned: fc.boolean(),
  clear: maybe(within(250, 400)),
  length: maybe(within(250, 420)),
  start: within(50, 70),
  travel: within(120, 280),
  shaft: within(18, 36),
  load: within(2, 40),
  wide: within(8, 16),
  material: fc.constantFrom('pc', 'petg', 'pa12', 'abs'),
  temperature: within(30, 70),
});
type Drawn = typeof drawn extends fc.Arbitrary<infer One> ? One : never;

/** Who plans makes lengths suit each other, and keeps plastics that heat softens off the motor. */
function planned(r: Drawn): Drawn {
  if (r.plan === 'none') return r;
  const clear = r.clear ?? tidy(r.travel + 150);
  return {
    ...r,
    ...PLANS[r.plan],
    clear,
    length: r.length === undefined ? undefined : tidy(clear + 45),
    travel: tidy(Math.min(r.travel, clear - 190)),
    shaft: tidy(Math.max(r.shaft, 30)),
    pinned: true,
    load: tidy(r.load / 2),
    material: 'pc',
    temperature: Math.min(r.temperature, 55),
  };
}

function nutOf({ nut, wide, floats, screw }: Drawn): Record<string, unknown> {
  const body = MAJORS[screw] + wide;
  return given({
    body: { diameter: body, length: nut === 'nut' ? 18 : 46 },
    flange: { diameter: body + 22, thickness: 8 },
    holes: given({
      count: 4,
      circle: body + 11,
      screw: 'M3',
      fit: floats ? undefined : 'coarse',
      head: 'flange',
    }),
    carriage: { bore: body + 2, thickness: 6 },
    float: floats && nut === 'nut' ? 0.3 : undefined,
    mounting: 'flange-up',
    fit: nut === 'nut' ? undefined : { diametral: 0.4, axial: 0.25 },
    family: nut === 'nut' ? undefined : { apart: 32, lever: 20 },
    material: 'pa12',
  });
}

/** Of frame 23, on the machine by four screws further out. */
const plateOf = (thickness: number) => ({
  motor: { preset: 'frame-23', flange: 4.8, weight: 6, length: 51 },
  machine: { holes: { rectangle: [84, 66], screw: 'M5', fit: 'coarse' }, face: 'outer', opening: 50, thickness: 5 },
  plate: { thickness },
});

/**
 * Axes of a nut or a twin nut, a coupling or a sleeve, and an end that is held or not, with motor plate, collar and gauge rings;
 * lengths and what carries the screw as they come, or as someone who plans would have them.
 */
export const sensibleAxis: fc.Arbitrary<Record<string, unknown>> = drawn.map(planned).map((r) => {
  const major = MAJORS[r.screw];
  const holder = {
    role: r.end,
    ...(r.end === 'free' ? {} : { bearing: BEARINGS[major], held_by: 'plate' }),
    holes: { rectangle: [46, 46], screw: 'M4', fit: 'coarse' },
    body: r.plan === 'none' || r.end === 'free' ? undefined : { thickness: 18, cover: 8 },
    frame: { thickness: 6 },
    runout: 0.1,
  };
  const parts = given({
    [r.nut]: nutOf(r),
    coupling: r.joint === 'coupling' ? { retighten: 'yes', insert: { pad: r.pad } } : undefined,
    sleeve: r.joint === 'sleeve' ? { form: 'clamp', retighten: 'yes', offset: 0.03 } : undefined,
    collar: r.collar
      ? given({
          bore: 'thread',
          pin: r.pinned ? (major === 8 ? 1.5 : 2) : undefined,
          bearing: { bore: major, outside: 2 * major, height: 5 },
        })
      : undefined,
    'motor-plate': r.plate === undefined ? undefined : plateOf(r.plate),
    'end-holder': r.end === 'none' ? undefined : given(holder),
    gauge: r.gauge ? {} : undefined,
  });
  return given({
    part: 'axis',
    name: 'sheet',
    screw: r.screw,
    motor: {
      shaft: { diameter: 6.35, length: r.shaft },
      torque: 0.15,
      axial_limit: 60,
      temperature: r.temperature,
      steps: 200,
      microsteps: 16,
    },
    mounting: r.mounting,
    lengths: given({
      clear: r.clear,
      screw: r.length,
      start: r.collar ? r.start : undefined,
      far_face: 'holder',
      moving: r.nut === 'nut' ? 20 : 48,
      travel: r.travel,
    }),
    material: r.material,
    printer: { nozzle: 0.4, layer: 0.12, hole_offset: 0.15, chord_error: 0.1, compensation: 'file' },
    duty: { load: r.load, upward: 0, moving: '10 %', temperature: 25, grease: 'greased', feed: 5 },
    parts,
  });
});
