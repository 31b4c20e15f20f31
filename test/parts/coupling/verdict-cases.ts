import { BOUGHT_HUBS, PLAIN_COUPLING } from '../../support/coupling-sheets.js';
import type { VerdictCases } from '../../support/verdict-gate.js';

/** A sheet for each word that each check can say. */
export const COUPLING_CASES: VerdictCases = {
  'coupling-axial': {
    yes: [PLAIN_COUPLING, { duty: { upward: 0 } }],
    no: [PLAIN_COUPLING, { mounting: 'motor-above' }],
    'not-told': [PLAIN_COUPLING, { duty: { load: 0 } }],
  },
  'locating-bearings': {
    yes: [PLAIN_COUPLING, { thrust_bearing: 'yes' }],
    no: [PLAIN_COUPLING, { thrust_bearing: 'yes', locating_holder: 'yes' }],
  },
  'both-ways': {
    yes: [PLAIN_COUPLING, { mounting: 'horizontal', thrust_bearing: 'yes', pair: 'yes' }],
    no: [PLAIN_COUPLING, { mounting: 'horizontal', thrust_bearing: 'yes', pair: 'no' }],
    'not-told': [PLAIN_COUPLING, { mounting: 'horizontal', thrust_bearing: 'yes' }],
  },
  'motor-thrust': {
    yes: [PLAIN_COUPLING, { duty: { load: 40, span: 300 }, motor: { axial_limit: 60 } }],
    no: [PLAIN_COUPLING, { duty: { load: 40 }, motor: { axial_limit: 10 } }],
    'not-told': [PLAIN_COUPLING, { duty: { load: 0 } }],
  },
  // shafts of 5 and 7.95 mm and a disc of 8 mm; the flat of the motor's reaches 2 mm
  'pad-room': {
    yes: [PLAIN_COUPLING, {}],
    but: [PLAIN_COUPLING, { insert: { hole: 8.1 } }],
    no: [PLAIN_COUPLING, { insert: { hole: 7.9 } }],
  },
  'pad-aside': {
    yes: [PLAIN_COUPLING, { insert: { hole: 8.6, pad: { kind: 'ball', diameter: 6.7 } } }],
    but: [PLAIN_COUPLING, { insert: { hole: 8.6, pad: { kind: 'ball', diameter: 6.5 } } }],
    no: [PLAIN_COUPLING, { insert: { hole: 8.6, pad: { kind: 'ball', diameter: 4.5 } } }],
  },
  'insert-thrust': {
    yes: [PLAIN_COUPLING, {}],
    but: [PLAIN_COUPLING, { insert: { pad: 'soft' }, duty: { load: 5 } }],
    no: [PLAIN_COUPLING, { insert: { pad: 'soft' }, duty: { load: 400 } }],
    'not-told': [PLAIN_COUPLING, { insert: { pad: 'soft' } }],
  },
  'grip-torque': {
    yes: [PLAIN_COUPLING, {}],
    but: [PLAIN_COUPLING, { hubs: { outside_diameter: 36 } }],
    no: [PLAIN_COUPLING, { material: 'pla' }],
    'not-told': [PLAIN_COUPLING, { motor_hub: { degreased: undefined } }],
  },
  'flat-pressure': {
    yes: [PLAIN_COUPLING, {}],
    no: [PLAIN_COUPLING, { material: 'pla' }],
  },
  'clamp-pressure': {
    yes: [PLAIN_COUPLING, { motor_hub: { tightening: '0.5 N m' } }],
    no: [PLAIN_COUPLING, { motor_hub: { tightening: '1 N m' } }],
  },
  'closing-strain': {
    yes: [PLAIN_COUPLING, {}],
    no: [PLAIN_COUPLING, { material: 'pla' }],
    'not-told': [PLAIN_COUPLING, { screw: 'Tr16x4' }],
  },
  'crest-grip': {
    yes: [PLAIN_COUPLING, { screw: 'Tr24x5' }],
    but: [PLAIN_COUPLING, { screw: 'Tr8x8(P2)' }],
  },
  'bore-pressure': {
    yes: [PLAIN_COUPLING, {}],
    but: [PLAIN_COUPLING, { motor_hub: { clamp: { screw: 'M6', washers: 'yes' } } }],
    'not-told': [PLAIN_COUPLING, { motor: { shaft: { length: undefined } } }],
  },
  wall: {
    yes: [PLAIN_COUPLING, { motor_hub: { grip: 'set-screw' } }],
    but: [PLAIN_COUPLING, { printer: { nozzle: 0.6 } }],
    no: [PLAIN_COUPLING, { limits: { wall: { min: 2 } } }],
  },
  'shaft-engagement': {
    yes: [PLAIN_COUPLING, {}],
    no: [PLAIN_COUPLING, { motor: { shaft: { length: 5 } } }],
    'not-told': [PLAIN_COUPLING, { motor: { shaft: { length: undefined } } }],
  },
  // PLA shrinks by 0.3 %, and its holes by 0.15 mm
  'bore-entry': {
    yes: [PLAIN_COUPLING, {}],
    but: [
      PLAIN_COUPLING,
      {
        motor_hub: { bore_clearance: 0.15 },
        screw_hub: { bore_clearance: 0.15 },
        printer: { compensation: 'none' },
      },
    ],
    no: [PLAIN_COUPLING, { printer: { compensation: 'none' } }],
  },
  'bore-runout': {
    yes: [PLAIN_COUPLING, {}],
    perhaps: [PLAIN_COUPLING, { motor_hub: { bore_clearance: 0.15 } }],
    but: [PLAIN_COUPLING, { motor_hub: { bore_clearance: 0.3 } }],
  },
  'tool-access': {
    yes: [PLAIN_COUPLING, {}],
    no: [PLAIN_COUPLING, { limits: { 'tool-access': { min: 0.6 } } }],
  },
  'head-inside': {
    yes: [PLAIN_COUPLING, {}],
    no: [PLAIN_COUPLING, { limits: { 'head-inside': { min: 1.3 } } }],
  },
  'print-bridge': {
    yes: [PLAIN_COUPLING, {}],
    but: [PLAIN_COUPLING, { limits: { 'print-bridge': { max: 1.7 } } }],
  },
  'set-screw': {
    yes: 'it speaks only of a hub that a set screw holds alone',
    but: [PLAIN_COUPLING, { motor_hub: { grip: 'set-screw' } }],
  },
  'insert-stress': {
    yes: [PLAIN_COUPLING, {}],
    no: [PLAIN_COUPLING, { insert: { hardness: '60 Shore A' } }],
    'not-told': [PLAIN_COUPLING, { duty: undefined }],
  },
  'insert-stress-peak': {
    yes: [PLAIN_COUPLING, {}],
    no: [PLAIN_COUPLING, { material: 'pla', motor: { torque: 5 } }],
    'not-told': [PLAIN_COUPLING, { duty: undefined }],
  },
  'insert-squeeze': {
    yes: [PLAIN_COUPLING, {}],
    but: [PLAIN_COUPLING, { misalignment: { angular: 5, parallel: 0.9 } }],
    perhaps: [
      PLAIN_COUPLING,
      { ...BOUGHT_HUBS, insert: { flank_clearance: -0.3 }, misalignment: { parallel: 0.3 }, calipers: 0.3 },
    ],
    no: [PLAIN_COUPLING, { insert: { flank_clearance: -0.3 }, misalignment: { parallel: 3, angular: 5 } }],
  },
  misalignment: {
    yes: [PLAIN_COUPLING, {}],
    but: [PLAIN_COUPLING, { misalignment: { angular: 1 } }],
    no: [PLAIN_COUPLING, { insert: { hardness: '80 Shore D' }, misalignment: { parallel: 0.25 } }],
  },
  'coupling-play': {
    yes: [PLAIN_COUPLING, {}],
    but: [PLAIN_COUPLING, { insert: { flank_clearance: 1 } }],
  },
  'lost-motion': {
    yes: [PLAIN_COUPLING, {}],
    but: [PLAIN_COUPLING, { insert: { flank_clearance: 1 } }],
  },
  'jaw-bending': {
    yes: [PLAIN_COUPLING, {}],
    no: [PLAIN_COUPLING, { hubs: { outside_diameter: 29 }, jaws: { fillet: 0 } }],
    'not-told': [PLAIN_COUPLING, { duty: undefined }],
  },
  'jaw-shear': {
    yes: [PLAIN_COUPLING, {}],
    no: [PLAIN_COUPLING, { material: 'pla' }],
    'not-told': [PLAIN_COUPLING, { duty: undefined }],
  },
  'jaw-bare': {
    yes: [PLAIN_COUPLING, {}],
    but: [
      PLAIN_COUPLING,
      { duty: { load: 25 }, motor: { torque: 0.6 }, hubs: { outside_diameter: 29 }, jaws: { fillet: 0.5 } },
    ],
    'not-told': [PLAIN_COUPLING, { duty: undefined }],
  },
  'shaft-gap': {
    yes: [PLAIN_COUPLING, {}],
    but: [PLAIN_COUPLING, { mounting: 'horizontal', motor_hub: { stop: 'none' } }],
    no: [PLAIN_COUPLING, { motor: { shaft: { length: 5 } } }],
    'not-told': [PLAIN_COUPLING, { motor: { shaft: { length: undefined } } }],
  },
  'assembly-room': {
    yes: [PLAIN_COUPLING, {}],
    no: [PLAIN_COUPLING, { misalignment: { axial: 2 } }],
  },
  'assembly-entry': {
    yes: [PLAIN_COUPLING, {}],
    but: [PLAIN_COUPLING, { jaws: { bevel: 0 } }],
  },
  'matched-half': {
    yes: [PLAIN_COUPLING, BOUGHT_HUBS],
    but: [PLAIN_COUPLING, { screw: undefined }],
    'not-told': [PLAIN_COUPLING, { ...BOUGHT_HUBS, jaws: undefined }],
  },
  speed: {
    yes: [PLAIN_COUPLING, { duty: { speed: 500 } }],
    but: [PLAIN_COUPLING, { duty: { speed: 1600 } }],
  },
  heat: {
    yes: [PLAIN_COUPLING, {}],
    no: [PLAIN_COUPLING, { material: 'pla' }],
    'not-told': [PLAIN_COUPLING, { motor: { temperature: undefined } }],
  },
  'print-lines': {
    yes: [PLAIN_COUPLING, {}],
    but: [PLAIN_COUPLING, { printer: { nozzle: 0.6 } }],
    no: 'jaws and lobes below a line are refused',
  },
  'shrink-applied-once': {
    yes: [PLAIN_COUPLING, { printer: { compensation: 'file' } }],
    but: [PLAIN_COUPLING, { printer: { nozzle: 0.6 } }],
  },
};
