import { radians } from '../../../mechanics/angle.js';
import { closingStrain } from '../../../mechanics/shaft/ring-closing.js';
import type { NutDesign } from '../dimensions.js';

/**
 * Play along the axis that closing the slit of a clamped nut takes out, at most: until the slit shuts at its outer end, or the
 * back of the body is strained by all that its plastic takes for good.
 *
 *     a = ΔD·tan(β)        ΔD = min(w·R/(π·r), ε_c/ε₁)
 *     w = width of the slit, r = radius of the body, R = middle of its wall, ε₁ = strain at the back for 1 mm of ΔD, β = flank
 *
 * @returns mm; 0 of a nut without such a slit
 */
export function playTakenBySlit({ family, finished, screw, material }: NutDesign): number {
  if (family?.kind !== 'clamped') return 0;
  const [outer, inner] = [finished.body.across / 2, finished.thread.major / 2];
  const ring = { radius: (outer + inner) / 2, thickness: outer - inner, offset: family.clamp.offset };
  const shut = (family.slit.width * ring.radius) / (Math.PI * outer);
  const strained = material.creep.strain / closingStrain({ ...ring, play: 1 });
  return Math.min(shut, strained) * Math.tan(radians(screw.flankAngle));
}
