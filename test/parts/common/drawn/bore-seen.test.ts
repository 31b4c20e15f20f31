import { describe, expect, it } from 'vitest';
import type { Bore } from '../../../../src/parts/common/bore.js';
import { boreSeen } from '../../../../src/parts/common/drawn/bore-seen.js';
import { flipped } from '../../../../src/parts/common/drawn/flipped.js';
import type { Point, Stroke } from '../../../../src/parts/part-views.js';

const BORES: Readonly<Record<string, Bore>> = {
  round: { form: 'round', diameter: 8 },
  d: { form: 'd', diameter: 5, across: 4.5 },
  'two flats': { form: 'double-d', diameter: 8, across: 6 },
  keyed: { form: 'keyed', diameter: 14, key: { width: 5, depth: 2.3 } },
  hexagon: { form: 'hexagon', diameter: 9.24, across: 8 },
};

function endsOf(stroke: Stroke): Point[] {
  if (stroke.kind === 'path') return [stroke.points[0]!, stroke.points.at(-1)!];
  if (stroke.kind === 'circle') return [];
  return [stroke.from, stroke.to].map((angle) => {
    const radians = (angle * Math.PI) / 180;
    return [stroke.radius * Math.cos(radians), stroke.radius * Math.sin(radians)];
  });
}

/** Ends at which no other stroke goes on. */
function loose(strokes: readonly Stroke[]): Point[] {
  const ends = strokes.flatMap(endsOf);
  return ends.filter(([x, y], i) => !ends.some(([u, v], k) => k !== i && Math.hypot(x - u, y - v) < 1e-6));
}

describe.each(Object.keys(BORES))('a %s bore', (form) => {
  it('is drawn without a gap', () => {
    expect(loose(boreSeen(BORES[form]!, 'outline'))).toEqual([]);
  });

  it('is open only at its slit on +X, as wide as that', () => {
    const open = loose(boreSeen(BORES[form]!, 'outline', 1.5));
    expect(open.map(([, y]) => y).sort((a, b) => a - b)).toEqual([expect.closeTo(-0.75, 9), expect.closeTo(0.75, 9)]);
    for (const [x] of open) expect(x).toBeGreaterThan(0);
  });

  it('is flipped with its ends', () => {
    const open = loose(flipped(boreSeen(BORES[form]!, 'outline', 1.5)));
    for (const [x, y] of open) {
      expect(x).toBeLessThan(0);
      expect(Math.abs(y)).toBeCloseTo(0.75, 9);
    }
  });
});

it('has the flat of a D on −X, across it from the far side', () => {
  const xs = boreSeen(BORES.d!, 'outline').flatMap((one) => (one.kind === 'path' ? one.points.map(([x]) => x) : []));
  // 4.5 from the far side at 2.5
  for (const x of xs) expect(x).toBeCloseTo(-2, 12);
});
