import { hexagonOutline } from '../../../solid/outline.js';
import type { LineKind, Stroke } from '../../part-views.js';
import type { Bore } from '../bore.js';
import { line, loop, ring } from './strokes.js';

/** A bore of any form seen along its axis from +Z, its flat or keyway on −X. */
export function boreSeen({ form, diameter, across, key }: Bore, kind: LineKind): Stroke[] {
  const radius = diameter / 2;
  const arc = (from: number, to: number): Stroke => ({ kind: 'arc', line: kind, center: [0, 0], radius, from, to });
  if (form === 'hexagon') return [loop(kind, hexagonOutline({ acrossFlats: across!, turn: 30 }))];
  if (form === 'd') {
    const flat = radius - across!;
    const end = degrees(Math.acos(flat / radius));
    return [arc(-end, end), chord(flat)];
  }
  if (form === 'double-d') {
    const flat = across! / 2;
    const end = degrees(Math.acos(flat / radius));
    return [arc(end, 180 - end), arc(180 + end, 360 - end), chord(flat), chord(-flat)];
  }
  if (!key) return [ring(kind, [0, 0], radius)];
  const half = key.width / 2;
  const side = Math.sqrt(radius ** 2 - half ** 2);
  const end = 180 - degrees(Math.asin(half / radius));
  const [out, foot] = [-(radius + key.depth), -side];
  return [
    arc(-end, end),
    line(kind, [foot, half], [out, half]),
    line(kind, [out, half], [out, -half]),
    line(kind, [out, -half], [foot, -half]),
  ];

  function chord(x: number): Stroke {
    const y = Math.sqrt(radius ** 2 - x ** 2);
    return line(kind, [x, -y], [x, y]);
  }
}

function degrees(radians: number): number {
  return (radians * 180) / Math.PI;
}
