/** A slotted spring pin [mm]. */
interface SpringPin {
  readonly diameter: number;
  /** in which it is made */
  readonly longest: number;
}

/** Slotted spring pins. @source memory: ISO 8752 */
const PINS: readonly SpringPin[] = [
  { diameter: 1.5, longest: 20 },
  { diameter: 2, longest: 30 },
  { diameter: 2.5, longest: 30 },
  { diameter: 3, longest: 40 },
  { diameter: 4, longest: 50 },
  { diameter: 5, longest: 60 },
  { diameter: 6, longest: 60 },
];
const LENGTHS = [6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30, 32, 35, 40, 45, 50, 55, 60] as const;

/** Diameters in which slotted spring pins are made [mm]. */
export const SPRING_PINS: readonly number[] = PINS.map(({ diameter }) => diameter);

/**
 * The longest spring pin of a diameter that does not stand out.
 *
 * @param diameter  one of SPRING_PINS   [mm]
 * @param most      longest that may be  [mm]
 * @returns length, or undefined where none is so short [mm]
 * @source memory: lengths of ISO 8752
 * @example springPinLength(2, 21) // 20 mm
 */
export function springPinLength(diameter: number, most: number): number | undefined {
  const pin = PINS.find((one) => Math.abs(one.diameter - diameter) < 1e-9);
  return pin && LENGTHS.findLast((length) => length <= Math.min(most, pin.longest) + 1e-9);
}
