import { EXACT_PACKAGE } from '../../../src/solid/exact/exact-kernel.js';

/** The optional package's script and its WebAssembly. */
export interface ExactPackage {
  /** takes its `Function` from `exactFunction`, and leaves what it exports as `exactScript` */
  readonly script: string;
  readonly wasm: ArrayBuffer;
}

/** A file that a person handed over. */
export interface HandedFile {
  readonly name: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** More than this is no package of ours. */
export const LARGEST_PACKAGE = 200_000_000;

/** Where the script says what it exports. */
const EXPORT = /\bexport\s+default\s+([A-Za-z_$][\w$]*)\s*;?\s*$/;
/** How every WebAssembly file begins. */
const WASM = [0, 0x61, 0x73, 0x6d];

/**
 * The package's script and WebAssembly out of files: both as they are, or the package as the registry gives it.
 * @returns the two, or in one line why there are none
 */
export async function exactPackageOf(files: readonly HandedFile[]): Promise<ExactPackage | { readonly why: string }> {
  const names = files.map(({ name }) => name).join(', ');
  const all = (await Promise.all(files.map(entriesOf))).flat();
  const wasm = all.find(({ name, bytes }) => name.endsWith('.wasm') && WASM.every((byte, i) => bytes[i] === byte));
  const found = wasm && all.find(({ name }) => name === wasm.name.replace(/\.wasm$/, '.js'));
  if (!wasm || !found)
    return { why: `${names}: holds no exact kernel; needs the file that npm pack ${EXACT_PACKAGE.name} gives` };
  const text = new TextDecoder().decode(found.bytes);
  if (!EXPORT.test(text))
    return { why: `${names}: ${found.name} exports nothing by default, as the kernel's script does` };
  // pages from a disk run no modules in threads, and the address of the script is asked for where none is given
  const plain = text.replace(EXPORT, 'globalThis.exactScript = $1;').replaceAll('import.meta.url', '""');
  const script = `(function (Function) {\n${plain}\n})(globalThis.exactFunction);`;
  return { script, wasm: wasm.bytes.slice().buffer };
}

/** A package's files where it is one; of two kernels the one of a single thread. */
async function entriesOf(file: HandedFile): Promise<HandedFile[]> {
  if (!/\.t(?:ar\.)?gz$/.test(file.name)) return [file];
  try {
    const stream = new Blob([file.bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
    const entries = tarEntries(new Uint8Array(await new Response(stream).arrayBuffer()));
    return entries.sort((a, b) => rank(a) - rank(b));
  } catch {
    return [];
  }
}

function rank({ name }: HandedFile): number {
  return /single/.test(name) ? 0 : 1;
}

const BLOCK = 512;

/**
 * The files of a tar archive.
 * @source POSIX.1-1988 ustar: blocks of 512 bytes, a name of 100, an octal size at 124
 */
export function tarEntries(bytes: Uint8Array<ArrayBuffer>): HandedFile[] {
  const text = (from: number, length: number) =>
    new TextDecoder().decode(bytes.subarray(from, from + length)).replace(/\0[\s\S]*$/, '');
  const found: HandedFile[] = [];
  for (let at = 0; at + BLOCK <= bytes.length && bytes[at] !== 0; ) {
    const size = Number.parseInt(text(at + 124, 12), 8);
    if (!(size >= 0)) break;
    found.push({ name: text(at, 100), bytes: bytes.subarray(at + BLOCK, at + BLOCK + size) });
    at += BLOCK * (1 + Math.ceil(size / BLOCK));
  }
  return found;
}
