import { type Check, notJudged } from '../../judge/check.js';
import { verdictOf } from '../../judge/run-checks.js';
import type { Material } from '../../presets/material.js';

/**
 * A check that asks which plastic it is where nobody tells, since figures that are another's pass nothing; where even those fail,
 * it fails.
 */
export function askingPlastic<Design extends { readonly material: Pick<Material, 'unnamed'> }>(
  check: Check<Design>,
): Check<Design> {
  return {
    ...check,
    run: (design, limits) => {
      const found = check.run(design, limits);
      const passes = found !== undefined && verdictOf(check, found, limits) === 'pass';
      return design.material.unnamed && passes ? notJudged('material.preset') : found;
    },
  };
}
