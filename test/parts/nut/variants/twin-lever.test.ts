import { describe, expect, it } from 'vitest';
import { FAMILY_BASE } from '../../../support/family-sheet.js';
import { changed } from '../../../support/nut-sheets.js';
import { findingOf } from '../../../support/one-finding.js';

type Tree = Record<string, unknown>;
/** 150 N that pulls a flange of 60 × 5 mm off, 40 mm beside the screw; a body of 32 mm, four M4 on 48 mm with washers of 9 mm. */
const TWIN: Tree = {
  ...FAMILY_BASE,
  material: 'pa12',
  body: { diameter: 32, length: 50 },
  flange: { diameter: 60, thickness: 5 },
  holes: { count: 4, circle: 48, start: 45, screw: 'M4', head: 'flange' },
  carriage: { bore: 33, thickness: 8 },
  family: { kind: 'twin', apart: 34, lever: 40 },
  duty: { axis: 'vertical', load: 150, temperature: 25, grease: 'greased', pull: 'away' },
};
const found = (id: string, changes: Tree = {}) => findingOf(changed(TWIN, changes), id)!;
const straight = { family: { lever: 0.000001 } };

describe('the lever of a twin nut', () => {
  // towards a screw 1/4 + 40/(2·24) = 1.0833 of the load pulls on it, in place of a quarter
  it('pulls on its screws', () => {
    expect(found('bolt-clamp', straight).value! / found('bolt-clamp').value!).toBeCloseTo(1.0833 / 0.25, 3);
    expect(found('bolt-clamp').message).toContain('the load 40 mm beside, which pulls up to 1.08 times itself on each');
    // on the seat it presses a quarter on each less, and still lifts the other side: 1.0833 − 2/4
    const onto = found('bolt-clamp', { duty: { pull: 'onto' } });
    expect(onto.value! / found('bolt-clamp').value!).toBeCloseTo(1.0833 / 0.5833, 3);
    expect(found('bolt-clamp', { ...straight, duty: { pull: 'onto' } }).message).toMatch(
      /^the load presses the flange/,
    );
  });

  // 1.0833 · 150 N on 8 mm of arm, 9 + 2·8 mm wide and 5 mm thick
  it('bends its flange: 12.48 MPa, which PA12 does not bear for years', () => {
    const row = found('flange-bending');
    expect(row.value).toBeCloseTo((1.08333 * 150 * 8 * 6) / (25 * 25), 2);
    expect(row.message).toContain('8 mm of arm on a section of 25 × 5 mm');
    expect(row.verdict).toBe('fail');
    expect(found('flange-bending', straight).verdict).toBe('pass');
  });

  // 6,000 N·mm on (π/32)·32³ less the bore's half per cent, twice at the sharp corner
  it('bends its body where that leaves the flange', () => {
    const [bent, plain] = [found('barrel-pull'), found('barrel-pull', straight)];
    expect(bent.value! - plain.value!).toBeGreaterThan((2 * 6000) / ((Math.PI / 32) * 32 ** 3));
    expect(bent.message).toContain('bent by a lever of 40 mm');
    // 742 mm² are π/4·(32² − 8.9²): (π/32)·(32⁴ − 8.9⁴)/32 = 3,198 mm³, and 12,000/3,198 = 3.753 MPa beside what the load alone does
    const [area, turned] = /on (\d+) mm².*?, ([\d.]+) times/.exec(bent.message)!.slice(1).map(Number);
    expect(area).toBe(742);
    expect(Math.abs(bent.value! - (150 * turned!) / area! - 3.753)).toBeLessThan(0.02);
  });

  /** 25 N, 40 mm beside the screw: 25·40/34 = 29.41 N sideways on either thread, each 50 − 34 = 16 mm long. */
  const running = {
    material: 'petg',
    screw: { designation: 'Tr8x2', hand: 'right', major: 7.95, pitch_diameter: '7 ± 0.03 mm' },
    flange: { thickness: 12 },
    duty: { load: 25, feed: 8, motor: { torque: 0.2 } },
  };

  // at friction 0.5 and 3.975 mm out, on two threads
  it('drags on its screw: 117 N·mm more', () => {
    const more = found('drive-torque', running).value! - found('drive-torque', { ...running, ...straight }).value!;
    expect(more).toBeCloseTo(0.5 * 29.41 * 7.95, 1);
  });

  // on crests of 0.37 · 16 mm, the nut's minor diameter 7.95 − 2 + 0.3 mm across: 0.795 MPa; at 8 mm/s of feed √(7²·π² + 2²)/2 = 11.04 times that
  it('presses and heats its flanks as they slide', () => {
    const pressed = found('thread-pressure', running);
    expect(pressed.value).toBeCloseTo(29.41 / (0.37 * 16 * 6.25), 3);
    expect(pressed.verdict).toBe('fail');
    expect(pressed.message).toMatch(/^0\.79 MPa sideways on either thread, by the lever of the load,/);
    expect(found('wear-peak', running).value).toBeCloseTo(0.7949 * 0.08832, 3);
    // 25 N and twice 29.41 rub in place of 25
    const warmed = (changes: Tree) => Number(/warms by up to (\d+) K/.exec(found('wear-heat', changes).message)![1]);
    const hot = { ...running, duty: { ...running.duty, feed: 60, moving: '100 %' } };
    expect(warmed(hot) / warmed({ ...hot, ...straight })).toBeCloseTo((25 + 2 * 29.41) / 25, 0);
  });

  it('is left out where the flanks rub harder, and where nobody tells it', () => {
    expect(found('thread-pressure', { ...running, family: { lever: 10 } }).message).toContain('in one of both threads');
    expect(found('thread-pressure', { ...running, family: { lever: undefined } }).value).toBeCloseTo(
      found('thread-pressure', { ...running, ...straight }).value!,
      9,
    );
  });
});
