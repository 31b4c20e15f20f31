import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { cpuUsage } from 'node:process';
import { SHIPPED } from '../src/presets/shipped.js';
import { createKernel } from '../src/solid/kernel.js';
import { localMaker } from '../src/work/fleet/makers.js';
import { openFleet } from '../src/work/fleet/open-fleet.js';
import { runFleet } from '../src/work/fleet/run-fleet.js';
import { CUBES } from '../test/support/cube-kind.js';

const DISTINCT = 1000;

/**
 * A fleet of so many machines with 1000 distinct parts, the smallest that there are, so that what is measured is the fleet
 * and not the solids. Run as a process of its own; prints one line of JSON: seconds of the plan, of the run from a warm
 * cache, and the peak of memory.
 */
const machines = Number(process.argv[3]);
const cwd = mkdtempSync(join(existsSync('/dev/shm') ? '/dev/shm' : tmpdir(), 'leadwright-large-'));
try {
  const rows = (count: number) =>
    [
      'machine,role,part,size',
      ...Array.from({ length: count }, (_, i) => `m-${i},foot,cube,${14 + (i % DISTINCT) / 100}`),
    ].join('\n');
  const stores = [{ folder: join(cwd, 'cache') }] as const;
  const kernel = createKernel();
  const run = async (file: string, count: number, out: string) => {
    writeFileSync(join(cwd, file), rows(count));
    const start = performance.now();
    const used = cpuUsage();
    const place = { cwd, stdin: async function* () {} };
    const { plan } = await openFleet(file, place, { kinds: CUBES, presets: SHIPPED, formats: ['stl'] });
    const planned = performance.now();
    const { manifest } = await runFleet(plan!, {
      out: join(cwd, out),
      stores,
      maker: () => localMaker({ kernel, kinds: CUBES }),
      formats: ['stl'],
      onProgress: () => undefined,
      stopped: () => false,
    });
    if (manifest.counts.complete !== count)
      throw new Error(`only ${manifest.counts.complete} of ${count} are complete`);
    const spent = cpuUsage(used);
    return {
      plan: (planned - start) / 1000,
      run: (performance.now() - planned) / 1000,
      cpu: (spent.user + spent.system) / 1e6,
    };
  };
  await run('warm.csv', DISTINCT, 'warm');
  const seconds = await run('large.csv', machines, 'out');
  const peakMb = process.resourceUsage().maxRSS / 1024;
  const again = await run('large.csv', machines, 'out');
  console.log(JSON.stringify({ ...seconds, peakMb, again: again.run, againMb: process.resourceUsage().maxRSS / 1024 }));
} finally {
  rmSync(cwd, { recursive: true, force: true });
}
