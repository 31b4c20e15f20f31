import { expect } from 'vitest';
import { check } from '../../src/pipeline/check.js';
import { design } from '../../src/pipeline/design.js';
import { makePart } from '../../src/pipeline/make.js';
import type { Kernel } from '../../src/solid/kernel.js';
import { InputError } from '../../src/units/faults.js';

/** Makes a random sheet: it is refused, fails with a reason, or comes out sound. */
export async function soundOrRefused(sheet: object, kernel: Kernel): Promise<'refused' | 'failed' | 'made'> {
  let made: ReturnType<typeof design>;
  try {
    made = design(sheet);
  } catch (error) {
    if (error instanceof InputError) return 'refused';
    throw error;
  }
  const checked = check(made);
  if (checked.verdict === 'fail') {
    for (const { verdict, message } of checked.checks)
      if (verdict === 'fail') expect(message.length).toBeGreaterThan(10);
    return 'failed';
  }
  const { report } = await makePart(sheet, { kernel });
  const solid = report.checks.filter(({ group, verdict }) => group === 'solid' && verdict !== 'pass');
  expect(solid.map(({ id, message }) => `${id}: ${message}`)).toEqual([]);
  return 'made';
}
