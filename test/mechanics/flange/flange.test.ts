import { expect, it } from 'vitest';
import { looseRingBending } from '../../../src/mechanics/flange/loose-ring.js';
import { sectionOf } from '../../../src/mechanics/flange/section.js';
import { stripSag } from '../../../src/mechanics/flange/strip-sag.js';
import { stripWidth } from '../../../src/mechanics/flange/strip-width.js';

it('takes an ear as a cantilever: two ears, 400 N, arm 6, 12 wide, 6 thick, 16.7 MPa', () => {
  // hand, common practice for ears: M = 200·6 = 1200 N·mm, Z = 12·6²/6 = 72 mm³
  const { modulus, inertia, area } = sectionOf([{ width: 12, from: 0, to: 6 }]);
  expect([modulus, inertia, area]).toEqual([72, 216, 72]);
  expect((200 * 6) / modulus).toBeCloseTo(16.67, 2);
});

it('gives with the shear that a short ear has: 0.033 + 0.027 mm for E 2000', () => {
  // hand: 200·6³/(3·2000·216) = 0.0333; G = 2000/2.7 = 740.7; 1.2·200·6/(740.7·72) = 0.0270
  const pieces = [{ from: 0, to: 6, area: 72, inertia: 216 }];
  expect(stripSag({ force: 200, modulus: 2000, pieces }).sag).toBeCloseTo(0.0603, 4);
  // ABS for 1,000 h keeps 0.55 of its modulus: 0.11 mm
  expect(stripSag({ force: 200, modulus: 1100, pieces }).sag).toBeCloseTo(0.11, 2);
  // F·a²/(2·E·I) = 200·36/(2·2000·216) rad
  expect(stripSag({ force: 200, modulus: 2000, pieces }).lean).toBeCloseTo(0.4775, 4);
  const halves = [
    { from: 0, to: 3, area: 72, inertia: 216 },
    { from: 3, to: 6, area: 72, inertia: 216 },
  ];
  expect(stripSag({ force: 200, modulus: 2000, pieces: halves }).sag).toBeCloseTo(0.0603, 4);
  expect(stripSag({ force: 200, modulus: 2000, pieces: halves }).lean).toBeCloseTo(0.4775, 4);
});

it('takes a strip of a round flange: 44 on a body of 22, four screws at radius 16, 800 N, 6 thick, head 8: 9.65 MPa', () => {
  // hand: a = 5, min(8 + 10, π·22/4 = 17.28), M = 1000 N·mm, Z = 17.28·36/6 = 103.7
  const width = stripWidth({ head: 8, arm: 5, across: 22, count: 4 });
  expect(width).toBeCloseTo(17.28, 2);
  expect((200 * 5) / sectionOf([{ width, from: 0, to: 6 }]).modulus).toBeCloseTo(9.65, 2);
  // six screws leave less, a small head as well
  expect(stripWidth({ head: 5.5, arm: 1, across: 22, count: 4 })).toBe(7.5);
});

it('turns a loose ring inside out: the same flange 13.9 MPa', () => {
  // hand: twist 800·5/(2π) = 636.6 N·mm; 6·636.6/(36·11·ln 2 = 274.5) = 13.9
  expect(looseRingBending({ axialForce: 800, arm: 5, inner: 11, outer: 22, thickness: 6 })).toBeCloseTo(13.92, 2);
});

it('adds the pieces of a section about their common axis', () => {
  // T of 10 × 2 on 2 × 8, by hand: e = (16·4 + 20·9)/36 = 6.778; I = 2·8³/12 + 16·2.778² + 10·2³/12 + 20·2.222² = 314.22
  const section = sectionOf([
    { width: 2, from: 0, to: 8 },
    { width: 10, from: 8, to: 10 },
  ]);
  expect(section.inertia).toBeCloseTo(314.22, 2);
  expect(section.modulus).toBeCloseTo(314.22 / 6.7778, 2);
  // the same anywhere, and turned over
  for (const turned of [
    [
      { width: 2, from: 10, to: 18 },
      { width: 10, from: 18, to: 20 },
    ],
    [
      { width: 2, from: -8, to: 0 },
      { width: 10, from: -10, to: -8 },
    ],
  ])
    expect(sectionOf(turned).modulus).toBeCloseTo(314.22 / 6.7778, 2);
  expect(sectionOf([])).toEqual({ area: 0, inertia: 0, modulus: 0 });
});

it('refuses values outside their ranges', () => {
  expect(() => sectionOf([{ width: 0, from: 0, to: 1 }])).toThrow(/^width: /);
  expect(() => sectionOf([{ width: 1, from: 2, to: 2 }])).toThrow(/^to: /);
  expect(() => stripWidth({ head: -1, arm: 1, across: 1, count: 1 })).toThrow(/^head: /);
  expect(() => looseRingBending({ axialForce: 1, arm: 1, inner: 2, outer: 2, thickness: 1 })).toThrow(/^outer: /);
  expect(() => stripSag({ force: 1, modulus: 0, pieces: [] })).toThrow(/^modulus: /);
});
