import { describe, expect, it } from 'vitest';
import { BUSH, GUIDED, PRESSED, RING } from '../../support/end-holder-sheets.js';
import { changed } from '../../support/nut-sheets.js';
import { findingOf } from '../../support/one-finding.js';

type Changes = Record<string, unknown>;
const found = (id: string, changes: Changes = {}, base: Readonly<Changes> = GUIDED) =>
  findingOf(changed(base, changes), id);

describe('a screw that is held at its end', () => {
  // Tr8x8(P2) over 900 mm at 200 mm/s: 1500 rpm; root of 5.10 mm in two bearings: 1.209e8·5.10/900² = 761 rpm
  it('whips above its whirling speed all the same', () => {
    const long = { screw: { designation: 'Tr8x8(P2)' }, duty: { span: 900, feed: 200 } };
    const whirl = found('drive-whirl', long)!;
    expect(whirl).toMatchObject({ word: 'no', value: expect.closeTo(1500 / 761, 2) });
    // a rigid sleeve clamps the other end: 1.47 times that
    expect(found('drive-whirl', { ...long, coupling: 'rigid' })!.value! * 1.47).toBeCloseTo(whirl.value!, 5);
    // so does what is told of it; this end is one bearing, which clamps nothing
    for (const ends of ['fixed-supported', 'fixed-fixed'])
      expect(found('drive-whirl', { ...long, duty: { ...long.duty, ends } })!.value! * 1.47).toBeCloseTo(
        whirl.value!,
        5,
      );
    // this holder is there, whatever is said
    const free = { ...long, duty: { ...long.duty, ends: 'fixed-free' } };
    expect(found('drive-whirl', free)!.value).toBe(whirl.value);
    expect(found('drive-whirl', long, BUSH)!.value).toBeCloseTo(whirl.value!, 9);
  });

  // Euler: π²·207000·(π·5.19⁴/64)/700² = 148.5 N with the thinnest root of Tr8x2
  it('buckles under what is pushed', () => {
    const pushed = { duty: { load: 600, span: 700 } };
    expect(found('drive-column', pushed)).toMatchObject({ word: 'no', value: expect.closeTo(600 / 148.5, 1) });
    expect(found('drive-column', { ...pushed, coupling: 'rigid' })!.value).toBeCloseTo(600 / 148.5 / 1.2, 1);
  });

  it('sags where it lies, and not where it stands: 85 diameters in two bearings, 114 behind a rigid sleeve', () => {
    const lying = { mounting: 'horizontal', duty: { span: 700 } };
    // Tr8x2 as it was read, 7.85 mm
    expect(found('drive-sag', lying)).toMatchObject({ word: 'but', value: expect.closeTo(700 / (85 * 7.85), 2) });
    expect(found('drive-sag', { ...lying, coupling: 'rigid' })!.word).toBe('yes');
    expect(found('drive-sag', { ...lying, mounting: 'motor-below' })).toBeUndefined();
  });

  it('is not judged in a guard ring, whose need for a held end says it', () => {
    expect(found('drive-whirl', {}, RING)).toBeUndefined();
    expect(found('drive-column', {}, RING)).toBeUndefined();
  });
});

describe('a bearing in the cold', () => {
  // 22 mm in 21.95: plastic shrinks by (90 − 12)·10⁻⁶·22·50 = 0.086 mm more than steel at −30 °C; PC, PETG: 0.4 % of 22 = 0.088 mm
  const cold = (temperature: number | undefined, changes: Changes = {}) =>
    found('press-cold', { fit: { pocket: '21.95 ± 0 mm' }, duty: { temperature }, ...changes }, PRESSED);

  it('is squeezed by what fit and frost add up to', () => {
    const at = cold(-30)!;
    expect(at).toMatchObject({ word: 'no', value: expect.closeTo(0.136, 3), limit: { max: expect.closeTo(0.088, 9) } });
    // by plastics that shrink least and most, 60 and 120·10⁻⁶, on a bearing 0.009 mm under its size and one that is true
    expect([at.least, at.most]).toEqual([expect.closeTo(0.041 + 0.0528, 3), expect.closeTo(0.169, 3)]);
    expect(at.message).toMatch(
      /^0\.05 mm at 20 °C become 0\.14 mm at -30 °C; petg takes 0\.088 mm for good; a wider pocket/,
    );
    expect(cold(15)!.message).not.toMatch(/wider/);
  });

  it('is asked of bearings alone, below the temperature at which parts are measured', () => {
    expect(cold(20)).toBeUndefined();
    expect(cold(undefined)).toBeUndefined();
    expect(found('press-cold', { duty: { temperature: -30 } }, BUSH)).toBeUndefined();
  });
});
