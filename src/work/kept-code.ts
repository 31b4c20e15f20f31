import { open } from 'node:fs/promises';
import { crc32 } from 'node:zlib';

/** What the engine compiled of one file. */
export interface CompiledFile {
  /** sum of the source that it was compiled from */
  readonly source: number;
  readonly code: Uint8Array;
}

/** By the names of the files. */
export type CompiledFiles = ReadonlyMap<string, CompiledFile>;

/** Sum of all that follows, and how long the list of files is. */
const HEAD = 8;
/** The engine reads what begins at multiples of this without copying it. */
const STEP = 8;

/**
 * Compiled code of several files as one: a sum, the list of files, their codes.
 *
 * @param files by name
 * @returns what {@link unpackCode} reads
 */
export function packCode(files: CompiledFiles): Uint8Array {
  const list = [...files].map(([name, { source, code }]) => [name, source, code.length]);
  const named = Buffer.from(JSON.stringify(list));
  const codes = [...files.values()].flatMap(({ code }) => [code, new Uint8Array(upTo(code.length) - code.length)]);
  const body = Buffer.concat([named, new Uint8Array(upTo(HEAD + named.length) - HEAD - named.length), ...codes]);
  const head = Buffer.alloc(HEAD);
  head.writeUInt32LE(named.length, 4);
  const packed = Buffer.concat([head, body]);
  packed.writeUInt32LE(crc32(packed.subarray(4)));
  return packed;
}

/**
 * The same back.
 *
 * @returns nothing where it is not what was packed: half written, or changed since
 */
export function unpackCode(packed: Uint8Array): CompiledFiles {
  const files = new Map<string, CompiledFile>();
  const bytes = Buffer.from(packed.buffer, packed.byteOffset, packed.byteLength);
  if (bytes.length < HEAD || bytes.readUInt32LE() !== crc32(bytes.subarray(4))) return files;
  const named = bytes.readUInt32LE(4);
  let at = upTo(HEAD + named);
  for (const [name, source, length] of JSON.parse(bytes.toString('utf8', HEAD, HEAD + named)) as Listed[]) {
    files.set(name, { source, code: bytes.subarray(at, at + length) });
    at = upTo(at + length);
  }
  return files;
}

type Listed = readonly [name: string, source: number, length: number];

function upTo(length: number): number {
  return Math.ceil(length / STEP) * STEP;
}

/**
 * Reads compiled code. It is run as it is, so it must be this user's own, and nobody else may have written to it.
 *
 * @param file where it is kept
 * @param user who asks; undefined where the system knows no numbers of users
 * @returns nothing where there is none, or it is not to be trusted
 */
export async function readKept(file: string, user = process.geteuid?.()): Promise<CompiledFiles> {
  const opened = await open(file).catch(() => undefined);
  if (!opened) return new Map();
  try {
    const { uid, mode } = await opened.stat();
    const isOwn = user === undefined || (uid === user && (mode & 0o022) === 0);
    return isOwn ? unpackCode(await opened.readFile()) : new Map();
  } catch {
    return new Map();
  } finally {
    await opened.close();
  }
}
