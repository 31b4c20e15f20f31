import { describe, expect, it } from 'vitest';
import { isAxisCheck, partOfAxis, shareOut } from '../../src/axis/accept.js';
import type { AxisDesign } from '../../src/axis/axis-design.js';
import { findKind } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';

const reason = 'a bench trial without any load';
const axis = {
  parts: [
    { role: 'nut', kind: findKind(KINDS, 'nut')! },
    { role: 'far', kind: findKind(KINDS, 'end-holder')! },
  ],
} as unknown as AxisDesign;
const shared = (...checks: readonly string[]) =>
  shareOut(
    checks.map((check) => ({ check, reason })),
    axis,
  );

describe('what is accepted of an axis', () => {
  it('is told by the name of a check, or of a part and its check', () => {
    expect(partOfAxis('nut/wall')).toEqual({ role: 'nut', check: 'wall' });
    expect(partOfAxis('a/b/c')).toEqual({ role: 'a', check: 'b/c' });
    expect(partOfAxis('axis-travel')).toBeUndefined();
    expect(isAxisCheck('axis-travel')).toBe(true);
    expect(isAxisCheck('wall')).toBe(false);
  });

  it('goes to the axis, or to that part alone', () => {
    const { own, ofPart } = shared('axis-travel', 'nut/wall', 'far/wall', 'nut/heat');
    expect(own).toEqual([{ check: 'axis-travel', reason }]);
    expect(ofPart('nut')).toEqual([
      { check: 'wall', reason },
      { check: 'heat', reason },
    ]);
    expect(ofPart('far')).toEqual([{ check: 'wall', reason }]);
    expect(ofPart('coupling')).toEqual([]);
  });

  it('is nothing where nothing is said', () => {
    const { own, ofPart } = shared();
    expect([own, ofPart('nut'), ofPart('far')]).toEqual([[], [], []]);
  });

  it.each([
    ['wall', /^--accept: wall; must be a check of the axis such as axis-travel, or PART\/CHECK; its parts: nut, far$/],
    ['nutt/wall', /^--accept: nutt\/wall; must be a check of the axis/],
    ['nut/axis-travel', /^--accept: axis-travel; unknown check/],
    // a check of another kind, and one of a built solid
    ['far/wear', /^--accept: wear; unknown check/],
    ['nut/solid-closed', /^--accept: solid-closed; a broken solid cannot be accepted$/],
  ])('refuses %s', (check, words) => {
    expect(() => shared(check)).toThrow(words);
  });

  it('says which words were wrong', () => {
    expect(() => shareOut([{ check: 'wall', reason }], axis, 'accept')).toThrow(/^accept: wall; /);
    expect(() => shareOut([{ check: 'nut/waall', reason }], axis, 'accept')).toThrow(/^accept: waall; .*wall\?$/);
  });
});
