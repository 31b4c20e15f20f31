import type { Advice } from '../judge/advice.js';
import { advise } from '../pipeline/advise.js';
import type { DesignOptions } from '../pipeline/design.js';
import type { AxisDesign } from './axis-design.js';

/** Cures of the parts of an axis, each by PART/CHECK; its lines stand in the section of the part. What goes across the parts has none. */
export function adviseAxis({ parts }: AxisDesign, options: DesignOptions = {}): Advice {
  return {
    checks: parts.flatMap(({ role, sheet }) =>
      advise(sheet, options).checks.map((one) => ({ ...one, check: `${role}/${one.check}` })),
    ),
  };
}
