import type { KnownKind } from '../pipeline/known-kind.js';
import { AXIS_CHECKS, AXIS_QUESTIONS } from './checks/index.js';
import { axisSchema } from './sheet.js';

/**
 * An axis as a fleet sees it among the kinds of parts: by its fields, its readings and its checks. What a part is designed and
 * built by, it does not have: `designAxis` and `makeAxis` stand for that.
 */
export const AXIS_KIND: KnownKind = {
  kind: 'axis',
  schema: axisSchema,
  checks: AXIS_CHECKS,
  questions: AXIS_QUESTIONS,
  read: noPart,
  runChecks: noPart,
  particulars: noPart,
  bodies: noPart,
  mate: noPart,
  virtualMate: noPart,
  tunables: noPart,
  remedies: noPart,
  views: noPart,
};

function noPart(): never {
  throw new TypeError('an axis is no part: designAxis works it out');
}
