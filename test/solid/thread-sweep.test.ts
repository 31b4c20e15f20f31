import { describe, expect, it } from 'vitest';
import { measureMesh } from '../../src/solid/measure.js';
import { ridgeCorners } from '../../src/solid/thread-ridge.js';
import { sweepThread, type ThreadSweep } from '../../src/solid/thread-sweep.js';
import { InputError } from '../../src/units/faults.js';
import { narrowest, nutThread, screwThread, type ThreadFigures, TR8X2, widest } from './examples.js';
import { fallingCrossings, radiusAt, risingCrossings } from './section.js';

const FORMS: readonly (readonly [string, Partial<ThreadFigures>])[] = [
  ['trapezoid', {}],
  ['trapezoid, four starts', { starts: 4 }],
  ['acme, left', { flankAngle: 14.5, pitch: 2.54, major: 9.525, hand: 'left' }],
  ['metric V', { flankAngle: 30, pitch: 1.25 }],
  ['steep 3°', { flankAngle: 3, starts: 2 }],
  ['flat 45°, left', { flankAngle: 45, major: 20, pitch: 3, hand: 'left', starts: 3 }],
  ['lead twice the diameter', { starts: 6, pitch: 8 / 3, columns: 100 }],
  ['small', { major: 3, pitch: 0.5, columns: 32 }],
  ['large', { major: 60, pitch: 9, starts: 4, columns: 124 }],
];

describe('sweepThread', () => {
  it.each(FORMS)('is closed, in one piece and faces outwards: %s', (_, change) => {
    const figures = { ...TR8X2, ...change };
    for (const thread of [nutThread(figures, -1, 4 * figures.pitch), screwThread(figures, 0, 3.3 * figures.pitch)]) {
      const measures = measureMesh(sweepThread(thread));
      expect(measures).toMatchObject({ openEdges: 0, repeatedVertexFacets: 0, shells: 1 });
      expect(measures.volume).toBeGreaterThan(0);
      const reach = widest(thread) / Math.cos(Math.PI / thread.columns);
      expect(measures.bounds[1][0]).toBeCloseTo(reach, 5);
      expect([measures.bounds[0][2], measures.bounds[1][2]]).toEqual([
        Math.fround(thread.from),
        Math.fround(thread.to),
      ]);
    }
  });

  it('costs the same for any number of starts: 2 × columns × 4 corners a pitch', () => {
    const facets = [1, 2, 6].map((starts) => {
      const thread = nutThread({ ...TR8X2, starts }, 0, 20);
      return sweepThread(thread).triangles.length / 3;
    });
    // 7,680 for ten pitches, and the rows and fans at both ends
    for (const count of facets) {
      expect(count).toBeGreaterThan(2 * 96 * 4 * 10);
      expect(count).toBeLessThan(2 * 96 * 4 * 11.5);
    }
  });

  it.each(FORMS)('has the pitch, flank, hand, starts and phase it was asked for: %s', (_, change) => {
    const figures = { ...TR8X2, ...change };
    const { pitch, flankAngle, starts, hand } = figures;
    const mesh = sweepThread(screwThread(figures, -1.2 * pitch, 2.2 * pitch));
    const thread = screwThread(figures, 0, 1);
    const [foot, top] = [narrowest(thread), widest(thread)];
    const [low, high] = [foot + 0.25 * (top - foot), foot + 0.75 * (top - foot)];
    // along +X, a column, the section is the ridge itself, larger by 1/cos(180°/n)
    const grown = 1 / Math.cos(Math.PI / figures.columns);
    const rising = risingCrossings(mesh, 0, high * grown, -pitch, 2 * pitch);
    const falling = fallingCrossings(mesh, 0, high * grown, -pitch, 2 * pitch);
    expect(rising[1]! - rising[0]!).toBeCloseTo(pitch, 6);
    // the ridge of start 1 is centred on z = 0
    expect((rising[0]! + falling.find((z) => z > rising[0]!)!) / 2).toBeCloseTo(0, 6);
    const lower = risingCrossings(mesh, 0, low * grown, -pitch, 2 * pitch);
    const slope = (rising[0]! - lower[0]!) / (high - low);
    expect((Math.atan(slope) * 180) / Math.PI).toBeCloseTo(flankAngle, 4);
    // a column further on it stands higher by lead/360° a degree, to the side of its hand
    const step = 360 / figures.columns;
    const further = risingCrossings(mesh, hand === 'left' ? -step : step, high * grown, -pitch, 2 * pitch);
    const climb = further
      .map((z) => z - rising[0]!)
      .reduce((a, b) =>
        Math.abs(a - (starts * pitch * step) / 360) < Math.abs(b - (starts * pitch * step) / 360) ? a : b,
      );
    expect((climb * 360) / step / pitch).toBeCloseTo(starts, 3);
  });

  it('makes the left hand the exact mirror image of the right', () => {
    const right = sweepThread(nutThread({ ...TR8X2, starts: 3 }, -1, 5));
    const left = sweepThread(nutThread({ ...TR8X2, starts: 3, hand: 'left' }, -1, 5));
    const turnedOver = right.positions.map((value, i) => (i % 3 === 1 ? 0 - value : value));
    expect(left.positions).toEqual(turnedOver);
    expect(left.positions.some((value) => Object.is(value, -0))).toBe(false);
  });

  it('gives the same bytes twice', () => {
    const thread = nutThread({ ...TR8X2, starts: 2 }, -1, 17);
    expect(sweepThread(thread)).toEqual(sweepThread(structuredClone(thread)));
  });

  it('cuts clean ends at corners, a hair beside them, and anywhere', () => {
    for (const shift of [0, 1e-9, -1e-9, 1e-5, 0.25, 1 / 3]) {
      for (const starts of [1, 4]) {
        const thread = screwThread({ ...TR8X2, starts }, -2 + shift, 2.5 + shift);
        expect(measureMesh(sweepThread(thread))).toMatchObject({ openEdges: 0, shells: 1, repeatedVertexFacets: 0 });
      }
    }
  });

  it('sweeps slices thinner than one column climbs', () => {
    const thread = screwThread({ ...TR8X2, starts: 4 }, 1, 1.01);
    expect(measureMesh(sweepThread(thread))).toMatchObject({ openEdges: 0, shells: 1 });
  });

  it('refuses what cannot be swept', () => {
    const good = nutThread(TR8X2, 0, 4);
    const bad: Partial<ThreadSweep>[] = [
      { pitch: 0 },
      { pitch: Number.NaN },
      { starts: 1.5 },
      { columns: 30 },
      { to: -1 },
      { ridge: [[0, 1]] },
      {
        ridge: [
          [0, 1],
          [0, 2],
        ],
      },
      {
        ridge: [
          [0, 1],
          [2, 2],
        ],
      },
      {
        ridge: [
          [0, 1],
          [1, 0],
        ],
      },
    ];
    for (const change of bad) expect(() => sweepThread({ ...good, ...change })).toThrow(InputError);
  });
});

describe('the diagonals of flank quads', () => {
  /** Greatest and least of (drawn radius − true radius) over points of the true helicoid's flanks. */
  function standOff(thread: ThreadSweep): [number, number] {
    const mesh = sweepThread(thread);
    const lead = thread.pitch * thread.starts;
    const right = thread.hand === 'right' ? 1 : -1;
    let [least, most] = [Infinity, -Infinity];
    for (const [k, [z0, r0]] of thread.ridge.entries()) {
      const [z1, r1] = thread.ridge[k + 1] ?? [thread.ridge[0]![0] + thread.pitch, thread.ridge[0]![1]];
      if (r0 === r1) continue;
      for (let share = 0.02; share < 1; share += 0.06) {
        for (let angle = 40.1; angle < 40.1 + 360 / thread.columns; angle += 360 / thread.columns / 11) {
          const z = z0 + share * (z1 - z0) + (lead * right * angle) / 360;
          const radius = r0 + share * (r1 - r0);
          const off = radiusAt(mesh, angle, z - (right < 0 ? -lead : 0)) - radius;
          [least, most] = [Math.min(least, off), Math.max(most, off)];
        }
      }
    }
    return [least, most];
  }

  const fast: ThreadFigures = { ...TR8X2, starts: 4, columns: 48 };

  it.each([
    ['one start', TR8X2],
    ['four starts', fast],
    ['left', { ...fast, hand: 'left' as const }],
    ['V', { ...fast, flankAngle: 30, pitch: 1.25, starts: 2 }],
  ])('never let a nut’s metal stand beyond the true helicoid: %s', (_, figures) => {
    const lead = figures.pitch * figures.starts;
    const [least] = standOff(nutThread(figures, -lead, 2 * lead));
    expect(least).toBeGreaterThan(-1e-6);
  });

  it.each([
    ['one start', TR8X2],
    ['four starts', fast],
    ['left', { ...fast, hand: 'left' as const }],
  ])('never let an inscribed screw’s metal stand beyond it: %s', (_, figures) => {
    const lead = figures.pitch * figures.starts;
    const [, most] = standOff({ ...screwThread(figures, -lead, 2 * lead), circumscribed: false });
    expect(most).toBeLessThan(1e-6);
  });

  it('would eat lead·tan(180°/n)·Δr/(4π·r) of play on the other side', () => {
    // a nut for Tr8x2 at 96 columns, by hand: 2·tan(1.875°)·1.05/(4π·3.725) = 0.00147 mm along the axis
    const nut = nutThread(TR8X2, -2, 4);
    const [least] = standOff({ ...nut, airSide: 'outside' });
    const depth = widest(nut) - narrowest(nut);
    const axial = (2 * Math.tan(Math.PI / 96) * depth) / (2 * Math.PI * (widest(nut) + narrowest(nut)));
    expect(-least * Math.tan(Math.PI / 12)).toBeGreaterThan(0.6 * axial);
    expect(-least * Math.tan(Math.PI / 12)).toBeLessThan(1.05 * axial);
    expect(axial).toBeCloseTo(0.00147, 5);
  });
});

describe('ridgeCorners', () => {
  it('keeps the width at the pitch diameter and the flank', () => {
    const ridge = ridgeCorners({
      pitch: 2,
      flankAngle: 15,
      pitchDiameter: 7,
      widthAtPitchDiameter: 1,
      major: 8,
      minor: 5.5,
    });
    // by hand: half width at 8 is 0.5 − 0.5·tan 15° = 0.366025; at 5.5 it is 0.5 + 0.75·tan 15° = 0.700962
    expect(ridge.map(([z]) => z)).toEqual([0.366025, 0.700962, 1.299038, 1.633975].map((z) => expect.closeTo(z, 6)));
    expect(ridge.map(([, radius]) => radius)).toEqual([4, 2.75, 2.75, 4]);
  });

  it('ends where flanks meet before the crest or the root', () => {
    const sharp = ridgeCorners({
      pitch: 1,
      flankAngle: 30,
      pitchDiameter: 7,
      widthAtPitchDiameter: 0.5,
      major: 9,
      minor: 6.5,
    });
    // flanks meet at 7 + 0.5/tan 30° = 7.866
    expect(sharp).toHaveLength(3);
    expect(sharp[0]).toEqual([0, expect.closeTo(3.933, 3)]);
    const both = ridgeCorners({
      pitch: 1,
      flankAngle: 30,
      pitchDiameter: 7,
      widthAtPitchDiameter: 0.5,
      major: 9,
      minor: 4,
    });
    expect(both).toEqual([
      [0, expect.closeTo(3.933, 3)],
      [0.5, expect.closeTo(3.067, 3)],
    ]);
  });
});
