import { describe, expect, it } from 'vitest';
import { strongNut } from '../../../support/nut-sheets.js';
import { findingOf } from '../../../support/one-finding.js';

const word = (id: string, changes: Record<string, unknown>) => findingOf(strongNut(changes), id)!;

describe('what a nut is not told', () => {
  it.each([
    ['thread-running-in', 'duty.temperature', { fit: { axial: 0.08 } }, 'temperature', 23, 60],
    ['wear-depth', 'duty.dust', { material: 'pla' }, 'dust', 'no', 'yes'],
  ])('is asked for where the worst that may be comes to a worse word: %s, %s', (id, field, changes, key, mild, bad) => {
    const told = (value: unknown) => word(id, { ...changes, duty: { [key]: value } });
    expect(told(undefined)).toMatchObject({ word: 'not-told', missing: [field] });
    expect(told(mild).word).not.toBe('not-told');
    expect(told(bad).word).not.toBe('not-told');
    expect(told(bad).word).not.toBe(told(mild).word);
  });

  it('is not asked for where the worst that may be passes too', () => {
    expect(word('thread-running-in', { fit: { axial: 0.3 }, duty: { temperature: undefined } }).word).toBe('yes');
    expect(word('wear-depth', { material: 'pa6', duty: { load: 1, dust: undefined } }).word).toBe('yes');
  });

  it('is nothing of its rests where it is always in motion: as a cycle that it runs through', () => {
    const light = { load: 4, on_time: undefined, cycle: undefined };
    for (const load of [4, 60]) {
      const always = { ...light, load, moving: '100 %' };
      const through = { ...light, load, moving: undefined, on_time: 3600, cycle: 3600 };
      for (const id of ['thread-pressure', 'thread-bending', 'wear-pv', 'wear-heat'])
        expect(word(id, { duty: always }), id).toEqual(word(id, { duty: through }));
    }
    expect(word('wear-pv', { duty: { ...light, load: 60, moving: '100 %' } }).message).not.toContain(
      'to have its rests',
    );
  });
});
