import { METAL } from '../../support/family-sheet.js';
import type { VerdictCases } from '../../support/verdict-gate.js';

/** The most common bought nut on a carriage drilled for another. */
export const PLAIN = {
  part: 'adapter',
  name: 'plain',
  nut: {
    body: 10.2,
    length: 15,
    flange: { diameter: 22, thickness: 3.5 },
    holes: { count: 4, circle: 16, diameter: 3.5, screw: 'M3' },
    joint: 'tapped',
  },
  carriage: { bore: 10.8, thickness: 8, holes: { count: 4, circle: 30, diameter: 3.4, screw: 'M3' }, joint: 'through' },
  plate: { thickness: 8, outline: { shape: 'round', diameter: 44 } },
  material: 'petg',
  printer: { layer: 0.2, compensation: 'none' },
  duty: { load: 20, temperature: 25, axis: 'horizontal' },
};
/** A plate without a nut, its rim in the carriage. */
export const BLANK = {
  part: 'adapter',
  name: 'rim',
  kind: 'blank',
  carriage: {
    bore: 19.6,
    thickness: 10,
    offset: [0, 0],
    holes: { count: 2, circle: 56.2, diameter: 3.4, screw: 'M3' },
  },
  plate: { bore: 15.8 },
  register: { carriage: 'rim' },
  material: 'petg',
  printer: { compensation: 'none' },
};
/** The nut's holes drilled for sleeves, so that it floats. */
export const FLOATING = {
  kind: 'floating',
  screw: 'Tr8x2',
  nut: { flange: { diameter: 30, thickness: 3.5 }, holes: { count: 4, circle: 20, diameter: 5.6, screw: 'M3' } },
  carriage: { holes: { count: 4, circle: 44, diameter: 3.4, screw: 'M3' } },
  plate: { thickness: 8, outline: { shape: 'round', diameter: 58 } },
} as const;
/** A metal nut in the plate, under a nut that stands away. */
const CAUGHT = {
  screw: 'Tr8x8(P2)',
  catch_nut: METAL,
  nut: { flange: { diameter: 32 }, stands: 'away', holes: { circle: 25 } },
  carriage: { bore: 28, joint: 'counterbore', holes: { circle: 40 } },
  plate: { thickness: 12, outline: { shape: 'hull', diameter: undefined } },
  register: { nut: 'none' },
} as const;
/** The nut between two keys, free to lift. */
export const KEYS = {
  kind: 'floating',
  hold: 'keys',
  nut: { flange: { diameter: 30, flats: 24, thickness: 3.5 } },
  carriage: { holes: { circle: 60 } },
  plate: { bore: 12, outline: { diameter: 80 } },
} as const;
const WIDE = { shape: 'round', diameter: 60 };

/** A sheet for each word that each check can say. */
export const ADAPTER_CASES: VerdictCases = {
  'plate-neck': {
    yes: [PLAIN, { plate: { cutouts: [{ at: [0, 19], diameter: 3 }] } }],
    // the edge stands at 22 mm, the cut-out ends at 21
    but: [PLAIN, { plate: { cutouts: [{ at: [0, 19.5], diameter: 3 }] } }],
  },
  clocking: {
    yes: [PLAIN, {}],
    no: [PLAIN, { plate: { bore: 14 } }],
  },
  'head-room': {
    yes: [PLAIN, {}],
    no: [PLAIN, { clocking: 0 }],
  },
  'hole-edge': {
    yes: [PLAIN, {}],
    but: [PLAIN, { plate: { outline: { shape: 'round', diameter: 36 } } }],
    no: [PLAIN, { plate: { outline: { shape: 'round', diameter: 34 } } }],
  },
  'hole-size': {
    yes: [PLAIN, {}],
    no: [PLAIN, { nut: { holes: { diameter: 2.9 } } }],
  },
  // its holes of 3.5 mm reach to 9.75 mm from the axis
  'nut-rim': {
    yes: [PLAIN, {}],
    but: [PLAIN, { nut: { flange: { diameter: 19 } } }],
    no: [PLAIN, { nut: { flange: { diameter: 15 } } }],
  },
  'hole-position-nut': {
    yes: [PLAIN, {}],
    perhaps: [PLAIN, { calipers: 0.3 }],
    no: [PLAIN, { nut: { holes: { diameter: 3 } } }],
  },
  'hole-position-carriage': {
    yes: [PLAIN, {}],
    perhaps: [PLAIN, { carriage: { holes: { circle: '30 ± 0.9 mm' } } }],
    no: [PLAIN, { carriage: { holes: { screw: 'M4' } } }],
  },
  'screw-length': {
    yes: [PLAIN, {}],
    but: [PLAIN, { carriage: { thickness: undefined } }],
    no: [PLAIN, { plate: { thickness: 3 } }],
  },
  'thread-engagement': {
    yes: [PLAIN, {}],
    but: [PLAIN, { plate: { thickness: 3 } }],
    no: [PLAIN, { plate: { thickness: 2.5 } }],
  },
  'machine-thread': {
    yes: [PLAIN, { carriage: { thread: 'tapped' } }],
    but: [PLAIN, { carriage: { thread: 'tapped', thickness: 2 } }],
    no: [PLAIN, { carriage: { thread: 'tapped', thickness: 1 } }],
    'not-told': [PLAIN, { carriage: { thread: 'tapped', thickness: undefined } }],
  },
  'pocket-wall': {
    yes: [
      PLAIN,
      {
        nut: { joint: 'insert', flange: { diameter: 32 }, holes: { circle: 22 } },
        carriage: { holes: { circle: 40 } },
        plate: { outline: WIDE },
      },
    ],
    but: [PLAIN, { carriage: { joint: 'insert' } }],
    no: [PLAIN, { clocking: 20, nut: { joint: 'insert' } }],
  },
  'pocket-floor': {
    yes: [PLAIN, { carriage: { joint: 'counterbore' }, plate: { thickness: 5 } }],
    but: [PLAIN, { carriage: { joint: 'counterbore' }, plate: { thickness: 4 } }],
    no: [PLAIN, { carriage: { joint: 'counterbore' }, plate: { thickness: 3.6 } }],
  },
  'floor-bending': {
    yes: [PLAIN, { carriage: { joint: 'counterbore' }, plate: { thickness: 5 } }],
    no: [PLAIN, { carriage: { joint: 'counterbore' }, plate: { thickness: 4 }, duty: { load: 80 } }],
    'not-told': [PLAIN, { carriage: { joint: 'counterbore' }, duty: { load: undefined } }],
  },
  'mount-seat': {
    yes: [PLAIN, {}],
    but: [PLAIN, { plate: { bore: 20 } }],
    no: [PLAIN, { plate: { bore: 22 } }],
  },
  'mount-bore': {
    yes: [PLAIN, { kind: 'floating' }],
    perhaps: [PLAIN, { plate: { bore: 10.4 } }],
    but: [PLAIN, { plate: { bore: 11.2 }, limits: { 'mount-bore': { min: 0.9 } } }],
    no: [PLAIN, { plate: { bore: 10.1 } }],
  },
  'mount-float': {
    yes: [PLAIN, { kind: 'floating', nut: { holes: { diameter: 3.9 } } }],
    perhaps: [PLAIN, { kind: 'floating' }],
    but: [PLAIN, { kind: 'floating', float: 0.1 }],
  },
  'float-backlash': {
    yes: [PLAIN, { ...FLOATING, duty: { axis: 'vertical' } }],
    perhaps: [PLAIN, { ...FLOATING, float: { along: 0.08 }, limits: { 'float-backlash': { max: 0.13 } } }],
    but: [PLAIN, { ...FLOATING, float: { along: 0.2 } }],
    'not-told': [PLAIN, { kind: 'floating' }],
  },
  'sleeve-seat': {
    yes: [PLAIN, { ...FLOATING, nut: { ...FLOATING.nut, joint: 'insert' } }],
    no: [PLAIN, { ...FLOATING, nut: { ...FLOATING.nut, joint: 'hexagon' }, float: { sleeve: 4.2 } }],
  },
  'rim-wall': {
    yes: [BLANK, {}],
    but: [BLANK, { carriage: { offset: [0.3, 0] } }],
    no: [BLANK, { plate: { bore: 18 } }],
  },
  // holes of 3.4 mm on a circle of 30 mm: 13.3 mm from the axis to their nearer side
  'carriage-wall': {
    yes: [PLAIN, {}],
    perhaps: [PLAIN, { carriage: { bore: 24.58 } }],
    but: [PLAIN, { carriage: { bore: 25.6 } }],
    no: [PLAIN, { carriage: { bore: 27 } }],
  },
  'nut-kept': {
    yes: [PLAIN, { ...KEYS, duty: { axis: 'vertical', pull: 'onto' } }],
    no: [PLAIN, { ...KEYS, duty: { axis: 'vertical', pull: 'away' } }],
    'not-told': [PLAIN, { ...KEYS, duty: { axis: 'vertical' } }],
  },
  'key-bending': {
    yes: [PLAIN, { ...KEYS, screw: 'Tr8x2', duty: { motor: { torque: '0.06 N m' } } }],
    no: [PLAIN, { ...KEYS, screw: 'Tr8x2', duty: { motor: { torque: '0.5 N m' } } }],
    'not-told': [PLAIN, { ...KEYS, screw: 'Tr8x2' }],
  },
  'spigot-room': {
    // a recess of its own is 0.2 mm wider
    yes: [PLAIN, { carriage: { spigot: 20 }, register: { carriage: 'recess' } }],
    // the bore of the plate is 10.4 mm
    perhaps: [PLAIN, { carriage: { spigot: 10.38 } }],
    no: [PLAIN, { carriage: { spigot: 20 } }],
  },
  'rim-height': {
    yes: [BLANK, {}],
    but: [BLANK, { register: { depth: 11 } }],
  },
  'mount-room': {
    yes: [
      PLAIN,
      {
        carriage: {
          room: [
            [-30, -30],
            [30, -30],
            [30, 30],
            [-30, 30],
          ],
        },
      },
    ],
    no: [
      PLAIN,
      {
        carriage: {
          room: [
            [-20, -20],
            [20, -20],
            [20, 20],
            [-20, 20],
          ],
        },
      },
    ],
  },
  'bolt-clamp-nut': {
    yes: [PLAIN, {}],
    no: [PLAIN, { duty: { load: 400 } }],
    'not-told': [PLAIN, { duty: undefined }],
  },
  'bolt-clamp-carriage': {
    yes: [PLAIN, {}],
    no: [PLAIN, { duty: { load: 800 } }],
    'not-told': [PLAIN, { duty: undefined }],
  },
  // a pocket of 7.3 mm leaves 4.7 mm of 12, over an opening of 28 mm
  'nut-seat': {
    yes: [PLAIN, CAUGHT],
    no: [PLAIN, { ...CAUGHT, plate: { ...CAUGHT.plate, thickness: 8.5 }, duty: { load: 200 } }],
    'not-told': [PLAIN, { ...CAUGHT, duty: { load: undefined } }],
  },
  'catch-nut': {
    yes: [PLAIN, { screw: 'Tr8x2' }],
    but: [
      PLAIN,
      {
        screw: 'Tr8x8(P2)',
        catch_nut: { ...METAL, gap: 2 },
        nut: { flange: { diameter: 32 }, stands: 'away', holes: { circle: 25 } },
        carriage: { bore: 28, joint: 'counterbore', holes: { circle: 40 } },
        plate: { thickness: 12, outline: { shape: 'hull', diameter: undefined } },
        register: { nut: 'none' },
      },
    ],
    'not-told': [PLAIN, { duty: { axis: 'vertical' } }],
  },
  'print-support': {
    yes: [PLAIN, {}],
    but: [BLANK, { register: { depth: 2 }, limits: { 'print-support': { max: 1.1 } } }],
    no: [
      PLAIN,
      {
        register: { nut: 'recess', carriage: 'rim' },
        nut: { stands: 'away' },
        carriage: { bore: 24, joint: 'counterbore', holes: { circle: 40 } },
        plate: { outline: { shape: 'hull', diameter: undefined } },
      },
    ],
  },
  'shrink-applied-once': {
    yes: [PLAIN, {}],
    but: [PLAIN, { printer: { compensation: undefined } }],
  },
  heat: {
    yes: [PLAIN, {}],
    no: [PLAIN, { duty: { temperature: 50 } }],
    'not-told': [PLAIN, { duty: undefined }],
  },
  'head-seat': {
    yes: [PLAIN, {}],
    perhaps: [PLAIN, { nut: { holes: { diameter: 5 } } }],
    but: [PLAIN, { carriage: { holes: { diameter: 6 } } }],
    no: [PLAIN, { nut: { holes: { diameter: 5.6 } } }],
    'not-told': [PLAIN, { carriage: { holes: { screw: undefined, diameter: 2 } } }],
  },
  'plate-bending': {
    yes: [PLAIN, {}],
    no: [PLAIN, { duty: { load: 2000 } }],
    'not-told': [PLAIN, { duty: undefined }],
  },
  'plate-sag': {
    yes: [PLAIN, {}],
    but: [PLAIN, { duty: { load: 2000 } }],
    'not-told': [PLAIN, { duty: undefined }],
  },
  'end-stop': {
    yes: [PLAIN, { screw: 'Tr8x2', duty: { motor: { torque: '0.1 N m' } } }],
    but: [PLAIN, { screw: 'Tr8x2', duty: { motor: { torque: '2 N m' } } }],
    'not-told': [PLAIN, {}],
  },
};
