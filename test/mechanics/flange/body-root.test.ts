import { describe, expect, it } from 'vitest';
import { bodyRoot } from '../../../src/mechanics/flange/body-root.js';
import { axialStresses } from '../../support/axisymmetric.js';

/** A bored body on a flange, by radii and heights in mm. */
interface Flanged {
  readonly bore: number;
  readonly body: number;
  readonly flange: number;
  readonly screws: number;
  readonly thickness: number;
  readonly length: number;
}

const lines = (from: number, to: number, step: number) => {
  const count = Math.max(1, Math.round((to - from) / step));
  return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
};

/** Stress along the axis at the skin of the body where it leaves its flange, made even over the wall, under 1 N in all of its bore. */
function byElements({ bore, body, flange, screws, thickness, length }: Flanged): number {
  const step = Math.min(0.4, (body - bore) / 8);
  const radii = [...lines(bore, body, step), ...lines(body, flange, 0.6).slice(1)];
  const heights = [...lines(0, thickness, step), ...lines(thickness, length, step).slice(1)];
  const stresses = axialStresses({
    radii,
    heights,
    isSolid: (radius, height) => height < thickness || radius < body,
    isHeld: (radius, height) => Math.abs(height - thickness) < 1e-6 && Math.abs(radius - screws) < 0.8,
    force: (column) => (column === 0 ? 1 / heights.length : 0),
    poisson: 0.38,
  });
  const rows = [...new Set(stresses.map(({ height }) => height))]
    .filter((height) => height > thickness)
    .sort((a, b) => a - b);
  const [first, second] = rows.map((height) => skin(stresses.filter((one) => one.height === height)));
  return first! + (first! - second!) / 2;
}

/** Pull and bending of a wall, at its outer skin, MPa. */
function skin(wall: readonly { radius: number; width: number; stress: number }[]): number {
  const ring = ({ radius, width }: { radius: number; width: number }) => 2 * Math.PI * radius * width;
  const thickness = wall.reduce((sum, { width }) => sum + width, 0);
  const middle = (wall[0]!.radius + wall.at(-1)!.radius) / 2;
  const pull = wall.reduce((sum, one) => sum + ring(one) * one.stress, 0);
  const turn = wall.reduce((sum, one) => sum + ring(one) * (one.radius - middle) * one.stress, 0);
  return (pull + (turn * 6) / thickness) / (2 * Math.PI * middle * thickness);
}

const law = ({ bore, body, screws, thickness }: Flanged, force = 1) => {
  const radius = (bore + body) / 2;
  const area = Math.PI * (body ** 2 - bore ** 2);
  return bodyRoot({ force, area, arm: screws - radius, radius, thickness });
};

describe('the root of a body that its flange turns', () => {
  it('adds a turning to the pull: 100 N on 142 mm², 6.65 mm of arm around 6.85 mm, under 5 mm', () => {
    // 100/142·(1 + 2.2·6.749/5)
    expect(bodyRoot({ force: 100, area: 142, arm: 6.65, radius: 6.85, thickness: 5 })).toBeCloseTo(2.796, 3);
    expect(bodyRoot({ force: 100, area: 142, arm: 6.65, radius: 6.85, thickness: 5, crowding: 2 })).toBeCloseTo(
      4.887,
      3,
    );
    expect(bodyRoot({ force: 100, area: 142, arm: 0, radius: 6.85, thickness: 5 })).toBeCloseTo(100 / 142, 12);
    expect(bodyRoot({ force: 0, area: 142, arm: 5, radius: 6.85, thickness: 5 })).toBe(0);
  });

  it('is what finite elements find of a plain tube: the pull alone', () => {
    const radii = lines(5, 8, 0.5);
    const heights = lines(0, 12, 0.5);
    const area = Math.PI * (8 ** 2 - 5 ** 2);
    const share = (i: number) =>
      ((radii[i + 1] ?? 8) ** 2 - radii[i]! ** 2 + radii[i]! ** 2 - (radii[i - 1] ?? 5) ** 2) / 2 / (8 ** 2 - 5 ** 2);
    const found = axialStresses({
      radii,
      heights,
      isSolid: () => true,
      isHeld: (_, height) => height === 0,
      force: (column, row) => (row === heights.length - 1 ? share(column) : 0),
      poisson: 0.38,
    });
    for (const { stress, height } of found) if (height < 9) expect(stress * area).toBeCloseTo(1, 1);
  });

  it.each<Flanged>([
    { bore: 5.2, body: 8.5, flange: 18.5, screws: 13.5, thickness: 5, length: 18 },
    { bore: 5.4, body: 9, flange: 18.5, screws: 10, thickness: 5, length: 18 },
    { bore: 4.4, body: 8, flange: 17.5, screws: 12.5, thickness: 7, length: 17 },
    { bore: 4.2, body: 11, flange: 22, screws: 16, thickness: 6, length: 20 },
    { bore: 8.2, body: 14, flange: 26, screws: 20, thickness: 8, length: 30 },
    { bore: 5.2, body: 7.5, flange: 16, screws: 11, thickness: 4, length: 20 },
    { bore: 4.4, body: 16, flange: 26, screws: 21, thickness: 6, length: 22 },
    { bore: 2.7, body: 5, flange: 11, screws: 8, thickness: 3, length: 10 },
  ])('is no less than what finite elements find, and less than half more: %j', (one) => {
    const share = law(one) / byElements(one);
    expect(share).toBeGreaterThan(0.97);
    expect(share).toBeLessThan(1.5);
  });

  it('refuses what is no wall', () => {
    const good = { force: 1, area: 10, arm: 1, radius: 5, thickness: 4 };
    expect(() => bodyRoot({ ...good, force: -1 })).toThrow(/^force: -1; /);
    expect(() => bodyRoot({ ...good, area: 0 })).toThrow(/^area: 0; /);
    expect(() => bodyRoot({ ...good, arm: -1 })).toThrow(/^arm: -1; /);
    expect(() => bodyRoot({ ...good, radius: 0 })).toThrow(/^radius: 0; /);
    expect(() => bodyRoot({ ...good, thickness: 0 })).toThrow(/^thickness: 0; /);
    expect(() => bodyRoot({ ...good, crowding: 0.9 })).toThrow(/^crowding: 0.9; must be 1 or above/);
  });
});
