import type { VerdictCases } from '../../support/verdict-gate.js';

const RINGS = {
  part: 'gauge',
  name: 'rings',
  screw: 'Tr8x2',
  material: 'pa12',
  printer: { nozzle: 0.4, layer: 0.12, compensation: 'file' },
};

/** A sheet for each word that each check can say. */
export const GAUGE_CASES: VerdictCases = {
  'ladder-rings': {
    yes: [RINGS, {}],
    but: [RINGS, { plays: { to: 0.2 } }],
  },
  'ladder-span': {
    yes: [RINGS, {}],
    but: [RINGS, { plays: { to: 0.15 }, material: 'abs' }],
  },
  'pitch-told': {
    yes: [RINGS, {}],
    but: [RINGS, { turns_play: 0.3 }],
  },
  'gauge-hand': {
    yes: [RINGS, {}],
    but: [RINGS, { screw: { major: 7.95, pitch: 2, form: 'trapezoidal' } }],
  },
  'print-layers': {
    yes: [RINGS, {}],
    but: [RINGS, { printer: { layer: 0.25 } }],
    no: [RINGS, { printer: { nozzle: 0.8, layer: 0.4 } }],
  },
  'print-thread-depth': {
    yes: [RINGS, {}],
    but: [RINGS, { printer: { nozzle: 0.6 } }],
    no: [RINGS, { screw: 'M3' }],
  },
  'figure-depth': {
    yes: [RINGS, {}],
    but: [RINGS, { printer: { layer: 0.25 } }],
  },
  'shrink-applied-once': {
    yes: [RINGS, {}],
    but: [RINGS, { printer: { compensation: undefined } }],
  },
};
