import { execFileSync, spawn } from 'node:child_process';
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
  });

  it.each(['/dev/zero', '/dev/null', '/dev/tty'])('refuses the device %s', async (path) => {
    await expect(readInput(path, place)).rejects.toThrow('is a device, not a file');
  });

  it('reads a pipe to its end, one that is filled later too', async () => {
    execFileSync('mkfifo', [join(cwd, 'pipe')]);
    const writer = spawn('sh', ['-c', 'sleep 0.1; { printf "part: "; sleep 0.1; echo nut; } > pipe'], { cwd });
    const closed = new Promise((resolve) => writer.once('close', resolve));
    expect(await readInput('pipe', place)).toBe('part: nut\n');
    await closed;
  });

  it('stops at a pipe that nobody fills, and at one that never ends', async () => {
    execFileSync('mkfifo', [join(cwd, 'empty')]);
    const told = 'is a pipe that does not end within 0.2 s';
    await expect(readInput('empty', { ...place, patience: 200 })).rejects.toThrow(told);
    const writer = spawn('sh', ['-c', 'exec > empty; while :; do echo a; sleep 0.05; done'], { cwd });
    await expect(readInput('empty', { ...place, patience: 200 })).rejects.toThrow(told);
    const closed = new Promise((resolve) => writer.once('close', resolve));
    writer.kill();
    await closed;
    const flood = spawn('sh', ['-c', 'exec cat /dev/zero > empty'], { cwd });
    await expect(readInput('empty', place, 1000)).rejects.toThrow('must be at most 1000 characters');
    flood.kill();
  });
});
