import { GOES_ON, HOLDS, PRINTS, TURNS } from '../common/questions.js';
import type { PartKind } from '../part-kind.js';
import { COLLAR_CHECKS } from './checks/index.js';
import { type CollarDesign, designCollar } from './dimensions.js';
import { mateCollar } from './mate.js';
import { collarParticulars } from './particulars.js';
import { carriedByMetal } from './remedies.js';
import { type CollarSheet, collarSchema } from './sheet.js';
import { sizeField } from './size-fields.js';
import { collarBodies } from './solid.js';
import { COLLAR_TUNABLES } from './tunables.js';
import { collarViews } from './views.js';

/** A collar that holds a screw along its axis, with the seat of a thrust bearing. */
export const collarKind: PartKind<CollarSheet, CollarDesign> = {
  kind: 'collar',
  schema: collarSchema,
  design: designCollar,
  checks: COLLAR_CHECKS,
  questions: [GOES_ON, TURNS, HOLDS, PRINTS],
  promise: 'It holds',
  particulars: collarParticulars,
  bodies: collarBodies,
  mate: mateCollar,
  views: collarViews,
  sizeField,
  tunables: COLLAR_TUNABLES,
  remedies: { 'friction-alone': carriedByMetal },
};
