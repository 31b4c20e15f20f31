import { execFileSync, spawn, spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type BuiltCommand, builtCommand } from '../../support/built-command.js';
import { accounts, filesBelow, folderOf } from '../../support/fleet-folder.js';
import { cached, halves, runKilled, runWhole } from '../../support/kill-and-resume.js';
import { smallFleet } from '../../support/small-fleet.js';

const DISTINCT = 3;
let command: BuiltCommand;
let whole: Record<string, string>;
let cwd: string;

beforeAll(() => {
  command = builtCommand();
  cwd = folderOf({ 'fleet.yaml': smallFleet(DISTINCT) });
  expect(runWhole(command.file, cwd)).toMatchObject({ made: DISTINCT, reused: 0 });
  whole = filesBelow(join(cwd, 'out'));
}, 120_000);
afterAll(() => command.remove());

describe('the command as a process', () => {
  it('gives the same bytes with one thread and with two, and from the cache', () => {
    expect(runWhole(command.file, cwd)).toMatchObject({ made: 0, reused: DISTINCT });
    expect(filesBelow(join(cwd, 'out'))).toEqual(whole);
    const other = folderOf({ 'fleet.yaml': smallFleet(DISTINCT) });
    const args = [command.file, 'fleet', 'fleet.yaml', '--out', 'out', '--jobs', '1', '--formats', 'stl'];
    expect(spawnSync(process.execPath, args, { cwd: other }).status).toBe(0);
    expect(filesBelow(join(other, 'out'))).toEqual(whole);
  }, 120_000);

  it('leaves whole files when it is killed, and goes on from there without doing a part twice', async () => {
    const here = folderOf({ 'fleet.yaml': smallFleet(DISTINCT) });
    // again and again, at any moment, is a matter of the soak tests
    await runKilled(command.file, here, 800);
    expect(halves(here, whole)).toEqual([]);
    const before = cached(here);
    expect(runWhole(command.file, here)).toMatchObject({ made: DISTINCT - before, reused: before });
    expect(filesBelow(join(here, 'out'))).toEqual(whole);
    expect(Object.keys(filesBelow(join(here, '.leadwright-cache'))).filter((file) => file.includes('/.new-'))).toEqual(
      [],
    );
  }, 120_000);

  it('two runs at once in one folder do not harm each other', async () => {
    const here = folderOf({ 'fleet.yaml': smallFleet(DISTINCT) });
    const codes = await Promise.all(
      [1, 2].map(
        () =>
          new Promise((resolve) => {
            const args = [command.file, 'fleet', 'fleet.yaml', '--out', 'out', '--jobs', '1', '--formats', 'stl'];
            spawn(process.execPath, args, { cwd: here, stdio: 'ignore' }).once('exit', resolve);
          }),
      ),
    );
    expect(codes).toEqual([0, 0]);
    expect(filesBelow(join(here, 'out'))).toEqual(whole);
  }, 120_000);

  it('stops at Ctrl-C, says how to go on, and leaves folder and manifest agreed', async () => {
    const here = folderOf({ 'fleet.yaml': smallFleet(6) });
    const args = [command.file, 'fleet', 'fleet.yaml', '--out', 'out', '--jobs', '1', '--formats', 'stl'];
    const child = spawn(process.execPath, args, { cwd: here });
    let told = '';
    child.stderr.on('data', (bytes: Buffer) => {
      told += bytes.toString();
    });
    const parts = join(here, '.leadwright-cache');
    while (cached(here) === 0 && child.exitCode === null) await new Promise((resolve) => setTimeout(resolve, 20));
    child.kill('SIGINT');
    const code = await new Promise((resolve) => child.once('close', resolve));
    expect([code, told]).toEqual([1, expect.stringContaining('the same command goes on from here')]);
    expect(readdirSync(parts).length).toBeGreaterThan(0);
    const { there, told: listed } = accounts(join(here, 'out'));
    expect(listed).toEqual(there);
  }, 120_000);

  it('says in one line that the disk is full, and leaves whole files', ({ skip }) => {
    const here = folderOf({ 'fleet.yaml': smallFleet(DISTINCT) });
    const small = join(here, 'small');
    mkdirSync(small);
    try {
      execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=900k', 'none', small], { stdio: 'ignore' });
    } catch {
      skip('no right to mount a small disk here');
    }
    try {
      const args = [command.file, 'fleet', 'fleet.yaml', '--out', 'small/out', '--jobs', '2', '--formats', 'stl'];
      const { status, stderr } = spawnSync(process.execPath, args, { cwd: here, encoding: 'utf8' });
      expect([status, stderr]).toEqual([
        2,
        expect.stringMatching(/(?:^|\n)leadwright: [^\n]*the disk is full[^\n]*\n$/),
      ]);
      for (const [file, digest] of Object.entries(filesBelow(join(small, 'out')))) {
        if (!file.includes('/.') && !file.startsWith('.')) expect(whole[file]).toBe(digest);
      }
    } finally {
      execFileSync('umount', [small]);
      rmSync(here, { recursive: true });
    }
  }, 120_000);
});
