import { describe, expect, it } from 'vitest';
import { EXACT_NUT, LAYERS_ALONE } from '../../../support/exact-nut.js';
import { FAMILY_BASE, METAL } from '../../../support/family-sheet.js';
import { changed, strongNut } from '../../../support/nut-sheets.js';
import { findingOf } from '../../../support/one-finding.js';

type Changes = Record<string, unknown>;
const found = (id: string, changes: Changes = {}) => findingOf(strongNut(changes), id)!;

/**
 * ⌀17 × 18 mm around a thread of 9.3 mm: h·A = 10e-6·(π·17·18 + π/2·(17² − 9.3²)) = 0.012794 W/K. Greased, 30 N at 6 mm/s of feed, 85.03 mm/s on
 * flanks of 9 mm, 9 of every 60 s: ΔT = 0.15 · 0.2 · 30 · 0.08503 / 0.012794.
 */
const WARMTH = (0.15 * 0.2 * 30 * (6 * Math.hypot(1, (Math.PI * 9) / 2))) / 12.794;

/** Room on every side read exactly: 0.3·tan 15° + 0.1 mm of play, 0.0608 of it taken by layers; heat alone is counted. */
const EXACT = { ...EXACT_NUT, effects: { ...LAYERS_ALONE, temperature: 'on' } };
const left = (warmth: number, expansion: number) => {
  const grown = (expansion - 12e-6) * (30 + warmth - 20);
  return 0.1 + (0.3 + 9.3 * grown) * Math.tan(Math.PI / 12) - 18 * grown - 0.0608;
};

describe('a nut that its own friction warms, by hand', () => {
  it('has 6 K of it here', () => {
    expect(WARMTH).toBeCloseTo(5.98, 2);
  });

  it('keeps less play: half of that warmth is likely, all of it at worst', () => {
    const { value, least, most } = found('thread-running-in', EXACT);
    const still = found('thread-running-in', { ...EXACT, duty: { feed: undefined } });
    // 0.0036 mm by half of it, 0.0072 mm by all
    expect(still.value! - value!).toBeCloseTo(left(0, 90e-6) - left(WARMTH / 2, 90e-6), 3);
    // 19 of 20 nuts, whose plastic grows by 60 to 120·10⁻⁶
    const range = (warmth: number) => left(warmth, 60e-6) - left(warmth, 120e-6);
    expect(least).toBeCloseTo(left(WARMTH, 120e-6) + 0.025 * range(WARMTH), 3);
    expect(most).toBeCloseTo(left(0, 60e-6) - 0.025 * range(0), 3);
  });

  it('has that least play without layers once it has run in, and says what took it', () => {
    const { least, value, message } = found('thread-pitch-error', EXACT);
    const range = left(WARMTH, 60e-6) - left(WARMTH, 120e-6);
    expect(least).toBeCloseTo(left(WARMTH, 120e-6) + 0.025 * range + 0.0608, 3);
    expect(value).toBeGreaterThan(least!);
    expect(message).toContain('; its own friction may warm it by up to 6 K, which leaves 0.15 mm');
  });

  it('warms 1.1/0.5 times as much at worst where it is dry, by 2.5 times the friction', () => {
    const { message } = found('thread-pitch-error', { ...EXACT, duty: { grease: 'dry' } });
    expect(message).toContain(`up to ${((WARMTH * 1.1) / 0.2).toFixed(0)} K`);
  });

  it('is not warmed where heat is left out of its fit', () => {
    const cold = found('thread-pitch-error', EXACT_NUT);
    expect(cold.message).not.toContain('friction');
    expect(cold.least).toBe(cold.most);
  });

  it('may bind in work though it does not in the air', () => {
    const dry = { fit: { axial: 0.1 }, duty: { grease: 'dry', feed: 20 } };
    const { word, message } = found('thread-pitch-error', dry);
    expect(word).toBe('perhaps');
    expect(message).toContain('; grease, a slower feed, less load or longer rests keep it cool; ');
    const greased = found('thread-pitch-error', { fit: { axial: 0.07 }, duty: { feed: 60 } });
    expect(greased.message).toMatch(/; a slower feed, less load or longer rests keep it cool; /);
    expect(found('thread-pitch-error', { ...dry, duty: { feed: 1 } }).word).toBe('yes');
    // a fit that is too tight in the air is helped by no cooling
    expect(found('thread-pitch-error', { fit: { axial: 0.02 } }).message).not.toContain('cool');
  });

  it('is asked for its rests where its play hangs on them', () => {
    const rests = { on_time: undefined, moving: undefined, cycle: undefined };
    const told = found('thread-pitch-error', { fit: { axial: 0.1 }, duty: { feed: 20, ...rests } });
    expect(told).toMatchObject({ word: 'not-told', missing: ['duty.on_time', 'duty.cycle'] });
  });

  it('bears less beside its thread: PA12, half of 21 MPa across the layers for a moment, e^(−ΔT/85)', () => {
    const { limit, message } = found('barrel-pull');
    expect(limit!.max).toBeCloseTo(10.5 * Math.exp(-(7 + WARMTH) / 85), 3);
    expect(message).toMatch(/^warmed by friction, by up to 6 K: /);
    expect(found('flange-bending').limit!.max).toBeCloseTo(21 * Math.exp(-(7 + WARMTH) / 85), 3);
  });

  it('bears less under its flange, by half of that warmth: 0.5 · 1.2 · 42 MPa of pressure', () => {
    const { limit, message } = found('seat-pressure');
    expect(limit!.max).toBeCloseTo(25.2 * Math.exp(-(7 + WARMTH / 2) / 85), 3);
    expect(message).toMatch(/^its flange warmed by friction, by up to 3 K: /);
    expect(found('bolt-clamp').message).toContain('after years at 33 °C');
  });

  it('is as cool as the air without a load, a feed or a thread of its own', () => {
    for (const field of ['load', 'feed'])
      expect(found('barrel-pull', { duty: { [field]: undefined } }).message, field).not.toContain('friction');
    const duty = { load: 30, feed: 6, grease: 'dry', temperature: 30, axis: 'vertical' };
    const holder = changed(FAMILY_BASE, { family: { kind: 'holder', nut: METAL }, duty, mounting: 'flange-up' });
    expect(findingOf(holder, 'barrel-pull')!.message).not.toContain('friction');
  });
});
