import { asLifted, liftedToo } from '../common/lifted.js';
import { AXIS, GOES_ON, HOLDS, PRINTS, TURNS } from '../common/questions.js';
import type { PartKind } from '../part-kind.js';
import { NUT_CHECKS } from './checks/index.js';
import { designNut, type NutDesign } from './dimensions.js';
import { floatRemedies } from './float-remedies.js';
import { nutParticulars } from './particulars.js';
import { boreRemedies } from './remedies.js';
import { type NutSheet, nutSchema } from './sheet.js';
import { sizeField } from './size-fields.js';
import { NUT_TUNABLES } from './tunables.js';
import { nutBodies } from './variants/bodies.js';
import { withVariantChecks } from './variants/checks.js';
import { mateVariant } from './variants/mate.js';
import { withVariantWords } from './variants/particulars.js';
import { nutViews } from './views.js';
import { virtualMate } from './virtual-mate.js';

/** A drive nut. */
export const nutKind: PartKind<NutSheet, NutDesign> = {
  kind: 'nut',
  schema: nutSchema,
  design: designNut,
  checks: liftedToo(withVariantChecks(NUT_CHECKS), asLifted),
  questions: [GOES_ON, TURNS, HOLDS, { id: 'mounts', title: 'Mounts?' }, PRINTS, AXIS],
  particulars: (design) => withVariantWords(design, nutParticulars(design)),
  bodies: nutBodies,
  mate: mateVariant,
  virtualMate: (design, kernel) => (design.family?.kind === 'holder' ? [] : virtualMate(design, kernel)),
  tunables: NUT_TUNABLES,
  remedies: {
    'mount-bore': boreRemedies,
    'mount-float': floatRemedies('mount-float'),
    'mount-binding': floatRemedies('mount-binding'),
  },
  views: nutViews,
  sizeField,
};
