import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { disk } from '../../../src/work/writer/disk.js';
import { replaceFile, writeNewFile } from '../../../src/work/writer/files.js';
import { lock, tryLock } from '../../../src/work/writer/lock.js';
import { replaceFolder } from '../../../src/work/writer/replace-folder.js';
import { settleAll } from '../../../src/work/writer/settle.js';

const root = () => mkdtempSync(join(tmpdir(), 'writer-'));
const into = (folder: string, files: Readonly<Record<string, string>>, earlier: readonly string[] = []) =>
  replaceFolder(folder, {
    earlier: () => earlier,
    fill: ({ write }) => {
      for (const [file, text] of Object.entries(files)) write(file, text);
    },
  });

describe('replaceFolder', () => {
  it('makes the folder and those above it, and leaves nothing beside it', async () => {
    const cwd = root();
    await into(join(cwd, 'deep/part'), { 'a.stl': 'a', 'sub/b.txt': 'b' });
    expect(readFileSync(join(cwd, 'deep/part/sub/b.txt'), 'utf8')).toBe('b');
    expect(readdirSync(join(cwd, 'deep'))).toEqual(['part']);
  });

  it('carries over what is not ours: files, folders, links, empty folders; and keeps the mode', async () => {
    const folder = join(root(), 'part');
    await into(folder, { 'a.stl': 'old', 'stale.stl': 'old' });
    mkdirSync(join(folder, 'mine/deep'), { recursive: true });
    mkdirSync(join(folder, 'empty'));
    writeFileSync(join(folder, 'mine/deep/notes.txt'), 'mine');
    symlinkSync('mine', join(folder, 'shortcut'));
    chmodSync(folder, 0o750);
    const { ino } = statSync(join(folder, 'mine/deep/notes.txt'));
    await into(folder, { 'a.stl': 'new' }, ['a.stl', 'stale.stl']);
    expect(readdirSync(folder).sort()).toEqual(['a.stl', 'empty', 'mine', 'shortcut']);
    expect(readFileSync(join(folder, 'a.stl'), 'utf8')).toBe('new');
    expect(statSync(join(folder, 'mine/deep/notes.txt')).ino).toBe(ino);
    expect(readlinkSync(join(folder, 'shortcut'))).toBe('mine');
    expect(statSync(folder).mode & 0o777).toBe(0o750);
  });

  it('carries over what came while the new folder was built', async () => {
    const folder = join(root(), 'part');
    await into(folder, { 'a.stl': 'old' });
    await replaceFolder(folder, {
      earlier: () => ['a.stl'],
      fill: ({ write }) => {
        write('a.stl', 'new');
        const rename = vi.spyOn(disk, 'rename').mockImplementationOnce((from, to) => {
          writeFileSync(join(from, 'late.txt'), 'mine');
          rename.mockRestore();
          disk.rename(from, to);
        });
      },
    });
    expect(readdirSync(folder).sort()).toEqual(['a.stl', 'late.txt']);
  });

  it('refuses what is in the way, and leaves all as it was', async () => {
    const cwd = root();
    writeFileSync(join(cwd, 'file'), '');
    await expect(into(join(cwd, 'file'), { a: '' })).rejects.toThrow('a file is in the way of a folder');
    await expect(into(join(cwd, 'file/part'), { a: '' })).rejects.toThrow();
    mkdirSync(join(cwd, 'part/a.stl'), { recursive: true });
    await expect(into(join(cwd, 'part'), { 'a.stl': 'new' })).rejects.toThrow('a folder of that name is in the way');
    expect(readdirSync(join(cwd, 'part'))).toEqual(['a.stl']);
    expect(readdirSync(cwd).sort()).toEqual(['file', 'part']);
  });

  it('does not pull away the folder that somebody is in, nor one around it', async () => {
    const cwd = root();
    mkdirSync(join(cwd, 'part/sub'), { recursive: true });
    for (const here of ['part', 'part/sub']) {
      vi.spyOn(disk, 'here').mockReturnValue(join(cwd, here));
      await expect(into(join(cwd, 'part'), { 'a.stl': 'new' })).rejects.toThrow('is the folder that you are in');
    }
    vi.spyOn(disk, 'here').mockReturnValue(`${cwd}/part-two`);
    await into(join(cwd, 'part'), { 'a.stl': 'new' });
    vi.restoreAllMocks();
    expect(readdirSync(cwd)).toEqual(['part']);
  });

  it('waits for no pipe in place of a lock, and says where a folder is', async () => {
    const cwd = root();
    execFileSync('mkfifo', [join(cwd, '.part.lock')]);
    await into(join(cwd, 'part'), { 'a.stl': 'new' });
    expect(readdirSync(cwd)).toEqual(['part']);
    mkdirSync(join(cwd, '.part.lock'));
    await expect(into(join(cwd, 'part'), { 'a.stl': 'newer' })).rejects.toThrow(
      'a folder .part.lock beside it is in the way of its lock',
    );
    expect(readFileSync(join(cwd, 'part/a.stl'), 'utf8')).toBe('new');
  });

  it('goes through a link to the folder that it means', async () => {
    const cwd = root();
    mkdirSync(join(cwd, 'real'));
    symlinkSync('real', join(cwd, 'link'));
    await into(join(cwd, 'link'), { a: '1' });
    expect([readlinkSync(join(cwd, 'link')), readFileSync(join(cwd, 'real/a'), 'utf8')]).toEqual(['real', '1']);
  });

  it('copies where the disk knows no links', async () => {
    const folder = join(root(), 'part');
    await into(folder, { 'a.stl': 'old' });
    writeFileSync(join(folder, 'notes.txt'), 'mine');
    const link = vi.spyOn(disk, 'link').mockImplementation(() => {
      throw Object.assign(new Error('no links'), { code: 'EPERM' });
    });
    await into(folder, { 'a.stl': 'new' }, ['a.stl']);
    link.mockRestore();
    expect(readdirSync(folder).sort()).toEqual(['a.stl', 'notes.txt']);
  });

  it('leaves a really full disk as it was', async ({ skip }) => {
    const mount = root();
    try {
      execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=64k', 'none', mount], { stdio: 'ignore' });
    } catch {
      skip('no right to mount a small disk here');
    }
    try {
      await into(join(mount, 'part'), { 'a.stl': 'old' });
      const big = { 'a.stl': 'new', 'big.stl': 'x'.repeat(200_000) };
      await expect(into(join(mount, 'part'), big, ['a.stl'])).rejects.toThrow('ENOSPC');
      expect(readFileSync(join(mount, 'part/a.stl'), 'utf8')).toBe('old');
      expect(readdirSync(mount)).toEqual(['part']);
    } finally {
      execFileSync('umount', [mount]);
    }
  });
});

describe('runs at once', () => {
  it.each([2, 3, 8])('%i in one folder leave what one of them leaves', async (count) => {
    const folder = join(root(), 'part');
    const runs = Array.from({ length: count }, (_, i) =>
      into(folder, { 'a.stl': `run ${i}`, 'report.json': `run ${i}`, [`only-${i}`]: '' }, [
        'a.stl',
        'report.json',
        ...Array.from({ length: count }, (_, other) => `only-${other}`),
      ]),
    );
    await Promise.all(runs);
    const last = readFileSync(join(folder, 'report.json'), 'utf8');
    expect(readFileSync(join(folder, 'a.stl'), 'utf8')).toBe(last);
    expect(readdirSync(folder).sort()).toEqual(['a.stl', `only-${last.slice(4)}`, 'report.json']);
    expect(readdirSync(join(folder, '..'))).toEqual(['part']);
  });

  it('a lock is held by one, taken over from the dead, and not from the living', async () => {
    const path = join(root(), 'part');
    const first = await lock(path);
    expect(tryLock(path)).toBeUndefined();
    await expect(lock(path, 20)).rejects.toThrow(/in use by another run, process \d+ on /);
    const lives = vi.spyOn(disk, 'lives').mockReturnValue(false);
    const second = await lock(path);
    lives.mockRestore();
    expect([first.isHeld(), second.isHeld()]).toEqual([false, true]);
    // what is no longer its own it does not release
    first.release();
    expect(second.isHeld()).toBe(true);
    second.release();
    expect(existsSync(join(path, '../.part.lock'))).toBe(false);
  });

  it('a damaged lock is nobody’s', async () => {
    const path = join(root(), 'part');
    writeFileSync(join(path, '../.part.lock'), '{"pid"');
    const held = await lock(path, 0);
    expect(held.isHeld()).toBe(true);
  });

  it('what another run is at work on is left to it', async () => {
    const cwd = root();
    const held = await lock(join(cwd, 'part'));
    mkdirSync(join(cwd, '.part.0123456789abcdef.new'));
    mkdirSync(join(cwd, '.other.0123456789abcdef.new'));
    settleAll(cwd);
    expect(readdirSync(cwd).sort()).toEqual(['.part.0123456789abcdef.new', '.part.lock']);
    held.release();
  });
});

describe('files', () => {
  it('follow no link that lies in wait, and replace one that stands under their own name', async () => {
    const cwd = root();
    writeFileSync(join(cwd, 'precious'), 'mine');
    symlinkSync('precious', join(cwd, 'page.html'));
    for (const name of [`.page.html.${process.pid}.new`, `page.html.${process.pid}.new`, '.page.html.lock'])
      symlinkSync('precious', join(cwd, name));
    await replaceFile('--page', 'page.html', 'new', cwd);
    expect([readFileSync(join(cwd, 'precious'), 'utf8'), readFileSync(join(cwd, 'page.html'), 'utf8')]).toEqual([
      'mine',
      'new',
    ]);
  });

  it('are never written over by new', async () => {
    const cwd = root();
    await writeNewFile('a.yaml', 'first', cwd);
    await expect(writeNewFile('a.yaml', 'second', cwd)).rejects.toThrow('a.yaml: is already there');
    await expect(writeNewFile('none/a.yaml', 'x', cwd)).rejects.toThrow('none/a.yaml: no such file or folder');
    expect([readFileSync(join(cwd, 'a.yaml'), 'utf8'), readdirSync(cwd)]).toEqual(['first', ['a.yaml']]);
  });
});
