import { describe, expect, it } from 'vitest';
import { crestShaft } from '../../../src/parts/common/crest-shaft.js';
import type { Screw } from '../../../src/sheet/resolve-screw.js';
import { exactly, plusMinus } from '../../../src/units/measured.js';

const screw = (designation?: string) =>
  ({ designation, major: plusMinus(8, 0.05), pitch: exactly(2) }) as unknown as Screw;

describe('a screw that is held over its crests', () => {
  it('is as thick as it was measured', () => {
    expect(crestShaft(screw('Tr8x2'), true)).toEqual({ form: 'round', diameter: plusMinus(8, 0.05), crests: true });
  });

  it('may be as thin as its class allows where nobody measured it: Tr8x2 7e, 8 − 0.18 mm', () => {
    expect(crestShaft(screw('Tr8x2'), false)).toMatchObject({ crests: true, thinnest: expect.closeTo(7.82, 9) });
  });

  it('may be a tenth of its pitch thinner than it is said to be where no class tells: 7.95 − 0.2 mm', () => {
    expect(crestShaft(screw(), false)).toMatchObject({ thinnest: expect.closeTo(7.75, 9) });
    // no standard limits this size
    expect(crestShaft(screw('Tr5x1'), false)).toMatchObject({ thinnest: expect.closeTo(7.75, 9) });
  });
});
