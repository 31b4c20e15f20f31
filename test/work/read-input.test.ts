import { closeSync, ftruncateSync, mkdtempSync, openSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readInput } from '../../src/work/read-input.js';

const cwd = mkdtempSync(join(tmpdir(), 'read-input-'));
async function* streamed(...parts: Uint8Array[]) {
  yield* parts;
}
const place = { cwd, stdin: () => streamed(Uint8Array.from([0xc3]), Uint8Array.from([0xa9])) };

describe('readInput', () => {
  it('reads UTF-8, without its mark', async () => {
    writeFileSync(join(cwd, 'a.yaml'), '\ufeffmajor: 7.95 ± 0.02 mm\n');
    expect(await readInput('a.yaml', place)).toBe('major: 7.95 ± 0.02 mm\n');
  });

  it('reads stdin, letters cut in two included', async () => {
    expect(await readInput('-', place)).toBe('é');
  });

  it.each([
    ['none.yaml', 'no such file'],
    ['.', 'is a folder'],
    ['a.yaml/b.yaml', 'a file is in the way'],
    ['x'.repeat(300), 'the name is too long'],
  ])('refuses %s', async (path, told) => {
    await expect(readInput(path, place)).rejects.toThrow(told);
  });

  it('refuses bytes that are no text', async () => {
    writeFileSync(join(cwd, 'b.yaml'), Uint8Array.from([0x6e, 0xff, 0xfe]));
    await expect(readInput('b.yaml', place)).rejects.toThrow('looks like a binary file');
  });

  it('refuses 10 GB by its size alone', async () => {
    const file = openSync(join(cwd, 'huge.yaml'), 'w');
    ftruncateSync(file, 10_000_000_000);
    closeSync(file);
    await expect(readInput('huge.yaml', place)).rejects.toThrow('10000000000 bytes; must be at most');
  });

  it('stops reading a stream that does not end', async () => {
    async function* endless() {
      for (;;) yield new Uint8Array(65_536);
    }
    await expect(readInput('-', { cwd, stdin: endless })).rejects.toThrow('must be at most');
    await expect(readInput('/dev/zero', place)).rejects.toThrow('must be at most');
  });
});
