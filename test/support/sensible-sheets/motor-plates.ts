import fc from 'fast-check';
import { given, material, maybe, printing, tidy, within } from './draws.js';

/** Motors by frame: square, pilot, body. */
const FRAMES = [
  ['frame-11', 23, 22, 28.2],
  ['frame-14', 26, 22, 35.2],
  ['frame-17', 31, 22, 42.3],
  ['frame-17', 31, 22, 42.3],
  ['frame-23', 47.14, 38.1, 57],
  ['frame-34', 69.6, 73.03, 86],
] as const;

/** Plates onto a pattern of the machine, and from one frame to another; with slots, sunk heads and inserts. */
export const sensibleMotorPlate: fc.Arbitrary<Record<string, unknown>> = fc
  .record({
    frame: fc.constantFrom(...FRAMES),
    measured: fc.boolean(),
    form: fc.constantFrom('square', 'rectangle', 'circle', 'pair', 'frame'),
    count: fc.constantFrom(3, 4, 6),
    bolts: fc.constantFrom('M3', 'M4', 'M5'),
    fit: fc.constantFrom('coarse', 'coarse', 'coarse', 'medium'),
    out: within(1, 25),
    aside: within(-4, 4),
    face: fc.constantFrom('motor', 'motor', 'outer'),
    joint: fc.constantFrom('through', 'through', 'insert'),
    heads: maybe(fc.constantFrom('proud', 'sunk')),
    opening: maybe(within(30, 120)),
    slot: maybe(within(0.5, 6)),
    along: fc.constantFrom('x', 'y'),
    thickness: maybe(fc.constantFrom(5.5, 6, 7.5, 8, 10, 12)),
    pilot: maybe(within(0.1, 0.6)),
    drive: fc.constantFrom('coupling', 'coupling', 'coupling', 'belt'),
    coupling: fc.constantFrom('flexible', 'flexible', 'disc', 'rigid'),
    mounting: fc.constantFrom('motor-below', 'motor-above', 'horizontal'),
    load: within(1, 40),
    weight: within(0.5, 20),
    temperature: within(20, 55),
    printing,
    material,
  })
  .map((r) => {
    const [frame, square, pilot, body] = r.frame;
    const insert = r.joint === 'insert';
    const belt = r.drive === 'belt';
    // one place carries the screw along its axis, and no more
    const carries = r.coupling === 'rigid' || (r.coupling === 'disc' && r.mounting === 'motor-below');
    const thrust = !belt && !carries;
    const slot = insert ? undefined : r.slot;
    const radius = tidy(body * 0.6 + 6 + r.out + (slot ?? 0));
    return given({
      part: 'motor-plate',
      name: 'sheet',
      motor: given({
        ...(r.measured && square < 40
          ? { square, pilot, screw: 'M3', thread_depth: 4.5, body, torque: '0.2 N m' }
          : { preset: frame }),
        axial_limit: 60,
        length: tidy(body),
        weight: r.weight,
        shaft: { diameter: 5, length: 30 },
        temperature: r.temperature,
      }),
      motor_heads: r.heads,
      machine: given({
        holes:
          r.form === 'frame' && square < 30
            ? { rectangle: [47.14, 47.14], screw: 'M4', fit: r.fit }
            : { ...layout(r.form, { radius, count: r.count, aside: r.aside }), screw: r.bolts, fit: r.fit },
        face: r.face,
        joint: r.joint,
        // a motor on the machine's side stands in it
        opening: r.opening && r.face === 'motor' ? tidy(body + r.opening / 40) : r.opening,
        thickness: 5,
      }),
      slots: slot === undefined ? undefined : { along: r.along, by: slot },
      plate: r.thickness === undefined ? undefined : { thickness: r.thickness },
      fit: r.pilot === undefined ? undefined : { pilot: r.pilot },
      drive: r.drive,
      belt_pull: belt ? 10 : undefined,
      coupling: belt ? undefined : r.coupling,
      hub_depth: belt ? undefined : 12,
      mounting: r.mounting,
      thrust_bearing: belt ? undefined : thrust ? 'yes' : 'no',
      bearing_on: thrust ? 'machine' : undefined,
      material: r.material,
      printer: { ...r.printing, layer: 0.16 },
      duty: { load: r.load },
    });
  });

function layout(
  form: string,
  { radius, count, aside }: { readonly radius: number; readonly count: number; readonly aside: number },
): object {
  const side = tidy(1.42 * radius);
  if (form === 'rectangle') return { rectangle: [side, tidy(1.2 * side)] };
  if (form === 'circle') return { count, circle: tidy(2 * radius), start: 90 };
  if (form === 'pair')
    return {
      at: [
        [tidy(radius + aside), 0],
        [-radius, aside],
      ],
    };
  return { rectangle: [side, side] };
}
