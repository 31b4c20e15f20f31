import type { Stroke } from '../../part-views.js';
import type { SetScrewPocket } from '../set-screw-pocket.js';
import { box, line } from './strokes.js';

/**
 * A set screw on −X seen along the axis from the end that its nut is slipped in at.
 * @param from  reach of the bore on that side [mm]
 * @param to    radius of the outside [mm]
 */
export function setScrewSeenAlong({ hole, slot, bore }: SetScrewPocket, from: number, to: number): Stroke[] {
  const walls = (half: number, start: number, end: number): Stroke[] =>
    [-half, half].map((y) => line('hidden', [-start, y], [-end, y]));
  const at = (half: number) => Math.sqrt(to ** 2 - half ** 2);
  const middle = line('centre', [-from + 1, 0], [-to - 2, 0]);
  if (bore) {
    const [narrow, wide] = [hole / 2, bore.diameter / 2];
    return [
      ...walls(narrow, from, bore.inner),
      ...walls(wide, bore.inner, at(wide)),
      line('hidden', [-bore.inner, -wide], [-bore.inner, wide]),
      middle,
    ];
  }
  if (!slot) return [...walls(hole / 2, from, at(hole / 2)), middle];
  const { inner, thickness, width } = slot;
  return [
    ...walls(hole / 2, from, inner),
    ...walls(hole / 2, inner + thickness, at(hole / 2)),
    box('outline', [-inner - thickness, -width / 2], [-inner, width / 2]),
    middle,
  ];
}
