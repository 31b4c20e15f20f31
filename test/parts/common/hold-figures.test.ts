import { describe, expect, it } from 'vitest';
import { holdFigures, isGreased } from '../../../src/parts/common/hold-figures.js';
import { Assumptions } from '../../../src/sheet/assumptions.js';
import { exactly } from '../../../src/units/measured.js';

const PLACE = { field: 'motor_hub', clamped: true, material: { name: 'petg' } } as const;
const shaft = (crests?: true) => ({
  form: 'round' as const,
  diameter: exactly(8),
  ...(crests === undefined ? {} : { crests }),
});
const figures = (own: Parameters<typeof holdFigures>[0], crests?: true, more: object = {}) =>
  holdFigures(own, { ...PLACE, shaft: shaft(crests), ...more }, new Assumptions());

describe('friction of a bore, common practice', () => {
  it('is greasy where grease is left, and washed where it is not', () => {
    expect(isGreased(figures({}, true))).toBe(true);
    expect(isGreased(figures({ degreased: 'yes' }, true))).toBe(false);
  });

  it('takes a screw as greasy and a shaft as clean, unless the sheet tells', () => {
    expect(figures({}).friction).toBe(0.15);
    expect(figures({}, true).friction).toBe(0.05);
    expect(figures({ degreased: 'yes' }, true).friction).toBe(0.15);
    expect(figures({ degreased: 'no' }).friction).toBe(0.05);
    expect(figures({ degreased: 'yes' }).friction).toBe(0.15);
    expect(figures({ friction: 0.3 }, true).friction).toBe(0.3);
  });

  it('is asked for on a plain shaft of which nobody tells, and on nothing else', () => {
    expect(figures({}).greaseUntold).toBe(true);
    for (const told of [
      figures({ degreased: 'yes' }),
      figures({ degreased: 'no' }),
      figures({ friction: 0.3 }),
      figures({}, true),
    ])
      expect(told.greaseUntold).toBeUndefined();
  });

  it('goes with the clearance of a bore that is closed, or that slides on', () => {
    expect(figures({}).clearance).toBe(0.05);
    expect(figures({}, undefined, { clamped: false }).clearance).toBe(0.1);
    expect(figures({ bore_clearance: 0.2 }).clearance).toBe(0.2);
  });
});
