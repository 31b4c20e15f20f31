import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { createKernel, type Kernel } from '../../src/solid/kernel.js';
import { matePoses, mateThreads, NO_COMMON_VOLUME } from '../../src/solid/mate.js';
import { sidesFor } from '../../src/solid/outline.js';
import { commonOverTheTurn, sameVolume } from '../support/whole-turn.js';
import { nutThread, screwThread, type ThreadFigures, TR8X2 } from './examples.js';
import { randomThread, tightMate } from './random-nuts.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await createKernel();
});

function playOf(figures: ThreadFigures): number {
  return figures.diametralClearance * Math.tan((figures.flankAngle * Math.PI) / 180) + figures.axialClearance;
}

function common(figures: ThreadFigures, play = playOf(figures), length?: number): number {
  const threads = { nut: nutThread(figures, 0, 1), screw: screwThread(figures, 0, 1) };
  return mateThreads(kernel, { ...threads, play, ...(length === undefined ? {} : { length }) });
}

describe('matePoses', () => {
  it('pushes by 0.9 of half the play and turns by half a column along the helix', () => {
    expect(matePoses({ play: 0.2, lead: 2, columns: 96, hand: 'right' })).toEqual(
      [0, 0.09, -0.09]
        .map((z) => ({ turn: 0, by: [0, 0, expect.closeTo(z, 12)] }))
        .concat(
          // half a column is 1.875°, on which a lead of 2 climbs 2/192
          [0, 0.09, -0.09].map((z) => ({ turn: 1.875, by: [0, 0, expect.closeTo(z + 2 / 192, 12)] })),
        ),
    );
    expect(matePoses({ play: -1, lead: 2, columns: 96, hand: 'left' })[4]!.by![2]).toBeCloseTo(-2 / 192, 12);
  });
});

describe('mateThreads', () => {
  it.each<[string, Partial<ThreadFigures>]>([
    ['Tr8x2', {}],
    ['close', { diametralClearance: 0.2, axialClearance: 0.07 }],
    ['left', { hand: 'left' }],
    ['four starts', { starts: 4 }],
    ['four starts, left', { starts: 4, hand: 'left' }],
    ['V', { flankAngle: 30, pitch: 1.25 }],
    ['Acme', { flankAngle: 14.5, major: 9.525, pitch: 2.54 }],
    ['60 mm, four starts', { major: 60, pitch: 9, starts: 4, columns: sidesFor(30, 0.01) }],
  ])('finds nothing in common at working clearances: %s', (_, change) => {
    expect(common({ ...TR8X2, ...change })).toBe(0);
  });

  it.each<[string, Partial<ThreadFigures>]>([
    ['Tr8x2', {}],
    ['left, four starts', { hand: 'left', starts: 4 }],
    ['V', { flankAngle: 30, pitch: 1.25 }],
    ['3 mm', { major: 3, pitch: 0.5, columns: 36, diametralClearance: 0.1 }],
  ])('collides when the play is made −0.05 mm: %s', (_, change) => {
    const figures = { ...TR8X2, ...change };
    const tight = { ...figures, axialClearance: figures.axialClearance - playOf(figures) - 0.05 };
    expect(playOf(tight)).toBeCloseTo(-0.05, 12);
    expect(common(tight)).toBeGreaterThan(1000 * NO_COMMON_VOLUME);
  });

  it('collides when a crest gap is made negative while the flanks stay free, by as little as 0.001 mm of radius', () => {
    // the screw's crest stands at 8 and its root at 6; gaps are radial
    for (const gap of [-0.001, -0.02]) {
      expect(common({ ...TR8X2, nutMinor: 6 + 2 * gap })).toBeGreaterThan(1000 * NO_COMMON_VOLUME);
      expect(common({ ...TR8X2, nutMajor: 8 + 2 * gap })).toBeGreaterThan(1000 * NO_COMMON_VOLUME);
    }
    // half a column off, a circumscribed screw stands out by r·(1/cos(180°/96) − 1) = 0.0022 mm at its crest
    for (const gap of [0.003, 0.02]) {
      expect(common({ ...TR8X2, nutMinor: 6 + 2 * gap })).toBe(0);
      expect(common({ ...TR8X2, nutMajor: 8 + 2 * gap })).toBe(0);
    }
  });

  it('collides with the other hand, another pitch, and half a pitch out of phase', () => {
    const nut = nutThread(TR8X2, 0, 1);
    const screw = screwThread(TR8X2, 0, 1);
    const play = playOf(TR8X2);
    const shifted = screw.ridge.map(([z, r]) => [(z + 1) % 2, r] as const).toSorted((a, b) => a[0] - b[0]);
    expect(mateThreads(kernel, { nut, screw: { ...screw, hand: 'left' }, play })).toBeGreaterThan(1);
    expect(mateThreads(kernel, { nut, screw: { ...screw, starts: 2 }, play })).toBeGreaterThan(1);
    expect(mateThreads(kernel, { nut, screw: { ...screw, ridge: shifted }, play })).toBeGreaterThan(1);
    expect(mateThreads(kernel, { nut, screw: { ...screw, pitch: 2.1 }, play, length: 8 })).toBeGreaterThan(0.1);
  });

  it('says of one column what the whole turn says, to four digits, on random threads', () => {
    fc.assert(
      fc.property(randomThread, fc.constantFrom(1, 2), fc.constantFrom(0.02, 0.1), (figures, pitches, tight) => {
        const mate = tightMate(figures, pitches, tight * figures.pitch);
        const whole = commonOverTheTurn(kernel, mate);
        expect(whole).toBeGreaterThan(NO_COMMON_VOLUME);
        expect(Math.abs(mateThreads(kernel, mate) - whole)).toBeLessThan(sameVolume(whole, mate));
      }),
      { numRuns: 10 },
    );
  });

  it('says more of a longer nut when it collides, and still 0 when it does not', () => {
    const tight = { ...TR8X2, axialClearance: TR8X2.axialClearance - playOf(TR8X2) - 0.05 };
    expect(common(tight, undefined, 8)).toBeGreaterThan(1.5 * common(tight, undefined, 4));
    expect(common(TR8X2, undefined, 8)).toBe(0);
  });
});
