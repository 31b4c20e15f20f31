import { describe, expect, it } from 'vitest';
import { runChecks } from '../../../src/judge/run-checks.js';
import { PROFILE_CHECKS, type Profiled } from '../../../src/parts/common/profile-checks.js';
import type { Material } from '../../../src/presets/material.js';

/** What the checks read of a profile; nothing else of it is looked at. */
function wordsOf(profile: object | undefined, moistureGrowth = 0.004) {
  const part = { profile, material: { name: 'pa12', moistureGrowth } as Partial<Material> } as Profiled;
  return Object.fromEntries(runChecks(PROFILE_CHECKS, part).map(({ id, word }) => [id, word]));
}

const PROFILE = { name: 'mine', revision: 1, readings: 20, assumed: [], state: 'room', state_in_use: 'room' };

describe('the checks of a profile', () => {
  it.each([
    ['read and used alike', PROFILE, undefined, { 'profile-state': 'yes', 'profile-measured': 'yes' }],
    ['read dry, used in room air', { ...PROFILE, state: 'dry' }, undefined, { 'profile-state': 'but' }],
    ['the same where it hardly grows', { ...PROFILE, state: 'dry' }, 0.0009, { 'profile-state': 'yes' }],
    ['the same where it just grows', { ...PROFILE, state: 'dry' }, 0.001, { 'profile-state': 'but' }],
    ['something is assumed', { ...PROFILE, assumed: ['shrink'] }, undefined, { 'profile-measured': 'but' }],
  ])('%s', (_, profile, growth, words) => {
    expect(wordsOf(profile, growth)).toMatchObject(words);
  });

  it('say how it was read and used, and by how much the plastic grows', () => {
    const text = (profile: object, material?: object) =>
      runChecks(PROFILE_CHECKS, { profile, material } as unknown as Profiled)[0]!.message;
    const dry = { ...PROFILE, state: 'dry', state_in_use: 'wet' };
    expect(text(PROFILE)).toBe('read and used in room air');
    expect(text(dry)).toBe('read dry, used wet; it hardly takes up moisture');
    expect(text(dry, { name: 'pa12' })).toBe('read dry, used wet; it hardly takes up moisture');
    // 0.004 of its size
    expect(text(dry, { name: 'pa12', moistureGrowth: 0.004 })).toMatch(/room air pa12 grows by 0.4 %, soaked by more/);
  });

  it('say nothing without one', () => {
    expect(wordsOf(undefined)).toEqual({});
  });
});
