import { chmodSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { keepCode } from '../../src/work/keep-code.js';
import { packCode, readKept, unpackCode } from '../../src/work/kept-code.js';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'leadwright-kept-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const files = new Map([
  ['run.cjs', { source: 7, code: Uint8Array.from([1, 2, 3]) }],
  ['chunk-A.cjs', { source: 4_000_000_000, code: new Uint8Array(40).fill(9) }],
  ['empty.cjs', { source: 0, code: new Uint8Array() }],
]);
const plain = (of: ReturnType<typeof unpackCode>) =>
  [...of].map(([name, { source, code }]) => [name, source, [...code]]);

describe('compiled code that is kept', () => {
  it('comes back as it was packed, each at a place that the engine need not move', () => {
    const back = unpackCode(packCode(files));
    expect(plain(back)).toEqual(plain(files));
    for (const { code } of back.values()) expect(code.byteOffset % 8).toBe(0);
  });

  it('is nothing where a bit of it changed, or where it ends early', () => {
    const packed = packCode(files);
    for (let i = 0; i < packed.length; i++) {
      const changed = Uint8Array.from(packed);
      changed[i]! ^= 1;
      expect(unpackCode(changed).size).toBe(0);
    }
    for (let length = 0; length < packed.length; length++) expect(unpackCode(packed.slice(0, length)).size).toBe(0);
  });

  it('is written whole, for its user alone, over what was there', async () => {
    const file = join(folder, 'deep', 'make-1');
    keepCode(file, new Map());
    keepCode(file, files);
    expect(plain(await readKept(file))).toEqual(plain(files));
    expect(statSync(file).mode & 0o777).toBe(0o600);
    expect(readdirSync(join(folder, 'deep'))).toEqual(['make-1']);
  });

  it('is not read where others own it or may write to it, nor where there is none', async () => {
    const file = join(folder, 'check-1');
    expect((await readKept(file)).size).toBe(0);
    keepCode(file, files);
    expect((await readKept(file, statSync(file).uid + 1)).size).toBe(0);
    chmodSync(file, 0o622);
    expect((await readKept(file)).size).toBe(0);
  });

  it('is done without where it cannot be written', () => {
    writeFileSync(join(folder, 'file'), '');
    expect(() => keepCode(join(folder, 'file', 'check-1'), files)).not.toThrow();
  });
});
