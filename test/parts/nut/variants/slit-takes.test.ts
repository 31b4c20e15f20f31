import { expect, it } from 'vitest';
import type { NutDesign } from '../../../../src/parts/nut/dimensions.js';
import { playTakenBySlit } from '../../../../src/parts/nut/variants/slit-takes.js';
import { design } from '../../../../src/pipeline/design.js';
import { nutSheet } from '../../../support/nut-sheets.js';
import { findingOf } from '../../../support/one-finding.js';

/** A body of 32 mm on Tr8x2. */
const clamped = (material: string) =>
  nutSheet({
    family: { kind: 'clamped' },
    body: { diameter: 32, length: 22 },
    flange: { diameter: 52 },
    holes: { circle: 42 },
    material,
  });
const taken = (material: string) => playTakenBySlit(design(clamped(material)) as NutDesign);
const [outer, flank] = [16, Math.tan(Math.PI / 12)];

// by hand: a slit of 1.5 mm that is shut outside, 16 mm from the axis, has closed the middle of the wall by its share of the way round
it('is what the slit leaves room for, of a plastic that takes the bending', () => {
  const { finished } = design(clamped('pa12')) as NutDesign;
  const middle = (outer + finished.thread.major / 2) / 2;
  expect(taken('pa12')).toBeCloseTo(((1.5 * middle) / (Math.PI * outer)) * flank, 6);
});

// by hand: ε = ΔD·e·(e + R)·h / (2·R²·(2·e² + R²)) at the back, of which PLA takes 0.5 %
it('is what the back bears, of one that takes less', () => {
  const { finished, family } = design(clamped('pla')) as NutDesign;
  const inner = finished.thread.major / 2;
  const [r, h] = [(outer + inner) / 2, outer - inner];
  const e = family?.kind === 'clamped' ? family.clamp.offset : 0;
  const strained = (e * (e + r) * h) / (2 * r ** 2 * (2 * e ** 2 + r ** 2));
  expect(taken('pla')).toBeCloseTo((0.005 / strained) * flank, 6);
});

it('is off what a clamped nut loses at reversal, and nothing of another nut', () => {
  const row = findingOf(clamped('pla'), 'thread-backlash')!;
  const plain = findingOf({ ...clamped('pla'), family: undefined }, 'thread-backlash')!;
  expect(row.value).toBeCloseTo(plain.value! - taken('pla'), 5);
  expect(row.message).toContain('mm less with its slit closed as far as it goes and its back bears');
  expect(plain.message).not.toContain('slit');
  expect(playTakenBySlit(design({ ...clamped('pla'), family: undefined }) as NutDesign)).toBe(0);
});

it('leaves no play of a fit that has less than that', () => {
  const close = { ...clamped('pa12'), fit: { diametral: 0.1, axial: 0.01 } };
  expect(findingOf(close, 'thread-backlash')!.value).toBe(0);
});
