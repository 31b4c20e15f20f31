import { type Check, hard, notJudged, soft, told, valued } from '../../fit/check.js';
import { gripPull } from '../../mechanics/shaft/clamp-grip.js';
import { plain } from '../../units/format.js';
import { exactly, plusMinus } from '../../units/measured.js';
import { boreReach } from '../common/bore.js';
import { shrinkAppliedOnce } from '../common/checks.js';
import { gripOf } from '../common/grip.js';
import { heldChecks } from '../common/held-checks.js';
import { planeResidual } from '../common/residual.js';
import type { SleeveDesign } from './dimensions.js';

type SleeveCheck = Check<SleeveDesign>;
const body = { group: 'body', question: 'holds', source: 'common practice' } as const;

/** What holds for every body that holds a shaft; a bush holds nothing by itself. */
const holding = heldChecks<SleeveDesign>((design) => {
  const { ends, finished, torque, material, printer } = design;
  if (ends.length === 0 || torque === undefined) return undefined;
  const held = ends.map((end, i) => {
    const [clamp, { bore }] = [finished.clamps[i]!, finished.bores[i]!];
    // heights of the upper clamp counted from its own end
    const heights = i === 0 ? clamp.heights : clamp.heights.map((height) => finished.length - height);
    return { ...end, bore, outside: finished.outside, slit: { width: finished.slit }, clamp: { ...clamp, heights } };
  });
  return { held, torque, material, printer };
}, 'outside_diameter, motor_end, screw_end');

/** Two shafts held rigidly have two bearings each. */
const overConstraint: SleeveCheck = {
  ...body,
  id: 'over-constraint',
  question: 'turns',
  title: 'Offset between the shafts',
  unit: 'mm',
  limits: soft({ max: 0.05 }, { max: 0.15 }),
  moves: 'offset',
  run: ({ form, offset }) => {
    if (form === 'bush') return undefined;
    if (offset === undefined)
      return told(
        'caution',
        'a rigid sleeve takes no misalignment: an offset of 0.1 mm bends the motor shaft once a turn and binds. Leave the far end of the screw free, set the shafts in line with the sleeve loose, tighten last',
      );
    return valued(
      exactly(offset),
      `${plain(offset, 2)} mm bend the motor shaft once a turn; leave the far end of the screw free, or use a jaw coupling`,
    );
  },
};

/** What hangs on a clamp slips out of it. */
const axialGrip: SleeveCheck = {
  ...body,
  group: 'grip',
  id: 'axial-grip',
  title: 'Axial pull that the weaker clamp holds',
  unit: 'N',
  moves: 'duty.load, motor_end.clamp, screw_end.clamp',
  run: ({ ends, duty: { load }, material, torque }) => {
    if (ends.length === 0 || torque === undefined) return undefined;
    if (load === undefined) return notJudged('duty.load');
    const pulls = ends.map(({ grip, shaft, engagement }) => {
      const { clamp, flats } = gripOf(grip, shaft, engagement, material);
      // friction shared by torque and pull: what the torque leaves
      const turning = Math.max(0, torque - flats);
      return turning >= clamp
        ? 0
        : gripPull({ torque: Math.sqrt(clamp ** 2 - turning ** 2), diameter: shaft.diameter.likely });
    });
    const pull = Math.min(...pulls);
    return valued(
      exactly(pull),
      `${plain(pull, 0)} N are left beside the torque, ${plain(load, 0)} N pull; the motor's bearing carries them: see its data`,
      hard({ min: load }),
    );
  },
};

/** A bush without a wall. */
const bushWall: SleeveCheck = {
  ...body,
  id: 'bush-wall',
  question: 'prints',
  title: 'Wall of the bush',
  unit: 'mm',
  moves: 'bore, shaft',
  run: ({ form, finished, printer }) => {
    if (form === 'clamp') return undefined;
    const wall = finished.outside / 2 - boreReach(finished.bores[0].bore).most;
    return valued(
      exactly(wall),
      `${plain(wall, 2)} mm, ${plain(wall / printer.lineWidth, 1)} lines`,
      soft({ min: 2 * printer.lineWidth }, { min: printer.lineWidth }),
    );
  },
};

/** Two fits in a row. */
const bushRunout: SleeveCheck = {
  ...body,
  id: 'bore-runout',
  question: 'turns',
  title: 'Eccentricity of the shaft',
  unit: 'mm',
  limits: soft({ max: 0.15 }),
  moves: 'bore, shaft',
  run: (design) => {
    const { form, fills, finished, shaft } = design;
    if (form === 'clamp' || fills === undefined) return undefined;
    const play = fills - finished.outside + (finished.bores[0].bore.diameter - shaft.diameter.likely);
    const spread = 0.05 + planeResidual(design, finished.outside).most;
    return valued(
      plusMinus(play / 2, spread / 2),
      `two clearances in a row, ${plain(play, 2)} mm on the diameter before the clamp closes`,
    );
  },
};

/** A sleeve on a hot shaft goes soft. */
const heat: SleeveCheck = {
  ...body,
  id: 'heat',
  title: 'Reserve before the material softens',
  unit: '°C',
  limits: hard({ min: 20 }),
  moves: 'motor.temperature, duty.temperature, material',
  grave: true,
  run: ({ material, motorTemperature, duty }) => {
    if (motorTemperature === undefined && duty.temperature === undefined) return notJudged('duty.temperature');
    const local = Math.max(motorTemperature ?? -Infinity, duty.temperature ?? -Infinity);
    const reserve = material.softening - local;
    const cure = reserve < 20 ? '; use a material that softens later, or keep the heat away' : '';
    return valued(
      exactly(reserve),
      `${material.name} softens at ${plain(material.softening, 0)} °C, ${plain(local, 0)} °C at the shaft${cure}`,
    );
  },
};

/** Every check of a sleeve, in the order of the report. */
export const SLEEVE_CHECKS: readonly SleeveCheck[] = [
  ...holding.filter(({ id }) => id !== 'bore-runout'),
  axialGrip,
  overConstraint,
  bushWall,
  bushRunout,
  heat,
  shrinkAppliedOnce,
];
