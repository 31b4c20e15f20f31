import { type Check, hard, notJudged, type Outcome, told } from '../../../judge/check.js';
import { pressureUnderHead } from '../../../mechanics/bolt/preload.js';
import { spreadForce } from '../../../mechanics/thread/spread.js';
import { socketCapScrew } from '../../../standards/fasteners/cap-screw.js';
import { washer } from '../../../standards/fasteners/washer.js';
import { plain, worked } from '../../../units/format.js';
import { borneShare } from '../../common/borne-share.js';
import { stallForce } from '../../common/stall-force.js';
import type { NutDesign } from '../dimensions.js';

/** The screw wedges halves and slit open; the closing screws' heads press on the plastic against it. */
export const splitHold: Check<NutDesign> = {
  id: 'split-hold',
  group: 'family',
  question: 'holds',
  title: 'What closes halves or slit, as a share of what it bears',
  unit: '',
  source: 'common practice',
  limits: hard({ max: 1 }),
  moves: 'duty.load, duty.temperature, family.screw, material',
  grave: true,
  run: (design, { pass }) => {
    const { family, screw } = design;
    if (family?.kind === 'split' && family.closed === 'ring') return ringHold(design);
    const clamp = family?.kind === 'split' || family?.kind === 'clamped' ? family.clamp : undefined;
    if (!clamp) return undefined;
    const count = family?.kind === 'split' ? 2 : 1;
    const headDiameter = clamp.washers ? washer(clamp.screw).outside : socketCapScrew(clamp.screw).headDiameter;
    const spread = (force: number) => spreadForce({ axialForce: force, flankAngle: screw.flankAngle });
    return borneShare(design, pass, {
      stresses: (force) => {
        const preload = spread(force) / count;
        return [{ kind: 'pressure', stress: pressureUnderHead({ preload, headDiameter, holeDiameter: clamp.hole }) }];
      },
      sudden: 1,
      where: `under each ${clamp.screw} head, wedged by ${plain((100 * spread(1)) / count, 1)} % of the load,`,
      cure: 'wider screws (family.screw), a stronger material or less heat',
    });
  },
};

/** A ring is bought and nobody told its strength: what its section has to stand is said, never passed. */
function ringHold(design: NutDesign): Outcome {
  const { duty, screw } = design;
  if (duty.load === undefined) return notJudged('duty.load');
  const force = Math.max(duty.load, stallForce(design) ?? 0);
  const spread = spreadForce({ axialForce: force, flankAngle: screw.flankAngle });
  return told(
    'caution',
    `the ring is not judged; the screw wedges the halves apart with ${worked(spread, 'N')} N under ${plain(force, 0)} N, half of it in each section of the ring: take one of steel, that neither stretches nor slides off, or family.closed: screws`,
  );
}
