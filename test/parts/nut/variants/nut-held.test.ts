import { describe, expect, it } from 'vitest';
import { limitsInForce } from '../../../../src/judge/limits-in-force.js';
import type { NutDesign } from '../../../../src/parts/nut/dimensions.js';
import { nutHeld } from '../../../../src/parts/nut/variants/nut-held.js';
import { exactly, plusMinus } from '../../../../src/units/measured.js';

type Changes = Readonly<Record<string, unknown>>;

/** A holder on an axis that stands, its load one way, its nut 13 mm across flats. */
const held = (opens: 'end' | 'face', stands: 'through' | 'away', changes: Changes = {}) =>
  nutHeld.run(
    {
      family: { kind: 'holder', opens, pocket: { nut: { acrossFlats: 13, height: 6.5 } } },
      screw: { pitch: exactly(2) },
      duty: { axis: 'vertical' },
      pulls: ['away'],
      stands,
      carriage: {},
      ...changes,
    } as unknown as NutDesign,
    limitsInForce(),
  );
const PRESSED = { verdict: 'pass', message: expect.stringContaining('presses it into its pocket') };
const level = { duty: { axis: 'horizontal' } };

describe('a metal nut in its pocket', () => {
  it('is pressed in by the pull of the carriage on the floor, unless its body stands away and is open at its end', () => {
    expect(held('end', 'through')).toMatchObject(PRESSED);
    expect(held('face', 'through')).toMatchObject(PRESSED);
    expect(held('face', 'away')).toMatchObject(PRESSED);
    expect(held('end', 'away')).toMatchObject({ verdict: 'fail' });
    expect(held('end', 'away', { pulls: ['onto'] })).toMatchObject(PRESSED);
    expect(held('end', 'through', { pulls: ['onto'] })).toMatchObject({ verdict: 'fail' });
  });

  // a pitch of 2 mm: two turns are 4 mm
  it('has two turns of thread, or is a caution where nothing worse is', () => {
    const high = (height: number, more: Changes = {}) =>
      held('end', 'through', {
        family: { kind: 'holder', opens: 'end', pocket: { nut: { acrossFlats: 13, height } } },
        ...more,
      });
    expect(high(4)).toMatchObject(PRESSED);
    expect(high(3.9)).toMatchObject({ verdict: 'caution' });
    expect(high(1)).toMatchObject({
      message:
        'the metal nut is 1 mm high, 0.5 turns of its thread, and may not hold its load; take one of 2 turns or more (family.nut.height)',
    });
    expect(high(1, { pulls: ['onto'] })).toMatchObject({ verdict: 'fail' });
  });

  it('may come out of an open end on a level axis, and is asked for where nobody knows which way it is pulled', () => {
    expect(held('end', 'through', level)).toMatchObject({ verdict: 'caution' });
    const both = { pulls: ['away', 'onto'] };
    expect(held('end', 'through', { ...both, duty: {} })).toMatchObject({ missing: ['duty.axis'] });
    expect(held('end', 'through', both)).toMatchObject({ missing: ['mounting'] });
    expect(held('end', 'through', { ...both, mounting: 'flange-up' })).toMatchObject({ missing: ['stands'] });
  });

  it('stays behind a carriage whose bore is surely below its flats', () => {
    const bored = (bore: unknown) => held('face', 'through', { ...level, carriage: { bore } });
    expect(bored(undefined)).toMatchObject({ missing: ['carriage.bore'] });
    expect(bored(exactly(12.9))).toMatchObject({ verdict: 'pass', message: 'the carriage closes its pocket' });
    expect(bored(plusMinus(12.9, 0.1))).toMatchObject({ verdict: 'fail' });
    expect(bored(exactly(13))).toMatchObject({ verdict: 'fail' });
  });

  it('is asked of holders alone', () => {
    expect(held('end', 'away', { family: undefined })).toBeUndefined();
    expect(held('end', 'away', { family: { kind: 'twin' } })).toBeUndefined();
  });
});
