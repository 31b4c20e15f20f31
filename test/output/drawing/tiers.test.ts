import { describe, expect, it } from 'vitest';
import { sizeWidth } from '../../../src/output/drawing/size-text.js';
import { tiersOn } from '../../../src/output/drawing/tiers.js';
import type { SizeMark } from '../../../src/parts/part-views.js';

const mark = (name: string, from: number, to: number): SizeMark => ({
  name,
  value: to - from,
  from: [from, 0],
  to: [to, 0],
  side: 'below',
});

describe('tiersOn', () => {
  it('sets dimensions that find room side by side on one line, smaller ones nearer to the view', () => {
    const tiers = tiersOn([mark('all', 0, 60), mark('right', 35, 60), mark('left', 0, 30)], 'below', 1);
    expect(tiers.map(({ mark: { name }, tier }) => [name, tier])).toEqual([
      ['right', 0],
      ['left', 0],
      ['all', 1],
    ]);
  });

  it('puts a text that is too long beyond its line, and past what other extension lines cross', () => {
    const small = mark('small', 10, 14);
    const [first] = tiersOn([small, mark('wide', -10, 16)], 'below', 1);
    // 4 mm: arrows of 2.5 mm stand outside, 2 × 2.5 long; the text then starts past the line at 16 mm
    expect(first!.squeezed).toBe(true);
    expect(first!.text[0]).toBeGreaterThan(16);
    expect(first!.text[1] - first!.text[0]).toBeCloseTo(sizeWidth(small), 9);
    expect(first!.line[1]).toBe(first!.text[1]);
  });

  it('counts along the side in mm of paper', () => {
    expect(tiersOn([mark('one', -10, 10)], 'below', 2)[0]!.ends).toEqual([-20, 20]);
  });
});
