import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { exactPackageOf, type HandedFile, tarEntries } from '../../../page/live/state/exact-package.js';

const file = (name: string, text: string): HandedFile => ({ name, bytes: new Uint8Array(Buffer.from(text)) });
const SCRIPT = 'const own = import.meta.url;\nexport default own;\n';
const WASM = '\0asm and more';

/** An archive as tar writes it: blocks of 512 bytes, two empty ones at its end. */
function tar(files: Readonly<Record<string, string>>): Uint8Array<ArrayBuffer> {
  const blocks = Object.entries(files).flatMap(([name, text]) => {
    const head = Buffer.alloc(512);
    head.write(name, 0);
    head.write(`${text.length.toString(8).padStart(11, '0')}\0`, 124);
    const body = Buffer.alloc(512 * Math.ceil(text.length / 512));
    body.write(text, 0, 'latin1');
    return [head, body];
  });
  return new Uint8Array(Buffer.concat([...blocks, Buffer.alloc(1024)]));
}

const packed = (files: Readonly<Record<string, string>>): HandedFile => ({
  name: 'package.tgz',
  bytes: new Uint8Array(gzipSync(tar(files))),
});

describe('the package of the exact kernel, handed over', () => {
  it('is read from its script and its WebAssembly, made fit for a thread that imports nothing', async () => {
    const found = await exactPackageOf([file('own.wasm', WASM), file('own.js', SCRIPT)]);
    if ('why' in found) throw new Error(found.why);
    expect(Buffer.from(found.wasm).toString()).toBe(WASM);
    expect(found.script).not.toContain('import.meta');
    const shared: { exactFunction: unknown; exactScript?: unknown } = { exactFunction: Array };
    new Function('globalThis', found.script)(shared);
    expect(shared.exactScript).toBe('');
  });

  it('is read from what the registry gives; of two kernels the one of a single thread', async () => {
    const files = {
      'package/dist/a_multi.js': 'export default many;',
      'package/dist/a_multi.wasm': WASM,
      'package/dist/a_single.js': SCRIPT,
      'package/dist/a_single.wasm': WASM,
    };
    expect(tarEntries(tar(files)).map(({ name }) => name)).toEqual(Object.keys(files));
    expect(await exactPackageOf([packed(files)])).toMatchObject({ script: expect.stringContaining('= own;') });
  });

  it.each([
    ['nothing that is packed', [file('package.tgz', 'no archive')]],
    ['a script alone', [file('own.js', SCRIPT)]],
    ['bytes that are no WebAssembly', [file('own.js', SCRIPT), file('own.wasm', 'PNG and more')]],
    ['another package', [packed({ 'package/index.js': SCRIPT })]],
    ['half an archive', [{ name: 'half.tgz', bytes: packed({ 'a.js': SCRIPT, 'a.wasm': WASM }).bytes.slice(0, 60) }]],
  ])('says in one line what %s lacks', async (_, files) => {
    const found = await exactPackageOf(files);
    expect(found).toEqual({
      why: expect.stringMatching(/^[^\n]+: holds no exact kernel; needs the file that npm pack \S+ gives$/),
    });
  });

  it('says so where the script exports nothing', async () => {
    const found = await exactPackageOf([file('own.js', 'const own = 1;'), file('own.wasm', WASM)]);
    expect(found).toEqual({ why: expect.stringContaining('own.js exports nothing by default') });
  });
});
