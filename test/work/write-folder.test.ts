import { execFileSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import * as disk from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/faults.js';
import { type Disk, writeFolder } from '../../src/work/write-folder.js';

const bytesOf = (text: string) => new TextEncoder().encode(text);
const temporaryFolder = () => mkdtempSync(join(tmpdir(), 'write-folder-'));

async function contents(folder: string): Promise<Record<string, string>> {
  const names = (await disk.readdir(folder)).sort();
  return Object.fromEntries(
    await Promise.all(names.map(async (name) => [name, await disk.readFile(join(folder, name), 'utf8')])),
  );
}

/** A disk on which one call fails: the `at`-th use of `call`. */
function failing(call: keyof Disk, at: number, code: string): Disk {
  let used = 0;
  const real = { ...disk };
  const broken = (...given: unknown[]) => {
    used++;
    if (used === at) return Promise.reject(Object.assign(new Error(code), { code }));
    return Reflect.apply(real[call], real, given);
  };
  return Object.assign(real, { [call]: broken });
}

const FILES = [
  { name: 'a.stl', bytes: bytesOf('new a') },
  { name: 'report.json', bytes: bytesOf('new report') },
];

describe('writeFolder', () => {
  it('makes the folder and leaves only the files', async () => {
    const folder = join(temporaryFolder(), 'deep', 'part');
    await writeFolder(folder, FILES);
    expect(await contents(folder)).toEqual({ 'a.stl': 'new a', 'report.json': 'new report' });
  });

  it('replaces earlier files, removes stale ones, and leaves strangers alone', async () => {
    const folder = temporaryFolder();
    await disk.writeFile(join(folder, 'a.stl'), 'old a');
    await disk.writeFile(join(folder, 'b.stl'), 'old b');
    await disk.writeFile(join(folder, 'notes.txt'), 'mine');
    await writeFolder(folder, FILES, ['b.stl', 'never-there.stl']);
    expect(await contents(folder)).toEqual({ 'a.stl': 'new a', 'notes.txt': 'mine', 'report.json': 'new report' });
  });

  it.each([
    ['open', 1, 'EACCES'],
    ['open', 2, 'ENOSPC'],
    ['link', 1, 'EIO'],
    ['rename', 1, 'EACCES'],
    ['rename', 2, 'ENOSPC'],
    ['mkdir', 1, 'EROFS'],
  ] as const)('%s number %i failing by %s leaves the folder as it was', async (call, at, code) => {
    const folder = temporaryFolder();
    await disk.writeFile(join(folder, 'a.stl'), 'old a');
    await disk.writeFile(join(folder, 'b.stl'), 'old b');
    const before = await contents(folder);
    const broken = failing(call, at, code);
    // a link that fails is made good by a copy, so the copy fails too
    const fs = call === 'link' ? Object.assign(broken, { copyFile: failing('copyFile', 1, code).copyFile }) : broken;
    await expect(writeFolder(folder, FILES, ['b.stl'], fs)).rejects.toThrow(InputError);
    expect(await contents(folder)).toEqual(before);
  });

  it('a failing removal of a stale file takes all back', async () => {
    const folder = temporaryFolder();
    await disk.writeFile(join(folder, 'a.stl'), 'old a');
    await disk.writeFile(join(folder, 'b.stl'), 'old b');
    const stubborn = Object.assign(
      { ...disk },
      {
        rm: (path: string, options: object) =>
          path.endsWith('/b.stl')
            ? Promise.reject(Object.assign(new Error(), { code: 'EPERM' }))
            : disk.rm(path, options),
      },
    );
    await expect(writeFolder(folder, FILES, ['b.stl'], stubborn)).rejects.toThrow('not permitted');
    expect(await contents(folder)).toEqual({ 'a.stl': 'old a', 'b.stl': 'old b' });
  });

  it('removes folders that it made for nothing', async () => {
    const root = temporaryFolder();
    await expect(writeFolder(join(root, 'x', 'y'), FILES, [], failing('open', 1, 'ENOSPC'))).rejects.toThrow(
      'the disk is full',
    );
    expect(await disk.readdir(root)).toEqual([]);
  });

  it('says in one line what is in the way', async () => {
    const root = temporaryFolder();
    await disk.writeFile(join(root, 'file'), '');
    await expect(writeFolder(join(root, 'file'), FILES)).rejects.toThrow('a file is in the way of a folder');
    await expect(writeFolder(join(root, 'file', 'part'), FILES)).rejects.toThrow('a file is in the way of a folder');
    await disk.mkdir(join(root, 'part', 'a.stl'), { recursive: true });
    await expect(writeFolder(join(root, 'part'), FILES)).rejects.toThrow(/a folder of that name is in the way$/);
    expect(await disk.readdir(join(root, 'part'))).toEqual(['a.stl']);
  });

  it('leaves a really full disk as it was', async ({ skip }) => {
    const mount = temporaryFolder();
    try {
      execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=64k', 'none', mount], { stdio: 'ignore' });
    } catch {
      skip('no right to mount a small disk here');
    }
    try {
      await disk.mkdir(join(mount, 'part'));
      await disk.writeFile(join(mount, 'part', 'a.stl'), 'old a');
      const big = [...FILES, { name: 'big.stl', bytes: new Uint8Array(200_000) }];
      await expect(writeFolder(join(mount, 'part'), big)).rejects.toThrow('the disk is full');
      await expect(writeFolder(join(mount, 'new'), big)).rejects.toThrow('the disk is full');
      expect(await contents(join(mount, 'part'))).toEqual({ 'a.stl': 'old a' });
      expect(await disk.readdir(mount)).toEqual(['part']);
    } finally {
      execFileSync('umount', [mount]);
    }
  });

  it('gives up at once where a parent takes no folders', async () => {
    await expect(writeFolder('/proc/leadwright/part', FILES)).rejects.toBeInstanceOf(InputError);
  });
});
