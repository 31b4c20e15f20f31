import { PRINTS } from '../common/questions.js';
import type { PartKind } from '../part-kind.js';
import { GAUGE_CHECKS } from './checks.js';
import { designGauge, type GaugeDesign } from './dimensions.js';
import { mateGauge } from './mate.js';
import { gaugeParticulars } from './particulars.js';
import { type GaugeSheet, gaugeSchema } from './sheet.js';
import { sizeField } from './size-fields.js';
import { gaugeBodies } from './solid.js';
import { gaugeViews } from './views.js';

/** Gauge rings: short nuts in steps of play, and two that tell diameter from pitch. */
export const gaugeKind: PartKind<GaugeSheet, GaugeDesign> = {
  kind: 'gauge',
  schema: gaugeSchema,
  design: designGauge,
  checks: GAUGE_CHECKS,
  promise: 'It tells what it should',
  questions: [{ id: 'tells-enough', title: 'Tells enough?' }, PRINTS],
  particulars: gaugeParticulars,
  bodies: gaugeBodies,
  mate: mateGauge,
  views: gaugeViews,
  sizeField,
};
