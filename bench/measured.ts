import { readFileSync } from 'node:fs';
import type { Format } from '../src/output/formats.js';
import { design } from '../src/pipeline/design.js';
import { kindOfDesign } from '../src/pipeline/find-kind.js';
import { fuseBody } from '../src/pipeline/fuse-body.js';
import { KINDS } from '../src/pipeline/kinds.js';
import { makeDesign } from '../src/pipeline/make.js';
import { measureBody } from '../src/pipeline/measure-solid.js';
import { createKernel } from '../src/solid/kernel.js';
import { median } from './measure.js';
import type { Row } from './nut.js';

const SHEETS = ['demo-nut', 'demo-adapter', 'demo-coupling', 'demo-sleeve', 'demo-coupon', 'demo-gauge'] as const;
/** What `make` writes unless told otherwise. */
const USUAL: readonly Format[] = ['stl', '3mf', 'drawing', 'page'];
const ROUNDS = 15;
const WARM = 4;

/** What the checks on the mesh add to making a part: processor time of both in turns, as shares of making without them. */
export async function measuredRows(): Promise<Row[]> {
  const rows: Row[] = [];
  for (const sheet of SHEETS) rows.push(await shareOf(sheet));
  return rows;
}

async function shareOf(sheet: string): Promise<Row> {
  const made = design(readFileSync(`presets/sheets/${sheet}.yaml`, 'utf8'));
  const kernel = await createKernel();
  const bodies = kindOfDesign(KINDS, made)
    .bodies(made)
    .map((plan) => ({ ...plan, body: fuseBody(kernel, plan.recipe), file: sheet }));
  const shares: number[] = [];
  for (let i = 0; i < WARM + ROUNDS; i++) {
    // a kernel that has tried no thread yet
    const whole = await worked(() => makeDesign(made, { kernel: { ...kernel }, formats: USUAL }));
    const measured = await worked(() => bodies.map(measureBody));
    if (i >= WARM) shares.push(measured / (whole - measured));
  }
  const what = `${sheet}: walls and ceilings / making without them`;
  return { what, value: 100 * median(shares), unit: '%', goal: '≤ 10' };
}

/** Processor time of a piece of work, ms: a busy machine adds little to it. */
async function worked(work: () => unknown): Promise<number> {
  const start = process.cpuUsage();
  await work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}
