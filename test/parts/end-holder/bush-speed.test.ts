import { describe, expect, it } from 'vitest';
import { BUSH, GUIDED, RING } from '../../support/end-holder-sheets.js';
import { changed } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';

const speed = (feed: number, base: Readonly<Record<string, unknown>> = BUSH) =>
  findingOf(changed(base, { duty: { feed } }), 'bush-speed');

describe('a screw in a plain bush', () => {
  // 40 mm/s on a lead of 2 mm are 1200 turns a minute; π · 7.85 mm · 20/s = 493.2 mm/s on PETG
  it('is told how fast its crests slide', () => {
    expect(speed(40)).toMatchObject({
      verdict: 'fail',
      value: 1200,
      message:
        'the screw slides on petg with 493 mm/s, which bears 150 mm/s; take a ball bearing (bearing), a slower feed, or leave the end free (role: free)',
    });
  });

  // common practice: below 200 turns a minute; three times that fails: 200 · 2/60 = 6.667 mm/s, 20 mm/s
  it.each([
    [6.6, 'pass'],
    [6.7, 'caution'],
    [19.9, 'caution'],
    [20.1, 'fail'],
  ])('at %s mm/s: %s', (feed, verdict) => {
    expect(speed(feed)!.verdict).toBe(verdict);
  });

  // Tr20x4 with crests of 20 mm on PLA, which bears 100 mm/s: 60·100/(π·20) = 95.49 rpm, 6.366 mm/s; three times that, 19.10 mm/s, fails
  it.each([
    [6.3, 'pass'],
    [6.4, 'caution'],
    [19, 'caution'],
    [19.2, 'fail'],
  ])('of 20 mm in PLA, which slides faster at the same turns, at %s mm/s: %s', (feed, verdict) => {
    const thick = changed(BUSH, { screw: { designation: 'Tr20x4', major: '20 ± 0 mm' }, bore: 20.3, material: 'pla' });
    expect(speed(feed, thick)!.verdict).toBe(verdict);
  });

  it('is asked of no bearing and no guard ring', () => {
    expect(speed(40, GUIDED)).toBeUndefined();
    expect(speed(40, RING)).toBeUndefined();
  });
});
