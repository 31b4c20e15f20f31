import * as z from 'zod';
import { map } from '../../sheet/fields.js';
import type { PartKind } from '../part-kind.js';
import { designNut, type NutDesign } from './dimensions.js';
import { nutKind } from './index.js';
import { nutSchema } from './sheet.js';
import { variantFields } from './variants/sheet.js';

const { apart, shift, lever } = variantFields.shape;
const { part: _part, family: _family, catch_nut: _catch, ...ofAnyNut } = nutSchema.shape;

/** Sheet of a twin nut: that of a nut, whose family need not be said. */
const twinNutSchema = map({
  part: z.literal('twin-nut', 'must be twin-nut'),
  ...ofAnyNut,
  family: map({
    kind: z.literal('twin', 'must be twin, or left out; another nut is a part: nut').optional(),
    apart: apart.unwrap(),
    shift,
    lever,
  }),
});
type TwinNutSheet = z.output<typeof twinNutSchema>;

/** Two nuts at a distance in one block: a nut in all but the name that its sheet gives it. */
export const twinNutKind: PartKind<TwinNutSheet, NutDesign> = {
  ...nutKind,
  kind: 'twin-nut',
  formOf: 'nut',
  schema: twinNutSchema,
  design: ({ family, ...sheet }, presets) => designNut({ ...sheet, family: { ...family, kind: 'twin' } }, presets),
};
