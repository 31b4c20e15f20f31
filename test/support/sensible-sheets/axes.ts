import fc from 'fast-check';
import { given, maybe, within } from './draws.js';

const MAJORS = { Tr8x2: 8, 'Tr8x8(P2)': 8, Tr10x2: 10, 'Tr12x3-LH': 12 } as const;
const SCREWS = Object.keys(MAJORS) as (keyof typeof MAJORS)[];
const BEARINGS = { 8: '608', 10: '6000', 12: '6001' } as const;

/** Axes of a nut or an adapter, a coupling or a sleeve, and an end that is held or not; lengths as they come. */
export const sensibleAxis: fc.Arbitrary<Record<string, unknown>> = fc
  .record({
    screw: fc.constantFrom(...SCREWS),
    mounting: fc.constantFrom('motor-below', 'motor-above', 'horizontal'),
    joint: fc.constantFrom('coupling', 'coupling', 'sleeve', 'none'),
    end: fc.constantFrom('free', 'guiding', 'locating', 'none'),
    collar: fc.boolean(),
    pad: fc.constantFrom('disc', 'none'),
    clear: maybe(within(250, 400)),
    length: maybe(within(250, 420)),
    start: within(50, 70),
    travel: within(120, 280),
    shaft: within(18, 30),
    load: within(2, 40),
    wide: within(8, 16),
    material: fc.constantFrom('pc', 'petg', 'pa12', 'abs'),
    temperature: within(30, 70),
  })
  .map((r) => {
    const major = MAJORS[r.screw];
    const body = major + r.wide;
    const holder = {
      role: r.end,
      ...(r.end === 'free' ? {} : { bearing: BEARINGS[major], held_by: 'plate' }),
      holes: { rectangle: [46, 46], screw: 'M4', fit: 'coarse' },
      frame: { thickness: 6 },
      runout: 0.1,
    };
    const parts = given({
      nut: {
        body: { diameter: body, length: 18 },
        flange: { diameter: body + 22, thickness: 6 },
        holes: { count: 4, circle: body + 11, screw: 'M3', fit: 'coarse', head: 'flange' },
        carriage: { bore: body + 0.6, thickness: 6 },
        mounting: 'flange-up',
        material: 'pa12',
      },
      coupling: r.joint === 'coupling' ? { retighten: 'yes', insert: { pad: r.pad } } : undefined,
      sleeve: r.joint === 'sleeve' ? { form: 'clamp', retighten: 'yes', offset: 0.03 } : undefined,
      collar: r.collar ? { bore: 'thread', bearing: { bore: major, outside: 2 * major, height: 5 } } : undefined,
      'end-holder': r.end === 'none' ? undefined : holder,
    });
    return given({
      part: 'axis',
      name: 'sheet',
      screw: r.screw,
      motor: {
        shaft: { diameter: 6.35, length: r.shaft },
        torque: 0.3,
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
        moving: 20,
        travel: r.travel,
      }),
      material: r.material,
      printer: { nozzle: 0.4, layer: 0.12, hole_offset: 0.15, chord_error: 0.1, compensation: 'file' },
      duty: { load: r.load, upward: 0, moving: '10 %', temperature: 25, grease: 'greased', feed: 5 },
      parts,
    });
  });
