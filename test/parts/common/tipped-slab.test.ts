import { describe, expect, it } from 'vitest';
import type { Slab } from '../../../src/parts/common/slab.js';
import { tipSlab } from '../../../src/parts/common/tipped-slab.js';

/** 60 × 40 mm, 8 mm thick, its edge 30 mm from the axis. */
const OUTLINE = [
  [30, 20],
  [-30, 20],
  [-30, -20],
  [30, -20],
] as const;
const hole = (at: readonly [number, number]) => ({ shape: { at, radius: 2.25 }, from: 0, to: 8 });
const place = (at: readonly [number, number]) => ({ at, head: 9, hole: 4.5, share: 1 });
const reach = () => 9;

describe('a slab that tips about its edge', () => {
  it('bends most through the holes: 18 mm of arm on (18 + 2·9 − 2·4.5) × 8', () => {
    const holes = [
      [18, 9],
      [18, -9],
    ] as const;
    const slab = { outline: OUTLINE, thickness: 8, openings: holes.map(hole) };
    const strip = tipSlab({ slab, supports: holes.map(place), reach }, { across: 18 })!.strip;
    // Z = 27 · 64 / 6
    expect(strip.stress).toBeCloseTo(18 / 288, 6);
    expect(strip.arm).toBeCloseTo(18, 9);
  });

  it('gives by as much as a strip that is held at its screws, from the load on', () => {
    // 40 mm wide all the way, I = 40 · 8³/12: bent by (18³ − 9³)/(3·I), sheared by 1.2 · 9/(G · 320), G = 1/2.7; leans by (18² − 9²)/(2·I)
    const slab = { outline: OUTLINE, thickness: 8, openings: [] };
    const inertia = (40 * 8 ** 3) / 12;
    const { sag, lean } = tipSlab({ slab, supports: [place([18, 0])], reach }, { across: 40 })!;
    expect(sag).toBeCloseTo((18 ** 3 - 9 ** 3) / (3 * inertia) + (1.2 * 9 * 2.7) / 320, 6);
    expect(lean).toBeCloseTo(((18 ** 2 - 9 ** 2) / (2 * inertia)) * (180 / Math.PI), 6);
  });

  it('gives by the lesser section of both ends of a step', () => {
    // holes of 1 mm at the screws: the last of eight steps, 1.125 mm, has 38 of 40 mm
    const holes = [
      [18, 9],
      [18, -9],
    ] as const;
    const whole = { outline: OUTLINE, thickness: 8, openings: [] };
    const drilled = { ...whole, openings: holes.map((at) => ({ shape: { at, radius: 0.5 }, from: 0, to: 8 })) };
    const leans = (slab: Slab) => tipSlab({ slab, supports: holes.map(place), reach }, { across: 40 })!.lean;
    const step = (width: number) => (18 ** 2 - 16.875 ** 2) / 2 / ((width * 8 ** 3) / 12);
    expect(leans(drilled) - leans(whole)).toBeCloseTo((step(38) - step(40)) * (180 / Math.PI), 9);
  });

  it('gives by the narrower end of each step where the load spreads on its way', () => {
    // eight steps of 1.125 mm from 9 to 18, 18 mm wide at the first and 2.25 more at every one
    const wide = OUTLINE.map(([x, y]) => [x, 2 * y] as const);
    const slab = { outline: wide, thickness: 8, openings: [] };
    const { lean } = tipSlab({ slab, supports: [place([18, 0])], reach }, { across: 18 })!;
    const steps = Array.from({ length: 8 }, (_, i) => {
      const [from, to] = [9 + 1.125 * i, 9 + 1.125 * (i + 1)];
      return (to ** 2 - from ** 2) / 2 / (((18 + 2.25 * i) * 8 ** 3) / 12);
    });
    expect(lean).toBeCloseTo(steps.reduce((sum, one) => sum + one, 0) * (180 / Math.PI), 9);
  });

  it('gives without end where a gap of its whole width lies on the way', () => {
    // the third of eight steps from 9 to 18 mm begins at 11.25
    const gap = [
      [11, 20],
      [11, -20],
      [11.5, -20],
      [11.5, 20],
    ] as const;
    const slab = { outline: OUTLINE, thickness: 8, openings: [{ shape: { outline: gap }, from: 0, to: 8 }] };
    expect(tipSlab({ slab, supports: [place([18, 0])], reach }, { across: 18 })).toMatchObject({
      strip: { stress: Infinity },
      sag: Infinity,
    });
  });

  it('is no wider than the slab, and bends with the whole distance from the load', () => {
    const lone = [18, 0] as const;
    const slab = { outline: OUTLINE.map(([x, y]) => [x, y / 2] as const), thickness: 8, openings: [] };
    const strip = tipSlab({ slab, supports: [place(lone)], reach }, { across: 18 })!.strip;
    // 20 mm wide at most: Z = 20 · 64 / 6
    expect(strip.stress).toBeCloseTo(18 / (20 * (64 / 6)), 6);
  });

  it('bends most where an opening narrows it, though not at its screws', () => {
    // at the third of eight steps from 9 to 21 mm, 13.5 mm, a window leaves 2 · 6 mm of a slab 40 mm wide; the load spreads to 18 + 2·4.5
    const window = [
      [13, 7.5],
      [13, -7.5],
      [14, -7.5],
      [14, 7.5],
    ] as const;
    const slab = { outline: OUTLINE, thickness: 8, openings: [{ shape: { outline: window }, from: 0, to: 8 }] };
    const strip = tipSlab({ slab, supports: [place([21, 0])], reach }, { across: 18 })!.strip;
    expect(strip.distance).toBeCloseTo(13.5, 9);
    expect(strip.stress).toBeCloseTo(13.5 / (12 * (64 / 6)), 6);
  });

  it('bends at the corner where the load comes in, where that adds more: 2 · 9 mm on 18 × 8', () => {
    const slab = { outline: OUTLINE, thickness: 8, openings: [] };
    const at = (notch: number) => tipSlab({ slab, supports: [place([18, 0])], reach }, { across: 18, notch })!.strip;
    expect(at(2)).toMatchObject({ corner: 2, distance: 9, stress: expect.closeTo((2 * 9 * 6) / (18 * 64), 6) });
    // at its holes, 27 mm of 8 with 18 of arm, nothing is added
    const holes = [
      [18, 9],
      [18, -9],
    ] as const;
    const drilled = { ...slab, openings: holes.map(hole) };
    const weak = tipSlab({ slab: drilled, supports: holes.map(place), reach }, { across: 18, notch: 1.2 })!.strip;
    expect(weak).toMatchObject({ corner: 1, distance: 18, stress: expect.closeTo(18 / 288, 6) });
    // 18 mm on 18 + 2 · 9 of it, where the corner adds nothing
    expect(at(1)).toMatchObject({ corner: 1, stress: expect.closeTo((18 * 6) / (36 * 64), 6) });
  });

  it('breaks where nothing is left', () => {
    const slab = {
      outline: OUTLINE,
      thickness: 8,
      openings: [{ shape: { at: [18, 0] as const, radius: 30 }, from: 0, to: 8 }],
    };
    expect(tipSlab({ slab, supports: [place([18, 0])], reach }, { across: 18 })!).toMatchObject({
      strip: { stress: Infinity },
      sag: Infinity,
      lean: Infinity,
    });
  });

  it('does not bend where the line runs under what brings the load in', () => {
    const slab = { outline: OUTLINE, thickness: 8, openings: [] };
    expect(tipSlab({ slab, supports: [place([9, 0])], reach }, { across: 18 })).toBeUndefined();
    expect(tipSlab({ slab, supports: [place([9.1, 0])], reach }, { across: 18 })).toBeDefined();
  });

  it('does not tip on screws around the load', () => {
    const slab = { outline: OUTLINE, thickness: 8, openings: [] };
    expect(tipSlab({ slab, supports: [place([18, 0]), place([-18, 0])], reach }, { across: 18 })).toBeUndefined();
  });
});
