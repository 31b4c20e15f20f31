import { describe, expect, it } from 'vitest';
import { check } from '../../../src/pipeline/check.js';
import { design } from '../../../src/pipeline/design.js';
import { nutSheet } from '../../support/nut-sheets.js';

const hardwareOf = (changes = {}) => check(design(nutSheet({ flange: FLANGE, ...changes }))).hardware!;
const FLANGE = { diameter: 40, thickness: 4 };
const CARRIAGE = { thickness: 8, holes: { count: 4, circle: 27, start: 45, diameter: 3.4, screw: 'M3' } };
const holesOf = (joint: string) => ({ count: 4, circle: 27, start: 45, screw: 'M3', joint });
const screwsOf = (changes: object) => hardwareOf(changes).find(({ item }) => item.startsWith('socket'))!.size;
const washersOf = (changes: object) => hardwareOf(changes).find(({ item }) => item.startsWith('plain washer'))?.count;

// ISO 4032: M3 nut 2.4 high; ISO 7089: M3 washer 0.5 thick, 7 outside; pitch 0.5
describe('screws of a nut', () => {
  it('reach through flange, carriage, both washers and the nut, and a pitch and a half out of it', () => {
    // 4 + 8 + 2 · 0.5 + 2.4 + 0.75 = 16.15: 16 is too short
    expect(screwsOf({ carriage: CARRIAGE })).toBe('M3x20');
    expect(washersOf({ carriage: CARRIAGE })).toBe(8);
    expect(screwsOf({ carriage: { ...CARRIAGE, thickness: 7.8 } })).toBe('M3x16');
  });

  it('pass no washer that would fall through the carriage', () => {
    // 4 + 8 + 0.5 + 2.4 + 0.75 = 15.65
    const wide = { ...CARRIAGE, holes: { ...CARRIAGE.holes, diameter: 7.2 } };
    expect(washersOf({ carriage: wide })).toBe(4);
    expect(screwsOf({ carriage: wide })).toBe('M3x16');
  });

  it.each(['insert', 'tapped'])('want no nut behind holes of the joint %s', (joint) => {
    const items = hardwareOf({ carriage: CARRIAGE, flange: { ...FLANGE, thickness: 8 }, holes: holesOf(joint) });
    expect(items.map(({ item }) => item)).toEqual([
      'socket cap screw ISO 4762',
      ...(joint === 'insert' ? ['heat-set insert'] : []),
    ]);
  });
});

// tap drill of M3: ISO 2306, 2.5 mm; ISO 273 medium for M3: 3.4
describe('holes of a nut', () => {
  it.each([
    ['tapped', 2.5],
    ['through', 3.4],
  ])('of the joint %s are told as they are made', (joint, diameter) => {
    const { dimensions } = check(design(nutSheet({ flange: FLANGE, holes: { ...holesOf(joint), fit: 'medium' } })));
    expect(dimensions.finished.hole_diameter).toBe(diameter);
  });
});
