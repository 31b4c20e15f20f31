import { pullAsked } from '../common/axial-grip.js';
import { greasedGrip } from '../common/hold-figures.js';
import type { Usual } from '../common/untold.js';
import type { CollarDesign } from './dimensions.js';

/** Fields of the sheet without which nobody knows what a collar must bear: what pulls, how warm it is, what a jam pushes. */
export function untoldOf({ axial, temperature, screw, jam }: CollarDesign): string[] {
  return [
    ...pullAsked(axial).missing,
    ...(temperature.known ? [] : ['duty.temperature']),
    ...(screw && jam === undefined ? ['motor.torque'] : []),
  ];
}

/** The same collar on a greased shaft, where nobody tells; undefined where the sheet does. */
function greased(design: CollarDesign): CollarDesign | undefined {
  const grip = greasedGrip(design.grip);
  return grip && { ...design, grip };
}

/** What a plain shaft is held by hangs on whether it is washed. */
export const USUAL_SHAFT: Usual<CollarDesign> = { field: 'hold.degreased', worse: greased };
