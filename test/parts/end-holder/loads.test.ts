import { expect, it } from 'vitest';
import type { EndHolderDesign } from '../../../src/parts/end-holder/dimensions.js';
import { loaded } from '../../../src/parts/end-holder/loads.js';
import { exactly } from '../../../src/units/measured.js';

const screw = { major: exactly(8) };
const load = (duty: object) => loaded({ duty, screw } as unknown as EndHolderDesign).duty.load;

// a bar of steel, 8 mm thick and 300 mm long: π/4·8²·300·7.85e-6·9.80665 = 1.161 N
it('weighs a screw that does not lie besides its load, both ways', () => {
  expect(load({ axis: 'vertical', load: 20, span: 300 })).toBeCloseTo(21.161, 3);
  expect(load({ load: 20, span: 300 })).toBeCloseTo(21.161, 3);
  expect(load({ axis: 'horizontal', load: 20, span: 300 })).toBe(20);
  expect(load({ axis: 'vertical', load: 20 })).toBeGreaterThan(21.161);
  expect(load({ axis: 'vertical', span: 300 })).toBeUndefined();
  const duty = { axis: 'vertical', span: 300 };
  expect(loaded({ duty, screw } as unknown as EndHolderDesign)).toEqual({ duty, screw, pulls: ['away', 'onto'] });
});
