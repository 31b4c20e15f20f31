import { fault } from '../units/faults.js';

/**
 * A file's bytes as text: UTF-8, or UTF-16 where a mark at its start says so.
 * @throws InputError neither
 */
export function textOf(bytes: Uint8Array): string {
  const text = decoded(bytes, utf16(bytes) ?? 'utf-8');
  if (text === undefined) throw fault('', '', 'must be UTF-8 text; this looks like a binary file');
  return text;
}

/**
 * A table's bytes as text. Spreadsheets write plain CSV in the code page of western Windows where nobody chose
 * another: what is no UTF-8, and holds no zero bytes, is read so.
 * @throws InputError no text at all
 */
export function tableTextOf(bytes: Uint8Array): string {
  const isOldPage = utf16(bytes) === undefined && !bytes.includes(0) && decoded(bytes, 'utf-8') === undefined;
  return isOldPage ? decoded(bytes, 'windows-1252')! : textOf(bytes);
}

function utf16([first, second]: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  return first === 0xfe && second === 0xff ? 'utf-16be' : undefined;
}

function decoded(bytes: Uint8Array, encoding: string): string | undefined {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}
