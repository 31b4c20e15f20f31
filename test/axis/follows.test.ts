import { describe, expect, it } from 'vitest';
import type { PartFacts } from '../../src/axis/facts.js';
import { followsFrom } from '../../src/axis/follows.js';
import { alongScrew } from '../../src/axis/lengths.js';
import type { AxisSheet } from '../../src/axis/sheet.js';
import type { Quantity } from '../../src/units/quantity.js';

const mm = (value: number, half = 0): Quantity => ({ value, half });
const joint: PartFacts = { joint: { kind: 'disc', shaft: 25, motorDepth: 22, gap: 3, screwDepth: 24 } };
const ring: PartFacts = { holder: { role: 'free', thickness: 5, nutGap: 5 } };
const guide: PartFacts = { holder: { role: 'guiding', thickness: 12, nutGap: 24 } };
const nut: PartFacts = { nut: { length: 18, floats: false, printed: true } };
const floating: PartFacts = { nut: { length: 18, floats: true, printed: true } };
const LENGTHS = { clear: mm(330, 0.5), far_face: 'holder' as const, moving: mm(20), travel: 240 };

type Sheet = Partial<Pick<AxisSheet, 'thrust_bearing' | 'duty' | 'motor' | 'lengths'>>;

/** What follows of an axis with a pitch of 2 mm. */
function follows(facts: readonly PartFacts[], sheet: Sheet = {}, lead?: number) {
  const parts = facts.map((one, i) => ({ role: `p${i}`, facts: one }));
  const lengths = 'lengths' in sheet ? sheet.lengths : LENGTHS;
  const along = alongScrew({ lengths }, parts, { calipers: 0.03, pitch: 2 });
  return followsFrom({ sheet, parts, along, ...(lead === undefined ? {} : { lead }) });
}

describe('what follows for the parts of an axis', () => {
  // by hand: the coupling ends at 25 + 3 + 24 = 52; 330 ± 0.5 − 52 − 20 = 258 ± 0.5 is left to move in, and
  // 257.5 − 5 − 240 behind the travel; free to the far side of the ring, 335.5 − 52 at the most
  it('is who joins, holds and leads, what is left, and how fast it turns', () => {
    const { fields, ends, thrustBearing, ofKind } = follows([joint, nut, ring], { duty: { feed: 6 } }, 2);
    expect([ends, thrustBearing, ofKind]).toEqual(['fixed-free', false, {}]);
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

  it('holds the screw both ways where two collars stand on bearings, and leaves one alone', () => {
    expect(follows([joint, { collar: true }, { collar: true }]).fields.pair).toBe('yes');
    expect(follows([joint, { collar: true }, {}]).fields).not.toHaveProperty('pair');
  });

  it('leaves out what nobody tells', () => {
    const { fields } = follows([], { lengths: undefined });
    expect(fields).toEqual({ thrust_bearing: 'no', locating_holder: 'no', duty: { ends: 'fixed-free' } });
    // a speed wants feed and lead, a joint may not know how deep it goes
    expect(follows([], { lengths: undefined, duty: { feed: 6 } }).fields.duty).toEqual({ ends: 'fixed-free' });
    expect(follows([], { lengths: undefined }, 2).fields.duty).toEqual({ ends: 'fixed-free' });
    expect(follows([{ joint: { kind: 'rigid' } }]).fields).not.toHaveProperty('hub_depth');
  });

  it('counts no room and no length below nothing', () => {
    // 257.5 − 5 − 300; a screw that ends at 52 + 0 is free over nothing
    expect(follows([joint, nut, ring], { lengths: { ...LENGTHS, travel: 300 } }).fields.nut_gap).toBe('0 mm');
    const none = follows([joint, nut], { lengths: { screw: mm(24) } });
    expect(none.fields.duty).toEqual({ ends: 'fixed-free' });
    expect(follows([joint, nut], { lengths: { screw: mm(25) } }).fields.duty).toMatchObject({ span: '1 mm' });
  });

  it('turns as fast as travel and lead ask, in whole turns a minute', () => {
    // 60 · 10/3
    expect(follows([joint], { duty: { feed: 10 } }, 3).fields.duty).toMatchObject({ speed: 200 });
    // 60 · 7/8 = 52.5
    expect(follows([joint], { duty: { feed: 7 } }, 8).fields.duty).toMatchObject({ speed: 53 });
  });
});

describe('who carries and who gives', () => {
  it('is a thrust bearing that is told, or a collar that has one', () => {
    expect(follows([joint], { thrust_bearing: 'yes' })).toMatchObject({
      thrustBearing: true,
      fields: { thrust_bearing: 'yes' },
    });
    expect(follows([joint, { collar: true }]).thrustBearing).toBe(true);
    expect(follows([joint], { thrust_bearing: 'no' }).thrustBearing).toBe(false);
  });

  it('is a bearing of known sizes, which a motor plate must bear where it stands in it', () => {
    const bearing = { bore: 8, outside: 16, height: 5 };
    const sizes = { bore: '8 mm', outside: '16 mm', height: '5 mm' };
    expect(follows([joint, { collar: true, bearing }]).ofKind).toEqual({ 'motor-plate': { bearing: sizes } });
    expect(follows([joint, { collar: true }]).ofKind).toEqual({});
    // of two, either of which may stand there, the narrower
    const wide = { collar: true, bearing: { bore: 10, outside: 24, height: 9 } } as const;
    for (const both of [
      [wide, { collar: true, bearing } as const],
      [{ collar: true, bearing } as const, wide],
    ])
      expect(follows([joint, ...both]).ofKind).toEqual({ 'motor-plate': { bearing: sizes } });
  });

  it('is a holder that locates', () => {
    const located: PartFacts = { holder: { role: 'locating', thickness: 12, nutGap: 24 } };
    expect(follows([joint, located]).fields.locating_holder).toBe('yes');
    expect(follows([joint, guide]).fields.locating_holder).toBe('no');
  });

  it('is a floating nut only where every nut floats', () => {
    expect(follows([floating, floating]).fields.nut).toBe('floating');
    expect(follows([floating, nut]).fields.nut).toBe('rigid');
    expect(follows([ring]).fields).not.toHaveProperty('nut');
  });

  it.each([
    ['rigid', guide, 'fixed-supported'],
    ['flexible', guide, 'supported'],
    ['disc', guide, 'supported'],
    ['rigid', ring, 'fixed-free'],
  ] as const)('a %s joint and a holder of its kind hold the ends (case %#)', (kind, holder, ends) => {
    const found = follows([{ joint: { kind } }, holder]);
    expect(found.ends).toBe(ends);
    expect(found.fields.duty).toMatchObject({ ends });
  });

  it('is nobody at a free far end, and one holder that leads is enough', () => {
    expect(follows([{ joint: { kind: 'rigid' } }]).ends).toBe('fixed-free');
    expect(follows([joint, ring, guide]).ends).toBe('supported');
  });
});

describe('the room behind the end of the screw', () => {
  const room = (lengths: Sheet['lengths'], ...facts: readonly PartFacts[]) =>
    follows([joint, ...facts], { lengths }).fields.end_room;

  it('is what is told to be free, less how far the screw stands out', () => {
    // ordered: two pitches of 2 mm at the most, 20 − 0.2 − 4
    expect(room({ ...LENGTHS, beyond: mm(20, 0.2) }, ring)).toBe('15.8 mm');
    // there: it ends at 28 + 312 ± 0.1, the ring at 335 ± 0.5: 19.8 − (340.1 − 334.5)
    expect(room({ ...LENGTHS, beyond: mm(20, 0.2), screw: mm(312, 0.1) }, ring)).toBe('14.2 mm');
  });

  it('is none below nothing, and not known where a length is missing', () => {
    expect(room({ ...LENGTHS, beyond: mm(3) }, ring)).toBe('0 mm');
    expect(room({ ...LENGTHS }, ring)).toBeUndefined();
    const { clear: _, ...rest } = LENGTHS;
    expect(room({ ...rest, beyond: mm(20) }, ring)).toBeUndefined();
    // a screw that is there, whose beginning nobody knows
    const bare = follows([ring], { lengths: { ...LENGTHS, beyond: mm(20), screw: mm(312) } });
    expect(bare.fields).not.toHaveProperty('end_room');
  });
});

describe('the shaft of a motor on a plate', () => {
  it('stands out of the plate, and is longer by it from the motor’s own face', () => {
    expect(follows([joint, { plate: 8 }]).ofKind).toEqual({ 'motor-plate': { motor: { shaft: { length: '33 mm' } } } });
  });

  it('is left to the plate where no length is told, or no plate is there', () => {
    expect(follows([joint]).ofKind).toEqual({});
    expect(follows([{ joint: { kind: 'disc' } }, { plate: 8 }]).ofKind).toEqual({});
  });
});
