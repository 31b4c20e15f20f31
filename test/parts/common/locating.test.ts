import { describe, expect, it } from 'vitest';
import { locatingPlaces } from '../../../src/parts/common/locating.js';

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

  it('is the motor through a rigid sleeve, wherever it is; through a disc only where it stands below; through what gives it is not', () => {
    const places = (joint: 'rigid' | 'disc' | 'flexible', mounting: 'motor-below' | 'motor-above') =>
      locatingPlaces({ ...none, joint, mounting }).length;
    expect([places('rigid', 'motor-below'), places('rigid', 'motor-above')]).toEqual([1, 1]);
    expect([places('disc', 'motor-below'), places('disc', 'motor-above')]).toEqual([1, 0]);
    expect([places('flexible', 'motor-below'), places('flexible', 'motor-above')]).toEqual([0, 0]);
    expect(locatingPlaces({ ...none, joint: 'disc' })).toEqual([]);
  });
});
