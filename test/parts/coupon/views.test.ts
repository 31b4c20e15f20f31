import { describe, expect, it } from 'vitest';
import { couponKind } from '../../../src/parts/coupon/index.js';
import { couponViews } from '../../../src/parts/coupon/views.js';
import { type AskedView, viewsOf } from '../../../src/parts/part-views.js';
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
    const names = viewsOf<AskedView>(couponViews(made, 'finished')).flatMap(({ sizes }) =>
      sizes.map(({ name }) => name),
    );
    const { reads, threads, pockets } = made.features;
    const key = (mark: string) => mark.toLowerCase().replaceAll(' ', '_');
    for (const { mark } of [...reads, ...pockets]) expect(names).toContain(key(mark));
    for (const { mark } of threads) expect(names).toContain(`${key(mark)}.diametral`);
  });

  it('draws every mark as a letter, and every short nut with its thread', () => {
    const views = viewsOf<AskedView>(couponViews(made, 'finished'));
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
