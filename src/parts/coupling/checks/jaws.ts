import { type Check, hard, soft, valued } from '../../../fit/check.js';
import { jawStresses } from '../../../mechanics/coupling/jaw-strength.js';
import { SHOCK_FACTORS, startFactor } from '../../../mechanics/coupling/service-factors.js';
import { plain } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import type { CouplingDesign } from '../dimensions.js';
import { jawWidth } from '../jaws.js';
import { contactOf } from './insert.js';

type CouplingCheck = Check<CouplingDesign>;
const jaws = { group: 'hubs', question: 'carries', source: 'common practice' } as const;

/** A static load may use a third of the strength. */
const SAFETY = 3;

function stressesOf(design: CouplingDesign) {
  const { jaws: plan } = design.hubs[0]!.finished;
  const { meanRadius, length } = contactOf(design);
  const torque =
    design.motor.torque * Math.max(1.5 * startFactor(design.duty.starts ?? 0), SHOCK_FACTORS[design.duty.shock]);
  const arm = Math.max(0.5, design.gap / 2);
  return jawStresses({ torque, jaws: plan.count, meanRadius, arm, length, width: jawWidth(plan, meanRadius) });
}

/** A jaw that breaks off at its foot, between two layers. */
export const jawBending: CouplingCheck = {
  ...jaws,
  id: 'jaw-bending',
  title: 'Bending at the foot of a jaw',
  unit: 'MPa',
  moves: 'hubs.outside_diameter, jaws.width, jaws.height, material',
  run: (design) => {
    const { bending } = stressesOf(design);
    const allowed = design.material.tensileAcross / SAFETY;
    return valued(
      exactly(bending),
      `${plain(bending, 2)} MPa at start or shock; a third of the strength across the layers is ${plain(allowed, 1)} MPa`,
      hard({ max: allowed }),
    );
  },
};

/** A jaw that shears off along a layer. */
export const jawShear: CouplingCheck = {
  ...jaws,
  id: 'jaw-shear',
  title: 'Shear at the foot of a jaw',
  unit: 'MPa',
  moves: 'hubs.outside_diameter, jaws.width, material',
  run: (design) => {
    const { shear } = stressesOf(design);
    const allowed = design.material.shear / SAFETY;
    return valued(exactly(shear), `${plain(shear, 2)} MPa of ${plain(allowed, 1)} MPa`, hard({ max: allowed }));
  },
};

/** What is thinner than two lines is not printed whole. */
export const printLines: CouplingCheck = {
  ...jaws,
  group: 'print',
  id: 'print-lines',
  question: 'prints',
  title: 'Thinnest of jaws, lobes and ring, in lines',
  unit: '',
  limits: soft({ min: 2 }, { min: 1 }),
  moves: 'jaws.count, jaws.width, insert.hole, printer.nozzle',
  run: ({ hubs, insert, printer }) => {
    const plan = hubs[0]!.finished.jaws;
    const { halfWidth, ring, hole } = insert.finished;
    const own = insert.printer.lineWidth;
    const features = [
      { where: 'inner end of a jaw', lines: (jawWidth(plan, plan.inner) - 2 * plan.bevel) / printer.lineWidth },
      { where: 'a lobe', lines: (2 * halfWidth) / own },
      ...(hole > 0 ? [{ where: 'ring of the insert', lines: (ring - hole / 2) / own }] : []),
    ];
    const least = features.reduce((a, b) => (b.lines < a.lines ? b : a));
    return valued(exactly(least.lines), `${plain(least.lines, 1)} lines: ${least.where}`);
  },
};
