import { type Check, hard, type LimitsInForce, notJudged, type Outcome, soft, valued } from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { type AskedStress, standingDuration } from '../../../mechanics/strength/allowable.js';
import { momentHeatShare } from '../../../mechanics/strength/heat-shares.js';
import { threadPressure } from '../../../mechanics/thread/bearing-pressure.js';
import { threadBending } from '../../../mechanics/thread/bending.js';
import { threadShear } from '../../../mechanics/thread/shear.js';
import { plain, worked } from '../../../units/format.js';
import { scaled } from '../../../units/measured.js';
import { stallForce } from '../../common/stall-force.js';
import { PRINTED_SURFACE, toothBears } from '../../common/teeth.js';
import { askingFor } from '../../common/untold.js';
import type { NutDesign } from '../dimensions.js';
import { longer, rubbedHardest, type TeethFormula, worstTeeth } from '../engagement.js';
import { teethHeat, UNTOLD_RESTS } from '../warmth.js';

type NutCheck = Check<NutDesign>;
const strength = { group: 'strength', question: 'holds', unit: 'MPa', source: 'common practice' } as const;
/** What makes teeth warm. */
const HEATED_BY = 'duty.temperature, duty.feed, duty.grease, duty.on_time, duty.cycle';
const TEETH = { ...strength, moves: `duty.load, ${HEATED_BY}, body.length, material`, grave: true } as const;

/** A flank that is pressed too hard wears and flows while it moves. */
export const threadPressureCheck: NutCheck = askingFor(UNTOLD_RESTS, {
  ...strength,
  id: 'thread-pressure',
  title: 'Pressure on the flanks',
  moves: `duty.load, ${HEATED_BY}, body.length, material`,
  run: (design, limits) => {
    const { duty, material } = design;
    if (duty.load === undefined) return notJudged('duty.load');
    const { name, value } = rubbedHardest(design, duty.load);
    const { at, words } = teethHeat(design);
    const warm = momentHeatShare(material, at);
    const usual = warm * PRINTED_SURFACE * material.pressureLimit;
    const cap = Math.max(usual, Math.min(3 * usual, warm * material.pressureCap));
    const own = soft({ max: usual }, { max: cap });
    const { pass, fail } = limits.of(own);
    if (duty.temperature === undefined && keeps(value.likely, fail!)) return notJudged('duty.temperature');
    const cure = keeps(value.likely, pass) ? '' : `; ${longer(design)}, another material or less load`;
    return valued(
      value,
      `${worked(value.likely, 'MPa')} MPa${name}; a printed flank of ${material.name} bears ${worked(pass.max!, 'MPa')} MPa in motion ${words}, and never above ${worked(fail!.max!, 'MPa')}${cure}`,
      own,
    );
  },
});

/** Teeth that shear off at their root. */
export const threadShearCheck: NutCheck = askingFor(UNTOLD_RESTS, {
  ...TEETH,
  id: 'thread-shear',
  title: 'Shear at the root of the teeth',
  run: (design, limits) => judgeStanding(design, limits, { kind: 'shear', formula: threadShear }),
});

/** Teeth that bend off. */
export const threadBendingCheck: NutCheck = askingFor(UNTOLD_RESTS, {
  ...TEETH,
  id: 'thread-bending',
  title: 'Bending at the root of the teeth',
  run: (design, limits) => judgeStanding(design, limits, { kind: 'tension', formula: threadBending }),
});

/** A pressure that never lets go makes plastic flow. */
export const creepCheck: NutCheck = askingFor(UNTOLD_RESTS, {
  ...TEETH,
  id: 'creep',
  title: 'Pressure that stands on the flanks',
  run: (design, limits) => judgeStanding(design, limits, { kind: 'pressure', formula: threadPressure }),
});

/** A stress under the load that stands, against what the plastic bears so long and so warm. */
function judgeStanding(
  design: NutDesign,
  limits: LimitsInForce,
  { kind, formula }: { readonly kind: AskedStress['kind']; readonly formula: TeethFormula },
): Outcome {
  const { duty, material } = design;
  if (duty.load === undefined) return notJudged('duty.load');
  const { name, value } = worstTeeth(design, duty.load, formula);
  const duration = standingDuration(duty.axis);
  const { at, words } = teethHeat(design);
  const own = hard({ max: toothBears(material, { kind, duration, temperature: at }) });
  const { pass } = limits.of(own);
  const fails = !keeps(value.likely, pass);
  if (duty.temperature === undefined && !fails) return notJudged('duty.temperature');
  const time = duration === 'years' ? 'for years' : 'for 1,000 hours back and forth';
  const cure = fails ? `; ${longer(design)}, a stronger material, less load or less heat` : '';
  return valued(
    value,
    `${worked(value.likely, 'MPa')} MPa${name} of ${worked(pass.max!, 'MPa')} MPa that ${material.name} bears ${time} ${words}${cure}`,
    own,
  );
}

/** A motor that runs against a stop pushes with all that it has. */
export const threadStallCheck: NutCheck = askingFor(UNTOLD_RESTS, {
  ...TEETH,
  id: 'thread-stall',
  title: 'Teeth at the stall force of the motor',
  unit: '',
  limits: hard({ max: 1 }),
  moves: `duty.motor.torque, ${HEATED_BY}, body.length, material`,
  run: (design, { pass }) => {
    const { duty, material } = design;
    if (duty.motor?.torque === undefined)
      return notJudged(duty.motor === undefined ? 'duty.motor' : 'duty.motor.torque');
    const force = stallForce(design)!;
    const { at, warmed } = teethHeat(design);
    const rows = STALLED.map(({ kind, formula, what }) => {
      const most = toothBears(material, { kind, duration: 'moment', temperature: at });
      const { value } = worstTeeth(design, force, formula);
      return { what, most, value, share: scaled(value, 1 / most) };
    });
    const worst = rows.reduce((a, b) => (b.share.likely > a.share.likely ? b : a));
    const fails = !keeps(worst.share.likely, pass);
    if (duty.temperature === undefined && !fails) return notJudged('duty.temperature');
    const crash = worst.share.likely > 0.5 ? '; a crash into an end doubles it: fit end stops that stop the motor' : '';
    const cure = fails ? `; ${longer(design)}, a stronger material, less heat or less motor current` : crash;
    return valued(
      worst.share,
      `${worked(worst.value.likely, 'MPa')} MPa of ${worst.what}, of ${worked(worst.most, 'MPa')} MPa for a moment at ${plain(at, 0)} °C; stalled on a ${duty.grease === 'dry' ? 'dry' : 'greased'} screw the motor pushes with ${plain(force, 0)} N${warmed}${cure}`,
    );
  },
});

const STALLED: readonly { kind: AskedStress['kind']; formula: TeethFormula; what: string }[] = [
  { kind: 'pressure', formula: threadPressure, what: 'pressure' },
  { kind: 'shear', formula: threadShear, what: 'shear' },
  { kind: 'tension', formula: threadBending, what: 'bending' },
];
