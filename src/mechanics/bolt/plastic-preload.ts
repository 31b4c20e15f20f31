import { requirePositive } from '../../units/require.js';

/** What holds a screw's force down. */
export type PreloadLimit = 'head' | 'nut' | 'tightening';

/**
 * Force a screw can be given in a plastic part: what the plastic bears under head and nut, and what the tightening
 * torque gives.
 *
 *     F = min(p·A_head, p·A_nut, F_T)      A = π/4·(dk² − dh²), of a bare nut √3/2·s² − π/4·dh²
 *
 * @param p.pressure      p    that the plastic bears when freshly tightened     [MPa]  > 0
 * @param p.headDiameter  dk   of head or washer                                 [mm]   above the hole
 * @param p.nut.acrossFlats   s    of a bare nut                               [mm]   above the hole
 * @param p.nut.diameter      dk   of a washer under the nut, in its place     [mm]   above the hole
 * @param p.holeDiameter  dh   of the clearance hole                             [mm]   > 0
 * @param p.tightening    F_T  that the tightening torque gives                  [N]    > 0
 * @returns F [N], and what holds it down
 * @throws InputError  a value is not above 0, or leaves no area to bear on
 * @source derived: pressure on the areas under head and nut
 * @example plasticPreload({ pressure: 26.667, headDiameter: 5.5, nut: { acrossFlats: 5.5 }, holeDiameter: 3.4, tightening: 2000 }).force // 391.4
 */
export function plasticPreload(p: {
  readonly pressure: number;
  readonly headDiameter: number;
  readonly nut: { readonly acrossFlats: number } | { readonly diameter: number };
  readonly holeDiameter: number;
  readonly tightening: number;
}): { readonly force: number; readonly heldBy: PreloadLimit } {
  requirePositive('pressure', p.pressure);
  requirePositive('holeDiameter', p.holeDiameter);
  requirePositive('tightening', p.tightening);
  const hole = (Math.PI / 4) * p.holeDiameter ** 2;
  const head = (Math.PI / 4) * p.headDiameter ** 2 - hole;
  const nut =
    ('diameter' in p.nut ? (Math.PI / 4) * p.nut.diameter ** 2 : (Math.sqrt(3) / 2) * p.nut.acrossFlats ** 2) - hole;
  requirePositive('headDiameter', head);
  requirePositive('nut', nut);
  const forces: readonly (readonly [PreloadLimit, number])[] = [
    ['head', p.pressure * head],
    ['nut', p.pressure * nut],
    ['tightening', p.tightening],
  ];
  const [heldBy, force] = forces.reduce((least, next) => (next[1] < least[1] ? next : least));
  return { force, heldBy };
}
