import { hexagonOutline } from '../../../solid/outline.js';
import type { LineKind, Stroke } from '../../part-views.js';
import type { Bore } from '../bore.js';
import { arc, line } from './strokes.js';

/**
 * A bore of any form seen along its axis from +Z, its flat or keyway on −X.
 * @param slit width of a slit on +X, where no edge is to be seen [mm]
 */
export function boreSeen(bore: Bore, kind: LineKind, slit = 0): Stroke[] {
  const { form, diameter, across, key } = bore;
  const [radius, half] = [diameter / 2, slit / 2];
  const round = (from: number, to: number): Stroke => arc(kind, [0, 0], radius, from, to);
  const open = angleAt(half, radius);
  /** from the slit around to an end on −X, and back to the slit */
  const around = (end: number): Stroke[] => (open > 0 ? [round(open, end), round(-end, -open)] : [round(-end, end)]);
  const chord = (x: number, reach: number): Stroke[] =>
    x > 0 && half > 0
      ? [line(kind, [x, half], [x, reach]), line(kind, [x, -reach], [x, -half])]
      : [line(kind, [x, -reach], [x, reach])];
  if (form === 'hexagon') return hexagon(across!, kind, chord);
  if (form === 'd') {
    const flat = radius - across!;
    return [...around(90 + angleAt(-flat, radius)), ...chord(flat, Math.sqrt(radius ** 2 - flat ** 2))];
  }
  if (form === 'double-d') {
    const flat = across! / 2;
    const [end, reach] = [90 - angleAt(flat, radius), Math.sqrt(radius ** 2 - flat ** 2)];
    return [round(end, 180 - end), round(180 + end, 360 - end), ...chord(flat, reach), ...chord(-flat, reach)];
  }
  if (!key) return open > 0 ? [round(open, 360 - open)] : [{ kind: 'circle', line: kind, center: [0, 0], radius }];
  const side = key.width / 2;
  const [out, foot] = [-(radius + key.depth), -Math.sqrt(radius ** 2 - side ** 2)];
  return [
    ...around(180 - angleAt(side, radius)),
    line(kind, [foot, side], [out, side]),
    line(kind, [out, side], [out, -side]),
    line(kind, [out, -side], [foot, -side]),
  ];
}

/** Its sides one by one, a flat on +X. */
function hexagon(acrossFlats: number, kind: LineKind, chord: (x: number, reach: number) => Stroke[]): Stroke[] {
  const corners = hexagonOutline({ acrossFlats, turn: 30 });
  return corners.flatMap((from, i) => {
    const to = corners[(i + 1) % 6]!;
    return from[0] > 0 && to[0] > 0 && Math.abs(from[0] - to[0]) < 1e-9
      ? chord(from[0], Math.abs(from[1]))
      : [line(kind, from, to)];
  });
}

/** Angle of a point of a circle that lies so far off its axis [degrees]. */
function angleAt(off: number, radius: number): number {
  return (Math.asin(Math.max(-1, Math.min(1, off / radius))) * 180) / Math.PI;
}
