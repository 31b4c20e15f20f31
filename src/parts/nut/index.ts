import type { PartKind } from '../part-kind.js';
import { NUT_CHECKS } from './checks/index.js';
import { designNut, type NutDesign } from './dimensions.js';
import { mateNut } from './mate.js';
import { nutParticulars } from './particulars.js';
import { type NutSheet, nutSchema } from './sheet.js';
import { nutBody } from './solid.js';
import { NUT_TUNABLES } from './tunables.js';
import { nutViews } from './views.js';
import { virtualMate } from './virtual-mate.js';

/** A drive nut. */
export const nutKind: PartKind<NutSheet, NutDesign> = {
  kind: 'nut',
  schema: nutSchema,
  design: designNut,
  checks: NUT_CHECKS,
  particulars: nutParticulars,
  bodies: (design) => [nutBody(design)],
  mate: mateNut,
  virtualMate,
  tunables: NUT_TUNABLES,
  views: nutViews,
};
