import { SHIPPED } from '../presets/shipped.js';
import { nearest } from '../sheet/nearest.js';
import { fault } from '../units/faults.js';
import { newResults } from './new-results.js';
import { ADAPTER_START } from './start-sheets/adapter.js';
import { COUPLING_START } from './start-sheets/coupling.js';
import { COUPON_START } from './start-sheets/coupon.js';
import { FLEET_START } from './start-sheets/fleet.js';
import { NUT_START } from './start-sheets/nut.js';
import { SLEEVE_START } from './start-sheets/sleeve.js';

const SHEETS: ReadonlyMap<string, string> = new Map([
  ['nut', NUT_START],
  ['adapter', ADAPTER_START],
  ['coupling', COUPLING_START],
  ['sleeve', SLEEVE_START],
  ['coupon', COUPON_START],
  ['fleet', FLEET_START],
]);

/** Not a part: what is read off the coupon of the start sheet. */
const RESULTS = 'results';
/** Nor is this: the same with invented readings, to try calibrate with. */
const EXAMPLE = 'demo-results';

/**
 * A commented sheet to start from; that of a part can be made as it is.
 * @throws InputError there is no such kind
 */
export function startSheet(kind: string): string {
  const text = SHEETS.get(kind);
  if (text !== undefined) return text;
  if (kind === RESULTS) return newResults();
  const example = kind === EXAMPLE ? SHIPPED['results/demo-coupon-results.yaml'] : undefined;
  if (example !== undefined) return example;
  const kinds = [...SHEETS.keys(), RESULTS, EXAMPLE];
  const near = nearest(kind, kinds);
  throw fault('', kind, near ? `unknown kind; did you mean ${near}?` : `unknown kind; known: ${kinds.join(', ')}`);
}
