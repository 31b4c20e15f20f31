import { performance } from 'node:perf_hooks';
import { writeStl } from '../src/output/write-stl.js';
import type { NutDesign } from '../src/parts/nut/dimensions.js';
import { nutKind } from '../src/parts/nut/index.js';
import { mateNut } from '../src/parts/nut/mate.js';
import { nutBody } from '../src/parts/nut/solid.js';
import { check } from '../src/pipeline/check.js';
import { design } from '../src/pipeline/design.js';
import { fuseBody } from '../src/pipeline/fuse-body.js';
import { makeDesign } from '../src/pipeline/make.js';
import { measureBody } from '../src/pipeline/measure-solid.js';
import { readBack, verify } from '../src/pipeline/verify.js';
import { createKernel, type Kernel } from '../src/solid/kernel.js';
import { timed } from './measure.js';
import { modellingOnlyNut } from './modeling-only.js';
import { benchCoupon, benchNut } from './sheets.js';

/** One line of the bench: what, how much, in which unit. */
export interface Row {
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  /** what is wanted of it */
  readonly goal?: string;
}

/** The nut, stage by stage, in one process; cost by length and by starts; the modelling library's own way beside it. */
export async function nutRows(): Promise<Row[]> {
  const kernel = await createKernel();
  const made = nutDesign(benchNut());
  const plan = nutBody(made);
  const { recipe } = plan;
  const expected = plan.expected();
  const body = fuseBody(kernel, recipe);
  const bytes = writeStl(body);
  const solid = await timed(() => fuseBody(kernel, recipe));
  const verified = await timed(() => verify([readBack({ file: 'bench.stl', bytes, expected })]));
  const measured = await timed(() => measureBody({ ...plan, body, file: 'bench.stl' }));
  const stl = await timed(() => makeDesign(made, { kernel: forgetful(kernel) }));
  // a new one each time: what was worked out of a design is kept with it
  const strips = Array.from({ length: 7 }, () => design(benchCoupon()));
  const coupon = await timed(() => makeDesign(strips.pop()!, { kernel: forgetful(kernel) }), { rounds: 5 });
  const own = modellingOnly(made);
  return [
    { what: 'dimensions and checks', value: await timed(() => check(design(benchNut()))), unit: 'ms' },
    { what: 'solid', value: solid, unit: 'ms' },
    { what: 'writing', value: await timed(() => writeStl(body)), unit: 'ms' },
    { what: 'verification from the bytes', value: verified, unit: 'ms' },
    { what: 'walls and ceilings', value: measured, unit: 'ms' },
    { what: 'nut, STL, warm', value: stl, unit: 'ms', goal: '≤ 90 where it took 230' },
    { what: 'coupon, STL, warm', value: coupon, unit: 'ms', goal: '≤ 230 where the nut took 230' },
    { what: 'mating test', value: await timed(() => mateNut(made, forgetful(kernel))), unit: 'ms' },
    { what: 'mating test, remembered', value: await timed(() => mateNut(made, kernel)), unit: 'ms' },
    { what: 'facets', value: body.triangles.length / 3, unit: '' },
    { what: 'modelling library alone', value: own.ms, unit: 'ms' },
    { what: 'modelling library alone, open edges', value: own.openEdges, unit: '' },
    { what: 'ours, open edges', value: readBack({ file: 'bench.stl', bytes, expected }).measures.openEdges, unit: '' },
    { what: 'modelling library alone / solid and verification', value: own.ms / (solid + verified), unit: '×' },
    ...(await growth(kernel)),
  ];
}

function nutDesign(sheet: object): NutDesign {
  const made = design(sheet);
  if (!isNut(made)) throw new TypeError('the bench needs a nut');
  return made;
}

function isNut(made: ReturnType<typeof design>): made is NutDesign {
  return made.part === nutKind.kind;
}

function modellingOnly(made: NutDesign) {
  const start = performance.now();
  const { openEdges } = modellingOnlyNut(made);
  return { ms: performance.now() - start, openEdges };
}

/** The same kernel, which no thread has been tried with yet. */
function forgetful(kernel: Kernel): Kernel {
  return { ...kernel };
}

async function growth(kernel: Kernel): Promise<Row[]> {
  const rows: Row[] = [];
  for (const length of [15, 30, 60]) rows.push(await solidRow(kernel, `solid, ${length} mm`, benchNut({ length })));
  for (const screw of ['Tr8x2', 'Tr8x4(P2)', 'Tr8x8(P2)'])
    rows.push(await solidRow(kernel, `solid, ${screw}`, benchNut({ screw })));
  return rows;
}

async function solidRow(kernel: Kernel, what: string, sheet: object): Promise<Row> {
  const { recipe } = nutBody(nutDesign(sheet));
  return { what, value: await timed(() => fuseBody(kernel, recipe), { rounds: 5 }), unit: 'ms' };
}
