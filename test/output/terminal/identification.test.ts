import { describe, expect, it } from 'vitest';
import { identify } from '../../../src/identify/identify.js';
import type { Readings } from '../../../src/identify/readings.js';
import { percent } from '../../../src/output/terminal/candidate-lines.js';
import { identificationText } from '../../../src/output/terminal/identification.js';

const text = (readings: Readings, colour = false) => identificationText(identify(readings), readings, { colour });
const TR8: Readings = { major: [7.92], crests: { count: 10, length: 20.02 } };

describe('identification', () => {
  it('sets more than three readings in two tables', () => {
    const shown = text({ ...TR8, starts: 1, travel: { turns: 10, length: 20 }, minor: 5.4, crestFlat: 0.75 });
    expect(shown).toMatch(/chance +major +pitch +lead +minor\n {2}Tr8x2 .*\n(?:.*\n)+ +crest flat\n {2}Tr8x2 /);
  });

  it('shows a residual with its sign and its distance outside the range in standard deviations', () => {
    // 8.03 is 0.03 above 8, the most a screw may be; σ of one reading is 0.015
    expect(text({ ...TR8, major: [8.03], starts: 1 })).toMatch(/Tr8x2 +\S+ % +\+0\.030 \(2\.0\)/);
    expect(text({ ...TR8, starts: 1 })).toMatch(/−0\.080 \(0\.0\)/);
  });

  it('counts the candidates that it leaves out', () => {
    expect(text({ crests: { count: 10, length: 20.02 } })).toMatch(/ {2}and \d+ more\n/);
  });

  it('shows no chance and no double where nothing fits', () => {
    const table = text({ major: [8.6], crests: { count: 10, length: 23 } }).split('Nearest of the series\n')[1]!;
    expect(table).not.toContain('chance');
    expect(table.split('\n').filter((line) => /^ {2}(?:Tr|Acme|M)\d/.test(line)).length).toBeLessThanOrEqual(3);
  });

  it('a name is bold on a terminal', () => {
    expect(text({ ...TR8, starts: 1 }, true)).toContain('\u001b[1mTr8x2\u001b[22m, ');
  });

  it('says that a screw may be a worn one', () => {
    expect(text({ ...TR8, starts: 1, wires: { wire: 1, over: 7.6 } })).toMatch(
      /Does not go together\n {2}– wires: .*\n.*worn/,
    );
  });
});

it.each([
  [1, '>99 %'],
  [0.995, '>99 %'],
  [0.994, '99 %'],
  [0.5, '50 %'],
  [0.0049, '<1 %'],
])('percent of %d is %s', (share, shown) => {
  expect(percent(share)).toBe(shown);
});
