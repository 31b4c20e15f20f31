import { expect, it } from 'vitest';
import type { PartFacts } from '../../src/axis/facts.js';
import { followsFrom } from '../../src/axis/follows.js';
import { figureOf, missingOf } from '../../src/axis/known.js';
import { alongScrew, leftAtFarEnd } from '../../src/axis/lengths.js';
import type { Quantity } from '../../src/units/quantity.js';

const mm = (value: number, half = 0): Quantity => ({ value, half });
const joint: PartFacts = {
  joint: { kind: 'disc', shaft: 25, motorDepth: 22, gap: 3, screwDepth: 24 },
};
const ring: PartFacts = { holder: { role: 'free', thickness: 5, nutGap: 5 } };
const nut: PartFacts = { nut: { length: 18, floats: false, printed: true } };
const parts = (...facts: readonly PartFacts[]) => facts.map((one, i) => ({ role: `p${i}`, facts: one }));
const reading = { calipers: 0.03, pitch: 2 };
const lengths = { clear: mm(330, 0.5), far_face: 'holder' as const, moving: mm(20), travel: 240 };

// by hand: the screw begins at 25 + 3 = 28, the coupling ends at 28 + 24 = 52; 330 − 52 − 20 = 258 is left to move in
it('adds up what lies along the screw', () => {
  const along = alongScrew({ lengths }, parts(joint, nut, ring), reading);
  expect(figureOf(along.shaftRoom)?.likely).toBe(3);
  expect(figureOf(along.screwStart)?.likely).toBe(28);
  expect(figureOf(along.jointEnd)?.likely).toBe(52);
  expect(figureOf(along.room)).toEqual({ least: 257.5, likely: 258, most: 258.5 });
  expect(figureOf(along.holderEnd)?.likely).toBe(335);
  // 258 − 5 at the motor − 240 of travel, by the least of the readings
  expect(leftAtFarEnd(along)).toBeCloseTo(12.5);
  // a ring holds nothing: the screw is free to its far side, 335 − 52
  expect(figureOf(along.span)?.likely).toBe(283);
});

it('lets a screw that is there end where it ends', () => {
  const along = alongScrew({ lengths: { ...lengths, screw: mm(300, 0.1) } }, parts(joint, nut), reading);
  expect(figureOf(along.screwEnd)?.likely).toBe(328);
  expect(figureOf(along.far)?.likely).toBe(328);
  expect(figureOf(along.span)?.likely).toBe(276);
});

it('counts the span of a held screw to its holder, and a frame before it', () => {
  const held: PartFacts = { holder: { role: 'guiding', thickness: 12, frame: 6, nutGap: 24 } };
  const along = alongScrew({ lengths: { ...lengths, far_face: 'frame' } }, parts(joint, nut, held), reading);
  expect(figureOf(along.span)?.likely).toBe(278);
  expect(figureOf(along.holderEnd)?.likely).toBe(330 + 6 + 12);
  expect(along.farGap).toBe(24);
});

it('names what it would have to know', () => {
  const along = alongScrew({ lengths: { travel: 240 } }, parts(joint, nut, ring), reading);
  expect(missingOf(along.room)).toEqual(['lengths.clear', 'lengths.moving']);
  expect(missingOf(along.holderEnd)).toEqual(['lengths.clear', 'lengths.far_face']);
  expect(missingOf(alongScrew({ lengths }, parts(nut), reading).screwStart)).toEqual(['parts.coupling']);
  // a collar stands in the nut's way, and nobody can know where
  const collared = alongScrew({ lengths }, parts(joint, nut, ring, { collar: true }), reading);
  expect(missingOf(collared.near)).toEqual(['lengths.start']);
});

it('tells each part what its neighbours are', () => {
  const along = alongScrew({ lengths }, parts(joint, nut, ring), reading);
  const { fields, ends } = followsFrom({
    sheet: { duty: { feed: 6 } },
    parts: parts(joint, nut, ring),
    along,
    lead: 2,
  });
  expect(ends).toBe('fixed-free');
  expect(fields).toEqual({
    thrust_bearing: 'no',
    locating_holder: 'no',
    coupling: 'disc',
    nut: 'rigid',
    hub_depth: '22 mm',
    nut_gap: '12.5 mm',
    duty: { ends: 'fixed-free', span: '283.5 mm', speed: 180 },
  });
});

it('takes a rigid sleeve for a fixed end, and a jaw coupling for none', () => {
  const held: PartFacts = { holder: { role: 'guiding', thickness: 12, nutGap: 24 } };
  const ends = (kind: 'rigid' | 'flexible', facts: PartFacts) => {
    const all = parts({ joint: { kind } }, facts);
    return followsFrom({ sheet: {}, parts: all, along: alongScrew({}, all, reading) }).ends;
  };
  expect(ends('rigid', held)).toBe('fixed-supported');
  expect(ends('flexible', held)).toBe('supported');
  expect(ends('rigid', ring)).toBe('fixed-free');
});
