import { nearest } from '../sheet/nearest.js';
import { fault } from '../units/faults.js';
import { ADAPTER_START } from './start-sheets/adapter.js';
import { NUT_START } from './start-sheets/nut.js';

const SHEETS: ReadonlyMap<string, string> = new Map([['nut', NUT_START], ['adapter', ADAPTER_START]]);

/**
 * A commented sheet to start from; it can be made as it is.
 * @throws InputError there is no such kind
 */
export function startSheet(kind: string): string {
  const text = SHEETS.get(kind);
  if (text !== undefined) return text;
  const kinds = [...SHEETS.keys()];
  const near = nearest(kind, kinds);
  throw fault('', kind, near ? `unknown kind; did you mean ${near}?` : `unknown kind; known: ${kinds.join(', ')}`);
}
