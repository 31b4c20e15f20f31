import { cosd, sind } from '../../../solid/angles.js';
import type { Companion, Stroke } from '../../part-views.js';
import { ring } from './strokes.js';

/** A compression spring about the axis, pressed together to the length between its ends. */
export interface Coil {
  readonly inside: number;
  readonly outside: number;
  /** with its turns on each other */
  readonly solid: number;
  readonly from: number;
  readonly to: number;
}

/** Corners around the wire, and steps of a turn. */
const AROUND = 10;
const STEPS = 36;

interface Wire {
  readonly diameter: number;
  readonly radius: number;
  readonly turns: number;
  /** heights of its middle at both ends */
  readonly low: number;
  readonly high: number;
}

function wireOf({ inside, outside, solid, from, to }: Coil): Wire {
  const diameter = (outside - inside) / 2;
  return {
    diameter,
    radius: (outside + inside) / 4,
    turns: Math.max(2, Math.round(solid / diameter)),
    low: from + diameter / 2,
    high: to - diameter / 2,
  };
}

/** The spring as a closed coil. */
export function springCoil(coil: Coil): Companion {
  const { diameter, radius, turns, low, high } = wireOf(coil);
  const rings = turns * STEPS + 1;
  const positions = new Float64Array(3 * AROUND * rings);
  for (let i = 0; i < rings; i++) {
    const [turn, z] = [(360 * i) / STEPS, low + ((high - low) * i) / (rings - 1)];
    for (let k = 0; k < AROUND; k++) {
      const around = (360 * k) / AROUND;
      const r = radius + (diameter / 2) * cosd(around);
      positions.set([r * cosd(turn), r * sind(turn), z + (diameter / 2) * sind(around)], 3 * (i * AROUND + k));
    }
  }
  const corner = (i: number, k: number) => i * AROUND + (k % AROUND);
  const triangles: number[] = [];
  for (let i = 1; i < rings; i++) {
    for (let k = 0; k < AROUND; k++) {
      const [a, b, c, d] = [corner(i - 1, k), corner(i - 1, k + 1), corner(i, k + 1), corner(i, k)];
      triangles.push(a, c, b, a, d, c);
    }
  }
  for (let k = 1; k < AROUND - 1; k++) {
    triangles.push(0, k, k + 1);
    triangles.push(corner(rings - 1, 0), corner(rings - 1, k + 1), corner(rings - 1, k));
  }
  return { name: 'spring', mesh: { positions, triangles: Uint32Array.from(triangles) } };
}

/** Sections of its turns above and below the axis, +Z to the left. */
export function springSection(coil: Coil): Stroke[] {
  const { diameter, radius, turns, low, high } = wireOf(coil);
  const pitch = (high - low) / turns;
  const at = (count: number, first: number, side: 1 | -1) =>
    Array.from({ length: count }, (_, i) => ring('thin', [-(first + pitch * i), side * radius], diameter / 2));
  return [...at(turns + 1, low, 1), ...at(turns, low + pitch / 2, -1)];
}
