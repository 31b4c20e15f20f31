/** The series R40 over one decade. */
const R40: readonly number[] = [
  100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300, 315, 335, 355,
  375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950,
];

function r40(index: number): number {
  const place = ((index % R40.length) + R40.length) % R40.length;
  return R40[place]! * 10 ** Math.floor(index / R40.length);
}

function nearestIndex(value: number): number {
  const guess = Math.round(40 * Math.log10(value / 100));
  const near = [guess - 1, guess, guess + 1];
  const distance = (index: number) => Math.abs(Math.log(r40(index) / value));
  return near.reduce((best, index) => (distance(index) < distance(best) ? index : best));
}

/**
 * The nearest number by ratio of the series R40, to which thread tolerances are rounded, moved by whole steps.
 * Four steps are one grade: a ratio of 1.25.
 *
 * @param value a tolerance                                   [µm]  > 0
 * @param steps how many numbers of the series further        [-]   whole, 0 by default
 * @returns a number of the series                            [µm]
 * @source iso-965-1: tolerances are rounded to the series R40
 * @example preferredNumber(230) // 236 µm
 */
export function preferredNumber(value: number, steps = 0): number {
  return Number(r40(nearestIndex(value) + steps).toPrecision(3));
}
