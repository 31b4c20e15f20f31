import { pullAsked } from '../common/axial-grip.js';
import type { CollarDesign } from './dimensions.js';

/** Fields of the sheet without which nobody knows what a collar must bear: what pulls, how warm it is, what a jam pushes. */
export function untoldOf({ axial, temperature, screw, jam }: CollarDesign): string[] {
  return [
    ...pullAsked(axial).missing,
    ...(temperature.known ? [] : ['duty.temperature']),
    ...(screw && jam === undefined ? ['motor.torque'] : []),
  ];
}
