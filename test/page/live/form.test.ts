import { describe, expect, it } from 'vitest';
import { learn } from '../../../page/live/engine/learn.js';
import { blanksOf, filled } from '../../../page/live/state/form.js';
import { readResults } from '../../../src/pipeline/calibrate.js';
import { newResults } from '../../../src/pipeline/new-results.js';
import { newTrial } from '../../../src/pipeline/new-trial.js';
import { startSheet } from '../../../src/pipeline/start-sheets.js';
import { readTrial } from '../../../src/pipeline/trials.js';

const DEMO_RESULTS = startSheet('demo-results');
const byPath = (text: string, path: string) => blanksOf(text).find((one) => one.path.join('.') === path)!;

describe('the form of a printed coupon', () => {
  const form = newResults();

  it('asks for what is read and felt, and not for what the coupon knows', () => {
    const asked = blanksOf(form).map(({ path }) => path.join('.'));
    expect(asked.slice(0, 4)).toEqual(['profile', 'state', 'slicer_compensates', 'calipers']);
    expect(asked.some((path) => /^readings\.\w+\.read$/.test(path))).toBe(true);
    expect(asked.some((path) => /^tried\.\w+\.felt$/.test(path))).toBe(true);
    expect(asked.filter((path) => /applied|printer|material|coupon/.test(path))).toEqual([]);
    expect(byPath(form, 'slicer_compensates').choices).toEqual(['no', 'shrink', 'holes', 'both']);
    expect(blanksOf(form).every(({ how }) => how !== '')).toBe(true);
  });

  it('takes figures with point or comma, several apart by blanks, and gives them back', () => {
    const first = blanksOf(form).find(({ path }) => path[2] === 'read')!;
    const text = filled(form, first, ' 29,71  29.73');
    expect(readResults(filled(text, byPath(text, 'slicer_compensates'), 'no')).readings![first.path[1]!]).toMatchObject(
      {
        read: [29.71, 29.73],
      },
    );
    expect(byPath(text, first.path.join('.')).value).toBe('29.71 29.73');
    expect(filled(text, byPath(text, first.path.join('.')), '')).toBe(form);
  });

  it('takes what was felt', () => {
    const step = blanksOf(form).find(({ path }) => path[2] === 'felt')!;
    const text = filled(filled(form, step, 'good'), byPath(form, 'slicer_compensates'), 'no');
    expect(readResults(text).tried![step.path[1]!]).toMatchObject({ felt: 'good' });
    expect(byPath(text, step.path.join('.')).value).toBe('good');
  });
});

describe('the form of a finished nut', () => {
  it('asks for what is seen on it', () => {
    const form = newTrial();
    expect(blanksOf(form).map(({ label }) => label)).toEqual([
      'goes',
      'jams after',
      'play',
      'tight',
      'since',
      'run in',
      'length',
      'body',
      'body at bed',
      'bore',
      'screw runout',
    ]);
    const text = filled(filled(form, byPath(form, 'goes'), 'by-hand'), byPath(form, 'play'), '0,15 ± 0,02 mm');
    expect(readTrial(text)).toMatchObject({ goes: 'by-hand', play: { value: 0.15, half: 0.02 } });
  });

  it('is none where the text is none', () => {
    expect(blanksOf('')).toEqual([]);
    expect(blanksOf('- 1')).toEqual([]);
  });
});

describe('what a form says', () => {
  it('is a profile, to which the next coupon is added, and the same one never twice', () => {
    const first = learn(DEMO_RESULTS, {});
    const { id, revision, text } = first.profile!;
    expect(revision).toBe(1);
    expect(text).toContain('revision: 1');
    expect(() => learn(DEMO_RESULTS, { [id]: text })).toThrow(/in the profile already/);
    const read = blanksOf(DEMO_RESULTS).find(({ path, value }) => path[2] === 'read' && value !== '')!;
    const again = filled(DEMO_RESULTS, read, `${read.value} ${read.value}`);
    expect(again).not.toBe(DEMO_RESULTS);
    expect(learn(again, { [id]: text }).profile!.revision).toBe(2);
  });

  it('is words alone for a nut that was made without a profile', () => {
    const seen = learn(newTrial().replace('goes: ', 'goes: no'), {});
    expect(seen.profile).toBeUndefined();
    expect(seen.lines.join('\n')).toMatch(/Change this one number/);
  });

  it('names what is missing', () => {
    expect(() => learn(newResults(), {})).toThrow(/slicer_compensates/);
  });
});
