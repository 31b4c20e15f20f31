import { describe, expect, it } from 'vitest';
import type { CollarDesign } from '../../../src/parts/collar/dimensions.js';
import { engagedIn } from '../../../src/parts/collar/held-in.js';
import { design } from '../../../src/pipeline/design.js';
import { PLAIN, THREADED } from '../../support/collar-sheets.js';
import { changed } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';

type Tree = Record<string, unknown>;
const collar = (changes: Tree) => design(changed(PLAIN, { length: 14, ...changes })) as CollarDesign;
const flat = (more: Tree) => ({ shaft: { diameter: '9.99 ± 0.01 mm', flat: 9, ...more } });

describe('a collar on a shaft with a flat', () => {
  it('is bored for a flat that reaches through it', () => {
    for (const one of [flat({}), flat({ flat_length: 14 }), flat({ flat_length: 40 })]) {
      expect(collar(one).finished.bore.form).toBe('d');
      expect(collar(one).finished.bore.flatFrom).toBeUndefined();
    }
  });

  it('is bored round where it does not: nobody tells how far the shaft stands through it', () => {
    for (const flat_length of [2, 6, 13]) {
      const { finished, shaft } = collar(flat({ flat_length }));
      expect(finished.bore).toEqual({ form: 'round', diameter: finished.bore.diameter });
      expect(finished.bore.diameter).toBeGreaterThan(9.99);
      expect(shaft.form).toBe('round');
    }
  });

  it('lists a flat of which nobody tells the length', () => {
    const listed = (more: Tree) => collar(flat(more)).assumptions.find(({ field }) => field === 'shaft.flat_length');
    expect(listed({})).toMatchObject({ value: '14' });
    expect(listed({ flat_length: 14 })).toBeUndefined();
  });
});

describe('a shaft that ends in its collar', () => {
  const long = (length: number) => ({ shaft: { diameter: '9.99 ± 0.01 mm', length } });

  it('fills what is left of it behind the bearing', () => {
    // bearing 51100 is 9 mm high
    expect(engagedIn(collar(long(19)))).toBe(10);
    expect(engagedIn(collar(long(40)))).toBe(14);
    expect(findingOf(changed(PLAIN, { length: 14, ...long(19) }), 'shaft-engagement')).toMatchObject({ word: 'but' });
    expect(findingOf(changed(PLAIN, { length: 14, ...long(19) }), 'shaft-engagement')!.message).toMatch(
      /^10 mm of 14 mm behind the bearing; a shorter collar or a longer shaft fills it$/,
    );
    expect(findingOf(PLAIN, 'shaft-engagement')).toMatchObject({ missing: ['shaft.length'] });
    // a screw goes through
    expect(findingOf(THREADED, 'shaft-engagement')).toBeUndefined();
  });

  it('is refused where it ends in the bearing', () => {
    expect(() => collar(long(9))).toThrow(/shaft\.length.*must be above the 9 mm of the bearing/);
    expect(() => collar(long(9.5))).not.toThrow();
  });
});
