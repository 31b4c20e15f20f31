import fc from 'fast-check';

const within = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((value) => Math.round(value * 100) / 100);
const screw = fc.constantFrom('M2.5' as const, 'M3' as const, 'M4' as const, 'M5' as const);

/** A hole pattern on a circle, a rectangle or at free places, at least `reach` from the axis. */
const pattern = (least: number, most: number) =>
  fc
    .record({
      screw,
      way: fc.integer({ min: 0, max: 2 }),
      reach: within(least, most),
      count: fc.integer({ min: 2, max: 6 }),
      start: within(0, 360),
    })
    .map(({ screw, way, reach, count, start }) => {
      if (way === 0) return { count, circle: 2 * reach, start, screw };
      if (way === 1) return { rectangle: [1.5 * reach, 1.4 * reach], start, screw };
      const at = Array.from({ length: count }, (_, i) => {
        const angle = ((start + (360 * i) / count + 7 * (i % 2)) * Math.PI) / 180;
        return [Math.round(100 * reach * Math.cos(angle)) / 100, Math.round(100 * (reach + i) * Math.sin(angle)) / 100];
      });
      return { at, screw };
    });

const outline = fc.oneof(
  within(2, 6).map((rim) => ({ shape: 'hull', rim })),
  within(50, 100).map((diameter) => ({ shape: 'round', diameter })),
  within(50, 90).map((width) => ({ shape: 'square', width, corner: 6 })),
  fc.tuple(within(55, 100), within(45, 90)).map((size) => ({ shape: 'rectangular', size, corner: 4, center: [1, -2] })),
  fc.constant({
    shape: 'polygon',
    corners: [
      [-40, -35],
      [40, -38],
      [42, 10],
      [15, 40],
      [0, 33],
      [-30, 40],
    ],
  }),
);

/** A bore that leaves a carriage something for its screws: 4 mm to the middle of the nearest, and their offset. */
function boreWithin({ circle, rectangle, at }: { circle?: number; rectangle?: number[]; at?: number[][] }): number {
  const nearest = circle
    ? circle / 2
    : Math.min(...(at ?? [rectangle!.map((side) => side / 2)]).map((one) => Math.hypot(...one)));
  return Math.floor(100 * 2 * (nearest - 5.2)) / 100;
}

/** Sheets of adapters of every kind; some fit, some do not. */
export const randomAdapter = fc
  .record({
    kind: fc.constantFrom('joined', 'joined', 'joined', 'floating', 'blank'),
    body: within(8, 16),
    rim: within(4, 9),
    square: fc.boolean(),
    nutHoles: pattern(7, 14),
    carriageHoles: pattern(13, 26),
    nutJoint: fc.constantFrom(undefined, undefined, 'insert', 'tapped', 'hexagon', 'counterbore', 'through'),
    carriageJoint: fc.constantFrom(undefined, undefined, 'insert', 'tapped', 'hexagon', 'counterbore', 'through'),
    seat: fc.constantFrom(undefined, 'outside', 'carriage'),
    stands: fc.constantFrom(undefined, 'through', 'away'),
    bore: within(10, 30),
    register: fc.constantFrom(undefined, 'rim', 'none'),
    offset: fc.constantFrom(undefined, undefined, [0.5, -1]),
    outline,
    flats: fc.boolean(),
    cutout: fc.constantFrom(
      undefined,
      undefined,
      [{ at: [34, 3], size: [9, 14], turn: 20 }],
      [{ at: [-20, 24], diameter: 6 }],
    ),
    hold: fc.constantFrom(undefined, 'screws', 'keys'),
    caught: fc.boolean(),
    thickness: fc.constantFrom(undefined, undefined, 8, 14),
    material: fc.constantFrom('petg', 'pa12', 'abs'),
    stepped: fc.boolean(),
  })
  .map((r) => {
    const nut = {
      body: r.body,
      length: 16,
      flange: r.square
        ? { shape: 'square', size: [r.body + 2 * r.rim, r.body + 2 * r.rim], thickness: 4 }
        : { diameter: r.body + 2 * r.rim, thickness: 3.5 },
      holes: r.nutHoles,
      ...(r.nutJoint ? { joint: r.nutJoint } : {}),
      ...(r.seat ? { seat: r.seat } : {}),
      ...(r.stands ? { stands: r.stands } : {}),
    };
    const caught = r.caught && r.stands === 'away' && r.seat !== 'carriage' && r.kind === 'joined';
    return {
      part: 'adapter',
      name: 'random',
      kind: r.kind,
      ...(r.kind === 'blank' ? {} : { nut }),
      carriage: {
        bore: Math.min(r.bore, boreWithin(r.carriageHoles)),
        thickness: 6,
        holes: r.carriageHoles,
        ...(r.carriageJoint ? { joint: r.carriageJoint } : {}),
        ...(r.offset ? { offset: r.offset } : {}),
      },
      plate: {
        outline: r.outline,
        ...(r.thickness ? { thickness: r.thickness } : {}),
        ...(r.kind === 'blank' ? { bore: 12 } : {}),
        ...(r.kind === 'blank' && r.stepped ? { step: { diameter: 18, depth: 2 } } : {}),
        ...(r.flats && r.outline.shape !== 'polygon' ? { flats: [{ angle: 90, distance: 25 }] } : {}),
        ...(r.cutout ? { cutouts: r.cutout } : {}),
      },
      register: { ...(r.register ? { carriage: r.register } : {}), ...(caught ? { nut: 'none' } : {}) },
      ...(r.kind === 'floating' && r.hold ? { hold: r.hold } : {}),
      ...(caught ? { screw: 'Tr8x2', catch_nut: { across_flats: 13, height: 6 } } : {}),
      material: r.material,
      printer: { layer: 0.2, compensation: 'file' },
      duty: { load: 20, temperature: 25, axis: 'horizontal' },
    };
  });
