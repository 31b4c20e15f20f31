import type { Material } from './material.js';

/** Share of its tensile strength that a plastic has at least across its layers, and in shear. @source common-practice: POM, nylon */
const LEAST_SHARE = 0.4;

/** Strain that a plastic takes for good at least: what crazes the brittlest glasses. @source common-practice */
export const LEAST_STRAIN = 0.005;

/** Strengths that a sheet left out, and why they are taken so. */
export interface UntoldStrength {
  readonly tensileAcross: number;
  readonly shear: number;
  readonly why: string;
}

/**
 * Strengths of a plastic of which the sheet tells the tensile strength alone. One of the sheet's own has the least that is usual; a
 * preset keeps its own shares of a smaller tensile strength, and its own figures beside a larger one.
 *
 *     across, shear = 0.4·σ        of a preset min(1, σ/σ_preset) of its own
 *
 * @param base     the preset that stands behind it
 * @param tensile  σ [MPa]
 * @param isOwn    whether it is a plastic of the sheet's own
 */
export function untoldStrength(
  base: Pick<Material, 'name' | 'tensile' | 'tensileAcross' | 'shear'>,
  tensile: number,
  isOwn: boolean,
): UntoldStrength {
  if (isOwn) {
    const least = LEAST_SHARE * tensile;
    return { tensileAcross: least, shear: least, why: '0.4 of its tensile, the least that is usual; not given' };
  }
  const kept = Math.min(1, tensile / base.tensile);
  return {
    tensileAcross: kept * base.tensileAcross,
    shear: kept * base.shear,
    why: `the share of its tensile that ${base.name} has; not given`,
  };
}
