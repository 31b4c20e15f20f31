const RADIANS = Math.PI / 180;

/**
 * Sine of an angle in degrees, exact at multiples of 30° and equal to the bit in all four quadrants.
 *
 * @param degrees  angle  [degrees]  any finite number
 * @returns sin, −1 to 1  [-]
 * @example sind(150) // 0.5
 */
export function sind(degrees: number): number {
  const turned = degrees % 360;
  const folded = Math.abs(turned) > 180 ? turned - Math.sign(turned) * 360 : turned;
  const size = Math.abs(folded) > 90 ? 180 - Math.abs(folded) : Math.abs(folded);
  return size === 0 ? 0 : Math.sign(folded) * firstQuadrantSine(size);
}

/**
 * Cosine of an angle in degrees, exact at multiples of 30° and equal to the bit in all four quadrants.
 *
 * @param degrees  angle  [degrees]  any finite number
 * @returns cos, −1 to 1  [-]
 * @example cosd(90) // 0
 */
export function cosd(degrees: number): number {
  const turned = Math.abs(degrees % 360);
  const folded = turned > 180 ? 360 - turned : turned;
  return folded > 90 ? -cosd(180 - folded) : folded === 90 ? 0 : firstQuadrantSine(90 - folded);
}

/**
 * Unit vector at corner `index` of a regular polygon of `count` corners, corner 0 on +X. Folded by whole numbers,
 * so corner 17 of 48 is the exact mirror image of corner 7, and no error adds up around the circle.
 *
 * @param index  corner, any whole number; it wraps            [-]
 * @param count  corners of the polygon                        [-]  above 0
 * @returns [cos, sin] of 360°·index/count                     [-]
 * @example unitAt(12, 48) // [0, 1]
 */
export function unitAt(index: number, count: number): [number, number] {
  const wrapped = ((index % count) + count) % count;
  const quarter = Math.floor((4 * wrapped) / count);
  const rest = 4 * wrapped - quarter * count;
  const along = firstQuadrantSine((90 * (count - rest)) / count);
  const across = rest === 0 ? 0 : firstQuadrantSine((90 * rest) / count);
  if (quarter === 0) return [along, across];
  if (quarter === 1) return [across === 0 ? 0 : -across, along];
  if (quarter === 2) return [-along, across === 0 ? 0 : -across];
  return [across, -along];
}

/**
 * All corners of a regular polygon, as {@link unitAt} gives each, to the bit; a quarter of the work where it has four
 * alike.
 *
 * @param count  corners                    [-]  1 or more
 * @returns [cos, sin] of each, corner 0 on +X  [-]
 * @example unitCorners(4) // [[1, 0], [0, 1], [-1, 0], [0, -1]]
 */
export function unitCorners(count: number): [number, number][] {
  if (count % 4 !== 0) return Array.from({ length: count }, (_, i) => unitAt(i, count));
  const quarter = Array.from({ length: count / 4 }, (_, i) => unitAt(i, count));
  const back = (value: number) => (value === 0 ? 0 : -value);
  return [
    ...quarter,
    ...quarter.map(([x, y]): [number, number] => [back(y), x]),
    ...quarter.map(([x, y]): [number, number] => [-x, back(y)]),
    ...quarter.map(([x, y]): [number, number] => [y, -x]),
  ];
}

/** Sine of an angle above 0° and up to 90°; below 45° by sine and above by cosine, so that complements agree. */
function firstQuadrantSine(degrees: number): number {
  if (degrees === 30) return 0.5;
  if (degrees === 90) return 1;
  return degrees <= 45 ? Math.sin(degrees * RADIANS) : Math.cos((90 - degrees) * RADIANS);
}
