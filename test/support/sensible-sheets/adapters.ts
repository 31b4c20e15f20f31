import fc from 'fast-check';
import { given, material, maybe, nominal, printing, tidy, within } from './draws.js';

const SCREWS = ['M2.5', 'M3', 'M4', 'M5', 'M6'] as const;
const JOINTS = ['through', 'through', 'counterbore', 'hexagon', 'insert', 'tapped', undefined] as const;

/** Places of holes around the axis, the nearest at a radius; free ones a little off the circle. */
const places = (way: string, { radius, count, start }: { radius: number; count: number; start: number }) => {
  if (way === 'circle') return { count, circle: tidy(2 * radius), start };
  if (way === 'rectangle') return { rectangle: [tidy(1.45 * radius), tidy(1.5 * radius)] };
  return {
    at: Array.from({ length: count }, (_, i) => {
      const angle = ((start + (360 * i) / count + 5 * (i % 2)) * Math.PI) / 180;
      return [tidy((radius + i) * Math.cos(angle)), tidy((radius + i) * Math.sin(angle))];
    }),
  };
};
const pattern = fc.record({
  screw: fc.constantFrom(...SCREWS),
  way: fc.constantFrom('circle', 'circle', 'rectangle', 'at'),
  count: fc.integer({ min: 2, max: 6 }),
  start: within(0, 90),
  room: within(0, 8),
  stated: fc.constantFrom('screw', 'screw', 'both', 'diameter'),
  wide: within(1, 2.6),
});

/** Plates that carry a bought nut, plates on which it floats, and blank ones. */
export const sensibleAdapter: fc.Arbitrary<Record<string, unknown>> = fc
  .record({
    kind: fc.constantFrom('joined', 'joined', 'blank', 'blank', 'floating'),
    body: within(8, 26),
    nut: pattern,
    carriage: pattern,
    nutJoint: fc.constantFrom(...JOINTS),
    carriageJoint: fc.constantFrom(...JOINTS),
    seat: fc.constantFrom(undefined, undefined, 'outside', 'carriage'),
    stands: fc.constantFrom(undefined, undefined, 'through', 'away'),
    bore: within(8, 40),
    carriageBore: maybe(within(0, 14)),
    spigot: fc.constantFrom(false, false, false, true),
    register: fc.constantFrom(undefined, undefined, 'rim', 'none'),
    offset: maybe(fc.tuple(within(-3, 3), within(-2, 2))),
    outline: fc.constantFrom('hull', 'hull', 'round', 'square', 'rectangular', 'polygon'),
    rim: within(1.5, 6),
    flat: fc.constantFrom(false, false, true),
    cutout: fc.constantFrom(undefined, undefined, undefined, 'round', 'square'),
    step: maybe(fc.tuple(within(2, 10), within(1, 3))),
    float: fc.constantFrom(undefined, 0.25, { sideways: 0.3, along: 0.1 }),
    hold: fc.constantFrom(undefined, 'screws', 'keys'),
    drilled: fc.boolean(),
    flange: fc.constantFrom('round', 'round', 'flats', 'square'),
    thickness: maybe(within(6, 14)),
    relief: maybe(within(0, 0.8)),
    material,
    printing,
  })
  .map((r) => {
    const nutScrew = nominal(r.nut.screw);
    const bore = r.kind === 'blank' ? r.bore : r.body;
    // holes that are drilled for sleeves come near the body
    const nutRadius = tidy(r.body / 2 + (r.kind === 'floating' && r.drilled ? 1 : 1.6) * nutScrew + 1.5);
    const flange = tidy(2 * nutRadius + 3.4 * nutScrew);
    const flangeSheet = {
      round: { diameter: flange, thickness: 4 },
      flats: { diameter: flange, flats: tidy(0.8 * flange), thickness: 4 },
      square: { shape: 'square', size: [flange, flange], thickness: 4 },
    }[r.flange];
    const carriageScrew = nominal(r.carriage.screw);
    const inner = r.kind === 'blank' ? bore / 2 + 3 + (r.step?.[0] ?? 0) / 2 : flange / 2 + 1.2 * carriageScrew;
    // a flange on the carriage's side goes into its opening, over its corners and off its middle
    const sunk = r.kind !== 'blank' && r.seat === 'carriage';
    const entering = sunk ? (r.flange === 'square' ? Math.SQRT2 : 1) * flange + 7.5 : bore;
    const opening = r.carriageBore === undefined ? undefined : tidy(entering + 1 + r.carriageBore);
    const reach = tidy(Math.max(inner, (opening ?? 0) / 2 + 2) + 1.5 * carriageScrew + 2 + r.carriage.room);
    const far = tidy(2 * (reach + 6 + 2.2 * carriageScrew));
    const outline = {
      hull: given({ shape: 'hull', rim: r.rim }),
      round: { shape: 'round', diameter: far },
      square: { shape: 'square', width: far, corner: 5 },
      rectangular: { shape: 'rectangular', size: [far + 8, far], corner: 3, center: [1, -1] },
      polygon: {
        shape: 'polygon',
        corners: [
          [-far / 2, -far / 2],
          [far / 2, -far / 2 - 2],
          [far / 2 + 3, far / 3],
          [0, far / 2 + 8],
          [-far / 2, far / 2],
        ].map(([x, y]) => [tidy(x!), tidy(y!)]),
      },
    }[r.outline];
    /** Holes that a sleeve of a floating nut passes, with 0.3 mm to either side. */
    const forSleeves = (screw: string) => ({ diameter: tidy(Math.ceil(nominal(screw) + 1.5) + 0.6), screw });
    const hole = (p: typeof r.nut) => {
      const drilled = tidy(nominal(p.screw) * 1.06 + 0.2);
      if (p.stated === 'both') return { diameter: drilled, screw: p.screw };
      return p.stated === 'screw' ? { screw: p.screw } : { diameter: tidy(drilled * p.wide) };
    };
    return given({
      part: 'adapter',
      name: 'sheet',
      kind: r.kind,
      nut:
        r.kind === 'blank'
          ? undefined
          : given({
              body: r.body,
              length: tidy(1.4 * r.body),
              flange: flangeSheet,
              holes: {
                ...places('circle', { radius: nutRadius, count: r.nut.count, start: r.nut.start }),
                ...(r.kind === 'floating' && r.drilled ? forSleeves(r.nut.screw) : hole(r.nut)),
              },
              joint: r.nutJoint,
              seat: r.seat,
              stands: r.stands,
            }),
      carriage: given({
        ...(r.spigot ? { spigot: opening } : { bore: opening }),
        thickness: 8,
        offset: r.offset,
        holes: {
          ...places(r.carriage.way, { radius: reach, count: r.carriage.count, start: r.carriage.start }),
          ...hole(r.carriage),
        },
        joint: r.carriageJoint,
      }),
      plate: given({
        outline,
        thickness: r.thickness,
        relief: r.relief,
        ...(r.kind === 'blank' ? { bore: r.bore } : {}),
        ...(r.kind === 'blank' && r.step ? { step: { diameter: tidy(r.bore + r.step[0]), depth: r.step[1] } } : {}),
        ...(r.flat && r.outline !== 'polygon' ? { flats: [{ angle: 90, distance: tidy(far / 2 - 1) }] } : {}),
        ...(r.cutout === 'round' ? { cutouts: [{ at: [tidy(far / 2), 2], diameter: 7 }] } : {}),
        ...(r.cutout === 'square' ? { cutouts: [{ at: [3, tidy(far / 2 - 1)], size: [6, 5], turn: 12 }] } : {}),
      }),
      register:
        r.spigot && opening !== undefined
          ? { carriage: 'recess' }
          : r.register === 'rim' && opening === undefined
            ? undefined
            : r.register && { carriage: r.register },
      hold: r.kind === 'floating' ? r.hold : undefined,
      float: r.kind === 'floating' ? r.float : undefined,
      material: r.material,
      printer: { ...r.printing, layer: 0.2 },
      duty: { load: 10, temperature: 25, axis: 'horizontal' },
    });
  });
