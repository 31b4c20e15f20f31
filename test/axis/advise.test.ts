import { describe, expect, it } from 'vitest';
import { adviseAxis } from '../../src/axis/advise.js';
import type { CheckAdvice } from '../../src/judge/advice.js';
import { changedSheet } from '../../src/pipeline/advice/changed-sheet.js';
import { axisWith, found } from '../support/axis-sheets.js';

const advised = new Map<string, readonly CheckAdvice[]>();
function adviceOn(check: string, changes: object): CheckAdvice {
  const key = JSON.stringify(changes);
  const checks = advised.get(key) ?? adviseAxis(axisWith({ ...changes })).checks;
  advised.set(key, checks);
  return checks.find((one) => one.check === check)!;
}
const sets = ({ cures }: CheckAdvice) => cures.map(({ set }) => set);

describe('cures across the parts of an axis', () => {
  it('takes as much travel as is left, and feeds as fast as the motor is useful, each in the section of the axis', () => {
    const changes = { lengths: { travel: '252 mm' }, duty: { feed: '16 mm/s' } };
    // 249.9 mm are left
    expect(adviceOn('axis-travel', changes)).toMatchObject({
      cures: [{ set: { 'lengths.travel': 249 }, reaches: 'pass' }],
    });
    // 300 rpm at a lead of 2 mm
    expect(sets(adviceOn('axis-feed', changes))).toEqual([{ 'duty.feed': 10 }]);
    // the nut's own check of the same speed is cured for all parts at once
    expect(sets(adviceOn('nut/drive-speed', changes))).toEqual([{ 'duty.feed': 10 }]);
  });

  it('says the unit of a length where bare ones are inches, in what it sets and in the lines to paste', () => {
    const { cures } = adviceOn('axis-travel', { units: 'inch', lengths: { travel: '252 mm' } });
    expect(cures[0]!.set).toEqual({ 'lengths.travel': '249 mm' });
    expect(cures[0]!.lines.join()).toContain('travel: 249 mm');
  });

  it('keeps one of two places that carry the screw', () => {
    const changes = { parts: { 'end-holder': { role: 'locating', bearing: '6000', held_by: 'plate' } } };
    const advice = adviceOn('axis-locating', changes);
    expect(sets(advice)).toContainEqual({ 'parts.end-holder.role': 'guiding' });
    expect(advice.cures.every(({ reaches }) => reaches === 'pass')).toBe(true);
  });

  it('holds what it says: the cure, put into the sheet, lets the check pass', () => {
    const changes = { parts: { 'end-holder': { role: 'locating', bearing: '6000', held_by: 'plate' } } };
    expect(found('axis-locating', changes)!.verdict).toBe('fail');
    const [cure] = adviceOn('axis-locating', changes).cures;
    const cured = changedSheet(axisWith(changes), cure!.set) as { parts: object };
    expect(found('axis-locating', { parts: cured.parts })!.verdict).toBe('pass');
  });

  it('says on what it hangs where nothing of the sheet is free to cure it', () => {
    const changes = { screw: { hand: 'left' }, parts: { nut: { screw: { designation: 'Tr10x2', hand: 'right' } } } };
    const { cures, none } = adviceOn('axis-hand', changes);
    expect(cures).toEqual([]);
    expect(none).toMatch(/screw\.hand/);
  });
});

describe('cures of a part of an axis', () => {
  it('stand in its section, and name what softens at the motor', () => {
    const changes = { material: 'petg', motor: { temperature: '62 C' } };
    const [cure] = adviceOn('coupling/grip-torque', changes).cures;
    expect(cure).toMatchObject({ set: { 'parts.coupling.material': 'pc' }, lines: ['material: pc'], reaches: 'pass' });
    expect(Object.keys(sets(adviceOn('axis-heat', changes))[0]!)).toEqual(['parts.coupling.material']);
  });

  it('shorten a hub until it clears the motor plate', () => {
    // 25 mm of shaft, of which the pad takes 5.05 beyond the hub: 20 mm of hub rub, less than 18.95 stand 1 mm off
    const [set] = sets(adviceOn('axis-shaft-room', { parts: { coupling: { motor_hub: { length: '20 mm' } } } }));
    expect(Object.keys(set!)).toEqual(['parts.coupling.motor_hub.length']);
    expect(Object.values(set!)[0]).toBeGreaterThan(17.9);
    expect(Object.values(set!)[0]).toBeLessThan(18.96);
  });
});
