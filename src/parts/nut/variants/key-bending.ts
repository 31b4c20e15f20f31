import { type Check, hard, notJudged, told, valued } from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { DRY_PRINT_MOST, DRY_PRINT_WORDS, FRICTION } from '../../../mechanics/friction.js';
import { raisingTorque } from '../../../mechanics/power-screw/raising-torque.js';
import { canBeRaised } from '../../../mechanics/power-screw/thread.js';
import { allowableStress } from '../../../mechanics/strength/allowable.js';
import { keyStress } from '../../../mechanics/strength/key-stress.js';
import { plain, worked } from '../../../units/format.js';
import { judgedTemperature } from '../../common/load-cases.js';
import type { NutDesign } from '../dimensions.js';
import { KEY_GRIP, springForceOf } from './anti-backlash.js';
import type { AntiBacklash } from './types.js';

/**
 * The screw turns the follower with what its spring presses on the flanks; two keys that stand on the main nut hold it, one way
 * and the other with every move, and bend across their layers.
 *
 *     σ = K · T/(2·r) · (s + g/2) / (t·w²/6)
 *     T = torque under the spring's force; friction = 0.2 greased, else 0.5, at most 1.1
 *     r = middle of a key from the axis, s = length of the spring, g = 4 mm in the slot, t = along the radius, w = width;
 *     K = 2, the sharp corner at the foot
 */
export const keyBending: Check<NutDesign> = {
  id: 'key-bending',
  group: 'family',
  question: 'holds',
  title: 'Bending of the keys that hold the follower',
  unit: 'MPa',
  source: 'derived: a bar at the middle of its slot',
  moves: 'family.spring, duty.grease, duty.temperature, material',
  grave: true,
  run: (design, limits) => {
    const { family, duty, material } = design;
    if (family?.kind !== 'anti-backlash') return undefined;
    const temperature = judgedTemperature(duty);
    const bears = allowableStress(material, {
      kind: 'tension',
      direction: 'across',
      duration: 'repeated',
      temperature,
    });
    const own = hard({ max: bears });
    const { max = bears } = limits.of(own).pass;
    const isDry = duty.grease !== 'greased';
    const friction = isDry ? FRICTION.high : FRICTION.nominal;
    const stress = bentBy(design, family, friction);
    if (stress === undefined)
      return told('fail', `at friction ${friction} the screw locks in the follower: take a finer lead`);
    const fails = !keeps(stress, limits.of(own).pass);
    if (duty.temperature === undefined && !fails) return notJudged('duty.temperature');
    const most = isDry ? (bentBy(design, family, DRY_PRINT_MOST) ?? 1e9) : stress;
    const reached = isDry ? `; ${DRY_PRINT_WORDS}` : '';
    const cure =
      most > max
        ? `; ${plain((springForceOf(family) * max) / most, 1)} N of spring are borne: a softer or shorter one, a wider one${isDry ? ', grease' : ''}, or a stronger plastic`
        : '';
    return valued(
      { least: stress, likely: stress, most },
      `${worked(stress, 'MPa')} MPa where the screw turns the follower under ${plain(springForceOf(family), 1)} N at friction ${friction}, of ${worked(max, 'MPa')} MPa across the layers again and again at ${plain(temperature, 0)} °C${reached}${cure}`,
      own,
    );
  },
};

/** Stress at the foot of a key; undefined where the screw locks. */
function bentBy({ screw, finished }: NutDesign, family: AntiBacklash, friction: number): number | undefined {
  const thread = {
    lead: finished.lead,
    meanDiameter: screw.pitchDiameter.likely,
    flankAngle: screw.flankAngle,
    friction,
  };
  if (!canBeRaised(thread)) return undefined;
  const { inner, outer, width } = family.tongue;
  const force = raisingTorque({ ...thread, axialForce: springForceOf(family) }) / (inner + outer);
  return keyStress({ force, arm: family.spring.working + KEY_GRIP / 2, length: outer - inner, width });
}
