import { requireNotNegative, requirePositive, requireRange, requireWhole } from '../../units/require.js';

/** Share by which one jaw may carry more than its part, with a soft insert between. @source memory: handbook of couplings */
const UNEVEN_SHARE = 1.5;

/**
 * Radius at which an even pressure on a jaw's flank acts.
 *
 *     r_m = 2/3·(ro³ − ri³) / (ro² − ri²)
 *
 * @param p.outer  ro  of the jaws                [mm]  above ri
 * @param p.inner  ri  of the room inside them    [mm]  0 or above
 * @returns r_m [mm]
 * @throws InputError  a value is outside its range
 * @source derived: centre of an even pressure around the axis
 * @example jawRadius({ outer: 13, inner: 7 }) // 10.3
 */
export function jawRadius(p: { readonly outer: number; readonly inner: number }): number {
  requireNotNegative('inner', p.inner);
  requirePositive('outer', p.outer - p.inner);
  return ((2 / 3) * (p.outer ** 3 - p.inner ** 3)) / (p.outer ** 2 - p.inner ** 2);
}

/**
 * Height over its foot at which a jaw is pushed: in its middle where the shafts are in line, towards its tip where they
 * lean, at the tip where nothing soft evens it out.
 *
 *     h = middle + (tip − middle)·min(1, θ·H / s)
 *
 * @param p.tip      upper end of the contact over the foot          [mm]       0 or above
 * @param p.middle   middle of the contact over the foot             [mm]       0 to tip
 * @param p.angle    θ  between the shafts                           [degrees]  0 to 5
 * @param p.height   H  of the jaws                                  [mm]       > 0
 * @param p.squeeze  s  of a lobe at its flank, built in and by load [mm]       0 or above
 * @returns h [mm]
 * @throws InputError  a value is outside its range
 * @source common-practice: angular error moves the contact to the tips
 * @example jawArm({ tip: 8, middle: 4, angle: 0.3, height: 8, squeeze: 0.0838 }) // 6
 */
export function jawArm(p: {
  readonly tip: number;
  readonly middle: number;
  readonly angle: number;
  readonly height: number;
  readonly squeeze: number;
}): number {
  requireNotNegative('middle', p.middle);
  requireNotNegative('tip', p.tip - p.middle);
  requireRange('angle', p.angle, 0, 5);
  requirePositive('height', p.height);
  requireNotNegative('squeeze', p.squeeze);
  const lean = Math.tan((p.angle * Math.PI) / 180) * p.height;
  const share = lean === 0 ? 0 : Math.min(1, lean / p.squeeze);
  return p.middle + (p.tip - p.middle) * share;
}

/** Stresses at the foot of a jaw [MPa]. */
export interface JawStresses {
  /** bending: it opens the layers of a hub that is printed standing */
  readonly bending: number;
  /** shear along the layers */
  readonly shear: number;
}

/**
 * Stresses at the foot of the jaw that carries most.
 *
 *     F = K·T / (n·r)     σ = F·h / (l·w²/6)     τ = 1.5·F / (l·w)
 *
 * @param p.torque   T  through the coupling                    [N·mm]  0 or above
 * @param p.jaws     n  jaws that carry: those of one hub, or 1 without an insert    [-]  whole, 1 to 12
 * @param p.radius   r  at which the flank is pushed            [mm]    > 0
 * @param p.arm      h  of the force over the foot              [mm]    > 0
 * @param p.length   l  radial length of the jaw                [mm]    > 0
 * @param p.width    w  tangential width of the jaw             [mm]    > 0
 * @param p.uneven   K  how much more than its part one carries [-]     1 to 3, default 1.5; 1 where one carries all
 * @returns bending and shear [MPa]
 * @throws InputError  a value is outside its range
 * @source derived: short cantilever of rectangular section
 * @source memory: uneven share of soft inserts
 * @example jawStresses({ torque: 1000, jaws: 3, radius: 10, arm: 8, length: 8, width: 6 }).bending // 8.33
 */
export function jawStresses(p: {
  readonly torque: number;
  readonly jaws: number;
  readonly radius: number;
  readonly arm: number;
  readonly length: number;
  readonly width: number;
  readonly uneven?: number | undefined;
}): JawStresses {
  const { uneven = UNEVEN_SHARE } = p;
  requireNotNegative('torque', p.torque);
  requireWhole('jaws', p.jaws, 1, 12);
  requirePositive('radius', p.radius);
  requirePositive('arm', p.arm);
  requirePositive('length', p.length);
  requirePositive('width', p.width);
  requireRange('uneven', uneven, 1, 3);
  const force = (uneven * p.torque) / (p.jaws * p.radius);
  return { bending: (6 * force * p.arm) / (p.length * p.width ** 2), shear: (1.5 * force) / (p.length * p.width) };
}
