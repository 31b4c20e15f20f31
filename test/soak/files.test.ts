import fc from 'fast-check';
import { beforeAll, expect, it } from 'vitest';
import { readStl } from '../../src/output/read-stl.js';
import { check } from '../../src/pipeline/check.js';
import { design } from '../../src/pipeline/design.js';
import { makeDesign } from '../../src/pipeline/make.js';
import { createKernel, type Kernel } from '../../src/solid/kernel.js';
import { weld } from '../../src/solid/weld.js';
import { InputError } from '../../src/units/faults.js';
import { mendedByAdmesh } from '../support/admesh.js';
import { crossingEdges } from '../support/crossing-edges.js';
import { readStrictly } from '../support/reference-reader.js';
import {
  sensibleAdapter,
  sensibleCollar,
  sensibleCoupling,
  sensibleCoupon,
  sensibleEndHolder,
  sensibleGauge,
  sensibleMotorPlate,
  sensibleNut,
  sensibleSleeve,
} from '../support/sensible-sheets/index.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await createKernel();
});

it.each([
  ['nuts', sensibleNut, 40],
  ['adapters', sensibleAdapter, 60],
  ['couplings', sensibleCoupling, 40],
  ['sleeves', sensibleSleeve, 40],
  ['collars', sensibleCollar, 40],
  ['end holders', sensibleEndHolder, 40],
  ['motor plates', sensibleMotorPlate, 40],
  ['coupons', sensibleCoupon, 8],
  ['gauges', sensibleGauge, 8],
] as const)('writes files of %s in which nobody finds anything to mend', async (_, sheets, numRuns) => {
  let made = 0;
  for (const sheet of fc.sample<object>(sheets, { numRuns, seed: 5 })) {
    const designed = designOf(sheet);
    if (!designed || check(designed).verdict === 'fail') continue;
    const { files, report } = await makeDesign(designed, { kernel, formats: ['stl', '3mf'] });
    made++;
    for (const { name, bytes } of files.filter((file) => file.name.endsWith('.stl'))) {
      expect(mendedByAdmesh(bytes), `${name} of ${JSON.stringify(sheet)}`).toEqual({});
      expect(crossingEdges(weld(readStl(bytes))), `${name} of ${JSON.stringify(sheet)}`).toBe(0);
    }
    const read = await readStrictly(files.find(({ name }) => name.endsWith('.3mf'))!.bytes);
    expect(read.warnings, JSON.stringify(sheet)).toEqual([]);
    expect(read.objects).toHaveLength(report.bodies.length);
    for (const [i, { isSound, low, high }] of read.objects.entries()) {
      expect(isSound, JSON.stringify(sheet)).toBe(true);
      expect(low[2]).toBe(0);
      expect(Math.min(low[0]!, low[1]!)).toBeGreaterThan(0);
      for (const other of read.objects.slice(i + 1)) expect(areApart({ low, high }, other)).toBe(true);
    }
  }
  expect(made).toBeGreaterThan(numRuns / 4);
});

type Box = { readonly low: readonly number[]; readonly high: readonly number[] };

function areApart(one: Box, other: Box): boolean {
  return [0, 1].some((axis) => one.high[axis]! < other.low[axis]! || other.high[axis]! < one.low[axis]!);
}

function designOf(sheet: object) {
  try {
    return design(sheet);
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}
