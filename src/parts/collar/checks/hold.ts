import { type Check, hard, notJudged, told, valued } from '../../../judge/check.js';
import { judge, keeps } from '../../../judge/judge.js';
import { isReplaced } from '../../../judge/limits-in-force.js';
import { type AskedStress, allowableStress, standingDuration } from '../../../mechanics/strength/allowable.js';
import type { LoadDuration } from '../../../mechanics/strength/plastic.js';
import { threadPressure } from '../../../mechanics/thread/bearing-pressure.js';
import { threadBending } from '../../../mechanics/thread/bending.js';
import { threadShear } from '../../../mechanics/thread/shear.js';
import { plain } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { loosePullOf, pullAsked, pullCures, pullOf } from '../../common/axial-grip.js';
import { BOTH_WAYS, judgeBothWays, otherWay } from '../../common/both-ways.js';
import { gripOfHeld } from '../../common/held.js';
import { usedShare } from '../../common/load-cases.js';
import { teethOf, toothBears } from '../../common/teeth.js';
import type { CollarDesign } from '../dimensions.js';
import { heldIn } from '../held-in.js';
import { pinPressure, slippingTorque, unscrewingTorque } from '../pin.js';
import { boreEnd } from '../plan.js';
import { untoldOf } from '../untold.js';

type CollarCheck = Check<CollarDesign>;
const hold = { group: 'grip', question: 'holds', source: 'common practice', grave: true } as const;
const LOAD = 'mounting, duty.load, duty.upward, duty.span';

/**
 * What a friction collar holds at the end of its life, by the law of hubs [N]. That is never more than half of what an ideal
 * clamp does, π·µ·S of screws with the force S: a test holds it.
 */
export function frictionHold(design: CollarDesign): number {
  const view = heldIn(design);
  const [one] = view.held;
  return pullOf(gripOfHeld(one!, view), one!, view);
}

/** Whether a screw that nobody measured slips where it is as thin as it may be. */
function slipsThin(design: CollarDesign, needed: number): boolean {
  const view = heldIn(design);
  return (loosePullOf(view.held[0]!, view) ?? Infinity) < needed;
}

/** What is clamped by friction creeps along. */
export const axialGrip: CollarCheck = {
  ...hold,
  id: 'axial-grip',
  title: 'Axial pull held by friction',
  unit: 'N',
  source: 'derived: relaxation of held strains',
  moves: `${LOAD}, motor.torque, hold.clamp, hold.degreased, retighten, material, backed_by`,
  run: (design, inForce) => {
    if (design.finished.thread) return undefined;
    const pull = frictionHold(design);
    if (design.isBacked)
      return valued(exactly(pull), 'the metal collar behind it carries what pulls along the screw', hard({ min: 0 }));
    const asked = pullAsked(design.axial);
    const jam = design.jam ?? 0;
    const own = { pass: { min: Math.max(asked.needed, jam) }, fail: { min: asked.needed } };
    const limits = inForce.of(own);
    const verdict = judge(exactly(pull), limits);
    const wanted = limits.fail?.min ?? asked.needed;
    const thin = slipsThin(design, wanted);
    const missing = [...untoldOf(design), ...(thin ? ['screw.major'] : [])];
    if (verdict !== 'fail' && missing.length > 0) return notJudged(...missing);
    const jams = verdict === 'caution' ? `; it slips when the axis jams, under ${plain(jam, 0)} N` : '';
    const cure = verdict === 'pass' ? '' : cureWords(design);
    return valued(
      exactly(pull),
      `${plain(pull, 0)} N are left, ${plain(wanted, 0)} N are asked${isReplaced(own.pass, limits.pass) ? ' by the sheet' : `: 2 × ${asked.words}`}${jams}${cure}`,
      own,
    );
  },
};

/** What would hold more, of what is not there already. */
function cureWords(design: CollarDesign): string {
  const thread = design.screw && design.shaft.crests ? ['the screw’s own thread (bore: thread)'] : [];
  return `; use ${[...pullCures(design.grip, 'hold', design), ...thread].join(', ')} or a metal collar (backed_by: metal-collar)`;
}

/** A standing screw falls when its collar creeps, so friction alone never holds it. */
export const frictionAlone: CollarCheck = {
  ...hold,
  id: 'friction-alone',
  title: 'What keeps a standing screw from sinking through its collar',
  unit: '',
  moves: 'mounting, bore, pin, backed_by',
  run: ({ axial: { mounting }, finished: { thread, pin }, isBacked, screw }) => {
    if (mounting === 'horizontal') return told('pass', 'a level screw does not sink');
    if (isBacked) return told('pass', 'a metal collar behind it');
    if (thread && pin) return told('pass', 'the flanks of its thread; the pin keeps it from turning off');
    if (mounting === undefined) return notJudged('mounting');
    return told(
      'fail',
      thread
        ? 'the clamp alone keeps the thread from turning off, and plastic gives: put a pin through it (pin: 2 mm), or a metal collar behind it (backed_by: metal-collar)'
        : `friction in plastic alone, which gives over the years: ${screw ? 'cut the screw’s own thread (bore: thread) and put a pin through it (pin: 2 mm), or ' : ''}put a metal collar behind it (backed_by: metal-collar)`,
    );
  },
};

const TEETH = [
  { kind: 'shear', formula: threadShear, what: 'shear of the teeth' },
  { kind: 'tension', formula: threadBending, what: 'bending of the teeth' },
  { kind: 'pressure', formula: threadPressure, what: 'pressure on the flanks' },
] as const;

/** Teeth that carry the screw, for years and when the axis jams. */
export const threadHold: CollarCheck = {
  ...hold,
  id: 'thread-hold',
  title: 'Stress in the thread, as a share of what it bears',
  unit: '',
  source: 'derived: strength by duration and heat',
  moves: `${LOAD}, motor.torque, duty.temperature, length, material`,
  limits: hard({ max: 1 }),
  run: (design, { pass }) => {
    if (!design.finished.thread || !design.screw) return undefined;
    if (design.isBacked) return valued(exactly(0), 'none: the metal collar behind it carries what pulls');
    const asked = pullAsked(design.axial);
    const standing = standingDuration(design.axial.mounting === 'horizontal' ? 'horizontal' : 'vertical');
    const rows = [
      ...teethShares(design, asked.needed / 2, standing),
      ...(design.jam === undefined ? [] : teethShares(design, design.jam, 'moment')),
    ];
    const worst = rows.reduce((a, b) => (b.share > a.share ? b : a));
    const missing = untoldOf(design);
    const holds = keeps(worst.share, pass);
    if (holds && missing.length > 0) return notJudged(...missing);
    const cure = holds ? '' : '; a longer collar, a stronger material, or less heat';
    return valued(exactly(worst.share), `${worst.words}${cure}`);
  },
};

function teethShares(design: CollarDesign, force: number, duration: LoadDuration) {
  const { finished, screw, material, temperature } = design;
  const { tooth, leadIn } = finished.thread!;
  // the slit takes its part of every turn
  const cut = 1 - ((finished.halves ? 2 : 1) * finished.slit) / (Math.PI * tooth.pitchDiameter);
  const teeth = teethOf(
    { thread: tooth, screw: screw! },
    { length: boreEnd(finished), leadIn },
    Math.min(screw!.major.least, screw!.inHand.major.least),
  );
  const loaded = { ...teeth, engagedLength: cut * teeth.engagedLength, axialForce: force };
  const when = duration === 'moment' ? 'for a moment, the axis jammed' : 'standing';
  return TEETH.map(({ kind, formula, what }) => {
    const stress = formula(loaded);
    const bears = toothBears(material, { kind, duration, temperature: temperature.at } satisfies AskedStress);
    return {
      share: usedShare(stress, bears),
      words: `${what} ${plain(stress, 2)} MPa of ${plain(bears, 2)} MPa under ${plain(force, 0)} N ${when}`,
    };
  });
}

/** The pin keeps the thread from turning off under the load. */
export const pinHold: CollarCheck = {
  ...hold,
  id: 'pin-hold',
  title: 'Pressure of the pin',
  unit: 'MPa',
  source: 'derived: strength by duration and heat',
  moves: `${LOAD}, motor.torque, pin, outside_diameter, material`,
  run: (design, inForce) => {
    const { finished, screw, axial, material, temperature, isBacked, jam = 0 } = design;
    const { pin } = finished;
    if (!pin || !screw) return undefined;
    if (isBacked) return valued(exactly(0), 'none: the metal collar behind it carries what pulls', hard({ max: 1 }));
    const asked = pullAsked(axial);
    const standing = standingDuration(axial.mounting === 'horizontal' ? 'horizontal' : 'vertical');
    const bears = (duration: LoadDuration) =>
      allowableStress(material, { kind: 'pressure', duration, temperature: temperature.at });
    const rows = [
      { force: asked.needed / 2, bears: bears(standing), when: '' },
      { force: jam, bears: bears('moment'), when: ' for a moment, the axis jammed' },
    ].map((row) => {
      const torque = unscrewingTorque(design, row.force);
      return { ...row, torque, pressure: pinPressure({ ...finished, pin }, torque) };
    });
    const worst = rows.reduce((a, b) => (b.pressure * a.bears > a.pressure * b.bears ? b : a));
    const own = hard({ max: worst.bears });
    const { pass } = inForce.of(own);
    const holds = keeps(worst.pressure, pass);
    const missing = untoldOf(design);
    if (holds && missing.length > 0) return notJudged(...missing);
    const cure = holds ? '' : '; a thicker pin, a wider collar, or a thrust bearing under it';
    return valued(
      exactly(worst.pressure),
      `${plain(worst.pressure, 2)} MPa by ${plain(worst.torque, 0)} N·mm that turn it off${worst.when}, no friction counted; it bears ${plain(pass.max ?? 0, 1)} MPa${cure}`,
      own,
    );
  },
};

/** A thrust bearing carries one way: what pushes the screw the other way takes a second one. */
export const bothWays: CollarCheck = {
  ...hold,
  ...BOTH_WAYS,
  id: 'both-ways',
  run: ({ axial, bearing, isPaired }) => {
    const pushed = otherWay(axial);
    return bearing && pushed ? judgeBothWays(pushed, isPaired) : undefined;
  },
};

/** A level collar without a pin turns off along its own thread unless its clamp holds that, after years of giving. */
export const turnGrip: CollarCheck = {
  ...hold,
  id: 'turn-grip',
  title: 'Torque of the clamp that keeps it from turning off',
  unit: 'N·mm',
  source: 'derived: relaxation of held strains',
  moves: `${LOAD}, motor.torque, pin, hold.clamp, hold.degreased, retighten, material`,
  run: (design, inForce) => {
    const { finished, axial, isBacked, jam = 0, retighten } = design;
    if (!finished.thread || finished.pin || isBacked || axial.mounting !== 'horizontal') return undefined;
    const view = heldIn(design);
    const { clamp } = gripOfHeld(view.held[0]!, view);
    const torque = clamp ? (retighten ? clamp.again : clamp.hot) : 0;
    const needed = slippingTorque(design, pullAsked(axial).needed);
    const jams = slippingTorque(design, jam);
    const own = { pass: { min: Math.max(needed, jams) }, fail: { min: needed } };
    const verdict = judge(exactly(torque), inForce.of(own));
    const missing = untoldOf(design);
    if (verdict !== 'fail' && missing.length > 0) return notJudged(...missing);
    const turns = verdict === 'caution' ? `; when the axis jams, ${plain(jams, 0)} N·mm turn it` : '';
    const cure =
      verdict === 'pass'
        ? ''
        : `; put a pin through it (pin), or use ${pullCures(design.grip, 'hold', design).join(', ')}`;
    return valued(
      exactly(torque),
      `the clamp holds ${plain(torque, 0)} N·mm; twice its load turns it with ${plain(needed, 0)}${turns}${cure}`,
      own,
    );
  },
};
