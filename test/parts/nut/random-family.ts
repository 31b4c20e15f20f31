import fc from 'fast-check';

const within = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((value) => Math.round(value * 20) / 20);
const screws = { Tr8x2: 13, 'Tr8x8(P2)': 13, Tr10x2: 17, Tr12x3: 19, 'Tr8x2-LH': 13 } as const;

/** Sheets of every member of the nut family; some fit, some do not. */
export const randomFamily = fc
  .record({
    screw: fc.constantFrom(...(Object.keys(screws) as (keyof typeof screws)[])),
    kind: fc.constantFrom('split', 'clamped', 'holder', 'anti-backlash', 'twin', 'catch'),
    wall: within(7, 14),
    length: within(18, 34),
    rim: within(8, 12),
    thickness: within(4, 7),
    flanged: fc.boolean(),
    shape: fc.constantFrom('hexagon', 'square'),
    ring: fc.boolean(),
    spring: within(5, 9),
    count: fc.constantFrom(2, 4),
    material: fc.constantFrom('petg', 'pa12'),
    fit: fc.constantFrom('running', 'loose'),
  })
  .map((r) => {
    const major = Number(/\d+/.exec(r.screw)![0]);
    const diameter = major + 2 * r.wall;
    const nut = { shape: r.shape, across_flats: screws[r.screw], height: 0.8 * major };
    const flanged = r.flanged || r.kind === 'split';
    const family = {
      split: { kind: 'split', ...(r.ring ? { closed: 'ring' } : {}) },
      clamped: { kind: 'clamped' },
      twin: { kind: 'twin', apart: Math.round(0.75 * r.length), lever: 5, ...(r.ring ? { shift: 0.05 } : {}) },
      holder: { kind: 'holder', nut },
      'anti-backlash': {
        kind: 'anti-backlash',
        spring: { inside: major + r.spring, outside: major + r.spring + 2.4, free: 18, solid: 7, rate: 4 },
      },
      catch: undefined,
    }[r.kind];
    return {
      part: 'nut',
      name: 'random',
      screw: { designation: r.screw, hand: r.screw.endsWith('LH') ? 'left' : 'right' },
      body: { diameter, length: r.length },
      ...(flanged
        ? {
            flange: { diameter: diameter + 2 * r.rim, thickness: r.thickness },
            holes: {
              count: r.count,
              circle: diameter + r.rim + 1,
              start: 90 / (r.count / 2),
              screw: 'M3',
              head: 'flange',
            },
          }
        : {}),
      ...(family ? { family } : { catch_nut: nut }),
      fit: r.fit,
      material: r.material,
      printer: { layer: 0.1, compensation: 'file' },
      duty: { axis: 'horizontal', load: 15, temperature: 25, grease: 'greased', moving: '10 %', feed: 5 },
    };
  });
