import { describe, expect, it } from 'vitest';
import { changed } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';

const RINGS = {
  part: 'gauge',
  name: 'rings',
  screw: 'Tr8x2',
  material: 'pa12',
  printer: { nozzle: 0.4, layer: 0.12, compensation: 'file' },
};

const found = (id: string, changes: Record<string, unknown> = {}) => findingOf(changed(RINGS, changes), id)!;

describe('a check of gauge rings', () => {
  it.each([
    ['ladder-rings', {}, /^from 0.1 to 0.4 mm of play along the axis$/],
    ['ladder-rings', { plays: { from: 0.2, to: 0.35 } }, /^from 0.2 to 0.35 mm of play along the axis$/],
    ['ladder-rings', { plays: { from: 0.2, to: 0.3 } }, /^from 0.2 to 0.3 mm .*; a smaller plays.step/],
    // pitch diameter 7 mm: ± (0.05 + 0.005·7)/cos 15°
    ['ladder-span', {}, /^0.3 mm of play, prints scatter by ± 0.088 mm$/],
    ['ladder-span', { plays: { to: 0.2 } }, /^0.1 mm of play, .* ± 0.088 mm; a greater plays.to covers it$/],
    ['pitch-told', {}, /^a play of 0.1 mm is used up over 10 turns$/],
    // 0.2/(10·2) = 1 %, just shown
    ['pitch-told', { turns_play: 0.2 }, /^a play of 0.2 mm is used up over 10 turns$/],
    ['pitch-told', { turns_play: 0.3 }, /; a smaller turns_play/],
    ['gauge-hand', {}, /^right$/],
    ['gauge-hand', { screw: 'Tr8x2-LH' }, /^left$/],
    ['figure-depth', {}, /^0.4 mm deep$/],
    ['figure-depth', { printer: { layer: 0.25 } }, /^0.4 mm deep; go over them with a pen$/],
  ] as const)('%s says what it is about (case %#)', (id, changes, words) => {
    expect(found(id, changes).message).toMatch(words);
  });

  it('asks a ladder to span twice what a print scatters, whatever is left to compensate', () => {
    // 0.3/(2·0.085/cos 15°)
    const ratio = (0.3 * Math.cos(Math.PI / 12)) / 0.17;
    expect(found('ladder-span').value).toBeCloseTo(ratio, 4);
    const left = { printer: { compensation: { shrink: 'file', holes: 'none' } } };
    expect(found('ladder-span', left).value).toBeCloseTo(ratio, 2);
  });
});
