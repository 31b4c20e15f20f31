import { execFileSync, spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { wantsColour, widthOf } from '../../src/cli/io.js';
import { startSheet } from '../../src/pipeline/start-sheets.js';
import { START_KINDS } from '../../src/sheet/start-kinds.js';
import { type BuiltCommand, builtCommand } from '../support/built-command.js';
import { call, callFolder } from '../support/call.js';

const cwd = callFolder();
writeFileSync(join(cwd, 'nut.yaml'), startSheet('nut'));

describe('help', () => {
  it.each([
    [['-h'], ['--help']],
    [['help'], ['--help']],
    [
      ['help', 'make'],
      ['make', '--help'],
    ],
    [
      ['check', '-h'],
      ['check', '--help'],
    ],
  ])('%j is %j', async (short, long) => {
    const [one, other] = [await call(cwd, short), await call(cwd, long)];
    expect(one.code).toBe(0);
    expect(one.stdout.length).toBeGreaterThan(200);
    expect(one).toEqual(other);
  });

  it('of new names every kind', async () => {
    const { stdout } = await call(cwd, ['new', '--help']);
    for (const kind of START_KINDS) expect(stdout).toMatch(new RegExp(`[ ,]${kind}[ ,[\n]`));
  });
});

describe('completion', () => {
  it('prints a script that the shell can read', async () => {
    const { code, stdout } = await call(cwd, ['completion']);
    expect(code).toBe(0);
    execFileSync('bash', ['-n'], { input: stdout });
    expect(stdout).toContain('complete -o bashdefault -o default -F _leadwright_yargs_completions leadwright');
    expect(stdout).not.toMatch(/^# /m);
  });

  it.each([
    [
      ['leadwright', 'c'],
      ['check', 'calibrate', 'compare'],
    ],
    [
      ['leadwright', 'check', '--a'],
      ['--accept', '--all', '--advise'],
    ],
    [
      ['leadwright', 'new', ''],
      ['nut', 'coupling'],
    ],
  ])('of %j offers %j', async (typed, offered) => {
    const { code, stdout } = await call(cwd, ['--get-yargs-completions', ...typed]);
    expect(code).toBe(0);
    for (const word of offered) expect(stdout.split('\n')).toContain(word);
  });
});

describe('colour and width', () => {
  it.each([
    [true, {}, true],
    [false, {}, false],
    [true, { NO_COLOR: '1' }, false],
    [true, { NO_COLOR: '' }, true],
    [true, { TERM: 'dumb' }, false],
    [false, { FORCE_COLOR: '1' }, true],
    [true, { FORCE_COLOR: '0' }, false],
    [false, { FORCE_COLOR: '' }, false],
    [true, { FORCE_COLOR: '1', NO_COLOR: '1' }, false],
    [false, { FORCE_COLOR: '1', TERM: 'dumb' }, true],
  ])('terminal %s with %j: %s', (isTty, env, colour) => {
    expect(wantsColour({ isTty, env })).toBe(colour);
  });

  it.each([
    [undefined, 80],
    [0, 80],
    [40, 60],
    [60, 60],
    [97, 97],
    [160, 160],
    [300, 160],
  ])('%s columns are written in %d', (columns, width) => {
    expect(widthOf({ columns })).toBe(width);
  });
});

describe('stdout', () => {
  let built: BuiltCommand;
  beforeAll(() => {
    built = builtCommand();
  });
  afterAll(() => {
    built.remove();
  });

  it('that is a full disk is told in one line, without a trace', () => {
    const { status, stderr } = spawnSync(
      'sh',
      ['-c', `"${process.execPath}" "${built.file}" check nut.yaml > /dev/full`],
      {
        cwd,
        encoding: 'utf8',
      },
    );
    expect([status, stderr]).toEqual([2, 'leadwright: stdout cannot be written: the disk is full\n']);
  });

  it('that is closed early is no fault', () => {
    const { stderr } = spawnSync(
      'sh',
      ['-c', `"${process.execPath}" "${built.file}" check nut.yaml --all | head -n 1`],
      {
        cwd,
        encoding: 'utf8',
      },
    );
    expect(stderr).toBe('');
  });
});

describe('a make that takes a while', () => {
  const bare = ['make', 'nut.yaml', '--formats', 'stl', '--out', 'steps'];

  it('says what it does in one line that goes away, where stderr is a terminal', async () => {
    const { code, stderr } = await call(cwd, bare, { stderrColumns: 40 });
    expect(code).toBe(0);
    const lines = stderr.split('\r').filter((line) => line.trim() !== '');
    expect(lines[0]).toMatch(/^my-nut: fusing /);
    expect(lines.some((line) => line.includes('trying it on its counterpart'))).toBe(true);
    expect(Math.max(...stderr.split('\r').map(({ length }) => length))).toBeLessThan(40);
    expect(stderr).toMatch(/\r +\r$/);
  });

  it('is silent elsewhere', async () => {
    expect((await call(cwd, bare)).stderr).toBe('');
  });
});
