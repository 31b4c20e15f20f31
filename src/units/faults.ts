/**
 * Input that cannot be used: what was given, and what is allowed instead.
 * Bad input is always a fault; a poor fit never is (that is a check's finding).
 */
export interface Fault {
  /** dotted path of the field, such as `flange.thickness`; empty for the whole input */
  readonly path: string;
  /** the value as the user wrote it, short enough for one line; empty when there is none to show */
  readonly value: string;
  /** what is allowed, such as `must be above 0` */
  readonly allowed: string;
}

/** One or more faults found together. The message holds one line a fault. */
export class InputError extends Error {
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    super(faults.map(faultLine).join('\n'));
    this.name = 'InputError';
    this.faults = faults;
  }
}

/** `path: value; allowed`, leaving out what is empty. */
export function faultLine(fault: Fault): string {
  const told = fault.value === '' ? fault.allowed : `${fault.value}; ${fault.allowed}`;
  return fault.path === '' ? told : `${fault.path}: ${told}`;
}

/** Shorthand for a single fault. */
export function fault(path: string, value: unknown, allowed: string): InputError {
  return new InputError([{ path, value: shown(value), allowed }]);
}

/** A value as it can stand in one line of a message. */
export function shown(value: unknown): string {
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? String(value));
  const plain = Array.from(text, (c) =>
    isControl(c) ? `\\x${c.codePointAt(0)!.toString(16).padStart(2, '0')}` : c,
  ).join('');
  return plain.length > 60 ? `${plain.slice(0, 57)}…` : plain;
}

function isControl(character: string): boolean {
  const code = character.codePointAt(0)!;
  return code < 32 || (code >= 127 && code < 160);
}
