import { describe, expect, it } from 'vitest';
import type { NutDesign } from '../../../src/parts/nut/dimensions.js';
import { nutFit } from '../../../src/parts/nut/fit-block.js';
import { workOut } from '../../../src/pipeline/work-out.js';
import { EXACT_NUT } from '../../support/exact-nut.js';
import { changed, nutSheet } from '../../support/nut-sheets.js';

type Changes = Record<string, unknown>;

const blockOf = (changes: Changes = {}) => nutFit(workOut(changed(nutSheet(EXACT_NUT), changes)) as NutDesign);
const near = (...values: readonly number[]) => values.map((value) => expect.closeTo(value, 4));

describe('the fit of a nut in its report, by hand', () => {
  const SHORT = { printer: { compensation: { shrink: 'none', holes: 'file' } } };
  /** up to 2 · (spread − 0.05) mm are squashed into an entry with 0.8 mm of room */
  const squashed = (spread: number) => ({
    effects: { first_layer: 'on' },
    printer: { first_layer: spread },
    lead_in: 0.05,
  });

  it.each<[string, string, Changes]>([
    ['pass', 'it will turn', {}],
    // 0.8 of 0.83 mm: 96 of 100
    ['pass', 'it will turn', squashed(0.465)],
    // 0.8 of 0.86 mm: 93 of 100
    ['caution', 'it will turn only with luck', squashed(0.48)],
    // drifts by 0.144 of 0.18 mm, and the layers take 0.061
    ['caution', 'it will turn, tight until it has run in', { ...SHORT, body: { length: 24 } }],
    // 0.8 of 1.5 mm, and of 1.7 mm
    ['caution', 'it will turn only with luck', squashed(0.8)],
    ['fail', 'it will not turn', squashed(0.9)],
    // drifts by 0.216 mm
    ['fail', 'it will not turn', { ...SHORT, body: { length: 36 } }],
  ])('is a %s in which %s', (outlook, words, changes) => {
    expect(blockOf(changes)).toMatchObject({ outlook, words });
  });

  it('tells each figure and chance by its name', () => {
    const { flank_angle, diametral_clearance, crest_gap, root_gap, axial_clearance, backlash, probabilities } = blockOf(
      {
        screw: { minor: '7.7 ± 0 mm' },
        ...SHORT,
        body: { length: 24 },
      },
    );
    expect(flank_angle).toBe(15);
    expect([diametral_clearance, crest_gap, root_gap].map(({ likely }) => likely)).toEqual(near(0.3, 0.4, 0.3));
    // flanks of tan 15° · 0.994; the groove of one tooth is 0.6 % narrow
    const lean = 0.3 * 0.994 * (2 - Math.sqrt(3));
    expect(axial_clearance.likely).toBeCloseTo(0.1 + lean - 0.144, 3);
    expect(backlash.likely).toBeCloseTo(1.1 * 0.994 - 1 + lean, 4);
    expect(probabilities).toEqual({ starts: 1, turns: 0, turns_run_in: 1, under_wanted_play: 1 });
  });

  it('loses with its play what a float costs: 0.05 ± 0.03 mm along, and 2 · 2 · f/(2π · 13.5) by turning', () => {
    const floating = { float: 0.3, holes: { fit: undefined } };
    const { backlash } = blockOf(floating);
    // holes come out by ± 0.05 mm of their 5.6, f 0.3 ± 0.025
    const turning = (f: number) => (4 * f) / (2 * Math.PI * 13.5);
    const play = 0.1 + 0.3 * (2 - Math.sqrt(3));
    const [least, likely, most] = [0.02 + turning(0.275), 0.05 + turning(0.3), 0.08 + turning(0.325)];
    expect([backlash.least, backlash.likely, backlash.most]).toEqual(near(play + least, play + likely, play + most));
    expect(backlash.worst).toEqual(near(play + least, play + most));
    // 0.0953 at the most: of 0.27 mm that are wanted less than 0.1804 are left, of 0.28 mm more
    const under = (max: string) =>
      blockOf({ ...floating, limits: { 'thread-backlash': max } }).probabilities.under_wanted_play;
    expect([under('0.27 mm'), under('0.28 mm')]).toEqual([0, 1]);
  });

  it('names causes at the end where less is left', () => {
    // shrink along the axis off by s: what is left is 0.1 + 0.0804 · (1 − s) ± 18 · s, least where both take
    const { contributors } = blockOf({ effects: { shrink: 'on' }, material: { shrink: { axial: '0.6 ± 0.2 %' } } });
    const most = 0.002 * (18 + 0.3 * (2 - Math.sqrt(3)));
    expect(contributors).toEqual([
      {
        name: 'shrink along the axis',
        down: expect.closeTo(-most, 4),
        up: expect.closeTo(most, 4),
        share: expect.closeTo(1, 9),
      },
    ]);
  });

  it('names them at the other end where the nut is the longer: by heat of 10 degrees, 48 to 108 millionths over the screw', () => {
    const { contributors } = blockOf({ effects: { temperature: 'on' } });
    // its pitch diameter of 9.3 mm gives, its 18 mm of length take
    const most = 0.0003 * (18 - 9.3 * (2 - Math.sqrt(3)));
    expect(contributors[0]).toMatchObject({ down: expect.closeTo(-most, 5), up: expect.closeTo(most, 5) });
  });

  it('wants the play that is usual for its axis, or that of its sheet', () => {
    const wanted = (changes: Changes) => blockOf(changes).wanted_play;
    expect(wanted({})).toBe(0.3);
    expect(wanted({ duty: { axis: 'horizontal' } })).toBe(0.1);
    expect(wanted({ duty: { axis: undefined } })).toBe(0.1);
    expect(wanted({ limits: { 'thread-backlash': '0.18 mm' } })).toBe(0.18);
  });

  it('tells how far each hole may be off: what shrink leaves of 13.5 mm, and 0.1 mm', () => {
    const shrinks = { material: { shrink: { plane: '1 ± 0.2 %' } } };
    expect(blockOf(shrinks).holes).toEqual(
      [1, 2, 3, 4].map((hole) => ({
        hole,
        least: expect.closeTo(-0.127, 9),
        likely: 0,
        most: expect.closeTo(0.127, 9),
      })),
    );
    const [first] = blockOf({ ...shrinks, ...SHORT }).holes!;
    expect([first!.least, first!.likely, first!.most]).toEqual(near(-0.262, -0.135, -0.008));
    expect(blockOf({ holes: undefined })).not.toHaveProperty('holes');
  });

  it('tells what it leaves out, and the class that stands for a pitch diameter which nobody read', () => {
    expect(blockOf().effects_off).toEqual([
      'shrink',
      'hole_offset',
      'facets',
      'first_layer',
      'moisture',
      'temperature',
    ]);
    expect(blockOf()).not.toHaveProperty('screw_tolerance');
    expect(blockOf({ screw: { pitch_diameter: undefined } }).screw_tolerance).toEqual({
      tolerance: '7e',
      source: 'ISO 2903',
    });
  });
});
