import { PULLS } from '../../sheet/sections/duty.js';
import { ownWeight } from '../common/axial-path.js';
import { roundShaft } from '../common/bore.js';
import { defined } from '../common/defined.js';
import type { Loaded } from '../common/load-cases.js';
import type { EndHolderDesign } from './dimensions.js';

/** A holder that carries along the screw is pulled both ways, and carries a screw that does not lie besides its load. */
export function loaded({ duty, screw }: EndHolderDesign): Loaded {
  const { load, span, axis } = duty;
  const bar = axis === 'horizontal' ? {} : { screw: roundShaft(screw.major) };
  const weight = ownWeight({ ...bar, ...defined({ span }) }).force;
  return { duty: { ...duty, ...(load === undefined ? {} : { load: load + weight }) }, screw, pulls: PULLS };
}
