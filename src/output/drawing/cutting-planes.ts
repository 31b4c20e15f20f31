import type { CuttingPlane, Point } from '../../parts/part-views.js';
import { arrowInk, type Ink, lineInk, textInk } from './ink.js';

/** Of the wide end: clear of the outline, its length, and the height of its letter [mm of paper]. */
const CLEAR = 1.5;
const LENGTH = 5;
const LETTER = 3.5;
const SHAFT = 5;

/** How far a cutting plane stands out of a view [mm of paper]. */
export const PLANE_REACH = CLEAR + LENGTH;
/** Its arrow's shaft, and room for its letter beside that. */
export const PLANE_ARROW = 9;
export const PLANE_LETTER = 8;

/** Wide ends of cutting planes; arrows touch them the way the section is looked at, letters stand at their feet. */
export function cuttingPlanesInk(planes: readonly CuttingPlane[], onPaper: (point: Point) => Point): Ink[] {
  return planes.flatMap(({ letter, at, away: [x, y], look: [u, v] }): Ink[] => {
    const [left, top] = onPaper(at);
    const along = (distance: number): Point => [left + distance * x, top - distance * y];
    const end = along(PLANE_REACH);
    const foot: Point = [end[0] - SHAFT * u, end[1] + SHAFT * v];
    const place: Point = [foot[0] - 1.5 * u + 2.6 * x, foot[1] + 1.5 * v - 2.6 * y + LETTER / 2];
    return [
      lineInk('wide', along(CLEAR), end),
      lineInk('narrow', foot, end),
      arrowInk(end, foot, false),
      textInk(letter, { at: place, height: LETTER, anchor: 'middle', bold: true }),
    ];
  });
}
