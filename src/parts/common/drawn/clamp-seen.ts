import type { LineKind, Point, Stroke } from '../../part-views.js';
import { type Clamp, nutPocket, nutPocketReach } from '../clamp.js';
import { roofedOutline } from '../side-hole.js';
import { line, loop } from './strokes.js';

/**
 * Clamp screws on +X seen along the axis: passage, head pocket and nut pocket between their seats and the outside.
 * @param radius of the round outside [mm]
 */
export function clampSeenAlong(clamp: Clamp, radius: number): Stroke[] {
  const { offset, hole, head, headSeat, nutSeat } = clamp;
  const walls = (half: number, from: number, way: 1 | -1): Stroke[] =>
    [offset - half, offset + half].map((x) => line('hidden', [x, from], [x, way * Math.sqrt(radius ** 2 - x ** 2)]));
  const seat = (half: number, y: number) => line('hidden', [offset - half, y], [offset + half, y]);
  const corners = nutPocketReach(clamp);
  return [
    ...[-1, 1].map((side): Stroke => {
      const x = offset + (side * hole) / 2;
      return line('hidden', [x, -headSeat], [x, nutSeat]);
    }),
    ...walls(head / 2, -headSeat, -1),
    seat(head / 2, -headSeat),
    ...walls(corners, nutSeat, 1),
    seat(corners, nutSeat),
    line('centre', [offset, -radius - 2], [offset, radius + 2]),
  ];
}

/**
 * Clamp screws seen along themselves, such as on the wall of a slit: their passages with what stands behind them.
 * @param onPaper place of a point [x, z] of the part
 * @param behind  pocket that lies behind the wall looked at
 */
export function clampSeenAcross(clamp: Clamp, onPaper: (point: Point) => Point, behind: 'nut' | 'head'): Stroke[] {
  const { offset, heights, hole, head, nut } = clamp;
  const pocket = behind === 'nut' ? nutPocket(clamp) : roofedOutline(head / 2);
  return heights.flatMap((height) => {
    const drawn = (kind: LineKind, outline: readonly Point[]) =>
      loop(
        kind,
        outline.map(([x, z]) => onPaper([offset + x, height + z])),
      );
    const reach = Math.max(head, nut) / 2 + 1.5;
    return [
      drawn('outline', roofedOutline(hole / 2)),
      drawn('hidden', pocket),
      line('centre', onPaper([offset - reach, height]), onPaper([offset + reach, height])),
      line('centre', onPaper([offset, height - reach]), onPaper([offset, height + reach])),
    ];
  });
}
