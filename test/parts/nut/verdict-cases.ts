import { FAMILY_BASE, METAL, SPRING } from '../../support/family-sheet.js';
import { STRONG_NUT as SOUND_NUT } from '../../support/nut-sheets.js';
import type { VerdictCases } from '../../support/verdict-gate.js';

/** A plain nut with room for its family, lying. */
const FAMILY = {
  ...FAMILY_BASE,
  duty: { axis: 'horizontal', load: 15, temperature: 25, grease: 'greased', moving: '10 %', feed: 5 },
};
/** Two threads in one long body. */
const TWIN = { ...FAMILY, body: { ...FAMILY_BASE.body, length: 44 }, family: { kind: 'twin', apart: 32, lever: 10 } };
/** A bought nut in a body that goes through its carriage. */
const HOLDER = { family: { kind: 'holder', nut: METAL }, stands: 'through' };
/** A screw whose crests were hard to read. */
const UNSURE = { designation: 'Tr10x2', major: '9.9 ± 0.3 mm' };
const CARRIAGE_HOLES = { count: 4, circle: 27, start: 45, diameter: 3.6, screw: 'M3' };

/** A sheet for each word that each check can say. */
export const NUT_CASES: VerdictCases = {
  'screw-lead': {
    yes: [SOUND_NUT, {}],
    no: [SOUND_NUT, { screw: { designation: 'Tr10x2', lead: 3 } }],
  },
  'screw-series': {
    yes: [SOUND_NUT, {}],
    but: [SOUND_NUT, { screw: { designation: 'Tr10x2', major: 10.4 } }],
  },
  'screw-hand': {
    yes: [SOUND_NUT, {}],
    but: [SOUND_NUT, { screw: { form: 'trapezoidal', major: 9.95, pitch: 2, starts: 1 } }],
  },
  'thread-clearance': {
    yes: [SOUND_NUT, {}],
    perhaps: [SOUND_NUT, { fit: { diametral: 0.05, axial: 0.1 } }],
    no: [SOUND_NUT, { limits: { 'thread-clearance': { min: 0.7 } } }],
  },
  'thread-pitch-error': {
    yes: [SOUND_NUT, {}],
    no: [SOUND_NUT, { fit: { axial: 0.02 } }],
    perhaps: [SOUND_NUT, { fit: { axial: 0.1 }, duty: { grease: 'dry', feed: 20 } }],
  },
  'thread-axial': {
    yes: [SOUND_NUT, {}],
    perhaps: [SOUND_NUT, { limits: { 'thread-axial': { min: 0.2 } } }],
    but: [SOUND_NUT, { limits: { 'thread-axial': { min: 0.3 } } }],
  },
  'thread-backlash': {
    yes: [SOUND_NUT, {}],
    but: [SOUND_NUT, { fit: 'loose' }],
    perhaps: [SOUND_NUT, { fit: { axial: 0.15 } }],
  },
  'thread-crest-gap': {
    yes: [SOUND_NUT, {}],
    no: [SOUND_NUT, { limits: { 'thread-crest-gap': { min: 0.6 } } }],
    perhaps: [SOUND_NUT, { limits: { 'thread-crest-gap': { min: 0.4 } } }],
  },
  'thread-root-gap': {
    yes: [SOUND_NUT, {}],
    no: [SOUND_NUT, { limits: { 'thread-root-gap': { min: 0.6 } } }],
    perhaps: [SOUND_NUT, { limits: { 'thread-root-gap': { min: 0.42 } } }],
  },
  'thread-lead-in': {
    yes: [SOUND_NUT, {}],
    but: [SOUND_NUT, { lead_in: 0 }],
  },
  'print-layers': {
    yes: [SOUND_NUT, {}],
    but: [SOUND_NUT, { printer: { layer: 0.25 } }],
    no: [SOUND_NUT, { printer: { nozzle: 0.6, layer: 0.4 } }],
  },
  'print-thread-depth': {
    yes: [SOUND_NUT, {}],
    but: [SOUND_NUT, { printer: { nozzle: 0.6 } }],
    no: [SOUND_NUT, { screw: 'M5' }],
  },
  'print-overhang': {
    yes: [SOUND_NUT, {}],
    but: [SOUND_NUT, { printer: { layer: 0.1 } }],
  },
  'shrink-applied-once': {
    yes: [SOUND_NUT, {}],
    but: [SOUND_NUT, { printer: { compensation: undefined } }],
  },
  wall: {
    yes: [SOUND_NUT, {}],
    perhaps: [SOUND_NUT, { screw: { designation: 'Tr10x2', major: '9.9 ± 0.2 mm' }, body: { diameter: 14 } }],
    but: [SOUND_NUT, { printer: { nozzle: 0.6, layer: 0.1 }, body: { diameter: 14.6 } }],
    no: [SOUND_NUT, { body: { diameter: 12 } }],
  },
  'hole-position': {
    yes: [SOUND_NUT, {}],
    perhaps: [SOUND_NUT, { carriage: { holes: { ...CARRIAGE_HOLES, circle: '27 ± 0.9 mm' } } }],
    no: [SOUND_NUT, { holes: { fit: 'fine' } }],
  },
  'hole-clearance': {
    yes: [SOUND_NUT, {}],
    no: [SOUND_NUT, { holes: { circle: 21 } }],
  },
  'hole-edge': {
    yes: [SOUND_NUT, {}],
    but: [FAMILY, { holes: { start: 0 } }],
    no: [SOUND_NUT, { holes: { circle: 32 } }],
  },
  'hole-spacing': {
    yes: [SOUND_NUT, {}],
    no: [SOUND_NUT, { holes: { count: 16 } }],
  },
  'pocket-wall': {
    yes: [SOUND_NUT, { holes: { joint: 'insert' } }],
    but: [SOUND_NUT, { holes: { joint: 'insert', circle: 30 } }],
    no: [SOUND_NUT, { holes: { joint: 'insert', circle: 33 } }],
  },
  'pocket-floor': {
    yes: [SOUND_NUT, { holes: { joint: 'hexagon' } }],
    but: [SOUND_NUT, { holes: { joint: 'counterbore' }, flange: { thickness: 3.5 } }],
    no: [SOUND_NUT, { holes: { joint: 'counterbore' }, flange: { thickness: 3.2 } }],
  },
  'floor-bending': {
    yes: [SOUND_NUT, { holes: { joint: 'counterbore' }, flange: { thickness: 6 } }],
    no: [SOUND_NUT, { holes: { joint: 'counterbore' } }],
    'not-told': [SOUND_NUT, { holes: { joint: 'counterbore' }, flange: { thickness: 6 }, duty: { load: undefined } }],
  },
  'mount-bore': {
    yes: [SOUND_NUT, { carriage: { bore: 20 } }],
    perhaps: [SOUND_NUT, { carriage: { bore: 17 } }],
    but: [
      SOUND_NUT,
      { carriage: { bore: '17.12 ± 0.01 mm' }, material: { preset: 'pla', shrink: { plane: '0.3 ± 0 %' } } },
    ],
    no: [SOUND_NUT, { carriage: { bore: 16.9 } }],
  },
  // holes of 3.6 mm on a circle of 27 mm: 11.7 mm from the axis to their nearer side
  'carriage-wall': {
    yes: [SOUND_NUT, { carriage: { bore: 20, holes: CARRIAGE_HOLES } }],
    perhaps: [SOUND_NUT, { carriage: { bore: 21.38, holes: CARRIAGE_HOLES } }],
    but: [SOUND_NUT, { carriage: { bore: 22.4, holes: CARRIAGE_HOLES } }],
    no: [SOUND_NUT, { carriage: { bore: 24, holes: CARRIAGE_HOLES } }],
  },
  'mount-seat': {
    yes: [SOUND_NUT, { carriage: { bore: 20 } }],
    but: [SOUND_NUT, { fillet: 0.5, carriage: { bore: 17.2 } }],
  },
  'mount-float': {
    yes: [SOUND_NUT, { holes: { fit: undefined, diameter: 3.9 } }],
    perhaps: [SOUND_NUT, { carriage: { holes: { ...CARRIAGE_HOLES, circle: 26.2 } } }],
    but: [SOUND_NUT, { holes: { fit: 'fine' } }],
  },
  'float-pull': {
    yes: [SOUND_NUT, { float: 0.3, holes: { fit: undefined } }],
    no: [SOUND_NUT, { float: 0.3, holes: { fit: undefined }, limits: { 'float-pull': { max: 0.1 } } }],
    'not-told': [SOUND_NUT, { float: 0.3, holes: { fit: undefined }, duty: undefined }],
  },
  'bolt-clamp': {
    yes: [SOUND_NUT, {}],
    no: [SOUND_NUT, { screw: 'M5' }],
    'not-told': [SOUND_NUT, { duty: undefined }],
  },
  'mount-binding': {
    yes: [SOUND_NUT, {}],
    perhaps: [SOUND_NUT, { carriage: { bore: 17 } }],
    but: [SOUND_NUT, { limits: { 'mount-binding': { max: -1 } } }],
    no: [SOUND_NUT, { carriage: { holes: { ...CARRIAGE_HOLES, circle: 29 } } }],
    'not-told': [SOUND_NUT, { holes: { diameter: 3.05, fit: undefined }, duty: { ends: undefined } }],
  },
  'thread-pressure': {
    yes: [SOUND_NUT, {}],
    perhaps: [SOUND_NUT, { screw: UNSURE, duty: { load: 150 }, limits: { 'thread-pressure': { max: 1.76 } } }],
    but: [SOUND_NUT, { material: 'pc' }],
    no: [SOUND_NUT, { duty: { load: 300 } }],
    'not-told': [SOUND_NUT, { duty: undefined }],
  },
  'thread-shear': {
    yes: [SOUND_NUT, {}],
    // the contact's middle, down to which chamfers take the ends, hangs on the crests: 1.824 MPa, 1.842 at 9.6 mm
    perhaps: [SOUND_NUT, { screw: UNSURE, duty: { load: 300 }, limits: { 'thread-shear': { max: 1.833 } } }],
    no: [SOUND_NUT, { duty: { load: 800 } }],
    'not-told': [SOUND_NUT, { duty: undefined }],
  },
  'thread-bending': {
    yes: [SOUND_NUT, {}],
    perhaps: [SOUND_NUT, { screw: UNSURE, duty: { load: 300 }, limits: { 'thread-bending': { max: 7.4 } } }],
    no: [SOUND_NUT, { duty: { load: 600 } }],
    'not-told': [SOUND_NUT, { duty: undefined }],
  },
  'thread-stall': {
    yes: [SOUND_NUT, {}],
    perhaps: [SOUND_NUT, { screw: UNSURE, limits: { 'thread-stall': { max: 0.82 } }, duty: { feed: undefined } }],
    no: [SOUND_NUT, { body: { length: 8 } }],
    'not-told': [FAMILY, { duty: { load: 5 } }],
  },
  'flange-bending': {
    yes: [SOUND_NUT, { duty: { motor: { torque: '0.12 N m' } } }],
    no: [SOUND_NUT, { material: 'tpu95a' }],
    'not-told': [SOUND_NUT, { duty: undefined }],
  },
  creep: {
    yes: [SOUND_NUT, {}],
    perhaps: [SOUND_NUT, { screw: UNSURE, duty: { load: 150 }, limits: { creep: { max: 1.76 } } }],
    no: [SOUND_NUT, { duty: { load: 600 } }],
    'not-told': [SOUND_NUT, { duty: undefined }],
  },
  'wear-pv': {
    yes: [SOUND_NUT, {}],
    perhaps: [
      SOUND_NUT,
      { duty: { load: 800 }, screw: { form: 'trapezoidal', major: '9.9 ± 0.5 mm', pitch: 2, hand: 'right' } },
    ],
    but: [FAMILY, { duty: { load: 60 } }],
    no: [SOUND_NUT, { duty: { load: 1200 } }],
    'not-told': [SOUND_NUT, { duty: undefined }],
  },
  'wear-peak': {
    yes: [SOUND_NUT, {}],
    perhaps: [SOUND_NUT, { screw: UNSURE, duty: { load: 250 }, limits: { 'wear-peak': { max: 0.25 } } }],
    no: [SOUND_NUT, { duty: { load: 600 } }],
    'not-told': [SOUND_NUT, { duty: undefined }],
  },
  'wear-speed': {
    yes: [SOUND_NUT, {}],
    but: [SOUND_NUT, { duty: { feed: 30 } }],
    no: [SOUND_NUT, { duty: { feed: 60 } }],
    'not-told': [SOUND_NUT, { duty: undefined }],
  },
  'wear-heat': {
    yes: [SOUND_NUT, {}],
    perhaps: [SOUND_NUT, { duty: { feed: 60 } }],
    no: [SOUND_NUT, { duty: { load: 2000 } }],
    'not-told': [SOUND_NUT, { duty: undefined }],
  },
  'wear-depth': {
    yes: [SOUND_NUT, { material: 'pa6' }],
    perhaps: [SOUND_NUT, { material: 'pla', screw: UNSURE, limits: { 'wear-depth': { max: 0.1 } } }],
    but: [SOUND_NUT, { material: 'pla' }],
    no: [SOUND_NUT, { material: 'pla', duty: { load: 1200 } }],
  },
  'wear-limit': {
    yes: [SOUND_NUT, {}],
    but: [SOUND_NUT, { screw: 'M5' }],
  },
  'wear-dust': {
    yes: 'it speaks only where grit is told',
    but: [SOUND_NUT, { duty: { dust: 'yes' } }],
  },
  grease: {
    yes: [SOUND_NUT, { material: 'pc', duty: { grease: 'dry' } }],
    but: [SOUND_NUT, { material: 'pc' }],
  },
  moisture: {
    yes: [SOUND_NUT, {}],
    perhaps: [SOUND_NUT, { material: 'pa6' }],
    but: [SOUND_NUT, { material: 'pa6', body: { length: 40 } }],
  },
  'drive-holding': {
    yes: [SOUND_NUT, { screw: 'M5' }],
    but: [SOUND_NUT, { screw: 'Tr8x2' }],
    'not-told': [SOUND_NUT, { screw: 'Tr8x2', duty: { axis: undefined } }],
  },
  'drive-torque': {
    yes: [SOUND_NUT, {}],
    perhaps: [SOUND_NUT, { duty: { load: 60, grease: 'dry' } }],
    but: [SOUND_NUT, { duty: { load: 80 } }],
    no: [SOUND_NUT, { duty: { load: 80, motor: { torque: 0.04 } } }],
    'not-told': [FAMILY, { duty: { load: 5 } }],
  },
  'drive-speed': {
    yes: [SOUND_NUT, {}],
    but: [SOUND_NUT, { screw: 'M5' }],
  },
  'drive-whirl': {
    yes: [SOUND_NUT, {}],
    perhaps: [SOUND_NUT, { duty: { span: 1300 } }],
    but: [SOUND_NUT, { duty: { span: 1200 } }],
    no: [SOUND_NUT, { duty: { span: 1400 } }],
    'not-told': [FAMILY, { duty: { load: 5 } }],
  },
  'drive-column': {
    yes: [SOUND_NUT, {}],
    perhaps: [SOUND_NUT, { duty: { span: 1030 } }],
    but: [SOUND_NUT, { duty: { load: 800 } }],
    no: [SOUND_NUT, { duty: { load: 1200 } }],
    'not-told': [SOUND_NUT, { duty: { ends: undefined } }],
  },
  'drive-sag': {
    yes: [SOUND_NUT, { duty: { axis: 'horizontal', ends: 'fixed-free' } }],
    // 40 · 10 = 400 mm
    but: [SOUND_NUT, { duty: { axis: 'horizontal', ends: 'fixed-free', span: 410 } }],
    'not-told': [SOUND_NUT, { duty: { axis: 'horizontal', ends: undefined, span: 410 } }],
  },
  'drive-layer-grid': {
    yes: [SOUND_NUT, {}],
    but: [SOUND_NUT, { screw: 'M10' }],
  },
  heat: {
    yes: [SOUND_NUT, {}],
    no: [SOUND_NUT, { duty: { temperature: 80 } }],
    'not-told': [SOUND_NUT, { duty: undefined }],
  },
  'split-joint': {
    yes: [FAMILY, { family: { kind: 'split' } }],
    no: [FAMILY, { holes: { start: 5 }, family: { kind: 'split', closed: 'ring' } }],
  },
  'nut-pocket-wall': {
    yes: [FAMILY, { catch_nut: METAL }],
    no: [FAMILY, { family: { kind: 'holder', nut: METAL }, limits: { 'nut-pocket-wall': { min: 13 } } }],
  },
  'spring-force': {
    yes: [FAMILY, { family: { kind: 'anti-backlash', spring: SPRING } }],
    but: [FAMILY, { family: { kind: 'anti-backlash', spring: { ...SPRING, working: 14 } } }],
    no: [FAMILY, { family: { kind: 'anti-backlash', spring: { ...SPRING, working: 16 } } }],
    'not-told': [
      FAMILY,
      { duty: { load: undefined }, family: { kind: 'anti-backlash', spring: { ...SPRING, working: 18 } } },
    ],
  },
  // 18 N at a rate of 3 bend them with 4.5 MPa where grease is, with 9.4 MPa and up to 20 dry
  'key-bending': {
    yes: [FAMILY, { family: { kind: 'anti-backlash', spring: { ...SPRING, rate: 1, working: 14 } } }],
    perhaps: [
      FAMILY,
      { duty: { grease: 'dry' }, family: { kind: 'anti-backlash', spring: { ...SPRING, rate: 0.7, working: 14 } } },
    ],
    no: [FAMILY, { family: { kind: 'anti-backlash', spring: { ...SPRING, working: 14 } } }],
    'not-told': [
      FAMILY,
      {
        duty: { temperature: undefined },
        family: { kind: 'anti-backlash', spring: { ...SPRING, rate: 1, working: 14 } },
      },
    ],
  },
  'twin-binding': {
    yes: [TWIN, {}],
    but: [TWIN, { family: { lever: 45 } }],
    no: [TWIN, { family: { lever: 90 } }],
    'not-told': [TWIN, { family: { lever: undefined } }],
  },
  'twin-pressure': {
    yes: [TWIN, {}],
    no: [TWIN, { family: { lever: 200 }, duty: { load: 2000 } }],
    'not-told': [TWIN, { family: { lever: undefined } }],
  },
  'spring-travel': {
    yes: [FAMILY, { family: { kind: 'anti-backlash', spring: SPRING } }],
    but: [FAMILY, { family: { kind: 'anti-backlash', spring: { ...SPRING, working: 7.5 } } }],
    no: 'a spring that works within half a millimetre of its solid length is refused',
  },
  'catch-nut': {
    yes: [FAMILY, { catch_nut: METAL }],
    but: [SOUND_NUT, { mounting: 'flange-down' }],
    'not-told': [SOUND_NUT, { duty: { axis: undefined } }],
  },
  'print-support': {
    yes: [SOUND_NUT, { holes: { joint: 'hexagon' } }],
    but: [SOUND_NUT, { holes: { joint: 'hexagon', head: 'body' } }],
    no: 'no pocket of a listed screw reaches 5 mm over its hole',
  },
  'thread-running-in': {
    yes: [SOUND_NUT, {}],
    perhaps: [SOUND_NUT, { fit: { axial: 0.02 } }],
    but: [SOUND_NUT, { printer: { layer: 0.2 } }],
    'not-told': [SOUND_NUT, { fit: { axial: 0.08 }, duty: { temperature: undefined } }],
  },
  'nut-seat': {
    yes: [FAMILY, { family: { kind: 'holder', nut: METAL } }],
    no: [FAMILY, { family: { kind: 'holder', nut: METAL }, duty: { load: 1000 } }],
    'not-told': [FAMILY, { family: { kind: 'holder', nut: METAL }, duty: undefined }],
  },
  'nut-held': {
    yes: [FAMILY, { ...HOLDER, duty: { axis: 'vertical' }, mounting: 'flange-up' }],
    but: [FAMILY, HOLDER],
    no: [FAMILY, { ...HOLDER, duty: { axis: 'vertical' }, mounting: 'flange-down' }],
    'not-told': [FAMILY, { family: { kind: 'holder', nut: METAL }, duty: undefined }],
  },
  'split-hold': {
    yes: [FAMILY, { family: { kind: 'split' } }],
    no: [FAMILY, { family: { kind: 'split' }, duty: { load: 1000, axis: 'vertical', temperature: 51 } }],
    but: [FAMILY, { family: { kind: 'split', closed: 'ring' } }],
    'not-told': [FAMILY, { family: { kind: 'split' }, duty: { load: undefined } }],
  },
  // M3 tapped into so much flange
  'hole-engagement': {
    yes: [SOUND_NUT, { holes: { joint: 'tapped' }, flange: { thickness: 4.5 } }],
    but: [SOUND_NUT, { holes: { joint: 'tapped' }, flange: { thickness: 4 } }],
    no: [SOUND_NUT, { holes: { joint: 'tapped' }, flange: { thickness: 2.9 } }],
  },
  'mount-held': {
    yes: 'it speaks only where no screws hold the nut',
    but: [SOUND_NUT, { flange: undefined, holes: undefined, carriage: undefined }],
  },
  'head-seat': {
    yes: [SOUND_NUT, {}],
    perhaps: [SOUND_NUT, { holes: { diameter: 5, fit: undefined } }],
    but: [SOUND_NUT, { holes: { diameter: 6, fit: undefined } }],
    no: [SOUND_NUT, { holes: { diameter: 7 } }],
    // the largest head listed, of M8, is 13 mm across and falls through
    'not-told': [SOUND_NUT, { holes: { screw: undefined, fit: undefined, diameter: 4 } }],
  },
  'barrel-pull': {
    yes: [SOUND_NUT, { duty: { motor: { torque: '0.12 N m' } } }],
    no: [SOUND_NUT, { duty: { load: 600 } }],
    'not-told': [SOUND_NUT, { duty: undefined }],
  },
  'seat-pressure': {
    yes: [SOUND_NUT, {}],
    no: [SOUND_NUT, { duty: { temperature: 90 } }],
    'not-told': [SOUND_NUT, { duty: undefined }],
  },
  'end-stop': {
    yes: [SOUND_NUT, { duty: { motor: { torque: '0.06 N m' } } }],
    but: [SOUND_NUT, {}],
    'not-told': [SOUND_NUT, { duty: { motor: undefined } }],
  },
};
