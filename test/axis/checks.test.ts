import { describe, expect, it } from 'vitest';
import { AXIS_CHECKS, AXIS_QUESTIONS } from '../../src/axis/checks/index.js';
import { designed, found } from '../support/axis-sheets.js';
import { AXIS_CASES, COLLAR, HELD } from './verdict-cases.js';

describe('checks across the parts of an axis', () => {
  it('are all tried', () => {
    expect(Object.keys(AXIS_CASES).sort()).toEqual(AXIS_CHECKS.map(({ id }) => id).sort());
  });

  it('answer questions that an axis asks', () => {
    const known = AXIS_QUESTIONS.map(({ id }) => id);
    expect(AXIS_CHECKS.filter(({ question }) => !known.includes(question))).toEqual([]);
  });

  const rows = Object.entries(AXIS_CASES).flatMap(([check, words]) =>
    Object.entries(words).map(([word, changes]) => ({ check, word, changes })),
  );
  it.each(rows)('$check says $word', ({ check, word, changes }) => {
    const finding = found(check, changes);
    expect(finding?.word, finding?.message).toBe(word);
  });
});

describe('figures', () => {
  it('what is left for travel', () => {
    // coupling: 25 + 3 of disc + 24.90 into its hub; 330 − 52.90 − 18 − 5 − 5. The hub is 19 long; the gap is the insert's 12
    // and twice the fillet and 0.05, the fillet half of half a lobe: 0.45·π·(7.44 + 15.5)/2/6/2 = 1.351; (14.80 − 3)/2 = 5.90
    expect(found('axis-travel')?.value).toBeCloseTo(249.1, 2);
  });

  it('what is left for travel, with a start and a length that are told shorter than what is there', () => {
    // 330 − 52.90 − 18 − 5 − 5 as above, whatever is told
    const row = found('axis-travel', { lengths: { start: '30 mm', moving: '5 mm' } })!;
    expect(row.value).toBeCloseTo(249.1, 2);
    expect(row.message).toContain('lengths.start, 30 mm, lies inside the coupling: it ends at 52.9');
    expect(row.message).toContain('lengths.moving, 5 mm, is less than the nut alone: it is 18 long');
    expect(found('axis-travel', { lengths: { start: '53 mm' } })?.message).not.toMatch(/lengths\.|false/);
  });

  it('a free length that is told shorter than the lengths give does not count', () => {
    // the ring ends at 335 ± 0.03 mm, the coupling at 52.9: 282.13 at most
    const told = (span: string) => found('axis-column', { duty: { span } })!.value!;
    const byLengths = found('axis-column')!.value!;
    expect(told('200 mm')).toBe(byLengths);
    // Euler: as the square of the length
    expect(told('564.26 mm')).toBeCloseTo(4 * byLengths, 2);
    const spanOf = (span: string) => {
      const { sheet } = designed({ duty: { span } }).parts.find(({ role }) => role === 'nut')!;
      return (sheet.duty as { span: unknown }).span;
    };
    expect([spanOf('200 mm'), spanOf('300 mm')]).toEqual(['282.13 mm', '300 mm']);
    expect(found('axis-span', { duty: { span: '260 mm' } })?.message).toContain('the longer is judged');
  });

  it('a frame that leaves no room at all is a travel that fails, and no span that nobody told', () => {
    // the coupling ends at 52.9
    expect(found('axis-travel', { lengths: { clear: '40 mm' } })?.word).toBe('no');
  });

  it('less warmth, and less grit, than around the axis is a contradiction; more warmth is none', () => {
    const said = (duty: object, axis: object = {}) => found('axis-told', { duty: axis, parts: { nut: { duty } } })!;
    expect(said({ temperature: '15 C' }).message).toBe(
      'nut says duty.temperature: 15 where it is 26; leave it out, and it follows from the axis',
    );
    expect(said({ temperature: '40 C' }).word).toBe('yes');
    expect(said({ dust: 'no' }, { dust: 'yes' }).word).toBe('no');
    expect(said({ dust: 'no' }).word).toBe('yes');
  });

  it('the heat of air that is warmer than the motor', () => {
    // pc softens at 125: 125 − 110, not 125 − 20
    const hot = { motor: { temperature: '20 C' }, duty: { temperature: '110 C' } };
    expect(found('axis-heat', hot)).toMatchObject({ word: 'no', value: 15 });
    expect(found('axis-heat', hot)?.message).toContain('the air at the motor is at 110 °C');
    expect(found('axis-heat', { duty: { temperature: '50 C' } })?.value).toBe(125 - 58);
  });

  it('the screw to order', () => {
    expect(found('axis-screw-length')?.value).toBe(310);
    // free end: from 28 mm on it carries the coupling to 52.05, 5 + 18 + 240 + 5 mm for the nut
    const free = found('axis-screw-length', { parts: { 'end-holder': null } });
    expect(free?.value).toBe(Math.ceil(52.05 + 5 + 18 + 240 + 5 - 28));
  });

  it('steps and direction', () => {
    // 200 · 16 / 2
    const steps = found('axis-steps', { old: { screw: 'Tr8x8(P2)-LH' } });
    expect(steps?.value).toBe(1600);
    expect(steps?.message).toMatch(/set 1600 steps per mm instead of 400.*direction/i);
  });

  it('work that lifts more than weighs on the nut pushes on its screw, and asks for torque', () => {
    // 650 − 30 N in place of 600
    const [standing, lifted] = [
      found('axis-column', { duty: { load: '600 N' } })!,
      found('axis-column', { duty: { upward: '650 N' } })!,
    ];
    expect(lifted).toMatchObject({ word: 'but', value: expect.closeTo((standing.value! * 620) / 600, 3) });
    expect(lifted.message).toMatch(/^lifted by the work, with 620 N more than weighs on it: /);
    const bought = { parts: { nut: null } };
    const torque = (upward: string) => found('axis-torque', { ...bought, duty: { load: '20 N', upward } });
    // at friction 0.2 as at 0.5 torque goes with force: 90 − 20 N is as 70 N standing
    expect(torque('90 N')?.value).toBeCloseTo(found('axis-torque', { ...bought, duty: { load: '70 N' } })!.value!, 3);
    expect(torque('0 N')?.word).toBe('yes');
  });

  it('is asked of a screw that hangs or stands, and of none that lies', () => {
    const untold = { duty: { upward: null } };
    for (const mounting of ['motor-below', 'motor-above'])
      expect(found('axis-column', { mounting, ...untold })).toMatchObject({ missing: ['duty.upward'] });
    expect(found('axis-column', { mounting: 'horizontal', ...untold })?.word).toBe('yes');
    // what fails does so all the more
    expect(found('axis-column', { duty: { upward: null, load: '900 N' } })?.word).toBe('no');
  });

  it('two places that fight each other are both named', () => {
    const two = found('axis-locating', { parts: { collar: COLLAR } });
    expect(two?.value).toBe(2);
    expect(two?.message).toMatch(/thrust bearing.*disc.*insert\.pad: none/);
    expect(found('axis-locating', { parts: { collar: COLLAR, coupling: { insert: { pad: 'none' } } } })?.word).toBe(
      'yes',
    );
  });

  it('a holder stands further off than a guard ring', () => {
    // a turned end of 9.98 mm runs closely in its bearing of 10: with a rigid nut that wants eight diameters, 79.84 mm
    const held = found('axis-travel', { parts: HELD, lengths: { travel: '220 mm' } });
    expect(held?.message).toContain('80 mm at the far end');
  });
});
