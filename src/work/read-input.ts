import { constants } from 'node:fs';
import { type FileHandle, open, stat } from 'node:fs/promises';
import { Socket } from 'node:net';
import { resolve } from 'node:path';
import { LONGEST_SHEET } from '../sheet/read-yaml.js';
import { fault } from '../units/faults.js';
import { diskReason } from './disk-reason.js';
import { tableTextOf, textOf } from './text-of.js';

/** Where files are looked for, and what stands behind `-`. */
export interface InputPlace {
  readonly cwd: string;
  readonly stdin: () => AsyncIterable<Uint8Array>;
  /** milliseconds that a pipe may take until it ends; ten seconds unless given */
  readonly patience?: number;
}

const PATIENCE = 10_000;

/**
 * Reads a text file; `-` is the standard input. Never holds more than a sheet may have, and waits no longer than ten
 * seconds for a pipe.
 * @throws InputError no such file, a folder, a device, a pipe that does not end, too long, or no text
 */
export async function readInput(path: string, place: InputPlace, longest: number = LONGEST_SHEET): Promise<string> {
  return textOf(await readBytes(path, place, mostBytes(longest), longest));
}

/** Reads a table in the same way, in the encodings of spreadsheets too. */
export async function readTable(path: string, place: InputPlace, longest: number): Promise<string> {
  return tableTextOf(await readBytes(path, place, mostBytes(longest), longest));
}

function readBytes(path: string, place: InputPlace, most: number, longest: number): Promise<Uint8Array> {
  return path === '-' ? collect(place.stdin(), most, longest) : readFile(path, place, most, longest);
}

async function readFile(path: string, place: InputPlace, most: number, longest: number): Promise<Uint8Array> {
  const full = resolve(place.cwd, path);
  let handle: FileHandle | undefined;
  try {
    const about = await stat(full);
    if (about.isDirectory()) throw fault('', '', 'is a folder, not a sheet');
    if (about.isCharacterDevice() || about.isBlockDevice()) throw fault('', '', 'is a device, not a file');
    if (about.isSocket()) throw fault('', '', 'is a socket, not a file');
    if (about.size > most) throw tooLong(`${about.size} bytes`, longest);
    // a pipe that nobody fills would else hold up the opening
    handle = await open(full, about.isFIFO() ? constants.O_RDONLY | constants.O_NONBLOCK : 'r');
    if (about.isFIFO()) return await fromPipe(handle, most, longest, place.patience ?? PATIENCE);
    return await collect(handle.createReadStream({ autoClose: false }), most, longest);
  } catch (error) {
    throw fault('', '', diskReason(error));
  } finally {
    await handle?.close().catch(() => undefined);
  }
}

/** Reads a pipe as its bytes come. */
async function fromPipe(handle: FileHandle, most: number, longest: number, patience: number): Promise<Uint8Array> {
  const socket = new Socket({ fd: handle.fd, readable: true, writable: false });
  const late = setTimeout(
    () => socket.destroy(fault('', '', `is a pipe that does not end within ${patience / 1000} s`)),
    patience,
  );
  try {
    return await collect(socket, most, longest);
  } finally {
    clearTimeout(late);
    socket.destroy();
  }
}

/** A character takes at most four bytes. */
function mostBytes(longest: number): number {
  return longest * 4;
}

async function collect(source: AsyncIterable<Uint8Array>, most: number, longest: number): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  let length = 0;
  for await (const part of source) {
    parts.push(part);
    length += part.length;
    if (length > most) throw tooLong(`more than ${most} bytes`, longest);
  }
  return Buffer.concat(parts);
}

function tooLong(length: string, longest: number) {
  return fault('', length, `must be at most ${longest} characters`);
}
