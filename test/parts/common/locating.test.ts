import { describe, expect, it } from 'vitest';
import { endsOf, judgeLocating, locatingPlaces } from '../../../src/parts/common/locating.js';

const none = { holders: [], thrustBearing: false };

describe('what carries a screw along its axis', () => {
  it('is each holder that locates it, and a thrust bearing', () => {
    expect(locatingPlaces(none)).toEqual([]);
    expect(locatingPlaces({ ...none, holders: ['the far holder'] })).toEqual(['the far holder']);
    expect(locatingPlaces({ holders: ['the far holder'], thrustBearing: true })).toEqual([
      'the far holder',
      'the thrust bearing at the motor end',
    ]);
  });

  it('is one place at the motor end where a thrust bearing stands beside a rigid sleeve', () => {
    const places = locatingPlaces({ holders: ['the far holder'], thrustBearing: true, joint: 'rigid' });
    expect(places).toEqual([
      'the far holder',
      "the thrust bearing at the motor end (the motor's own behind the rigid sleeve gives way: set the collar, then tighten the sleeve)",
    ]);
  });

  it('is the motor through a rigid sleeve, wherever it is; through a disc only where it stands below; through what gives it is not', () => {
    const places = (joint: 'rigid' | 'disc' | 'flexible', mounting: 'motor-below' | 'motor-above') =>
      locatingPlaces({ ...none, joint, mounting }).length;
    expect([places('rigid', 'motor-below'), places('rigid', 'motor-above')]).toEqual([1, 1]);
    expect([places('disc', 'motor-below'), places('disc', 'motor-above')]).toEqual([1, 0]);
    expect([places('flexible', 'motor-below'), places('flexible', 'motor-above')]).toEqual([0, 0]);
    expect(locatingPlaces({ ...none, joint: 'disc' })).toEqual([]);
  });
});

describe('how the ends of a screw count', () => {
  it('goes by what leads its far end, and by what clamps it at the motor', () => {
    expect([endsOf(false, 'rigid'), endsOf(false, undefined)]).toEqual(['fixed-free', 'fixed-free']);
    expect([endsOf(true, 'rigid'), endsOf(true, 'flexible')]).toEqual(['fixed-supported', 'supported']);
    expect([endsOf(true, 'disc'), endsOf(true, undefined)]).toEqual(['supported', 'supported']);
  });
});

describe('how many carry it', () => {
  const told = (places: readonly string[], pass: object = { min: 1, max: 1 }) =>
    judgeLocating(places, pass, 'add a holder');

  it.each([
    [['the far holder'], 1, 'the far holder'],
    [[], 0, 'none; nothing keeps it: add a holder'],
    [['a', 'b'], 2, 'a and b; they fight each other when the screw warms: keep one'],
  ])('is told, and what to do where it is not one: %j', (places, value, message) => {
    expect(told(places)).toMatchObject({ value: { likely: value }, message });
  });

  it('goes by the limit in force', () => {
    expect(told(['a', 'b'], { max: 2 })).toMatchObject({ message: 'a and b' });
    expect(told(['a'], { min: 2 })).toMatchObject({ message: 'a; the sheet wants another number' });
  });
});
