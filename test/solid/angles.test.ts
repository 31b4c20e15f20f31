import { describe, expect, it } from 'vitest';
import { cosd, sind, unitAt, unitCorners } from '../../src/solid/angles.js';

describe('sind and cosd', () => {
  it('are exact where the value is: multiples of 90°, and the halves of 30° and 60°', () => {
    // trigonometry: sin 30° = 1/2
    const table: [number, number, number][] = [
      [0, 0, 1],
      [30, 0.5, cosd(-30)],
      [60, sind(120), 0.5],
      [90, 1, 0],
      [150, 0.5, cosd(210)],
      [180, 0, -1],
      [270, -1, 0],
      [360, 0, 1],
      [-90, -1, 0],
      [3600 + 270, -1, 0],
    ];
    for (const [angle, sine, cosine] of table) {
      expect(sind(angle), `sin ${angle}`).toBe(sine);
      expect(cosd(angle), `cos ${angle}`).toBe(cosine);
    }
  });

  it('agree with Math to 1e-15 at any angle', () => {
    for (let angle = -720; angle <= 720; angle += 7.3) {
      expect(sind(angle)).toBeCloseTo(Math.sin((angle * Math.PI) / 180), 14);
      expect(cosd(angle)).toBeCloseTo(Math.cos((angle * Math.PI) / 180), 14);
    }
  });

  it('give equal sine and cosine at 45°', () => {
    expect(sind(45)).toBe(cosd(45));
    expect(sind(225)).toBe(-cosd(45));
  });
});

describe('unitAt', () => {
  it('is symmetric to the bit in all quadrants, and has no negative zero', () => {
    for (const count of [4, 12, 48, 96, 100, 124]) {
      for (let i = 0; i < count; i++) {
        const [x, y] = unitAt(i, count);
        expect(unitAt(count - i, count)).toEqual([x, y === 0 ? 0 : -y]);
        expect(unitAt(i + count / 2, count)).toEqual([x === 0 ? 0 : -x, y === 0 ? 0 : -y]);
        expect(Object.is(x, -0) || Object.is(y, -0)).toBe(false);
      }
    }
  });

  it('stands on the axes at the quarters', () => {
    expect([0, 24, 48, 72].map((i) => unitAt(i, 96))).toEqual([
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ]);
  });

  it('agrees with Math', () => {
    for (let i = -5; i < 20; i++) {
      expect(unitAt(i, 7)[0]).toBeCloseTo(Math.cos((2 * Math.PI * i) / 7), 14);
      expect(unitAt(i, 7)[1]).toBeCloseTo(Math.sin((2 * Math.PI * i) / 7), 14);
    }
  });
});

describe('unitCorners', () => {
  it('are those of unitAt to the bit, without a negative zero', () => {
    for (const count of [3, 4, 6, 10, 12, 48, 100, 124])
      unitCorners(count).forEach((corner, i) => {
        expect(corner, `${i} of ${count}`).toStrictEqual(unitAt(i, count));
      });
    expect(unitCorners(7)).toHaveLength(7);
  });
});
