import { nearest } from '../sheet/nearest.js';
import { readYaml } from '../sheet/read-yaml.js';
import { START_KINDS } from '../sheet/start-kinds.js';
import { type Fault, InputError, shown } from '../units/faults.js';
import { findKind } from './find-kind.js';
import type { KnownKind, KnownSheet } from './known-kind.js';
import { type Locate, locating } from './locate-faults.js';

/** A sheet with the kind it is for, and where its fields stand. */
export interface ReadSheet {
  readonly kind: KnownKind;
  readonly sheet: KnownSheet;
  readonly locate: Locate;
}

/**
 * Reads a sheet, as text or as a plain object, with the schema of the kind it names.
 * @throws InputError every mistake at once, located where the sheet is a text
 */
export function readSheet(sheet: string | object, kinds: readonly KnownKind[]): ReadSheet {
  const { value, locate } = typeof sheet === 'string' ? readYaml(sheet) : { value: sheet, locate: () => undefined };
  const kind = locating(locate, () => kindOf(value, kinds));
  return { kind, sheet: kind.read(value, locate), locate };
}

/** A sheet as plain data, whether it is a text or not. */
export function plainSheet(sheet: string | object): object {
  const { value } = typeof sheet === 'string' ? readYaml(sheet) : { value: sheet };
  return typeof value === 'object' && value !== null ? value : {};
}

function kindOf(value: unknown, kinds: readonly KnownKind[]): KnownKind {
  const names = [...kinds.map(({ kind }) => kind), 'axis'];
  const choice = `must be one of ${names.join(', ')}`;
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    throw refused({
      path: '',
      value: shown(value),
      allowed: `must be a map of fields that begins with part: ${names[0]}`,
    });
  }
  if ('fleet' in value && !('part' in value))
    throw refused({
      path: 'fleet',
      value: shown(value.fleet),
      allowed: 'makes this the file of a fleet, and no sheet of a part: leadwright fleet FILE',
    });
  if (!('part' in value) || value.part === null)
    throw refused({ path: 'part', value: '', allowed: `is missing; ${choice}` });
  const { part } = value;
  const known = findKind(kinds, part);
  if (known) return known;
  if (part === 'axis')
    throw refused({
      path: 'part',
      value: 'axis',
      allowed: 'holds several parts, which the command makes together: leadwright make SHEET',
    });
  throw refused({ path: 'part', value: shown(part), allowed: `${choice}${hint(part, names)}` });
}

/** What else may have been meant: a form of another part, or a name that is near. */
function hint(part: unknown, names: readonly string[]): string {
  if (typeof part !== 'string') return '';
  if ((START_KINDS as readonly string[]).includes(part)) return `; leadwright new ${part} prints how its sheet begins`;
  const near = nearest(part, names);
  return near ? `; did you mean ${near}?` : '';
}

function refused(fault: Fault): InputError {
  return new InputError([fault]);
}
