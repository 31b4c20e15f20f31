import { describe, expect, it } from 'vitest';
import {
  CANNOT,
  faultOf,
  READINGS,
  readingsOf,
  repaired,
  typedNumber,
  typedNumbers,
} from '../../../page/live/state/readings.js';
import { identify } from '../../../src/identify/identify.js';

describe('typed numbers', () => {
  it.each([
    ['9.94', 9.94],
    ['9,94', 9.94],
    [' 20.03 mm', 20.03],
    ['0.3125 in', 7.9375],
    ['0.5"', 12.7],
  ])('%s is %d mm', (text, value) => expect(typedNumber(text)).toBeCloseTo(value, 9));

  it.each(['', ' ', '9.', '-3', '0', 'wide', '1e', '9.9.4'])('%j is none yet, or a half-typed one', (text) => {
    const value = typedNumber(text);
    expect(value === undefined || value === 9).toBe(true);
  });

  it('reads several of one size', () => {
    expect(typedNumbers('7.92 7,94; 7.91')).toEqual([7.92, 7.94, 7.91]);
    expect(typedNumbers('7.92 mm')).toEqual([7.92]);
    expect(typedNumbers('')).toEqual([]);
  });
});

describe('faultOf', () => {
  it.each([
    ['major', 'abc', /^must be lengths above 0/],
    ['major', '7.92 abc 7.91', /^must be lengths above 0/],
    ['crests', 'abc', /^must be a length above 0, or one over another number than 10/],
    ['crests', '18 over 0', /18\.01 over 9$/],
    ['travel', '2x', /^must be a length above 0/],
    ['wires', '8.45', /^must be two lengths above 0: 8\.45 with 1$/],
    ['wires', '8.45 with x', /^must be two lengths/],
    ['starts', '2.5', /^must be a whole number from 1$/],
    ['starts', 'two', /^must be a whole number from 1$/],
    ['minor', '-3', /^must be a length above 0$/],
    ['crest_flat', 'wide', /^must be a length above 0$/],
  ] as const)('%s %j is told', (id, text, words) => expect(faultOf(id, text)).toMatch(words));

  it.each([
    ['major', ' 7.92 7,94; 7.91 mm '],
    ['crests', '20,03'],
    ['crests', '18.01 over 9'],
    ['travel', '80 over 5'],
    ['wires', '8.45 with 1'],
    ['starts', '2'],
    ['minor', '0.25 in'],
    ['crest_flat', '0,7'],
    ['crest', 'flat'],
    ['hand', 'left'],
  ] as const)('%s %j is none', (id, text) => expect(faultOf(id, text)).toBeUndefined());

  it('is none where nothing is typed, or nothing can be', () => {
    for (const { id } of READINGS)
      for (const text of [undefined, '', ' ', CANNOT]) expect(faultOf(id, text)).toBeUndefined();
  });
});

describe('repaired', () => {
  it.each([
    { major: '7.92', crests: '18.01' },
    { major: '7.92', crests: '80' },
    { major: '3.96', crests: '20' },
    { major: '7.92', crests: '20', travel: '18' },
  ])('puts what was meant in place of what was typed: %o', (typed) => {
    const [repair] = identify(readingsOf(typed)!).repairs;
    const mended = identify(readingsOf(repaired(typed, repair!.change))!);
    expect([mended.candidates[0]!.designation, ...mended.twins]).toContain(repair!.designation);
    expect(mended.contradictions).toEqual([]);
  });
});

describe('readingsOf', () => {
  it('takes another number of pitches or turns, and what cannot be measured', () => {
    expect(readingsOf({ crests: '18,01 over 9', travel: '80 over 5', starts: CANNOT })).toEqual({
      crests: { count: 9, length: 18.01 },
      travel: { turns: 5, length: 80 },
      cannot: ['starts'],
    });
    expect(readingsOf({ crests: '18 over 0' })).toBeUndefined();
  });

  it('is nothing before something was measured', () => {
    expect(readingsOf({})).toBeUndefined();
    expect(readingsOf({ starts: '2', hand: 'left' })).toBeUndefined();
  });

  it('counts pitches and turns in tens, and leaves out what is half typed', () => {
    expect(
      readingsOf({ major: '9.94', crests: '20,03', starts: '1', travel: '2x', hand: 'left', crest: 'flat' }),
    ).toEqual({
      major: [9.94],
      crests: { count: 10, length: 20.03 },
      starts: 1,
      hand: 'left',
      crest: 'flat',
    });
  });

  it('takes a crest, and three wires with their diameter', () => {
    expect(readingsOf({ major: '8', crest_flat: '0,73', wires: '8,45 with 1 mm' })).toMatchObject({
      crestFlat: 0.73,
      wires: { wire: 1, over: 8.45 },
    });
    expect(readingsOf({ major: '8', wires: '8.45' })).not.toHaveProperty('wires');
  });
});
