import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { rowMachines } from '../src/fleet/csv/row-machines.js';
import { timed } from './measure.js';
import type { Row } from './nut.js';
import { benchNut } from './sheets.js';

const COMMAND = 'dist/leadwright.js';
const LARGE = { machines: 1000, variants: 100 };
/** Times that the large fleet is run with one worker and with two, in turns. */
const ROUNDS = 2;
const ROLES = ['left', 'right', 'front', 'rear'] as const;

/** Fleets as whole processes: a large run with one worker and with two, its memory, and the same from the cache. */
export async function fleetRows(): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'leadwright-fleet-'));
  try {
    return [...large(folder), ...mergesByTens(), await spreadsheet()];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function large(folder: string): Row[] {
  const parts = LARGE.variants * ROLES.length;
  const small = run(fleetFile(folder, 'small', { machines: 10, variants: 10 }), join(folder, 'small', 'out'), []);
  const file = fleetFile(folder, 'large', LARGE);
  const rounds = Array.from({ length: ROUNDS }, (_, round) => {
    const out = (jobs: string) => join(folder, `${jobs}-${round}`, 'out');
    const [one, two] = ['1', '2'].map((jobs) => run(file, out(jobs), ['--jobs', jobs])) as [Run, Run];
    return { one, two, again: run(file, out('2'), ['--jobs', '2']) };
  });
  const one = quickest(rounds.map((round) => round.one));
  const two = quickest(rounds.map((round) => round.two));
  const again = quickest(rounds.map((round) => round.again));
  return [
    {
      what: `fleet, ${parts} parts in ${LARGE.machines} machines, one worker`,
      value: parts / one.seconds,
      unit: 'parts/s',
      goal: '≥ 8',
    },
    { what: 'fleet, the same, two workers', value: parts / two.seconds, unit: 'parts/s' },
    { what: 'fleet, two workers / one', value: one.seconds / two.seconds, unit: '×', goal: '≥ 1.8' },
    { what: 'fleet, peak memory', value: two.peakMb, unit: 'MB' },
    { what: 'fleet, peak memory, a tenth of the parts', value: small.peakMb, unit: 'MB' },
    { what: 'fleet, all from the cache', value: again.seconds, unit: 's' },
    { what: 'fleet, first run / cached run', value: two.seconds / again.seconds, unit: '×' },
  ];
}

interface Run {
  readonly seconds: number;
  readonly peakMb: number;
}

/** Whatever else the computer does can only slow a run down, so the quickest one tells most about the program. */
function quickest(runs: readonly Run[]): Run {
  return runs.reduce((best, one) => (one.seconds < best.seconds ? one : best));
}

function run(file: string, out: string, more: readonly string[]): Run {
  const start = performance.now();
  const args = ['-r', './bench/peak-memory.cjs', COMMAND, 'fleet', file, '--out', out, ...more];
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8', maxBuffer: 1e9 });
  const seconds = (performance.now() - start) / 1000;
  if (status !== 0) throw new Error(`the fleet ended with ${status}: ${stderr.slice(-500)}`);
  const peaks = [...stderr.matchAll(/peak-kb (\d+)/g)].map(([, kb]) => Number(kb));
  return { seconds, peakMb: Math.max(...peaks) / 1024 };
}

/** Nuts whose screws measure a little differently: variants times four distinct ones. */
function fleetFile(folder: string, name: string, { machines, variants }: typeof LARGE): string {
  const parts = Object.fromEntries(
    ROLES.map((role, i) => [role, { part: { ...benchNut({ length: 14 + i }), name: `nut-${role}` } }]),
  );
  const rows = Array.from({ length: machines }, (_, i) =>
    ROLES.map((role) => `m-${i};bench;${role};${(7.9 + (i % variants) / 1000).toFixed(3).replace('.', ',')}`),
  );
  writeFileSync(join(folder, `${name}.csv`), ['machine;kind;role;screw.major', ...rows.flat(), ''].join('\r\n'));
  const file = join(folder, `${name}.yaml`);
  writeFileSync(file, JSON.stringify({ fleet: name, kinds: { bench: { parts } }, rows: `${name}.csv` }));
  return file;
}

/**
 * Fleets put together from shares, and a tenth of each: what each machine costs beside solids, and what each distinct part. Memory is
 * what the larger takes beyond the smaller, a machine.
 */
export function mergesByTens(): Row[] {
  return [
    ...mergeRows('merge of 100,000 machines, 1000 distinct parts', 100_000, 1000),
    ...mergeRows('merge of 30,000 machines, each with its own part', 30_000, 30_000),
  ];
}

function mergeRows(what: string, machines: number, distinct: number): Row[] {
  const tenth = merge(machines / 10, Math.min(distinct, machines / 10));
  const whole = merge(machines, distinct);
  return [
    { what: `${what}, plan`, value: whole.plan, unit: 's' },
    { what: `${what}, merge`, value: whole.run, unit: 's' },
    { what: `${what}, processor`, value: whole.cpu, unit: 's' },
    { what: `${what}, peak memory in a heap of 400 MB`, value: whole.peakMb, unit: 'MB' },
    { what: `${what}, memory`, value: ((whole.peakMb - tenth.peakMb) * 1024) / (0.9 * machines), unit: 'kB/machine' },
    { what: `${what}, again over itself, peak memory`, value: whole.againMb, unit: 'MB' },
    { what: `${what}, plan / that of a tenth`, value: whole.plan / tenth.plan, unit: '×' },
    { what: `${what}, merge / that of a tenth`, value: whole.run / tenth.run, unit: '×' },
    { what: `${what}, processor / that of a tenth`, value: whole.cpu / tenth.cpu, unit: '×' },
  ];
}

type Merge = Readonly<Record<'plan' | 'run' | 'cpu' | 'peakMb' | 'againMb', number>>;

function merge(machines: number, distinct: number): Merge {
  const args = ['bench/run.mjs', 'large-fleet', String(machines), String(distinct)];
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`the fleet of ${machines} ended with ${status}: ${stderr.slice(-500)}`);
  const measured: Merge = JSON.parse(stdout);
  return measured;
}

async function spreadsheet(): Promise<Row> {
  const rows = Array.from(
    { length: 10_000 },
    (_, i) => `machine-${i};dibber;z-left;nuts/z.yaml;2;z;"7,9${i % 10} ± 0,02 mm";left`,
  );
  const text = ['\uFEFFmachine;kind;role;sheet;quantity;axis;screw.major;screw.hand', ...rows].join('\r\n');
  const ms = await timed(() => rowMachines(text, 'rows.csv'), { rounds: 5, warm: 1 });
  return { what: 'spreadsheet of 10,000 rows', value: ms, unit: 'ms' };
}
