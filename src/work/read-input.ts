import { type FileHandle, open } from 'node:fs/promises';
import { resolve } from 'node:path';
import { LONGEST_SHEET } from '../sheet/read-yaml.js';
import { fault } from '../units/faults.js';
import { diskReason } from './disk-reason.js';
import { tableTextOf, textOf } from './text-of.js';

/** Where files are looked for, and what stands behind `-`. */
export interface InputPlace {
  readonly cwd: string;
  readonly stdin: () => AsyncIterable<Uint8Array>;
}

/**
 * Reads a text file; `-` is the standard input. Never holds more than a sheet may have.
 * @throws InputError no such file, a folder, too long, or no text
 */
export async function readInput(path: string, place: InputPlace, longest: number = LONGEST_SHEET): Promise<string> {
  return textOf(await readBytes(path, place, longest));
}

/** Reads a table in the same way, in the encodings of spreadsheets too. */
export async function readTable(path: string, place: InputPlace, longest: number): Promise<string> {
  return tableTextOf(await readBytes(path, place, longest));
}

function readBytes(path: string, place: InputPlace, longest: number): Promise<Uint8Array> {
  return path === '-' ? collect(place.stdin(), longest) : readFile(resolve(place.cwd, path), longest);
}

async function readFile(path: string, longest: number): Promise<Uint8Array> {
  let handle: FileHandle | undefined;
  try {
    handle = await open(path, 'r');
    const about = await handle.stat();
    if (about.isDirectory()) throw fault('', '', 'is a folder, not a sheet');
    if (about.size > mostBytes(longest)) throw tooLong(`${about.size} bytes`, longest);
    return await collect(handle.createReadStream({ autoClose: false }), longest);
  } catch (error) {
    throw fault('', '', diskReason(error));
  } finally {
    await handle?.close();
  }
}

/** A character takes at most four bytes. */
function mostBytes(longest: number): number {
  return longest * 4;
}

async function collect(source: AsyncIterable<Uint8Array>, longest: number): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  let length = 0;
  for await (const part of source) {
    parts.push(part);
    length += part.length;
    if (length > mostBytes(longest)) throw tooLong(`more than ${mostBytes(longest)} bytes`, longest);
  }
  return Buffer.concat(parts);
}

function tooLong(length: string, longest: number) {
  return fault('', length, `must be at most ${longest} characters`);
}
