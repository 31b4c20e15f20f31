import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { rowMachines } from '../src/fleet/csv/row-machines.js';
import { median, timed } from './measure.js';
import type { Row } from './nut.js';
import { benchNut } from './sheets.js';

const COMMAND = 'dist/leadwright.js';
const LARGE = { machines: 1000, variants: 100 };
const ROLES = ['left', 'right', 'front', 'rear'] as const;

/** Fleets as whole processes: one worker against two, a large run with its memory, and the same from the cache. */
export async function fleetRows(): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'leadwright-fleet-'));
  try {
    return [...(await scaling(folder)), ...large(folder), await spreadsheet()];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** One worker and two in turns, so that whatever else the computer does falls on both. */
async function scaling(folder: string): Promise<Row[]> {
  const file = fleetFile(folder, 'scaling', { machines: 30, variants: 30 });
  const times = { 1: [] as number[], 2: [] as number[] };
  for (let round = 0; round < 3; round++) {
    for (const jobs of [1, 2] as const) {
      const out = mkdtempSync(join(folder, 'run-'));
      times[jobs].push(run(file, join(out, 'out'), ['--jobs', `${jobs}`]).seconds);
      rmSync(out, { recursive: true });
    }
  }
  const [one, two] = [median(times[1]), median(times[2])];
  return [
    { what: 'fleet, 120 parts, one worker', value: 120 / one, unit: 'parts/s' },
    { what: 'fleet, 120 parts, two workers', value: 120 / two, unit: 'parts/s' },
    { what: 'fleet, two workers / one', value: one / two, unit: '×' },
  ];
}

function large(folder: string): Row[] {
  const file = fleetFile(folder, 'large', LARGE);
  const out = join(folder, 'large', 'out');
  const parts = LARGE.variants * ROLES.length;
  const small = run(fleetFile(folder, 'small', { machines: 10, variants: 10 }), join(folder, 'small', 'out'), []);
  const first = run(file, out, []);
  const again = run(file, out, []);
  return [
    { what: `fleet, ${parts} parts in ${LARGE.machines} machines`, value: first.seconds, unit: 's' },
    { what: 'fleet, peak memory', value: first.peakMb, unit: 'MB' },
    { what: 'fleet, peak memory, a tenth of the parts', value: small.peakMb, unit: 'MB' },
    { what: 'fleet, all from the cache', value: again.seconds, unit: 's' },
    { what: 'fleet, first run / cached run', value: first.seconds / again.seconds, unit: '×' },
  ];
}

function run(file: string, out: string, more: readonly string[]): { seconds: number; peakMb: number } {
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

async function spreadsheet(): Promise<Row> {
  const rows = Array.from(
    { length: 10_000 },
    (_, i) => `machine-${i};dibber;z-left;nuts/z.yaml;2;z;"7,9${i % 10} ± 0,02 mm";left`,
  );
  const text = ['\uFEFFmachine;kind;role;sheet;quantity;axis;screw.major;screw.hand', ...rows].join('\r\n');
  const ms = await timed(() => rowMachines(text, 'rows.csv'), { rounds: 5, warm: 1 });
  return { what: 'spreadsheet of 10,000 rows', value: ms, unit: 'ms' };
}
