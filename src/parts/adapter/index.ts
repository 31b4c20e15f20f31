import { asLifted, liftedToo } from '../common/lifted.js';
import { AXIS, HOLDS, PRINTS } from '../common/questions.js';
import type { PartKind } from '../part-kind.js';
import { ADAPTER_CHECKS } from './checks/index.js';
import { type AdapterDesign, designAdapter } from './dimensions.js';
import { floatRemedies, sleeveRemedies } from './float-remedies.js';
import { mateAdapter } from './mate.js';
import { adapterParticulars } from './particulars.js';
import { boreRemedies } from './remedies.js';
import { type AdapterSheet, adapterSchema } from './sheet.js';
import { sizeField } from './size-fields.js';
import { adapterBody } from './solid.js';
import { ADAPTER_TUNABLES } from './tunables.js';
import { adapterViews } from './views.js';

/** A plate that joins a bought nut to a carriage. */
export const adapterKind: PartKind<AdapterSheet, AdapterDesign> = {
  kind: 'adapter',
  schema: adapterSchema,
  design: designAdapter,
  checks: liftedToo(ADAPTER_CHECKS, asLifted),
  questions: [
    { id: 'meets-nut', title: 'Meets the nut?' },
    { id: 'meets-carriage', title: 'Meets the carriage?' },
    { id: 'screws-go-in', title: 'Screws go in?' },
    HOLDS,
    PRINTS,
    AXIS,
  ],
  particulars: adapterParticulars,
  bodies: (design, sizes) => [adapterBody(design, sizes)],
  mate: mateAdapter,
  views: adapterViews,
  sizeField,
  tunables: ADAPTER_TUNABLES,
  remedies: { 'mount-bore': boreRemedies, 'mount-float': floatRemedies, 'sleeve-seat': sleeveRemedies },
};
