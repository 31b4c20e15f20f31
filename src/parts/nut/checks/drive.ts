import { type Check, notJudged, soft, valued } from '../../../fit/check.js';
import { FRICTION } from '../../../mechanics/friction.js';
import { holding } from '../../../mechanics/power-screw/holding.js';
import { leadAngle } from '../../../mechanics/power-screw/lead-angle.js';
import { raisingTorque } from '../../../mechanics/power-screw/raising-torque.js';
import { whirlSpeed } from '../../../mechanics/whirl.js';
import { plain } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import type { NutDesign } from '../dimensions.js';

type NutCheck = Check<NutDesign>;
const drive = { group: 'drive', question: 'axis', source: 'common practice' } as const;

/** How far the screw is past the point where it surely holds: the worse of the two rules, 1 being the limit. */
function creepRatio({ screw, finished }: NutDesign): number {
  const byLead = finished.lead / (screw.major.likely / 3);
  const angle = leadAngle({ lead: finished.lead, meanDiameter: screw.pitchDiameter.likely });
  const safe = (0.7 * (Math.atan(FRICTION.low / Math.cos((screw.flankAngle * Math.PI) / 180)) * 180)) / Math.PI;
  return Math.max(byLead, angle / safe);
}

/** A vertical axis that is not held comes down. */
export const driveHolding: NutCheck = {
  ...drive,
  id: 'drive-holding',
  title: 'The unpowered screw holds its load: lead against the limit',
  unit: '',
  limits: soft({ max: 1 }),
  moves: 'screw.lead, a brake, a counterweight',
  grave: true,
  run: (design) => {
    if (design.duty.axis !== 'vertical') return undefined;
    const { screw, finished } = design;
    const answer = holding({
      lead: finished.lead,
      major: screw.major.likely,
      pitchDiameter: screw.pitchDiameter.likely,
      flankAngle: screw.flankAngle,
    });
    const words = {
      falls: 'the axis FALLS when the motor is off: block it, and fit a brake, a counterweight or a finer lead',
      'may-creep': 'the axis may creep down when greased and shaken: block it before work, do not rely on the screw',
      holds: 'the axis normally holds; do not rely on it where a fall would hurt',
    };
    return valued(
      exactly(creepRatio(design)),
      `lead ${plain(finished.lead)} mm on ${plain(screw.major.likely, 2)} mm: ${words[answer]}`,
    );
  },
};

/** A dry nut must not stall the motor. */
export const driveTorque: NutCheck = {
  ...drive,
  id: 'drive-torque',
  title: 'Torque to raise the load with a dry nut, against half the holding torque',
  unit: 'N·mm',
  moves: 'duty.load, duty.motor.torque, screw.lead, duty.grease',
  run: ({ duty, screw, finished }) => {
    if (duty.load === undefined) return notJudged('duty.load');
    const torque = duty.motor?.torque;
    if (torque === undefined)
      return duty.motor === undefined ? notJudged('duty.motor') : notJudged('duty.motor.torque');
    const thread = { lead: finished.lead, meanDiameter: screw.pitchDiameter.likely, flankAngle: screw.flankAngle };
    const needed = duty.load === 0 ? 0 : raisingTorque({ ...thread, axialForce: duty.load, friction: FRICTION.high });
    const most = 0.5 * torque * (duty.motor?.gear ?? 1);
    return valued(
      exactly(needed),
      `${plain(needed, 0)} N·mm at friction ${FRICTION.high} of ${plain(most, 0)} N·mm that may be used`,
      soft({ max: most }),
    );
  },
};

/** Layers between full steps come out unequal. */
export const driveLayerGrid: NutCheck = {
  ...drive,
  id: 'drive-layer-grid',
  title: 'Layer heights on whole full steps: largest miss, in steps',
  unit: '',
  limits: soft({ max: 0.01 }),
  moves: 'duty.layer_heights, screw.lead',
  run: (design) => {
    const layers = design.drive.layers;
    if (layers.length === 0) return undefined;
    const miss = Math.max(...layers.map(({ full_steps }) => Math.abs(full_steps - Math.round(full_steps))));
    const off = layers.filter(({ on_grid }) => !on_grid);
    const words = off.map(
      ({ height, nearest }) => `${plain(height)} mm (use ${nearest.map((h) => plain(h, 4)).join(' or ')})`,
    );
    return valued(
      exactly(miss),
      off.length === 0
        ? 'all heights are whole full steps'
        : `off the full-step grid: ${words.join('; ')}; advice, not an error`,
    );
  },
};

/** A long thin screw whips. */
export const driveWhirl: NutCheck = {
  ...drive,
  id: 'drive-whirl',
  title: 'Screw speed against its whirling speed',
  unit: '',
  limits: soft({ max: 0.8 }),
  moves: 'duty.feed, duty.span, duty.ends',
  run: ({ duty, screw, finished }) => {
    if (duty.span === undefined && duty.feed === undefined) return undefined;
    if (duty.span === undefined) return notJudged('duty.span');
    if (duty.feed === undefined) return notJudged('duty.feed');
    if (duty.ends === undefined) return notJudged('duty.ends');
    const whirl = whirlSpeed({ rootDiameter: screw.minor.likely, span: duty.span, ends: duty.ends });
    const speed = (60 * duty.feed) / finished.lead;
    return valued(exactly(speed / whirl), `${plain(speed, 0)} rpm of ${plain(whirl, 0)} rpm`);
  },
};

/** Motors lose their torque with speed. */
export const driveSpeed: NutCheck = {
  ...drive,
  id: 'drive-speed',
  title: 'Motor speed at the wanted feed',
  unit: 'rpm',
  moves: 'duty.feed, duty.motor.speed, screw.lead',
  trifle: true,
  run: ({ duty, finished }) => {
    if (duty.feed === undefined) return undefined;
    const most = duty.motor?.speed ?? 300;
    const speed = ((60 * duty.feed) / finished.lead) * (duty.motor?.gear ?? 1);
    const basis = duty.motor?.speed === undefined ? ', assumed since duty.motor.speed is missing' : '';
    return valued(
      exactly(speed),
      `${plain(speed, 0)} rpm for ${plain(duty.feed)} mm/s; the motor is useful up to ${plain(most, 0)} rpm${basis}`,
      soft({ max: most }),
    );
  },
};
