import type { VerdictCases } from '../../support/verdict-gate.js';

const COUPON = {
  part: 'coupon',
  name: 'c',
  screw: 'Tr8x2',
  material: 'pa12',
  printer: { nozzle: 0.4, layer: 0.12, compensation: 'file' },
};

/** A sheet for each word that each check can say. */
export const COUPON_CASES: VerdictCases = {
  'coupon-mass': {
    yes: [COUPON, {}],
    but: [COUPON, { scale: { span: 60 }, screw: 'Tr20x4' }],
  },
  'coupon-time': {
    yes: [COUPON, {}],
    but: [COUPON, { printer: { layer: 0.05 } }],
  },
  'coupon-diameters': {
    yes: [COUPON, { bores: [4, 6, 8, 10, 12, 14, 16, 20] }],
    but: [COUPON, { bores: [6] }],
  },
  'coupon-span': {
    yes: [COUPON, {}],
    but: [COUPON, { limits: { 'coupon-span': { min: 75 } } }],
  },
  'coupon-height': {
    yes: [COUPON, { scale: { height: 60 } }],
    but: [COUPON, { scale: { height: 0 } }],
  },
  'coupon-marks': {
    yes: [COUPON, {}],
    but: [COUPON, { printer: { layer: 0.32 } }],
  },
  'print-layers': {
    yes: [COUPON, {}],
    but: [COUPON, { printer: { layer: 0.25 } }],
    no: [COUPON, { printer: { nozzle: 0.8, layer: 0.4 } }],
  },
  'print-thread-depth': {
    yes: [COUPON, {}],
    but: [COUPON, { printer: { nozzle: 0.6 } }],
    no: [COUPON, { screw: 'M3', printer: { layer: 0.2 } }],
  },
  'shrink-applied-once': {
    yes: [COUPON, {}],
    but: [COUPON, { printer: { compensation: undefined } }],
  },
};
