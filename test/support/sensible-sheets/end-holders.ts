import fc from 'fast-check';
import { given, material, maybe, printing, tidy, within } from './draws.js';

const SCREWS = ['Tr8x2', 'Tr8x8(P2)', 'Tr10x2', 'Tr12x3', 'Tr16x4'] as const;
const MAJOR = { Tr8x2: 8, 'Tr8x8(P2)': 8, Tr10x2: 10, Tr12x3: 12, Tr16x4: 16 } as const;

/** Bearings by the bore that a screw or its turned end goes into: bore, designation, outside. */
const BEARINGS = [
  [8, '608', 22],
  [8, '698', 19],
  [10, '6900', 22],
  [10, '6000', 26],
  [12, '6801', 21],
  [12, '6201', 32],
] as const;

/** Those that are listed with a flange. */
const FLANGED: readonly string[] = ['608', '698', '6900'];

/** Guard rings, bushes, and ball bearings that are pressed in or held by a plate. */
export const sensibleEndHolder: fc.Arbitrary<Record<string, unknown>> = fc
  .record({
    form: fc.constantFrom('ring', 'bush', 'press', 'plate', 'plate', 'lip'),
    flanged: fc.boolean(),
    screw: fc.constantFrom(...SCREWS),
    bearing: fc.constantFrom(...BEARINGS),
    locating: fc.boolean(),
    bolts: fc.constantFrom('M3', 'M4', 'M5'),
    layout: fc.constantFrom('square', 'rectangle', 'circle', 'pair'),
    count: fc.constantFrom(2, 3, 4, 6),
    out: within(4, 14),
    thickness: maybe(within(8, 24)),
    wide: maybe(within(0, 8)),
    off: within(-0.05, 0.02),
    gap: within(4, 120),
    coupling: fc.constantFrom('flexible', 'flexible', 'flexible', 'rigid'),
    nut: fc.constantFrom('rigid', 'floating'),
    mounting: fc.constantFrom('motor-below', 'motor-above', 'horizontal'),
    runout: within(0, 0.08),
    load: within(1, 60),
    temperature: within(15, 45),
    printing,
    material,
  })
  .map((r) => {
    const held = r.form === 'press' || r.form === 'plate' || r.form === 'lip';
    const [bore, plainly, outside] = r.bearing;
    const flanged = r.flanged && FLANGED.includes(plainly) && r.form !== 'lip';
    const designation = flanged ? `F${plainly}` : plainly;
    const beyond = r.form === 'lip' ? 3.2 : flanged ? 2.2 : 0.6;
    const open = held ? outside / 2 + beyond : MAJOR[r.screw] / 2 + 1.5;
    const radius = tidy(open + r.out);
    const role = r.form === 'ring' ? 'free' : r.form === 'plate' && r.locating ? 'locating' : 'guiding';
    const coupling = role === 'locating' ? 'flexible' : r.coupling;
    return given({
      part: 'end-holder',
      name: 'sheet',
      role,
      screw: r.screw,
      turned_end: held ? tidy(bore - 0.05 + r.off) : undefined,
      bearing: held ? designation : undefined,
      held_by: held ? r.form : undefined,
      holes: { ...layout(r.layout, radius, r.count), screw: r.bolts },
      body:
        r.thickness === undefined && r.wide === undefined
          ? undefined
          : given({ thickness: r.thickness, length: r.wide === undefined ? undefined : tidy(2 * radius + 8 + r.wide) }),
      frame: { thickness: 5 },
      mounting: r.mounting,
      coupling,
      thrust_bearing: coupling === 'rigid' || role === 'locating' ? 'no' : 'yes',
      nut: r.nut,
      runout: r.runout,
      nut_gap: r.gap,
      end_room: 2,
      material: r.material,
      printer: { ...r.printing, layer: 0.16 },
      duty: { load: r.load, temperature: r.temperature, span: 400, feed: 10 },
    });
  });

function layout(form: string, radius: number, count: number): object {
  const side = tidy(1.42 * radius);
  if (form === 'square') return { rectangle: [side, side] };
  if (form === 'rectangle') return { rectangle: [side, tidy(1.2 * side)] };
  if (form === 'circle') return { count, circle: tidy(2 * radius), start: 90 };
  return {
    at: [
      [radius, 0],
      [-radius, 0],
    ],
  };
}
