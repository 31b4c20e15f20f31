import { ADAPTED, BELTED, LOADED, MOUNTED } from '../../support/motor-plate-sheets.js';
import type { VerdictCases } from '../../support/verdict-gate.js';

const TWO = {
  rectangle: undefined,
  at: [
    [30, 30],
    [-30, -30],
  ],
};

/** A sheet for each word that each check can say. */
export const MOTOR_PLATE_CASES: VerdictCases = {
  'pilot-fit': {
    yes: [MOUNTED, {}],
    but: [MOUNTED, { fit: { pilot: 1 } }],
    perhaps: [MOUNTED, { fit: { pilot: 0.2 } }],
    no: [MOUNTED, { motor: { pilot: 22.5 }, fit: { pilot: 0 }, printer: { compensation: 'none' } }],
  },
  'hole-position': {
    yes: [MOUNTED, {}],
    perhaps: [MOUNTED, { motor: { square: '31 ± 0.1 mm' } }],
    no: [MOUNTED, { printer: { compensation: 'none', hole_offset: 0.4 } }],
  },
  'screw-engagement': {
    yes: [MOUNTED, {}],
    but: [MOUNTED, { plate: { thickness: 7 } }],
    no: [MOUNTED, { motor: { thread_depth: 2 }, plate: { thickness: 7 } }],
  },
  'shaft-left': {
    yes: [MOUNTED, {}],
    but: [MOUNTED, { hub_depth: 17.5 }],
    no: [MOUNTED, { hub_depth: 20 }],
    'not-told': [MOUNTED, { hub_depth: undefined }],
  },
  'heads-clear': {
    yes: [MOUNTED, { machine: { face: 'outer', opening: 60 } }],
    but: [MOUNTED, { machine: { face: 'outer', opening: 51.2 } }],
    no: [MOUNTED, { motor_heads: 'proud', machine: { face: 'outer', opening: 46 } }],
    'not-told': [MOUNTED, { motor_heads: 'proud', machine: { face: 'outer' } }],
  },
  // a body of 42.3 mm
  'motor-opening': {
    yes: [MOUNTED, { machine: { opening: 43.4 } }],
    but: [MOUNTED, { machine: { opening: 43 } }],
    no: [MOUNTED, { machine: { opening: 42 } }],
    'not-told': [MOUNTED, { machine: { opening: 60 }, motor: { body: undefined } }],
  },
  // ISO 273 medium for M4: holes of 4.5 mm at 30·√2 = 42.43 mm leave 1.18, 0.68 and −0.82 mm
  'machine-wall': {
    yes: [MOUNTED, { machine: { opening: 78 } }],
    but: [MOUNTED, { machine: { opening: 79 } }],
    no: [MOUNTED, { machine: { opening: 82 } }],
  },
  'motor-thrust': {
    yes: [LOADED, {}],
    no: [LOADED, { motor: { axial_limit: 10 } }],
    'not-told': [LOADED, { motor: { axial_limit: undefined } }],
  },
  'locating-bearings': {
    yes: [MOUNTED, {}],
    no: [MOUNTED, { thrust_bearing: 'no' }],
    'not-told': [LOADED, { mounting: undefined }],
  },
  // a hole of 22.3 mm: rows at 27.5, 23.5, 24.3 and 12 mm leave 2.6, 0.6, 1.0 and −5.15 mm under them
  'bearing-seat': {
    yes: [MOUNTED, { bearing_on: 'plate', bearing: { bore: 20, outside: 35, height: 10 } }],
    but: [MOUNTED, { bearing_on: 'plate', bearing: { bore: 15, outside: 32, height: 12 } }],
    perhaps: [MOUNTED, { bearing_on: 'plate', bearing: { bore: 17, outside: 31.6, height: 12 } }],
    no: [MOUNTED, { bearing_on: 'plate', bearing: 'F8-16' }],
    'not-told': [MOUNTED, { bearing_on: 'plate' }],
  },
  heat: {
    yes: [MOUNTED, {}],
    no: [MOUNTED, { motor: { temperature: 60 } }],
    'not-told': [MOUNTED, { motor: { temperature: undefined }, material: 'asa' }],
  },
  'plate-bending': {
    yes: [LOADED, {}],
    no: [LOADED, { duty: { load: 900 }, plate: { thickness: 4 } }],
    'not-told': [LOADED, { duty: undefined }],
  },
  'floor-bending': {
    yes: [LOADED, { motor_heads: 'sunk' }],
    no: [LOADED, { motor_heads: 'sunk', plate: { thickness: 4 }, duty: { load: 100 } }],
    'not-told': [LOADED, { motor_heads: 'sunk', duty: undefined }],
  },
  'motor-stall': {
    yes: [LOADED, { screw: 'Tr8x2' }],
    'not-told': [LOADED, {}],
  },
  'plate-slope': {
    yes: [LOADED, {}],
    but: [LOADED, { plate: { thickness: 4.5 } }],
    no: [LOADED, { duty: { load: 300 }, plate: { thickness: 3 } }],
    'not-told': [MOUNTED, { coupling: undefined }],
  },
  'bolt-clamp-motor': {
    yes: [LOADED, {}],
    no: [LOADED, { duty: { load: 3000 } }],
    'not-told': [LOADED, { duty: undefined }],
  },
  'bolt-clamp': {
    yes: [LOADED, {}],
    no: [LOADED, { duty: { load: 3000 } }],
    'not-told': [LOADED, { duty: undefined }],
  },
  slip: {
    yes: [MOUNTED, {}],
    but: [BELTED, { belt_pull: 60 }],
    no: [BELTED, { belt_pull: 200 }],
    'not-told': [MOUNTED, { motor: { torque: undefined } }],
  },
  'machine-position': {
    yes: [MOUNTED, {}],
    but: [MOUNTED, { machine: { holes: { screw: undefined, rectangle: [120, 120], diameter: 20 } } }],
    perhaps: [MOUNTED, { machine: { holes: { rectangle: [76, 76] } } }],
    no: [MOUNTED, { machine: { holes: { screw: 'M4', diameter: 4.1 } } }],
  },
  'head-seat': {
    yes: [MOUNTED, {}],
    but: [MOUNTED, { machine: { holes: { diameter: 8.2 } } }],
    perhaps: [MOUNTED, { machine: { holes: { diameter: 6.49 } } }],
    no: [MOUNTED, { machine: { holes: { diameter: 9.2 } } }],
    'not-told': [MOUNTED, { machine: { holes: { screw: undefined, diameter: 2 } } }],
  },
  'head-room': {
    yes: [MOUNTED, {}],
    but: [MOUNTED, { plate: { length: 68.4 } }],
    no: [MOUNTED, { plate: { length: 66 } }],
  },
  'motor-room': {
    yes: [MOUNTED, {}],
    but: [
      MOUNTED,
      {
        motor: { body: 54 },
        machine: {
          holes: {
            ...TWO,
            at: [
              [31.6, 0],
              [-31.6, 0],
            ],
          },
        },
      },
    ],
    no: [
      MOUNTED,
      {
        motor: { body: 54 },
        machine: {
          holes: {
            ...TWO,
            at: [
              [28, 0],
              [-28, 0],
            ],
          },
        },
      },
    ],
    'not-told': [MOUNTED, { motor: { body: undefined } }],
  },
  'insert-room': {
    yes: [ADAPTED, {}],
    but: [ADAPTED, { plate: { thickness: 7 } }],
  },
  'machine-thread': {
    yes: [MOUNTED, { machine: { bare: 'tapped', thickness: 4 } }],
    but: [MOUNTED, { machine: { bare: 'tapped', thickness: 3 } }],
    no: [MOUNTED, { machine: { bare: 'tapped', thickness: 1.5 } }],
    'not-told': [MOUNTED, { machine: { bare: 'tapped', thickness: undefined } }],
  },
  slots: {
    yes: [BELTED, {}],
    but: [MOUNTED, { slots: { along: 'x', by: 3 } }],
  },
  wall: {
    yes: [MOUNTED, {}],
    but: [MOUNTED, { plate: { length: 67.4 } }],
    no: [MOUNTED, { plate: { length: 66 } }],
  },
  'shrink-applied-once': {
    yes: [MOUNTED, { printer: { compensation: 'file' } }],
    but: [MOUNTED, { printer: { compensation: undefined } }],
  },
};
