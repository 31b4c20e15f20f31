import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { cpuUsage } from 'node:process';
import type { FleetPlan } from '../src/fleet/plan.js';
import { SHIPPED } from '../src/presets/shipped.js';
import { createKernel } from '../src/solid/kernel.js';
import { type EntryStore, entryFolder, readEntry, writeEntry } from '../src/work/fleet/entry-store.js';
import { localMaker } from '../src/work/fleet/makers.js';
import { noMaker } from '../src/work/fleet/no-maker.js';
import { openFleet } from '../src/work/fleet/open-fleet.js';
import { runFleet } from '../src/work/fleet/run-fleet.js';
import { CUBES } from '../test/support/cube-kind.js';

/**
 * A fleet of so many machines with so many distinct parts, the smallest that there are, put together from two shares, so that
 * what is measured is the fleet and not the solids: one part is made, and the shares hold it under every address. The merge is a
 * process of its own. Prints one line of JSON: seconds of the plan, of the merge, of the processor for both, and the peak of memory within a heap of 400 MB; the
 * same of a second merge over the first.
 */
const [machines = 0, distinct = 0] = process.argv.slice(3).map(Number);
const HEAP = '--max-old-space-size=400';
const [, , , , , prepared] = process.argv;
const cwd = prepared ?? mkdtempSync(join(existsSync('/dev/shm') ? '/dev/shm' : tmpdir(), 'leadwright-large-'));
const shares = [1, 2].map((share) => ({ folder: join(cwd, `share-${share}`) })) as [EntryStore, EntryStore];
const common = { formats: ['stl'] as const, onProgress: () => undefined, stopped: () => false };

if (prepared === undefined) await measure();
else console.log(JSON.stringify(await merged()));

async function measure(): Promise<void> {
  try {
    await prepare();
    // the first within a small heap, since garbage is left lying where memory is plenty
    const [first, again] = [[HEAP], []].map((flags) => {
      const args = [...flags, 'bench/run.mjs', 'large-fleet', String(machines), String(distinct), cwd];
      const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
      if (status !== 0) throw new Error(`the merge ended with ${status}: ${stderr.slice(-500)}`);
      const told: Awaited<ReturnType<typeof merged>> = JSON.parse(stdout);
      return told;
    });
    console.log(JSON.stringify({ ...first, again: again?.run, againMb: again?.peakMb }));
  } finally {
    rmSync(cwd, { recursive: true, force: true });
  }
}

async function prepare(): Promise<void> {
  const table = (count: number) =>
    [
      'machine,role,part,size',
      ...Array.from({ length: count }, (_, i) => `m-${i},foot,cube,${14 + (i % distinct) / distinct}`),
    ].join('\n');
  writeFileSync(join(cwd, 'one.csv'), table(1));
  writeFileSync(join(cwd, 'large.csv'), table(machines));
  const kernel = createKernel();
  const cache = { folder: join(cwd, 'cache') };
  const maker = () => localMaker({ kernel, kinds: CUBES });
  const one = await planOf('one.csv');
  await runFleet(one, { ...common, out: join(cwd, 'one'), stores: [cache], maker });
  await spread(cache, one.distinct[0]!.address, await planOf('large.csv'));
}

async function planOf(file: string): Promise<FleetPlan> {
  const place = { cwd, stdin: async function* () {} };
  return (await openFleet(file, place, { kinds: CUBES, presets: SHIPPED, formats: ['stl'] })).plan!;
}

/** Puts one part into the shares under each address of a plan. */
async function spread(from: EntryStore, address: string, plan: FleetPlan): Promise<void> {
  const made = (await readEntry(from, address))!;
  const folder = entryFolder(from, address);
  const files = made.files.map(({ name }) => ({ name, bytes: readFileSync(join(folder, name)) }));
  for (const [i, part] of plan.distinct.entries())
    await writeEntry(shares[i % 2]!, { ...made, address: part.address }, files);
}

async function merged() {
  const start = performance.now();
  const used = cpuUsage();
  const plan = await planOf('large.csv');
  const planned = performance.now();
  const { manifest } = await runFleet(plan, {
    ...common,
    out: join(cwd, 'out'),
    stores: [{ folder: join(cwd, 'none') }, ...shares],
    maker: () => noMaker(CUBES),
  });
  if (manifest.counts.complete !== machines) throw new Error(`${manifest.counts.complete} of ${machines} complete`);
  const { user, system } = cpuUsage(used);
  return {
    plan: (planned - start) / 1000,
    run: (performance.now() - planned) / 1000,
    cpu: (user + system) / 1e6,
    peakMb: process.resourceUsage().maxRSS / 1024,
  };
}
