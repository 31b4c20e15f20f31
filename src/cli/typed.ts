import { keysOf } from '../pipeline/locate-faults.js';
import type { Fields } from '../sheet/fields-map.js';
import { replaced } from '../sheet/merge.js';
import { plainValue } from '../sheet/plain-value.js';
import { type Fault, fault, InputError } from '../units/faults.js';

/** Where the value of an option belongs in a sheet, and how its text is read. */
export interface TypedField {
  /** dotted, such as `motor.steps` */
  readonly path: string;
  /** one value unless said otherwise */
  readonly read?: (text: string, option: string) => unknown;
}

/**
 * What was typed on the command line, as a sheet would hold it, so that one schema judges both.
 * Options that were not given are left out.
 */
export function typedFields(args: Fields, fields: Readonly<Record<string, TypedField>>): Fields {
  return Object.entries(fields).reduce<Fields>((all, [option, { path, read = plainValue }]) => {
    const text = args[option];
    return typeof text === 'string' ? replaced(all, nested(keysOf(path), read(text, `--${option}`))) : all;
  }, {});
}

/** `A=B` as a map with the two keys; the example stands in the message for a text without the sign. */
export function paired(first: string, second: string, example: string): NonNullable<TypedField['read']> {
  return (text, option) => {
    const at = text.indexOf('=');
    if (at < 1 || at === text.length - 1) throw fault(option, text, `must be two values such as ${example}`);
    return { [first]: plainValue(text.slice(0, at)), [second]: plainValue(text.slice(at + 1)) };
  };
}

function nested(keys: readonly (string | number)[], value: unknown): Fields {
  const [key = '', ...rest] = keys;
  return { [key]: rest.length === 0 ? value : nested(rest, value) };
}

/**
 * Runs a step; mistakes in what was typed name their option instead of a field.
 * @throws InputError the step's own
 */
export function namingOptions<T>(args: Fields, fields: Readonly<Record<string, TypedField>>, step: () => T): T {
  try {
    return step();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const typed = Object.entries(fields).filter(([option]) => typeof args[option] === 'string');
    throw new InputError(error.faults.map((one) => named(one, typed)));
  }
}

function named(one: Fault, typed: readonly (readonly [string, TypedField])[]): Fault {
  const option = typed.find(
    ([, { path }]) => one.path === path || (/^[.[]/.test(one.path.slice(path.length)) && one.path.startsWith(path)),
  );
  return option === undefined ? one : { path: `--${option[0]}`, value: one.value, allowed: one.allowed };
}
