import { SHIPPED } from '../presets/shipped.js';
import { nearest } from '../sheet/nearest.js';
import { START_KINDS, type StartKind } from '../sheet/start-kinds.js';
import { fault } from '../units/faults.js';
import { newResults } from './new-results.js';
import { newTrial } from './new-trial.js';
import { ADAPTER_START, FLOATING_ADAPTER_START } from './start-sheets/adapter.js';
import { AXIS_START } from './start-sheets/axis.js';
import { COLLAR_START } from './start-sheets/collar.js';
import { COUPLING_START, INSERT_START } from './start-sheets/coupling.js';
import { COUPON_START } from './start-sheets/coupon.js';
import { END_HOLDER_START } from './start-sheets/end-holder.js';
import { FLEET_START } from './start-sheets/fleet.js';
import { GAUGE_START } from './start-sheets/gauge.js';
import { MOTOR_PLATE_START } from './start-sheets/motor-plate.js';
import { FAMILY_STARTS, NUT_START } from './start-sheets/nut.js';
import { BUSH_START, SLEEVE_START } from './start-sheets/sleeve.js';

const SHEETS: Readonly<Record<StartKind, () => string>> = {
  nut: () => NUT_START,
  adapter: () => ADAPTER_START,
  coupling: () => COUPLING_START,
  sleeve: () => SLEEVE_START,
  collar: () => COLLAR_START,
  'end-holder': () => END_HOLDER_START,
  'motor-plate': () => MOTOR_PLATE_START,
  coupon: () => COUPON_START,
  gauge: () => GAUGE_START,
  'split-nut': () => FAMILY_STARTS['split-nut'],
  'clamped-nut': () => FAMILY_STARTS['clamped-nut'],
  'anti-backlash-nut': () => FAMILY_STARTS['anti-backlash-nut'],
  'twin-nut': () => FAMILY_STARTS['twin-nut'],
  'nut-holder': () => FAMILY_STARTS['nut-holder'],
  'catch-nut': () => FAMILY_STARTS['catch-nut'],
  'floating-nut': () => FAMILY_STARTS['floating-nut'],
  'floating-adapter': () => FLOATING_ADAPTER_START,
  insert: () => INSERT_START,
  bush: () => BUSH_START,
  axis: () => AXIS_START,
  fleet: () => FLEET_START,
  // what is read off the coupon of the start sheet, and the same with invented readings, to try calibrate with
  results: () => newResults(),
  // what is seen on the nut of the start sheet
  trial: () => newTrial(),
  'demo-results': demoResults,
};

function demoResults(): string {
  const text = SHIPPED['results/demo-coupon-results.yaml'];
  if (text === undefined) throw new TypeError('the demonstration results are not shipped');
  return text;
}

/**
 * A commented sheet to start from; that of a part can be made as it is.
 * @throws InputError there is no such kind
 */
export function startSheet(kind: string): string {
  const known = START_KINDS.find((one) => one === kind);
  if (known !== undefined) return SHEETS[known]();
  const near = nearest(kind, START_KINDS);
  throw fault(
    '',
    kind,
    near ? `unknown kind; did you mean ${near}?` : `unknown kind; known: ${START_KINDS.join(', ')}`,
  );
}
