import fc from 'fast-check';
import { given, material, maybe, nominal, printing, tidy, within } from './draws.js';

const DESIGNATIONS = [
  ['Tr8x1.5', 8, 1.5, 1],
  ['Tr8x2', 8, 2, 1],
  ['Tr8x8(P2)', 8, 2, 4],
  ['Tr10x2-LH', 10, 2, 1],
  ['Tr12x3', 12, 3, 1],
  ['Tr16x8(P4)-LH', 16, 4, 2],
  ['Tr20x4', 20, 4, 1],
  ['Tr28x5', 28, 5, 1],
  ['Tr40x7', 40, 7, 1],
  ['Acme 1/4-16', 6.35, 1.5875, 1],
  ['Acme 3/8-10', 9.525, 2.54, 1],
  ['Acme 1/2-10-2start', 12.7, 2.54, 2],
  ['M6', 6, 1, 1],
  ['M10', 10, 1.5, 1],
  ['M20-LH', 20, 2.5, 1],
] as const;

interface Screw {
  readonly sheet: unknown;
  readonly major: number;
  readonly pitch: number;
}

const named: fc.Arbitrary<Screw> = fc
  .constantFrom(...DESIGNATIONS)
  .map(([designation, major, pitch]) => ({ sheet: designation, major, pitch }));

/** A screw that no series knows, by what calipers read on it. */
const measured: fc.Arbitrary<Screw> = fc
  .record({
    form: fc.constantFrom('trapezoidal', 'acme', 'metric-v'),
    major: within(6, 60),
    share: within(0.12, 0.25),
    starts: fc.constantFrom(1, 1, 2, 3, 4, 6),
    hand: fc.constantFrom('right', 'left'),
    pitchKnown: fc.boolean(),
  })
  .map(({ form, major, share, starts, hand, pitchKnown }) => {
    const pitch = Math.min(12, Math.max(1, Math.round(4 * share * major) / 4));
    const flank = form === 'metric-v' ? 0.6495 * pitch : pitch / 2;
    return {
      sheet: given({
        form,
        major,
        pitch,
        starts,
        hand,
        ...(pitchKnown ? { pitch_diameter: `${tidy(major - flank)} ± 0.02 mm` } : {}),
      }),
      major,
      pitch,
    };
  });

const flange = fc.record({
  shape: fc.constantFrom('round', 'round', 'square', 'rectangular', 'two-ear'),
  share: within(0.25, 0.6),
  offset: fc.constantFrom(undefined, undefined, 1.5, 3),
  flats: fc.boolean(),
});

const holes = fc.record({
  way: fc.constantFrom('circle', 'circle', 'rectangle', 'at'),
  count: fc.integer({ min: 2, max: 6 }),
  start: within(0, 90),
  screw: fc.constantFrom('M2.5', 'M3', 'M4', 'M5'),
  joint: fc.constantFrom('through', 'through', 'counterbore', 'hexagon', 'insert', 'tapped'),
  head: fc.constantFrom('body', 'flange', 'none'),
});

const fit = fc.oneof(
  fc.constantFrom('close', 'running', 'loose'),
  fc.record({ diametral: within(0.15, 0.6), axial: within(0.05, 0.4) }),
);

/** Plain nuts and every member of their family. */
export const sensibleNut: fc.Arbitrary<Record<string, unknown>> = fc
  .record({
    screw: fc.oneof(named, named, measured),
    kind: fc.constantFrom('plain', 'plain', 'plain', 'split', 'clamped', 'holder', 'anti-backlash', 'twin', 'catch'),
    body: fc.constantFrom('round', 'round', 'square', 'hexagon'),
    wall: within(0.3, 0.9),
    length: within(0.8, 1.8),
    flange: maybe(flange),
    holes,
    fit,
    material,
    printing,
    mounting: fc.constantFrom('flange-up', 'flange-down', undefined),
    mark: fc.constantFrom(undefined, undefined, undefined, 'A1', 'Z 2'),
    float: fc.constantFrom(undefined, undefined, 0.2, 0.4),
    leadIn: maybe(within(0, 0.8)),
    relief: maybe(within(0, 0.6)),
    fillet: maybe(within(0, 2)),
    square: fc.boolean(),
    ring: fc.boolean(),
    pocket: fc.constantFrom(undefined, 'face', 'end'),
    spring: within(1, 3),
    layers: fc.integer({ min: 10, max: 16 }),
    load: maybe(within(2, 20)),
  })
  .map((r) => {
    const { major, pitch } = r.screw;
    const roomy = { plain: 0, split: 9, clamped: 8, holder: 8, 'anti-backlash': 7, twin: 0, catch: 4 }[r.kind];
    const across = tidy(major + 2 * (2.5 + r.wall * Math.sqrt(major) * 1.6 + roomy));
    const flanged = r.flange !== undefined || r.kind === 'split';
    const d = nominal(r.holes.screw);
    const bodyReach = r.body === 'round' ? across : r.body === 'square' ? across * Math.SQRT2 : across * 1.155;
    const circle = tidy(bodyReach + 2 * (1.3 * d + (r.fillet ?? 1) + 1));
    const reach = tidy(circle + 2 * (1.7 * d + 1.5));
    const thick = tidy(Math.max(4, r.holes.joint === 'through' ? 0.25 * major : 1.9 * d + 2.5));
    const joint = r.kind === 'split' ? 'through' : r.holes.joint;
    const places = {
      circle: { count: r.holes.count, circle, start: r.holes.start },
      rectangle: { rectangle: [tidy(0.75 * circle), tidy(0.7 * circle)] },
      at: {
        at: [
          [tidy(circle / 2), 1.5],
          [-tidy(circle / 2), -1],
          [0.4, tidy(circle / 2)],
        ],
      },
    }[r.holes.way];
    const f = r.flange ?? { shape: 'round', offset: undefined, flats: false, share: 0 };
    const shape = ['plain', 'catch', 'twin'].includes(r.kind) ? f.shape : 'round';
    const wide = r.holes.way === 'rectangle' ? reach + 2 * d : reach + 2;
    const sizes = {
      round: { diameter: wide, ...(f.flats && r.holes.way === 'circle' ? { flats: tidy(0.97 * wide) } : {}) },
      square: { width: wide, corner: 2 },
      rectangular: { size: [wide + 3, wide], corner: 3 },
      'two-ear': { size: [wide + 10, wide], ear: tidy(wide * 0.8) },
    }[shape as 'round'];
    const twinLength = tidy((2.2 + r.length) * major + (flanged ? thick : 0));
    const across2 = Math.round(1.65 * major);
    const bought = { shape: r.square ? 'square' : 'hexagon', across_flats: across2, height: tidy(0.8 * major) };
    const family = {
      plain: undefined,
      catch: undefined,
      split: given({ kind: 'split', closed: r.ring ? 'ring' : undefined }),
      clamped: { kind: 'clamped' },
      twin: given({
        kind: r.square ? undefined : 'twin',
        apart: tidy(0.72 * twinLength),
        lever: 6,
        shift: r.ring ? 0.05 : undefined,
      }),
      holder: given({ kind: 'holder', nut: bought, pocket: r.pocket }),
      'anti-backlash': {
        kind: 'anti-backlash',
        spring: {
          inside: tidy(major + 5 + 2 * r.spring),
          outside: tidy(major + 7.4 + 2 * r.spring),
          free: 18,
          solid: 7,
          rate: 4,
        },
      },
    }[r.kind];
    const own = ['plain', 'catch', 'twin'].includes(r.kind) ? r.body : 'round';
    return given({
      part: r.kind === 'twin' && r.square ? 'twin-nut' : 'nut',
      name: 'sheet',
      screw: r.screw.sheet,
      body: {
        shape: own,
        [own === 'round' ? 'diameter' : 'across_flats']:
          r.kind === 'holder' || r.kind === 'catch' ? tidy(across + 0.8 * major) : across,
        length:
          r.kind === 'twin'
            ? twinLength
            : tidy(
                r.length * major * (r.kind === 'anti-backlash' ? 1.6 : 1) + (flanged ? thick : 0) + (roomy > 0 ? 8 : 0),
              ),
      },
      ...(flanged
        ? {
            flange: given({ shape, ...sizes, thickness: thick, offset: r.kind === 'plain' ? f.offset : undefined }),
            holes: { ...places, screw: r.holes.screw, joint, head: r.holes.head },
          }
        : {}),
      float: flanged && joint === 'through' ? r.float : undefined,
      mounting: flanged ? r.mounting : undefined,
      mark: flanged ? r.mark : undefined,
      lead_in: r.leadIn,
      relief: r.relief,
      fillet: flanged ? r.fillet : undefined,
      fit: r.fit,
      family,
      catch_nut: r.kind === 'catch' ? bought : undefined,
      material: r.material,
      printer: { ...r.printing, layer: tidy(Math.max(0.05, Math.min(0.7 * r.printing.nozzle, pitch / r.layers))) },
      duty: r.load === undefined ? undefined : { load: r.load, temperature: 25, axis: 'horizontal', grease: 'greased' },
    });
  });
