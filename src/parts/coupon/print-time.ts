/** Mean speed of small parts, corners and travel included, mm/s. @source common-practice */
const MEAN_SPEED = 50;

/**
 * Time to print a volume solid, by the line that the nozzle lays.
 *
 *     t = V / (w·h·v)
 *
 * @param volume   V  mm³
 * @param printer  w line width, h layer height  [mm]
 * @returns minutes, and the mean speed v they rest on  [mm/s]
 * @example printTime(2160, { lineWidth: 0.45, layer: 0.12 }).minutes // 13.3
 */
export function printTime(
  volume: number,
  { lineWidth, layer }: { readonly lineWidth: number; readonly layer: number },
): { readonly minutes: number; readonly speed: number } {
  return { minutes: volume / (lineWidth * layer * MEAN_SPEED) / 60, speed: MEAN_SPEED };
}
