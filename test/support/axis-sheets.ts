import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { AxisDesign } from '../../src/axis/axis-design.js';
import { AXIS_CHECKS } from '../../src/axis/checks/index.js';
import { designAxis } from '../../src/axis/design.js';
import { limitsOf } from '../../src/axis/limits.js';
import type { Finding } from '../../src/judge/check.js';
import { runChecks } from '../../src/judge/run-checks.js';
import { type Fields, isFields } from '../../src/sheet/fields-map.js';
import { replaced } from '../../src/sheet/merge.js';
import { readYaml } from '../../src/sheet/read-yaml.js';
import { KEEP } from './one-finding.js';

/** The sheet of the demonstration, as text and as a plain object. */
export const AXIS_TEXT = readFileSync(join(import.meta.dirname, '../../presets/sheets/demo-axis.yaml'), 'utf8');
export const AXIS: Fields = plain(AXIS_TEXT);

function plain(text: string): Fields {
  const { value } = readYaml(text);
  if (!isFields(value)) throw new TypeError('the demonstration is no map');
  return value;
}

/** The demonstration with fields replaced, map within map; null takes one out. */
export function axisWith(changes: Fields = {}): Fields {
  return replaced(AXIS, changes);
}

export function designed(changes: Fields = {}): AxisDesign {
  return designAxis(axisWith(changes));
}

const designs = new Map<string, AxisDesign>();

/** What one check across the parts finds of the demonstration with some fields replaced; the same design is worked out once. */
export function found(check: string, changes: Fields = {}): Finding | undefined {
  const key = JSON.stringify(changes);
  const axis = designs.get(key) ?? designed(changes);
  if (KEEP) designs.set(key, axis);
  return runChecks(AXIS_CHECKS, axis, limitsOf(axis)).find(({ id }) => id === check);
}
