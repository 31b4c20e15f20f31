import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AskedView, viewsOf } from '../../src/parts/part-views.js';
import { DERIVED } from '../../src/parts/size-field.js';
import { design } from '../../src/pipeline/design.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { fieldsAt } from '../../src/sheet/schema-keys.js';
import { InputError } from '../../src/units/faults.js';
import { END_HOLDERS } from '../support/end-holder-sheets.js';
import { MOTOR_PLATES } from '../support/motor-plate-sheets.js';
import { ADAPTERS, SLEEVES } from '../support/odd-sheets.js';
import '../support/seed.js';
import {
  sensibleAdapter,
  sensibleCollar,
  sensibleCoupling,
  sensibleCoupon,
  sensibleEndHolder,
  sensibleGauge,
  sensibleMotorPlate,
  sensibleNut,
  sensibleSleeve,
} from '../support/sensible-sheets/index.js';
import { randomFamily } from './nut/random-family.js';

const drawn = (arbitrary: fc.Arbitrary<unknown>) => fc.sample(arbitrary, 25) as object[];

const SHEETS: Readonly<Record<string, readonly object[]>> = {
  nuts: drawn(sensibleNut),
  'nuts of all families': drawn(randomFamily),
  adapters: [...Object.values(ADAPTERS), ...drawn(sensibleAdapter)],
  couplings: drawn(sensibleCoupling),
  sleeves: [...Object.values(SLEEVES), ...drawn(sensibleSleeve)],
  collars: drawn(sensibleCollar),
  'end holders': [...Object.values(END_HOLDERS), ...drawn(sensibleEndHolder)],
  'motor plates': [...Object.values(MOTOR_PLATES), ...drawn(sensibleMotorPlate)],
  coupons: drawn(sensibleCoupon),
  gauges: drawn(sensibleGauge),
};

/** Fields that the sizes of a sheet's drawing show, by size; none of a sheet that is refused. */
function shownBy(
  sheet: object,
): { schema: (typeof KINDS)[number]['schema']; fields: [string, string | undefined][] } | undefined {
  try {
    const made = design(sheet);
    const kind = kindOfDesign(KINDS, made);
    const sizes = viewsOf<AskedView>(kind.views(made, 'finished')).flatMap((view) => view.sizes);
    return { schema: kind.schema, fields: sizes.map(({ name, field }) => [name, field]) };
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

describe.each(Object.keys(SHEETS))('sizes of %s', (name) => {
  it('show a field of the sheet, or say that they are derived', () => {
    const shown = SHEETS[name]!.flatMap((sheet) => shownBy(sheet) ?? []);
    expect(shown.length).toBeGreaterThan(5);
    for (const { schema, fields } of shown)
      for (const [size, field] of fields) {
        expect(field, size).toBeDefined();
        if (field !== DERIVED)
          expect(fieldsAt(schema, field!.split('.')).length, `${size}: ${field}`).toBeGreaterThan(0);
      }
  });
});
