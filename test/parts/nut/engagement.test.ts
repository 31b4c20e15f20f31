import { expect, it } from 'vitest';
import { threadPressure } from '../../../src/mechanics/thread/bearing-pressure.js';
import type { NutDesign } from '../../../src/parts/nut/dimensions.js';
import { longer, worstTeeth } from '../../../src/parts/nut/engagement.js';
import { design } from '../../../src/pipeline/design.js';
import { FAMILY_BASE } from '../../support/family-sheet.js';

const family = (kind?: string) => longer({ family: kind && { kind } } as unknown as NutDesign);

it('more flank is had by a longer nut; of two nuts with a spring by the follower and a softer spring too', () => {
  expect(family()).toBe('a longer nut');
  expect(family('twin')).toBe('a longer nut');
  expect(family('anti-backlash')).toMatch(/family\.follower.*softer spring/);
});

it('the slit of a clamped nut takes its own of every turn', () => {
  const pressure = (more: object) => {
    const made = design({ ...FAMILY_BASE, ...more }) as NutDesign;
    return { made, likely: worstTeeth(made, 100, threadPressure).value.likely };
  };
  const [whole, slit] = [pressure({}), pressure({ family: { kind: 'clamped' } })];
  const { family, finished } = slit.made;
  const width = family?.kind === 'clamped' ? family.slit.width : 0;
  expect(width).toBeGreaterThan(0.5);
  // so much of the way around at the pitch diameter is not there
  expect(whole.likely / slit.likely).toBeCloseTo(1 - width / (Math.PI * finished.thread.pitchDiameter), 9);
});
