import { GOES_ON, HOLDS, PRINTS, TURNS } from '../common/questions.js';
import type { PartKind } from '../part-kind.js';
import { SLEEVE_CHECKS } from './checks.js';
import { designSleeve, type SleeveDesign } from './dimensions.js';
import { mateSleeve } from './mate.js';
import { sleeveParticulars } from './particulars.js';
import { type SleeveSheet, sleeveSchema } from './sheet.js';
import { sizeField } from './size-fields.js';
import { sleeveBody } from './solid.js';
import { SLEEVE_TUNABLES } from './tunables.js';
import { sleeveViews } from './views.js';

/** A sleeve: a slit bush, or a rigid clamp between two shafts. */
export const sleeveKind: PartKind<SleeveSheet, SleeveDesign> = {
  kind: 'sleeve',
  schema: sleeveSchema,
  design: designSleeve,
  checks: SLEEVE_CHECKS,
  questions: [GOES_ON, TURNS, HOLDS, PRINTS],
  particulars: sleeveParticulars,
  bodies: (design, sizes) => [sleeveBody(design, sizes)],
  mate: mateSleeve,
  views: sleeveViews,
  sizeField,
  tunables: SLEEVE_TUNABLES,
};
