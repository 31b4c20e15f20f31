import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { COMMANDS } from '../../src/cli/commands/index.js';
import { VERSION } from '../../src/cli/version.js';
import { call, callFolder } from '../support/call.js';

const cwd = callFolder();

describe('calls that are wrong', () => {
  it.each([
    [[], 'leadwright: a command is missing: make, check, '],
    [['mak', 'a.yaml'], 'leadwright: mak; unknown command; did you mean make?'],
    [['bake'], 'leadwright: bake; unknown command; did you mean make?'],
    [['sing'], 'leadwright: sing; unknown command; known: make, '],
    [['--hlp'], 'leadwright: --hlp: unknown option; did you mean --help?'],
    [['make'], 'leadwright: an argument is missing; leadwright make --help shows what it wants'],
    [['make', 'a.yaml', '--ot', 'x'], 'leadwright: --ot: unknown option; did you mean --out?'],
    [['make', 'a.yaml', '--out'], 'leadwright: --out: wants a value'],
    [['make', 'a.yaml', '--out='], 'leadwright: --out: wants a value'],
    [['make', 'a.yaml', '--out', 'b', '--out', 'c'], 'leadwright: --out: b, c; must be given once'],
    [['make', 'a.yaml', '--formats', 'stl,sdl'], 'leadwright: --formats: sdl; must be one of stl'],
    [['make', 'a.yaml', '--accept', 'wall'], 'leadwright: --accept: wall; must be CHECK=REASON'],
    [['make', 'a.yaml', '--accept', 'wal=x'], 'leadwright: --accept: wal; unknown check; did you mean wall?'],
    [['make', 'a.yaml', '--accept', 'solid-closed=x'], 'leadwright: --accept: solid-closed; a broken solid cannot'],
    [['new', 'nutt'], 'leadwright: nutt; unknown kind; did you mean nut?'],
    [['new', 'nut', 'again'], 'leadwright: again; one argument too many'],
  ])('%j', async (argv, line) => {
    const { code, stdout, stderr } = await call(cwd, argv);
    expect(stderr.startsWith(line), stderr).toBe(true);
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    expect([code, stdout]).toEqual([2, '']);
  });
});

describe('help', () => {
  it.each([[], ...COMMANDS.map(({ name }) => [name])])('%s fits 80 columns', async (...argv) => {
    const { code, stdout, stderr } = await call(cwd, [...argv, '--help']);
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout.split('\n').filter((line) => line.length > 80)).toEqual([]);
    expect(stdout).not.toContain('default: []');
  });

  it.each(COMMANDS.map(({ name }) => name))('examples of %s work as typed, one after the other', async (name) => {
    const folder = callFolder();
    const { stdout } = await call(folder, [name, '--help']);
    const examples = stdout.split('Examples:\n')[1]!.split('\n\n')[0]!;
    const typed: string[] = [];
    for (const [, cell = ''] of examples.matchAll(/^ {2}(\S.*?)(?: {2,}|$)/gm)) {
      // what goes on in the next line is not seen to belong to it
      expect(cell).toMatch(/^leadwright /);
      typed.push(cell.slice('leadwright '.length));
    }
    expect(typed.length).toBeGreaterThan(0);
    for (const line of typed) {
      const { code, stderr } = await call(folder, line.split(' '));
      expect([line, code, code === 0 ? '' : stderr]).toEqual([line, 0, '']);
    }
  });

  it('the version is that of the package', async () => {
    const manifest: { version: string } = JSON.parse(
      readFileSync(join(import.meta.dirname, '../../package.json'), 'utf8'),
    );
    expect(VERSION).toBe(manifest.version);
    expect((await call(cwd, ['--version'])).stdout).toBe(`${VERSION}\n`);
  });
});
