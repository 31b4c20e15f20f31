/** A place in a text, counted from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

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
  /** where it stands in the text, when the input was a text */
  readonly at?: Place;
}

/** One or more faults found together. The message holds one line a fault. */
export class InputError extends Error {
  readonly faults: readonly Fault[];

  constructor(faults: readonly Fault[]) {
    super(faults.map((fault) => faultLine(fault)).join('\n'));
    this.name = 'InputError';
    this.faults = faults;
  }
}

/** `file:line:column path: value; allowed`, leaving out what is not known. */
export function faultLine(fault: Fault, file = ''): string {
  const place = [file, fault.at?.line, fault.at?.column].filter((part) => part !== undefined && part !== '').join(':');
  const told = fault.value === '' ? fault.allowed : `${fault.value}; ${fault.allowed}`;
  const field = fault.path === '' ? told : `${fault.path}: ${told}`;
  return place === '' ? field : `${place} ${field}`;
}

/** Shorthand for an error with a single fault; a value that is not there is not shown. */
export function fault(path: string, value: unknown, allowed: string): InputError {
  return new InputError([{ path, value: value === undefined ? '' : shown(value), allowed }]);
}

/** A value as it can stand in one line of a message. */
export function shown(value: unknown): string {
  const text = typeof value === 'string' ? value : asText(value);
  const plain = Array.from(text.slice(0, 200), (c) => (isControl(c) ? escaped(c) : c));
  const line = plain.join('');
  return line.length > 60 ? `${cut(plain, 57)}…` : line;
}

function asText(value: unknown): string {
  if (typeof value === 'number' || typeof value === 'bigint') return String(value);
  try {
    return JSON.stringify(value) ?? String(value);
  } catch {
    return 'a value that holds itself';
  }
}

/** The first characters that fit, none of them halved. */
function cut(characters: readonly string[], length: number): string {
  let line = '';
  for (const character of characters) {
    if (line.length + character.length > length) break;
    line += character;
  }
  return line;
}

function escaped(character: string): string {
  return `\\x${character.codePointAt(0)!.toString(16).padStart(2, '0')}`;
}

/** Control characters, halves of characters, line and paragraph ends, and marks that turn the direction of writing. */
function isControl(character: string): boolean {
  const code = character.codePointAt(0)!;
  const isHalf = code >= 0xd800 && code <= 0xdfff;
  const turns = code === 0x200e || code === 0x200f || (code >= 0x2066 && code <= 0x2069);
  return code < 32 || (code >= 127 && code < 160) || isHalf || turns || (code >= 0x2028 && code <= 0x202e);
}
