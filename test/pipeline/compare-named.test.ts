import { describe, expect, it } from 'vitest';
import { compareNamed } from '../../src/pipeline/compare-named.js';
import { InputError } from '../../src/units/faults.js';

/** Path and allowed of each mistake. */
function mistakes(asked: Parameters<typeof compareNamed>[0]): string[] {
  try {
    compareNamed(asked);
  } catch (error) {
    if (error instanceof InputError) return error.faults.map(({ path, value }) => `${path}: ${value}`);
    throw error;
  }
  return [];
}

describe('screws by name', () => {
  it('are put side by side at the duty of the sheet', () => {
    const { comparison, duty } = compareNamed({
      screws: ['Tr8x2', 'Tr8x8(P2)'],
      from: 'M5',
      purpose: 'speed',
      sheet: 'duty: {axis: vertical, load: 25 N}\n',
    });
    expect(duty).toMatchObject({ axis: 'vertical', load: 25 });
    // full step: lead over 200 steps a turn
    expect(comparison.screws.map(({ full_step }) => full_step)).toEqual([0.01, 0.04]);
    expect(comparison.ranking?.map(({ designation }) => designation)).toEqual(['Tr8x8(P2)', 'Tr8x2']);
    // M5 has 0.8 mm a turn: 4000 steps per mm become 1600 and 400
    expect(comparison.changes.map(({ from, steps_per_mm }) => [from, steps_per_mm])).toEqual([
      ['M5', 1600],
      ['M5', 400],
    ]);
  });

  it('take a fit from the sheet, the running one else', () => {
    // Tr8x2, flank 15°: play along the axis = axial clearance + diametral clearance · tan 15°
    const play = (sheet: string) => compareNamed({ screws: ['Tr8x2'], sheet }).comparison.screws[0]!.play!.axial;
    expect(play('fit: {diametral: 0.4, axial: 0.1}\n')).toBeCloseTo(0.1 + 0.4 * Math.tan(Math.PI / 12), 3);
    expect(compareNamed({ screws: ['Tr8x2'], sheet: '' }).comparison.assumptions).toHaveLength(1);
  });

  it('tell every mistake at once, each with its field', () => {
    expect(mistakes({ screws: ['Tx8x2'], from: 'nothing', purpose: 'beauty', sheet: 'duty: {load: much}\n' })).toEqual([
      'screws: Tx8x2',
      'from: nothing',
      'purpose: beauty',
      'duty.load: much',
    ]);
    expect(mistakes({ screws: [], sheet: '' })).toEqual(['screws: ']);
  });
});
