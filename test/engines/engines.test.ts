import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { type BuiltCommand, builtCommand } from '../support/built-command.js';
import { filesBelow } from '../support/fleet-folder.js';
import { type Slurm, startSlurm, until } from './slurm.js';

const ROOT = join(import.meta.dirname, '../..');
const DOCS = join(ROOT, 'docs/fleet');
const FILE = 'fleets/demo-fleet.yaml';
const SHARES = 4;
let command: BuiltCommand;
let leadwright: string;
let whole: Record<string, string>;

/** A folder with the example fleet and its sheets. */
function exampleFolder(): string {
  const cwd = mkdtempSync(join(tmpdir(), 'engine-'));
  cpSync(join(ROOT, 'presets/fleets'), join(cwd, 'fleets'), { recursive: true });
  cpSync(join(ROOT, 'presets/sheets'), join(cwd, 'sheets'), { recursive: true });
  return cwd;
}

const run = (cwd: string, ...args: string[]) =>
  execFileSync(process.execPath, [command.file, ...args], { cwd, encoding: 'utf8', stdio: 'pipe' });

beforeAll(() => {
  command = builtCommand();
  leadwright = `${process.execPath} ${command.file}`;
  const cwd = exampleFolder();
  run(cwd, 'fleet', FILE, '--formats', 'stl', '--out', 'out');
  whole = filesBelow(join(cwd, 'out'));
  rmSync(cwd, { recursive: true });
}, 180_000);
afterAll(() => command.remove());

describe('Slurm', () => {
  let slurm: Slurm | undefined;
  beforeAll(async () => {
    slurm = await startSlurm();
  }, 90_000);
  afterAll(() => slurm?.stop());

  it('runs the example fleet as an array job; a task that was killed is queued again; the bytes are those of one run', async () => {
    const cwd = exampleFolder();
    const call = slurm!.call;
    const env = { FLEET: FILE, LEADWRIGHT: leadwright, FORMATS: 'stl' };
    const told = call('sbatch', ['--parsable', `--array=1-${SHARES}`, join(DOCS, 'slurm.sbatch')], cwd, env);
    const job = told.trim();
    const states = () =>
      new Map(
        call('squeue', ['--noheader', '--array', '--states=all', '--format=%K %T', '--job', job], cwd)
          .trim()
          .split('\n')
          .map((line) => line.trim().split(' ') as [string, string]),
      );
    await until(() => states().get('1') === 'RUNNING', 60);
    call('scancel', ['--full', '--signal=KILL', `${job}_1`], cwd);
    await until(() => ['FAILED', 'CANCELLED'].includes(states().get('1') ?? ''), 60);
    call('scontrol', ['requeue', `${job}_1`], cwd);
    // what is queued again waits two minutes, unless told otherwise
    await until(() => states().get('1') === 'PENDING', 60);
    call('scontrol', ['update', `JobId=${job}_1`, 'StartTime=now'], cwd);
    await until(() => [...states().values()].every((state) => state === 'COMPLETED'), 240);
    expect(readFileSync(join(cwd, 'share-1.log'), 'utf8')).toContain('share 1/4 of mill-refit');
    const shares = Array.from({ length: SHARES }, (_, i) => `share-${i + 1}`);
    run(cwd, 'merge', FILE, ...shares, '--formats', 'stl', '--out', 'merged');
    expect(filesBelow(join(cwd, 'merged'))).toEqual(whole);
    rmSync(cwd, { recursive: true });
  }, 400_000);
});

describe('GNU parallel', () => {
  it('runs the shares, goes on after a failure with what is left, and merges to the same bytes', () => {
    const cwd = exampleFolder();
    // one share fails on its first try, as on a computer that dies
    const failing = join(cwd, 'leadwright');
    writeFileSync(
      failing,
      `#!/bin/sh\ncase "$*" in *"--shard 2/"*) [ -e tried ] || { touch tried; kill -9 $$; };; esac\nexec ${leadwright} "$@"\n`,
      { mode: 0o755 },
    );
    const env = { ...process.env, LEADWRIGHT: failing, FORMATS: 'stl' };
    const parallel = (...more: string[]) =>
      execFileSync(join(DOCS, 'parallel.sh'), [FILE, String(SHARES), '--jobs', '2', ...more], {
        cwd,
        env,
        stdio: 'pipe',
      });
    expect(() => parallel('--retries', '1')).toThrow();
    const before = readFileSync(join(cwd, 'shares.log'), 'utf8').trim().split('\n').length;
    parallel();
    const log = readFileSync(join(cwd, 'shares.log'), 'utf8').trim().split('\n');
    // a head, and a line a try: only the share that failed is tried again
    expect([before, log.length]).toEqual([1 + SHARES, 2 + SHARES]);
    expect(filesBelow(join(cwd, 'out/mill-refit'))).toEqual(whole);
    rmSync(cwd, { recursive: true });
  }, 300_000);
});

describe('Kubernetes', () => {
  it('the job keeps to the schema of its kind, and its numbers agree', async () => {
    const models = mkdtempSync(join(tmpdir(), 'models-'));
    mkdirSync(join(models, 'node_modules'));
    writeFileSync(join(models, 'package.json'), '{"type": "module", "private": true}\n');
    const install = ['install', '--no-audit', '--no-fund', '--ignore-scripts', 'kubernetes-models@5.1.0'];
    execFileSync('npm', install, { cwd: models, stdio: 'ignore' });
    writeFileSync(join(models, 'job.js'), "export { Job } from 'kubernetes-models/batch/v1/Job';\n");
    const { Job }: { Job: new (value: unknown) => { validate(): void } } = await import(
      pathToFileURL(join(models, 'job.js')).href
    );
    const text = readFileSync(join(DOCS, 'kubernetes/job.yaml'), 'utf8');
    const job = parse(text);
    new Job(job).validate();
    expect(() => new Job({ ...job, spec: { ...job.spec, completions: 'many' } }).validate()).toThrow(/completions/);
    expect(job.spec.completionMode).toBe('Indexed');
    expect(text).toContain(`--shard $((JOB_COMPLETION_INDEX + 1))/${job.spec.completions}`);
    rmSync(models, { recursive: true });
  }, 120_000);
});
