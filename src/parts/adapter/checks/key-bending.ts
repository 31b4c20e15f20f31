import { type Check, hard, notJudged, valued } from '../../../judge/check.js';
import { FRICTION } from '../../../mechanics/friction.js';
import { raisingTorque } from '../../../mechanics/power-screw/raising-torque.js';
import { canBeRaised } from '../../../mechanics/power-screw/thread.js';
import { allowableStress } from '../../../mechanics/strength/allowable.js';
import { keyStress } from '../../../mechanics/strength/key-stress.js';
import { plain, worked } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { judgedTemperature } from '../../common/load-cases.js';
import type { AdapterDesign } from '../dimensions.js';

/** What turns the nut against its keys. */
interface Turning {
  /** N·mm */
  readonly torque: number;
  readonly duration: 'moment' | 'repeated';
  readonly words: string;
}

/**
 * What turns a nut between two printed keys bends them across their layers: a jam with all that the motor has, and the work with every move.
 *
 *     σ = K·T/(n·r) · (h/2) / (l·w²/6)
 *     T = torque of the motor times its gear, for a moment; torque that raises the load at friction 0.2, at most the motor's, again and again
 *     n = 2 keys, r = half their length: the nut turns until the flat of its flange meets the ends of both; h, l, w = height, length and width of a key;
 *     K = 2, the sharp corner at its foot
 */
export const keyBending: Check<AdapterDesign> = {
  id: 'key-bending',
  group: 'mount',
  question: 'holds',
  title: 'Bending of the keys that hold the nut',
  unit: 'MPa',
  source: 'derived: a bar pushed at half its height',
  moves: 'hold, nut.flange.thickness, duty.motor.torque, duty.load, duty.temperature, material',
  grave: true,
  run: (design, limits) => {
    const { input, duty, material } = design;
    const [key] = input.keys;
    if (!key) return undefined;
    const temperature = judgedTemperature(duty);
    const [length, width] = key.size;
    const rows = turningsOf(design).map((one) => {
      const force = one.torque / ((input.keys.length * length) / 2);
      const stress = keyStress({ force, arm: key.height / 2, length, width });
      const at = { duration: one.duration, temperature } as const;
      return {
        ...one,
        force,
        stress,
        bears: allowableStress(material, { kind: 'tension', direction: 'across', ...at }),
      };
    });
    const missing = missingOf(design);
    if (rows.length === 0) return notJudged(...missing);
    const worst = rows.reduce((a, b) => (b.stress * a.bears > a.stress * b.bears ? b : a));
    const own = hard({ max: worst.bears });
    const { max = worst.bears } = limits.of(own).pass;
    const fails = worst.stress > max;
    if (missing.length > 0 && !fails) return notJudged(...missing);
    const less = worst.duration === 'moment' ? 'less motor current' : 'less load';
    const cure = fails ? `; use hold: screws, ${less}, or a stronger material` : '';
    return valued(
      exactly(worst.stress),
      `${worked(worst.stress, 'MPa')} MPa at the foot of a key of ${plain(length)} × ${plain(width)} mm, ${plain(key.height)} mm high, pushed with ${plain(worst.force, 0)} N by ${worst.words}; across the layers it bears ${worked(max, 'MPa')} MPa at ${plain(temperature, 0)} °C${cure}`,
      own,
    );
  },
};

/** What is known to turn the nut: the motor in a jam, and the load as it is raised. */
function turningsOf({ screw, duty }: AdapterDesign): readonly Turning[] {
  const { torque, gear = 1 } = duty.motor ?? {};
  const most = torque === undefined ? Infinity : torque * gear;
  const thread = screw && {
    lead: screw.lead,
    meanDiameter: screw.pitchDiameter.likely,
    flankAngle: screw.flankAngle,
    friction: FRICTION.nominal,
  };
  const raised =
    thread && duty.load !== undefined && canBeRaised(thread)
      ? Math.min(most, raisingTorque({ ...thread, axialForce: duty.load }))
      : undefined;
  return [
    ...(torque === undefined
      ? []
      : [
          {
            torque: most,
            duration: 'moment' as const,
            words: `${plain(most, 0)} N·mm of the motor in a jam, for a moment`,
          },
        ]),
    ...(raised === undefined
      ? []
      : [
          {
            torque: raised,
            duration: 'repeated' as const,
            words: `the ${plain(raised, 0)} N·mm that raise its load, again and again`,
          },
        ]),
  ];
}

/** Fields without which keys are not judged. */
function missingOf({ screw, duty }: AdapterDesign): readonly string[] {
  return [
    ...(duty.motor?.torque === undefined ? ['duty.motor.torque'] : []),
    ...(screw ? [] : ['screw']),
    ...(['load', 'temperature'] as const).filter((field) => duty[field] === undefined).map((field) => `duty.${field}`),
  ];
}
