import { execFileSync } from 'node:child_process';
import { appendFileSync, existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { resolve } from 'node:path';
import { clockingRows } from './clocking.js';
import { engineRows } from './engines.js';
import { fleetRows, mergesByTens } from './fleet.js';
import { liveRows } from './live.js';
import { measuredRows } from './measured.js';
import { nutRows, type Row } from './nut.js';
import { pageRows } from './page.js';
import { processRows } from './processes.js';

const RESULTS = 'bench/results.csv';
/** which sources were measured; `+` where they are not all committed */
const commit = execFileSync('git', ['describe', '--always', '--dirty=+', '--exclude=*'], { encoding: 'utf8' }).trim();
const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };

/** The command's caches begin empty: what other calls left there is not what is measured. */
const caches = resolve('node_modules/.bench/caches');
rmSync(caches, { recursive: true, force: true });
process.env.XDG_CACHE_HOME = caches;

/** `npm run bench` measures all; a word, as in `npm run bench -- part`, leaves the rest out. */
const [, only] = process.argv.slice(2);
/** What each word asks for, and what is measured without one, in this order. */
const SECTIONS: Readonly<Record<string, readonly (() => Row[] | Promise<Row[]>)[]>> = {
  live: [liveRows],
  start: [processRows],
  engines: [engineRows],
  measured: [measuredRows],
  part: [processRows, engineRows, nutRows, measuredRows, clockingRows, pageRows],
  merge: [mergesByTens],
  fleet: [fleetRows],
};
const asked = only === undefined ? ['live', 'part', 'fleet'] : [only];
const rows: Row[] = [];
for (const section of asked.flatMap((word) => SECTIONS[word] ?? [])) rows.push(...(await section()));
if (rows.length === 0) throw new Error(`${only} is none of ${Object.keys(SECTIONS).join(', ')}`);
for (const { what, value, unit, goal } of rows)
  console.log(`${what.padEnd(52)} ${format(value).padStart(10)} ${unit}${goal === undefined ? '' : `  goal ${goal}`}`);

if (!existsSync(RESULTS)) writeFileSync(RESULTS, 'version,commit,node,cores,what,value,unit,goal\n');
const lines = rows.map(({ what, value, unit, goal = '' }) =>
  [version, commit, process.version, cpus().length, `"${what}"`, format(value), unit, goal].join(','),
);
appendFileSync(RESULTS, `${lines.join('\n')}\n`);

function format(value: number): string {
  return value >= 100 ? value.toFixed(0) : value.toFixed(2);
}
