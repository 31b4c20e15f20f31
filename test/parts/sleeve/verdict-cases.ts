import { BUSH, CLAMP } from '../../support/sleeve-sheets.js';
import type { VerdictCases } from '../../support/verdict-gate.js';

/** A sheet for each word that each check can say. */
export const SLEEVE_CASES: VerdictCases = {
  'grip-torque': {
    yes: [CLAMP, {}],
    but: [CLAMP, { outside_diameter: 48 }],
    no: [CLAMP, { material: 'pla' }],
    'not-told': [CLAMP, { duty: undefined }],
  },
  'flat-pressure': {
    yes: [CLAMP, {}],
    no: [CLAMP, { material: 'pla' }],
    'not-told': [
      CLAMP,
      { motor: { temperature: undefined }, duty: { temperature: undefined }, motor_end: { bore_clearance: 0.5 } },
    ],
  },
  'clamp-pressure': {
    yes: [CLAMP, { motor_end: { tightening: '0.5 N m' } }],
    no: [CLAMP, { motor_end: { tightening: '1 N m' } }],
  },
  'closing-strain': {
    yes: [CLAMP, {}],
    no: [CLAMP, { material: 'pla' }],
    'not-told': [CLAMP, { shaft: undefined, screw: 'Tr8x2' }],
  },
  'crest-grip': {
    yes: 'it speaks only where crests are held',
    but: [CLAMP, { shaft: undefined, screw: 'Tr8x2' }],
  },
  'bore-pressure': {
    yes: [CLAMP, {}],
    but: [CLAMP, { motor: { shaft: { length: 9 } }, motor_end: { clamp: { screw: 'M4' } } }],
    'not-told': [CLAMP, { motor: { shaft: { length: undefined } } }],
  },
  wall: {
    yes: [CLAMP, { motor_end: { clamp: { screw: 'M4' } } }],
    but: [CLAMP, { printer: { nozzle: 0.6 } }],
    no: [CLAMP, { limits: { wall: { min: 2 } } }],
  },
  'shaft-engagement': {
    yes: [CLAMP, {}],
    no: [CLAMP, { motor: { shaft: { length: 5 } } }],
    'not-told': [CLAMP, { motor: { shaft: { length: undefined } } }],
  },
  'tool-access': {
    yes: [CLAMP, {}],
    no: [CLAMP, { limits: { 'tool-access': { min: 0.6 } } }],
  },
  'head-inside': {
    yes: [CLAMP, {}],
    no: [CLAMP, { limits: { 'head-inside': { min: 1.3 } } }],
  },
  'print-bridge': {
    yes: [CLAMP, {}],
    but: [CLAMP, { limits: { 'print-bridge': { max: 1.7 } } }],
  },
  'axial-grip': {
    yes: [CLAMP, { duty: { load: 0 } }],
    but: [CLAMP, { shaft: undefined, screw: { designation: 'Tr8x2', major: 7.95 }, duty: { load: 0 } }],
    no: [CLAMP, { duty: { load: 100 } }],
    'not-told': [CLAMP, { retighten: 'no' }],
  },
  'both-ways': {
    yes: [CLAMP, { mounting: 'horizontal', thrust_bearing: 'yes', pair: 'yes' }],
    no: [CLAMP, { mounting: 'horizontal', thrust_bearing: 'yes', pair: 'no' }],
    'not-told': [CLAMP, { mounting: 'horizontal', thrust_bearing: 'yes' }],
  },
  'motor-thrust': {
    yes: [CLAMP, { duty: { load: 5 }, motor: { axial_limit: 20 } }],
    no: [CLAMP, { duty: { load: 50 }, motor: { axial_limit: 20 } }],
    'not-told': [CLAMP, { duty: { load: 0 } }],
  },
  'locating-bearings': {
    yes: [CLAMP, { thrust_bearing: 'yes' }],
    no: [CLAMP, { locating_holder: 'yes' }],
  },
  speed: {
    yes: [CLAMP, { duty: { speed: 1500 } }],
    but: [CLAMP, { duty: { speed: 1600 } }],
  },
  'over-constraint': {
    yes: [CLAMP, { offset: 0 }],
    but: [CLAMP, { offset: 0.1 }],
    no: [CLAMP, { offset: 0.2 }],
  },
  'bush-wall': {
    yes: [BUSH, {}],
    but: [BUSH, { bore: 6.2 }],
    no: [BUSH, { bore: 6 }],
  },
  'bore-entry': {
    yes: [CLAMP, {}],
    but: [
      CLAMP,
      {
        motor_end: { bore_clearance: 0.15 },
        screw_end: { bore_clearance: 0.15 },
        printer: { compensation: 'none' },
      },
    ],
    no: [CLAMP, { printer: { compensation: 'none' } }],
  },
  'bore-runout': {
    yes: [BUSH, { shaft: '5 ± 0.01 mm', bore: 6 }],
    perhaps: [BUSH, { bore: 12 }],
    but: [BUSH, { limits: { 'bore-runout': { max: 0.05 } } }],
  },
  heat: {
    yes: [CLAMP, {}],
    no: [CLAMP, { material: 'pla' }],
    'not-told': [BUSH, { material: 'pc' }],
  },
  'shrink-applied-once': {
    yes: [BUSH, { printer: { compensation: 'file' } }],
    but: [CLAMP, { printer: { nozzle: 0.6 } }],
  },
};
