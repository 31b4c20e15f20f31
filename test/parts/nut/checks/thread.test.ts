import { describe, expect, it } from 'vitest';
import { EXACT_SCREW } from '../../../support/exact-nut.js';
import { nutSheet } from '../../../support/nut-sheets.js';
import { findingOf } from '../../../support/one-finding.js';

type Changes = Record<string, unknown>;
const message = (id: string, changes: Changes) => findingOf(nutSheet(changes), id)!.message;

/** Tr10x2 read exactly, 0.3 and 0.1 mm of room and no doubt besides: 0.3 · tan 15° + 0.1 = 0.180 mm of play. */
const EXACT = {
  screw: EXACT_SCREW,
  effects: {
    shrink: 'off',
    hole_offset: 'off',
    facets: 'off',
    first_layer: 'off',
    moisture: 'off',
    temperature: 'off',
  },
};

describe('what is told of the play of a thread, by hand', () => {
  it('0.0608 mm of it are taken by layers of 0.08 mm, until they are worn off', () => {
    expect(message('thread-running-in', EXACT)).toBe(
      'the edges of the layers take 0.061 mm until the screw has worn them off; 0.12 to 0.12 mm are left over the whole length',
    );
  });

  it('nothing of it where layers are left out', () => {
    const smooth = { ...EXACT, effects: { ...EXACT.effects, layers: 'off' } };
    expect(findingOf(nutSheet(smooth), 'thread-running-in')).toBeUndefined();
  });

  it('what takes some of it out where 0.1 mm are usual: a spring, or less of a float', () => {
    const level = { ...EXACT, duty: { axis: 'horizontal' } };
    expect(message('thread-backlash', level)).toMatch(
      /; a smaller fit\.axial, or a spring \(family\.kind: anti-backlash\) takes it out$/,
    );
    expect(message('thread-backlash', { ...level, float: 0.3, holes: { fit: undefined } })).toMatch(
      /; a smaller fit\.axial, float\.along or float\.sideways takes some of it out$/,
    );
  });

  it('a float adds its 0.05 mm and 4 · 0.3/(2π · 13.5) by turning; a nut that does not float says nothing of it', () => {
    expect(message('thread-backlash', EXACT)).toMatch(/^0\.18 mm of lost motion; up to 0\.3 mm/);
    expect(message('thread-backlash', { ...EXACT, float: 0.3, holes: { fit: undefined } })).toMatch(
      /^0\.24 mm of lost motion, 0\.064 mm of it by its float; /,
    );
  });
});
