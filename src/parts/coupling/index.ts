import { GOES_ON, HOLDS, PRINTS, TURNS } from '../common/questions.js';
import type { PartKind } from '../part-kind.js';
import { COUPLING_CHECKS } from './checks/index.js';
import { type CouplingDesign, designCoupling } from './dimensions.js';
import { mateCoupling } from './mate.js';
import { couplingParticulars } from './particulars.js';
import { type CouplingSheet, couplingSchema } from './sheet.js';
import { sizeField } from './size-fields.js';
import { couplingBodies } from './solid.js';
import { COUPLING_TUNABLES } from './tunables.js';
import { couplingViews } from './views.js';

/** A jaw coupling: two hubs and the insert between them. */
export const couplingKind: PartKind<CouplingSheet, CouplingDesign> = {
  kind: 'coupling',
  schema: couplingSchema,
  design: designCoupling,
  checks: COUPLING_CHECKS,
  questions: [GOES_ON, TURNS, HOLDS, { id: 'carries', title: 'Carries?' }, PRINTS],
  particulars: couplingParticulars,
  bodies: couplingBodies,
  mate: mateCoupling,
  views: couplingViews,
  sizeField,
  tunables: COUPLING_TUNABLES,
};
