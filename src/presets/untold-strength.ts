import type { Material } from './material.js';

/** Share of its tensile strength that a plastic has at least across its layers, and in shear. @source common-practice: POM, nylon */
const LEAST_SHARE = 0.4;

/** Strain that a plastic takes for good at least: what crazes the brittlest glasses. @source common-practice */
export const LEAST_STRAIN = 0.005;

/**
 * What a plastic bears at least while it slides: MPa, MPa whatever the share of the time, MPa·m/s, mm/s; the lowest of printed
 * plastics, PLA and TPU. @source common-practice
 */
const LEAST_SLIDING = { pressureLimit: 0.3, pressureCap: 1, pvLimit: 0.02, speedLimit: 100 } as const;

/** Share of its glass transition, in °C, up to which something may stand on a plastic at least: that of PC. @source common-practice */
const LEAST_STANDING = 0.71;

/** Figures of sliding and standing of a plastic. */
type Slides = Pick<Material, keyof typeof LEAST_SLIDING | 'standingLimit'>;

/**
 * What a plastic of the sheet's own bears sliding and standing where it does not say: the least that is usual.
 *
 *     θ = min(θ_base, 0.71·T_g)        T_g in °C, of glasses
 *
 * @param base  of which nothing more is taken than that
 * @param glass T_g [°C]; undefined of a plastic that is no glass
 */
export function untoldSliding(base: Slides, glass: number | undefined): Slides {
  const standing = glass === undefined ? Infinity : LEAST_STANDING * glass;
  return { ...LEAST_SLIDING, standingLimit: Math.min(base.standingLimit, standing) };
}

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
