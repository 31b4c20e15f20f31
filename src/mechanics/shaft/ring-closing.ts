import { requireNotNegative, requirePositive, requireRange } from '../../units/require.js';

/** A slit ring that a clamp screw closes on its shaft. */
export interface SlitRing {
  /** ΔD, bore over shaft, on the diameter [mm], 0 or above */
  readonly play: number;
  /** e, of the screw from the axis, towards the slit [mm], > 0 */
  readonly offset: number;
  /** R, middle of the wall [mm], > 0 */
  readonly radius: number;
  /** h, wall [mm], > 0 */
  readonly thickness: number;
}

/**
 * Force at the screw line that closes the bore of a slit hub on its shaft, before anything is gripped: the greater of a thin ring whose bore
 * shrinks evenly, and of a thick one, a curved beam that turns about its back until both sides of the bore meet the shaft, 90° from the slit.
 *
 *     thin:   δ = π·ΔD·e / R      F = δ·E·I / (π·R·(2·e² + R²))      I = L·h³ / 12
 *     thick:  F = b·ΔD·E·A·ē / (2·R·(e + π·R/4))     b = 0.96        A = L·h      ē = R − h / ln((R + h/2) / (R − h/2))
 *
 * @param p.play       ΔD  bore over shaft, on the diameter      [mm]   0 or above
 * @param p.offset     e   of the screw from the axis            [mm]   > 0
 * @param p.radius     R   middle of the wall                    [mm]   > 0
 * @param p.thickness  h   of the wall                           [mm]   > 0, below 2·R
 * @param p.length     L   of the ring along the axis            [mm]   > 0
 * @param p.modulus    E   short-term, in the plane              [MPa]  > 0
 * @returns F, of all screws together [N]
 * @throws InputError  a value is outside its range
 * @validity a round wall, free at both ends of its slit; plane finite elements of 24 hubs, 1.7 to 20 times as wide as their bores, have 0.86 to
 *   1.04 of it where the screws stand as near to the bore as they can
 * @source derived: bending of a slit ring; e = R gives the handbook's 3·π·F·R³/(E·I); thick: the same by a curved beam
 * @example closingForce({ play: 0.15, offset: 14, radius: 9.5, thickness: 7, length: 16, modulus: 2000 }) // 44.1
 */
export function closingForce(p: SlitRing & { readonly length: number; readonly modulus: number }): number {
  requireRing(p);
  requirePositive('length', p.length);
  requirePositive('modulus', p.modulus);
  return p.length * p.modulus * Math.max(thinRing(p), thickRing(p));
}

/** F / (E·L) of a ring whose bore shrinks evenly [mm]. */
function thinRing({ play, offset, radius, thickness }: SlitRing): number {
  const travel = (Math.PI * play * offset) / radius;
  return (travel * thickness ** 3) / 12 / (Math.PI * radius * (2 * offset ** 2 + radius ** 2));
}

/** What the block beside the slit, no beam, takes off the stiffness: finite elements have 0.92 to 0.99. @source derived: finite elements */
const BLOCK_GIVE = 0.96;

/** F / (E·L) of a thick one [mm]. */
function thickRing(ring: SlitRing): number {
  const { play, offset, radius, thickness } = ring;
  return (BLOCK_GIVE * play * thickness * neutralOffset(ring)) / (2 * radius * (offset + (Math.PI * radius) / 4));
}

/** How far the neutral line of a curved beam lies inside its middle [mm]. */
function neutralOffset({ radius, thickness }: Pick<SlitRing, 'radius' | 'thickness'>): number {
  return radius - thickness / Math.log((radius + thickness / 2) / (radius - thickness / 2));
}

/** Give of what lies under the shaft's pressure, in widths of it by its modulus, of finite elements (0.86 to 1.16). @source derived: finite elements */
const LOCAL_GIVE = 1.1;

/**
 * Force that presses a slit hub on its shaft. A thin hub is a lever about its back; in a thick one the back bends too, and what lies under the
 * shaft gives, so that less arrives.
 *
 *     thin:   N = F·(e + R) / R
 *     thick:  N = F·(1 + 4·e / (π·R)) / (1 + 2·k·h·ē / (π·R²))      k = 1.1      ē of `closingForce`
 *
 * @param p.force      F  of all screws across the slit        [N]   0 or above
 * @param p.offset     e  of the screws from the axis          [mm]  > 0
 * @param p.radius     R  middle of the wall at the back       [mm]  > 0
 * @param p.thickness  h  of the wall                          [mm]  > 0, below 2·R
 * @returns N, the lesser of both [N]
 * @throws InputError  a value is outside its range
 * @validity the slit is not closed, and no web holds it open; plane finite elements of 24 hubs have 0.9 to 1.14 of it, those whose screws stand as
 *   near to the bore as they can 1.0 to 1.14
 * @source derived: lever with its hinge at the back; thick: a curved beam beside the give under the shaft
 * @example leverForce({ force: 405.9, offset: 14, radius: 9.5, thickness: 7 }) // 1004
 */
export function leverForce(p: Omit<SlitRing, 'play'> & { readonly force: number }): number {
  requireNotNegative('force', p.force);
  requireRing({ ...p, play: 0 });
  const { offset, radius, thickness } = p;
  const give = (2 * LOCAL_GIVE * thickness * neutralOffset(p)) / (Math.PI * radius ** 2);
  const thick = (1 + (4 * offset) / (Math.PI * radius)) / (1 + give);
  return p.force * Math.min(thinLever(p), thick);
}

/**
 * The lever of a thin hub about its back: no hub presses harder.
 *
 *     N/F = (e + R) / R
 *
 * @param p.offset  e  of the screws from the axis          [mm]  > 0
 * @param p.radius  R  middle of the wall at the back       [mm]  > 0
 * @returns N/F [-]
 * @throws InputError  a value is outside its range
 * @source derived: lever with its hinge at the back
 * @example thinLever({ offset: 14, radius: 9.5 }) // 2.474
 */
export function thinLever({ offset, radius }: Pick<SlitRing, 'offset' | 'radius'>): number {
  requirePositive('offset', offset);
  requirePositive('radius', radius);
  return (offset + radius) / radius;
}

/**
 * Strain at the back of a slit hub that is closed on its shaft; it stays as long as the hub is clamped.
 *
 *     ε = F·(e + R) / (L·h²/6) / E      with F of a thin ring; L and E cancel
 *
 * @param p.play       ΔD  bore over shaft, on the diameter      [mm]   0 or above
 * @param p.offset     e   of the screw from the axis            [mm]   > 0
 * @param p.radius     R   middle of the wall                    [mm]   > 0
 * @param p.thickness  h   of the wall                           [mm]   > 0
 * @returns ε [-]
 * @throws InputError  a value is outside its range
 * @validity a straight beam; the curved one has 0.8 × of it in tension outside and 1.3 × in compression at the bore
 * @source derived: bending of a slit ring
 * @example closingStrain({ play: 0.15, offset: 14, radius: 9.5, thickness: 7 }) // 0.00397
 */
export function closingStrain(p: SlitRing): number {
  requireRing(p);
  return (6 * thinRing(p) * (p.offset + p.radius)) / p.thickness ** 2;
}

function requireRing(p: SlitRing): void {
  requireNotNegative('play', p.play);
  requirePositive('offset', p.offset);
  requirePositive('radius', p.radius);
  requirePositive('thickness', p.thickness);
  requireRange('thickness', p.thickness, 0, 2 * p.radius);
}
