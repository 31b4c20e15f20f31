import { describe, expect, it } from 'vitest';
import { couponKind } from '../../../src/parts/coupon/index.js';
import { boxesSeen } from '../../../src/parts/coupon/views/boxes-seen.js';
import { couponViews } from '../../../src/parts/coupon/views.js';
import { drawnViews, type LineKind, type Stroke } from '../../../src/parts/part-views.js';
import { SHIPPED } from '../../../src/presets/shipped.js';

const made = couponKind.design(
  couponKind.schema.parse({
    part: 'coupon',
    name: 'a',
    purposes: ['scale', 'bores', 'thread', 'pockets'],
    screw: 'Tr8x2',
    material: 'pa12',
  }),
  SHIPPED,
);

describe('what is drawn of a coupon', () => {
  it('states the size of every mark that is read or tried', () => {
    const names = drawnViews(couponViews(made, 'finished')).flatMap(({ sizes }) => sizes.map(({ name }) => name));
    const { reads, threads, pockets } = made.features;
    const key = (mark: string) => mark.toLowerCase().replaceAll(' ', '_');
    for (const { mark } of [...reads, ...pockets]) expect(names).toContain(key(mark));
    for (const { mark } of threads) expect(names).toContain(`${key(mark)}.diametral`);
  });

  it('draws every mark as a letter, and every short nut with its thread', () => {
    const views = drawnViews(couponViews(made, 'finished'));
    const letters = views.flatMap((view) => view.letters.map(({ text }) => text));
    for (const { mark } of [...made.features.threads, ...made.features.pockets]) expect(letters).toContain(mark);
    const threads = views.find(({ title }) => title === 'Short nuts')!.strokes.filter(({ kind }) => kind === 'arc');
    expect(threads.length).toBe(made.features.threads.length);
  });

  it('leaves the plates beside one another as they lie on the bed', () => {
    const { inUse } = couponViews(made, 'finished');
    const shifts = Object.values(inUse!).map(({ by }) => by);
    expect(Object.keys(inUse!)).toEqual(couponKind.bodies(made).map(({ recipe }) => recipe.name));
    for (const shift of shifts) expect(shift).toEqual(shifts[0]);
  });
});

describe('boxesSeen', () => {
  const kinds = (strokes: readonly Stroke[], kind: LineKind) =>
    strokes
      .filter((one) => one.line === kind)
      .reduce((sum, one) => {
        const [a, b] = one.kind === 'path' ? one.points : [];
        return a && b ? sum + Math.hypot(a[0] - b[0], a[1] - b[1]) : sum;
      }, 0);

  it('draws what stands free in full', () => {
    expect(kinds(boxesSeen([{ min: [0, 0], max: [2, 1], near: 0 }]), 'outline')).toBe(6);
  });

  it('draws what a nearer box hides as hidden, and shared edges once', () => {
    const strokes = boxesSeen([
      { min: [0, 0], max: [4, 4], near: 1 },
      { min: [2, 0], max: [6, 2], near: 0 },
    ]);
    // the nearer one in full; of the farther one: its side in the first (2) and the piece of its top (2) hidden,
    // the piece of its foot (2) drawn already, and 2 + 2 + 2 beyond seen
    expect(kinds(strokes, 'hidden')).toBe(4);
    expect(kinds(strokes, 'outline')).toBe(16 + 6);
  });
});
