import { expect, it } from 'vitest';
import type { PartFacts } from '../../src/axis/facts.js';
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

// by hand: the coupling ends at 52, the nut is 18 long: a start at 30 and 5 mm that move leave 330 − 52 − 18, not 330 − 30 − 5
it('takes no start inside the coupling, and nothing that moves for shorter than its nut', () => {
  const told = { ...lengths, start: mm(30, 0.1), moving: mm(5, 0.1) };
  const along = alongScrew({ lengths: told }, parts(joint, nut, ring), reading);
  expect(figureOf(along.near)?.likely).toBe(52);
  expect(figureOf(along.moving)?.likely).toBe(18);
  expect(figureOf(along.room)).toEqual({ least: 259.5, likely: 260, most: 260.5 });
  // 60 and 20 are more than both, and stand; without a coupling or a nut nobody can tell
  const more = alongScrew({ lengths: { ...lengths, start: mm(60, 0.1) } }, parts(joint, nut, ring), reading);
  expect(figureOf(more.near)?.likely).toBe(60);
  expect(figureOf(more.moving)?.likely).toBe(20);
  const bare = alongScrew({ lengths: told }, parts(ring), reading);
  expect([figureOf(bare.near)?.likely, figureOf(bare.moving)?.likely]).toEqual([30, 5]);
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

it('takes each length from where it is told', () => {
  const bare: PartFacts = { joint: { kind: 'flexible' } };
  const at = (...facts: readonly PartFacts[]) => alongScrew({}, parts(...facts), reading);
  // a coupling that is there is asked for its own fields, by the name of its section
  const untold = alongScrew({}, [{ role: 'join', facts: bare }], reading);
  expect(missingOf(untold.shaftRoom)).toEqual(['motor.shaft.length', 'parts.join.motor.shaft']);
  expect(missingOf(untold.screwStart)).toEqual(['motor.shaft.length', 'parts.join.motor_hub.stop']);
  expect(missingOf(untold.jointEnd)).toEqual(['motor.shaft.length', 'parts.join.motor_hub.stop', 'parts.join.screw']);
  expect(missingOf(at(nut).jointEnd)).toEqual(['parts.coupling']);
  expect(missingOf(at(joint, nut).screwEnd)).toEqual(['lengths.screw']);
  expect(missingOf(at(joint, nut, ring).far)).toEqual(['lengths.clear']);
  expect(missingOf(at(joint, nut, ring).moving)).toEqual(['lengths.moving']);
  const framed = { holder: { role: 'guiding', thickness: 12, nutGap: 24 } } as const;
  const onFrame = alongScrew({ lengths: { ...lengths, far_face: 'frame' } }, parts(joint, framed), reading);
  expect(missingOf(onFrame.holderEnd)).toEqual(['frame.thickness of the end holder']);
  // without a holder the far face is all that there is
  expect(figureOf(alongScrew({ lengths }, parts(joint), reading).holderEnd)).toEqual({
    least: 329.5,
    likely: 330,
    most: 330.5,
  });
});

it('reads lengths as surely as they say, else as the calipers do', () => {
  const along = alongScrew(
    { lengths: { start: { value: 60 }, screw: mm(300, 1), beyond: { value: 8 } } },
    parts(joint),
    reading,
  );
  expect(figureOf(along.near)).toEqual({ least: 59.97, likely: 60, most: 60.03 });
  expect(along.screw).toEqual({ least: 299, likely: 300, most: 301 });
  expect(along.beyond).toEqual({ least: 7.97, likely: 8, most: 8.03 });
  const none = alongScrew({ lengths: { clear: mm(330) } }, parts(joint), reading);
  for (const field of ['screw', 'beyond', 'travel', 'nutLength']) expect(none).not.toHaveProperty(field);
});

it('lets the nut come as near as the coupling, or what else is told to be in its way', () => {
  const near = (start: Quantity | undefined, ...facts: readonly PartFacts[]) =>
    alongScrew({ lengths: { ...lengths, ...(start ? { start } : {}) } }, parts(joint, nut, ...facts), reading).near;
  expect(figureOf(near(undefined))?.likely).toBe(52);
  expect(figureOf(near(mm(60)))?.likely).toBe(60);
  expect(figureOf(near(mm(60), { collar: true }))?.likely).toBe(60);
});

it('lets it come as far as a holder, the end of a free screw, or what stands before that', () => {
  const far = (told: object, ...facts: readonly PartFacts[]) =>
    figureOf(alongScrew({ lengths: told }, parts(joint, nut, ...facts), reading).far)?.likely;
  expect(far({ clear: mm(330), screw: mm(320) }, ring)).toBe(330);
  // 28 + 320 = 348: what is told to be clear comes first; 28 + 290 = 318 comes before it
  expect(far({ clear: mm(330), screw: mm(320) })).toBe(330);
  expect(far({ clear: mm(330), screw: mm(290) })).toBe(318);
  expect(far({ screw: mm(290) })).toBe(318);
  expect(far({ clear: mm(330) })).toBe(330);
  expect(missingOf(alongScrew({}, parts(joint, nut), reading).far)).toEqual(['lengths.screw']);
});

it('takes the longest of several nuts, the room at either end, and how far a screw stands out', () => {
  const short: PartFacts = { nut: { length: 12, floats: false, printed: true } };
  const bought: PartFacts = { nut: { floats: false, printed: false } };
  const along = alongScrew({ lengths }, parts(joint, short, nut, bought), reading);
  expect(along.nutLength).toBe(18);
  expect([along.nearGap, along.farGap]).toEqual([5, 5]);
  expect(along.stand).toEqual({ least: 2, most: 4 });
  expect(along.travel).toBe(240);
  expect(alongScrew({ lengths }, parts(joint, bought), reading)).not.toHaveProperty('nutLength');
});

it('counts a free screw to its own end, or else to the far side of its ring', () => {
  const span = (told: object, ...facts: readonly PartFacts[]) =>
    figureOf(alongScrew({ lengths: told }, parts(joint, nut, ...facts), reading).span)?.likely;
  // 28 + 310 − 52, ring or none
  expect(span({ ...lengths, screw: mm(310) }, ring)).toBe(286);
  expect(span({ ...lengths, screw: mm(310) })).toBe(286);
  // a holder at 330, however long the screw is
  const held: PartFacts = { holder: { role: 'locating', thickness: 12, nutGap: 24 } };
  expect(span({ ...lengths, screw: mm(310) }, held)).toBe(278);
  expect(missingOf(alongScrew({ lengths }, parts(joint, nut), reading).span)).toEqual(['lengths.screw']);
});

it('has nothing left to tell at the far end of travel that nobody wants, or where lengths are missing', () => {
  const { travel: _, ...rest } = lengths;
  expect(leftAtFarEnd(alongScrew({ lengths: rest }, parts(joint, nut, ring), reading))).toBeUndefined();
  expect(leftAtFarEnd(alongScrew({ lengths: { travel: 240 } }, parts(joint, nut, ring), reading))).toBeUndefined();
});
