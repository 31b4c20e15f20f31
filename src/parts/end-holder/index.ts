import { HOLDS, PRINTS, TURNS } from '../common/questions.js';
import type { PartKind } from '../part-kind.js';
import { END_HOLDER_CHECKS } from './checks/index.js';
import { designEndHolder, type EndHolderDesign } from './dimensions.js';
import { mateEndHolder } from './mate.js';
import { endHolderParticulars } from './particulars.js';
import { type EndHolderSheet, endHolderSchema } from './sheet.js';
import { sizeField } from './size-fields.js';
import { endHolderBodies } from './solid.js';
import { END_HOLDER_TUNABLES } from './tunables.js';
import { endHolderViews } from './views.js';

/** What the far end of a screw runs in: a guard ring, a bush, or a ball bearing. */
export const endHolderKind: PartKind<EndHolderSheet, EndHolderDesign> = {
  kind: 'end-holder',
  schema: endHolderSchema,
  design: designEndHolder,
  checks: END_HOLDER_CHECKS,
  questions: [{ id: 'goes-in', title: 'Goes in?' }, TURNS, HOLDS, { id: 'bolts-on', title: 'Bolts on?' }, PRINTS],
  particulars: endHolderParticulars,
  bodies: endHolderBodies,
  mate: mateEndHolder,
  views: endHolderViews,
  sizeField,
  tunables: END_HOLDER_TUNABLES,
};
