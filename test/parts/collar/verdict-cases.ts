import { PLAIN, THREADED } from '../../support/collar-sheets.js';
import type { VerdictCases } from '../../support/verdict-gate.js';

const LEVEL_THREAD = { mounting: 'horizontal', pin: undefined };
const CRESTS = { shaft: undefined, screw: 'Tr10x2' };

/** A sheet for each word that each check can say. */
export const COLLAR_CASES: VerdictCases = {
  'bearing-bore': {
    yes: [PLAIN, {}],
    perhaps: [PLAIN, { shaft: '9.98 ± 0.05 mm' }],
    no: [PLAIN, { bearing: 'F8-16' }],
  },
  'thread-clearance': {
    yes: [THREADED, {}],
    // a thick body spreads by little, and where no standard places flanks against crests they are in doubt by 0.18 mm
    perhaps: [THREADED, { screw: { designation: undefined, flank_angle: 15, pitch: 2 }, outside_diameter: 60 }],
    no: [THREADED, { fit: { diametral: -0.2, axial: 0.1 } }],
  },
  'thread-pitch-error': {
    yes: [THREADED, {}],
    but: [THREADED, { length: 12 }],
    no: [THREADED, { length: 60 }],
  },
  'print-layers': {
    // a pitch of 2 mm has 12.5, 8.3 and 5 layers
    yes: [THREADED, { printer: { layer: 0.16 } }],
    but: [THREADED, { printer: { layer: 0.24 } }],
    no: [THREADED, { printer: { layer: 0.4, nozzle: 0.8 } }],
  },
  'print-thread-depth': {
    // 1 mm deep, lines of 0.45, 0.675 and 1.1 mm
    yes: [THREADED, {}],
    but: [THREADED, { printer: { nozzle: 0.6 } }],
    no: [THREADED, { printer: { nozzle: 1, line_width: 1.1 } }],
  },
  'axial-grip': {
    yes: [PLAIN, {}],
    but: [PLAIN, { ...CRESTS, motor: { torque: 2 }, hold: { degreased: 'yes' } }],
    no: [PLAIN, { duty: { load: 900 } }],
    'not-told': [PLAIN, { duty: { load: undefined } }],
  },
  'friction-alone': {
    yes: [THREADED, {}],
    no: [THREADED, { pin: undefined }],
    'not-told': [PLAIN, { mounting: undefined }],
  },
  'both-ways': {
    yes: [PLAIN, {}],
    no: [PLAIN, { pair: 'no' }],
    'not-told': [PLAIN, { pair: undefined }],
  },
  'thread-hold': {
    yes: [THREADED, {}],
    no: [THREADED, { duty: { load: 2000 } }],
    'not-told': [THREADED, { duty: { temperature: undefined } }],
  },
  'pin-hold': {
    yes: [THREADED, {}],
    no: [THREADED, { duty: { load: 20_000 } }],
    'not-told': [THREADED, { duty: { load: undefined } }],
  },
  'turn-grip': {
    yes: [THREADED, LEVEL_THREAD],
    but: [THREADED, { ...LEVEL_THREAD, motor: { torque: 2 } }],
    no: [THREADED, { ...LEVEL_THREAD, duty: { load: 900 } }],
    'not-told': [THREADED, { ...LEVEL_THREAD, motor: undefined }],
  },
  'runs-on': {
    yes: [PLAIN, {}],
    but: [PLAIN, { bearing: undefined }],
  },
  'bearing-centre': {
    yes: [PLAIN, {}],
    perhaps: [PLAIN, { shaft: 8 }],
    but: [PLAIN, { shaft: 8, hold: { bore_clearance: 0.3 } }],
  },
  'seat-runout': {
    yes: [PLAIN, {}],
    but: [PLAIN, { shaft: 8 }],
  },
  'seat-backing': {
    yes: [PLAIN, {}],
    but: [PLAIN, { limits: { 'seat-backing': { min: 0.95 } } }],
    no: [PLAIN, { bearing: { bore: 10, outside: 80, height: 9 }, outside_diameter: 36 }],
  },
  'bearing-rating': {
    yes: [PLAIN, {}],
    // of 51100 a load of 5,180/100^(1/3) = 1,116 N is what it is rated for
    no: [PLAIN, { duty: { load: 1200 } }],
    'not-told': [PLAIN, { duty: { load: undefined } }],
  },
  'seat-pressure': {
    yes: [PLAIN, {}],
    no: [PLAIN, { duty: { load: 20_000 } }],
    'not-told': [PLAIN, { duty: { temperature: undefined } }],
  },
  'shaft-engagement': {
    // behind a bearing of 9 mm
    yes: [PLAIN, { shaft: { diameter: '9.99 ± 0.01 mm', length: 40 } }],
    but: [PLAIN, { shaft: { diameter: '9.99 ± 0.01 mm', length: 19 }, length: 14 }],
    no: [PLAIN, { shaft: { diameter: '9.99 ± 0.01 mm', length: 12 }, length: 14 }],
    'not-told': [PLAIN, {}],
  },
  'clamp-pressure': {
    yes: [PLAIN, { hold: { tightening: '0.5 N m' } }],
    no: [PLAIN, { hold: { tightening: '4 N m' } }],
  },
  'closing-strain': {
    yes: [PLAIN, {}],
    no: [PLAIN, { hold: { bore_clearance: 0.5 }, material: 'pla' }],
    'not-told': [PLAIN, { shaft: undefined, screw: 'Tr8x2', material: 'pla' }],
  },
  'crest-grip': {
    yes: [PLAIN, { ...CRESTS, length: 20, hold: { degreased: 'yes', clamp: { screw: 'M3', washers: 'no' } } }],
    but: [PLAIN, CRESTS],
  },
  wall: {
    yes: [PLAIN, {}],
    but: [PLAIN, { printer: { nozzle: 0.6 } }],
    no: [PLAIN, { limits: { wall: { min: 4 } } }],
  },
  'tool-access': {
    yes: [PLAIN, {}],
    no: [PLAIN, { limits: { 'tool-access': { min: 0.6 } } }],
  },
  'head-inside': {
    yes: [PLAIN, {}],
    no: [PLAIN, { limits: { 'head-inside': { min: 5 } } }],
  },
  'print-bridge': {
    yes: [PLAIN, {}],
    but: [PLAIN, { limits: { 'print-bridge': { max: 1.4 } } }],
  },
  heat: {
    yes: [PLAIN, {}],
    no: [PLAIN, { duty: { temperature: 110 } }],
    'not-told': [PLAIN, { duty: { temperature: undefined } }],
  },
  'shrink-applied-once': {
    yes: [PLAIN, { printer: { compensation: 'file' } }],
    but: [PLAIN, {}],
  },
};
