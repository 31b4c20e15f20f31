import { LEDGE as LINE_LEDGE } from '../../solid/overhang.js';

/** A ceiling that is held on one side only prints as far as a line or so; farther it wants support, mm. @source common-practice */
export const LEDGE = { pass: { max: LINE_LEDGE }, fail: { max: 5 } };
