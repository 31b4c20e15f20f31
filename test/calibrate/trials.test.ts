import { describe, expect, it } from 'vitest';
import type { TrialFinding } from '../../src/calibrate/trial-words.js';
import { newTrial } from '../../src/pipeline/new-trial.js';
import { readTrial, tryNuts } from '../../src/pipeline/trials.js';
import { nutSheet } from '../support/nut-sheets.js';
import { randomFaults, recovered } from './trial-bench.js';

/** The form of a Tr10x2 nut of 20 mm whose screw and effects are known exactly, filled in. */
function filled(lines: Record<string, string>) {
  const sheet = nutSheet({
    body: { length: 20 },
    screw: { designation: 'Tr10x2', pitch: '2 ± 0 mm', pitch_diameter: '9 ± 0 mm' },
    material: { preset: 'pa12', shrink: { plane: '1 %', axial: '0.6 %' } },
    effects: 'off',
  });
  const form = Object.entries(lines).reduce(
    (text, [key, value]) => text.replace(new RegExp(`^${key}:[^#\n]*`, 'm'), `${key}: ${value}  `),
    newTrial(sheet),
  );
  return readTrial(form);
}

function findings(...nuts: Record<string, string>[]): readonly TrialFinding[] {
  return tryNuts(nuts.map(filled)).findings;
}

describe('what went wrong, in the words of the bench', () => {
  it('free, then jams after 7 turns, and short over all: pitch error; 0.18 mm over 14 mm is 1.3 %', () => {
    const [first] = findings({ goes: 'jams', jams_after: '7', length: '19.75 mm' });
    expect(first).toMatchObject({ cause: 'pitch-error', change: { field: 'material.shrink.axial' } });
    expect(first!.words).toMatch(/jams after 7 turns: a pitch error.*short by/);
    // s = a + (1 − a)·0.18/14
    expect(first!.change!.to).toBeCloseTo(0.006 + 0.994 * (0.18 / 14), 2);
  });

  it('does not know the way of a pitch error without the length, and says so', () => {
    expect(findings({ goes: 'jams', jams_after: '8' })[0]!.words).toMatch(/Which way is not sure: measure the length/);
  });

  it('more play than wanted all along: the flank gap, less what was read too much', () => {
    const [first] = findings({ goes: 'by-hand', play: '0.3 ± 0.01 mm', length: '20 mm' });
    expect(first).toMatchObject({ cause: 'flank-gap-large', change: { field: 'fit.axial', from: 0.1 } });
    expect(first!.change!.to).toBeCloseTo(0.1 - (0.3 - 0.18), 1);
  });

  it('does not start, and the bore is small: the hole offset by as much', () => {
    const [first] = findings({ goes: 'no', bore: '8.1 mm' });
    // wanted 10 − 2 + 0.3
    expect(first).toMatchObject({ cause: 'bore-small', change: { field: 'printer.hole_offset', from: 0.15 } });
    expect(first!.change!.to).toBeCloseTo(0.35, 6);
  });

  it.each([
    [
      { goes: 'tight', tight: 'bed-end', body: '17 mm', body_at_bed: '17.3 mm' },
      'first-layer',
      /Inset the first layer by 0\.15 mm/,
    ],
    [{ goes: 'tight', tight: 'once-a-turn-with-nut' }, 'seam', /the clearance stays/],
    [{ goes: 'tight', tight: 'once-a-turn-with-screw' }, 'bent-screw', /Nothing in the nut cures that/],
    [{ goes: 'tight', tight: 'one-place' }, 'alignment', /loosen the screws of the nut/],
    [{ goes: 'tight', since: 'tighter-after-days' }, 'moisture', /took up moisture/],
    [{ goes: 'by-hand', play: '0.18 mm', length: '20 mm', bore: '8.3 mm' }, 'none', /as wanted/],
  ] as const)('%j: %s', (lines, cause, words) => {
    const [first] = findings(lines);
    expect(first!.cause).toBe(cause);
    expect(first!.words).toMatch(words);
  });

  it('refuses forms that say nothing, or of two settings', () => {
    expect(() => filled({})).toThrow(/needs how the nut goes/);
    const one = filled({ goes: 'no' });
    expect(() => tryNuts([one, { ...one, material: 'pla' }])).toThrow(/differs from the other trials/);
  });
});

it('recovers printers with unknown faults in at most three nuts: shrink to 0.1 %, play to 0.03 mm', () => {
  const rows = Array.from({ length: 40 }, (_, i) => recovered(randomFaults(i + 1, 0.0055), i + 1));
  const share = (is: (row: (typeof rows)[number]) => boolean) => rows.filter(is).length / rows.length;
  expect(share(({ shrink }) => Math.abs(shrink) <= 0.001)).toBeGreaterThanOrEqual(0.95);
  expect(share(({ play }) => Math.abs(play) <= 0.03)).toBeGreaterThanOrEqual(0.95);
});
