import { describe, expect, it } from 'vitest';
import { floatTurn, turnBacklash } from '../../src/mechanics/float.js';

describe('a nut that floats on its screws', () => {
  // worked by hand: 0.3 / 8 rad is 2.149°; twice that of a turn is 0.01194 of the lead
  it('turns by float over radius', () => {
    expect(floatTurn({ float: 0.3, radius: 8 })).toBeCloseTo(2.149, 3);
  });

  it.each([
    [2, 0.0239],
    [8, 0.0955],
  ])('loses of a lead of %d mm so much between its stops: %d mm', (lead, lost) => {
    expect(turnBacklash({ lead, float: 0.3, radius: 8 })).toBeCloseTo(lost, 4);
  });

  it('refuses what is no float, radius or lead', () => {
    expect(() => floatTurn({ float: -0.1, radius: 8 })).toThrow('0 or above');
    expect(() => floatTurn({ float: 0.1, radius: 0 })).toThrow('above 0');
    expect(() => turnBacklash({ lead: 0, float: 0.1, radius: 8 })).toThrow('lead');
  });
});
