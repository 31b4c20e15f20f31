import { type Check, hard, type Limits, notJudged, soft, told, valued } from '../../judge/check.js';
import { judge } from '../../judge/judge.js';
import { isReplaced } from '../../judge/limits-in-force.js';
import { dryFriction } from '../../mechanics/friction.js';
import { closingStrain } from '../../mechanics/shaft/ring-closing.js';
import { allowableStress, pressureWhileTightening } from '../../mechanics/strength/allowable.js';
import { BEDDED } from '../../mechanics/strength/relaxation.js';
import { stiffnessShare } from '../../mechanics/strength/stiffness.js';
import { plain } from '../../units/format.js';
import { exactly } from '../../units/measured.js';
import { clampWords } from './choose-clamp.js';
import { type ClampRing, greatestPressing, isOver } from './clamp-ring.js';
import { formPressure, formTorque, type GripTorque, gripOf, seatPressure } from './grip.js';
import { gripCure, hopelessWords } from './grip-cure.js';
import { gripLimits } from './grip-demand.js';
import { gripOfHeld, type Held, type HeldView, lifeOf, loosePlaceOf, placeOf, sectionOf, weakGrip } from './held.js';
import { CREST_SHARE } from './hold-figures.js';
import { othersToo } from './others-too.js';

type HeldCheck = Check<HeldView>;
const grip = { group: 'grip', question: 'holds', source: 'common practice' } as const;

/** A body that slips on its shaft. */
const gripTorque: HeldCheck = {
  ...grip,
  id: 'grip-torque',
  title: 'Torque of the weaker grip',
  unit: 'N·mm',
  source: 'derived: relaxation of held strains',
  moves: 'motor.torque, duty.load, material, retighten',
  run: (view, inForce) => {
    const own = gripLimits(view.demand);
    const limits = inForce.of(own);
    const rows = view.held.map((one) => ({ one, held: gripOfHeld(one, view) }));
    const { one, held } = rows.reduce((a, b) => (b.held.holds < a.held.holds ? b : a));
    const verdict = judge(exactly(held.holds), limits);
    const untold = [
      ...(view.held.every(({ temperature }) => temperature.known) ? [] : ['duty.temperature']),
      ...(view.held.some((one) => slipsThin(one, view, limits)) ? ['screw.major'] : []),
    ];
    if (verdict !== 'fail' && untold.length > 0) return notJudged(...untold);
    const cure = verdict === 'pass' ? '' : cureWords(one, view, verdict === 'fail' ? limits : { pass: limits.pass });
    const others = rows.filter((row) => row.one !== one && judge(exactly(row.held.holds), limits) !== 'pass');
    const too = othersToo(others.map((row) => `${row.one.name} with ${plain(row.held.holds, 0)} N·mm`));
    const words = `${demandWords(view, verdict, limits, isReplaced(own.pass, limits.pass))}${too}; ${gripWords(one, held, view)}${cure}`;
    return valued(exactly(held.holds), words, own);
  },
};

/** Whether a screw that nobody measured slips where it is as thin as it may be. */
function slipsThin(one: Held, view: HeldView, limits: Limits): boolean {
  const place = loosePlaceOf(one, view);
  return place !== undefined && judge(exactly(gripOf(one.grip, place, lifeOf(one, view)).holds), limits) === 'fail';
}

/** What is asked, the finding first. */
function demandWords(
  { demand: { working, words, falls } }: HeldView,
  verdict: ReturnType<typeof judge>,
  { pass, fail }: Limits,
  bySheet: boolean,
): string {
  const [least, enough] = [fail?.min ?? 0, pass.min ?? 0].map((torque) => `${plain(torque, 0)} N·mm`);
  const jam = bySheet ? 'as the sheet asks' : "1.5 × the motor's";
  if (verdict === 'pass') return `more than ${enough}, ${jam}`;
  if (verdict === 'caution')
    return `slips when jammed, below ${enough}, ${jam}; in work up to ${plain(working, 0)} N·mm (${words})`;
  if (falls) return `slips, and the axis falls: ${least}, ${jam}, is not reached`;
  const most = bySheet ? `as the sheet asks; in work up to ${plain(working, 0)} N·mm` : '1.3 × the greatest in work';
  return `slips, since ${least}, ${most} (${words}), is not reached`;
}

/** What one grip holds over its life. */
function gripWords(one: Held, { clamp, form, setScrew, holds, by, preload }: GripTorque, view: HeldView): string {
  const { clamp: screws } = one.grip;
  const formName = one.shaft.key ? 'key' : 'flat';
  const figures = [
    ...(clamp && screws
      ? [
          `${clampWords(screws)} at ${plain(preload, 0)} N${countWords(one, view)}: first day ${plain(clamp.firstDay, 0)}, at the end cold ${plain(clamp.cold, 0)}, hot ${plain(clamp.hot, 0)}, retightened once ${plain(clamp.again, 0)}`,
        ]
      : []),
    ...(form > 0 ? [`${formName} by itself ${plain(form, 0)}`] : []),
    ...(setScrew > 0 ? [`set screw ${plain(setScrew, 0)}`] : []),
  ];
  const carries = { clamp: 'clamp', form: formName, 'set screw': 'set screw' }[by];
  return `the ${one.name} holds ${plain(holds, 0)} N·mm by its ${carries} after five years at ${plain(one.temperature.at, 0)} °C and friction ${plain(one.grip.friction, 2)} (${figures.join('; ')})`;
}

/** How many screws close the hub on its shaft: those too near to the web only bend that, those beyond its end press on air. */
function countWords(one: Held, view: HeldView): string {
  const { count } = one.grip.clamp!;
  const counted = placeOf(one, view).ring?.counted ?? 0;
  if (counted === count) return '';
  const few = counted === 0 ? 'none' : 'one';
  const { heights, hole } = one.clamp!;
  return heights.every((height) => isOver({ height, hole }, one.engagement))
    ? `, ${few} of them far enough from the slit's end to close it`
    : `, ${few} of them over the shaft, which reaches in ${plain(one.engagement, 1)} mm`;
}

/** The least to do that brings it out of failing, or that brings it to pass; a plastic that heat spares. */
function cureWords(one: Held, view: HeldView, { pass, fail }: Limits): string {
  const weak = weakGrip(one, view);
  const cure = gripCure(weak, (fail ?? pass).min ?? 0) ?? (fail && hopelessWords(weak));
  const stiff = stiffnessShare(view.material, one.temperature.at);
  const heat =
    stiff < 0.6 ? `; ${view.material.name} keeps ${plain(100 * stiff, 0)} % of its stiffness so hot, PC far more` : '';
  return cure === undefined ? heat : `; ${cure}${heat}`;
}

/** A flat or a key that is crushed: by the work that it carries, or by a jam after the clamp has slipped. */
const flatPressure: HeldCheck = {
  ...grip,
  id: 'flat-pressure',
  title: 'Pressure of a flat or key',
  unit: 'MPa',
  source: 'derived: strength by duration and heat',
  moves: 'motor.torque, duty.load, duty.reversing, material',
  run: (view, inForce) => {
    if (!view.held.some((one) => formTorque(placeOf(one, view), 1) > 0)) return undefined;
    const rows = view.held.flatMap((one) => formLoads(one, view));
    if (rows.length === 0) return told('pass', 'none: friction holds more than the motor gives', 0);
    const { one, pressure, bears, inWork } = rows.reduce((a, b) =>
      b.pressure * a.bears > a.pressure * b.bears ? b : a,
    );
    const own = hard({ max: bears });
    const limits = inForce.of(own);
    const verdict = judge(exactly(pressure), limits);
    if (verdict === 'pass' && view.held.some(({ temperature }) => !temperature.known))
      return notJudged('duty.temperature');
    const cure = verdict === 'pass' ? '' : formCure(one, view, inWork);
    const most = limits.pass.max ?? bears;
    const others = rows.filter((row) => row.one !== one && row.pressure * bears > row.bears * most);
    const too = othersToo([...new Set(others.map((row) => row.one.name))]);
    const when = inWork ? 'in work' : `when the ${one.grip.clamp ? 'clamp' : 'set screw'} slips in a jam`;
    const words = `${plain(pressure, 1)} MPa ${when} in the ${one.name}, which bears ${plain(most, 1)} MPa${too}${cure}`;
    return valued(exactly(pressure), words, own);
  },
};

/** What spares a flat or key: a clamp that holds what the motor gives, told where there is one. */
function formCure(one: Held, view: HeldView, inWork: boolean): string {
  const weak = weakGrip(one, view);
  const stronger = inWork ? undefined : gripCure(weak, view.demand.motor);
  if (stronger !== undefined) return `; ${stronger}: that spares it, as a longer hub or less heat does`;
  return inWork
    ? '; a clamp that holds by itself, a longer hub or less heat spares it'
    : `; a longer hub or less heat spares it; ${hopelessWords(weak)}`;
}

interface FormLoad {
  readonly one: Held;
  readonly pressure: number;
  readonly bears: number;
  readonly inWork: boolean;
}

/** What a flat or key goes through: all work where it carries, and the motor's torque where friction slips before. */
function formLoads(one: Held, view: HeldView): FormLoad[] {
  const { demand, material } = view;
  const perPressure = formTorque(placeOf(one, view), 1);
  if (perPressure === 0) return [];
  const { by, friction } = gripOfHeld(one, view);
  const life = lifeOf(one, view);
  const moment = { kind: 'pressure', duration: 'moment', temperature: life.temperature } as const;
  return [
    ...(by === 'form'
      ? [{ one, pressure: demand.working / perPressure, bears: formPressure(life), inWork: true }]
      : []),
    ...(friction < demand.motor
      ? [{ one, pressure: demand.motor / perPressure, bears: allowableStress(material, moment), inWork: false }]
      : []),
  ];
}

/** A screw that is tightened into the plastic. */
const clampPressure: HeldCheck = {
  ...grip,
  id: 'clamp-pressure',
  title: 'Pressure under the screw heads',
  unit: 'MPa',
  moves: 'HOLD.tightening, HOLD.clamp.washers, material',
  run: ({ held, material }, inForce) => {
    const pressures = held.flatMap(({ grip: { clamp, tightening } }) =>
      clamp && tightening !== undefined ? [seatPressure(clamp, tightening)] : [],
    );
    if (pressures.length === 0) return undefined;
    const pressure = Math.max(...pressures);
    const own = hard({ max: pressureWhileTightening(material) });
    const allowed = inForce.of(own).pass.max ?? Infinity;
    const cure = pressure > allowed ? '; it sinks in: tighten less, or use washers' : '';
    return valued(exactly(pressure), `${plain(pressure, 1)} MPa of ${plain(allowed, 1)} MPa${cure}`, own);
  },
};

/** A hub that is bent too far when it closes on its shaft crazes at its back. */
const closing: HeldCheck = {
  ...grip,
  id: 'closing-strain',
  title: 'Strain of the closing hub',
  unit: '',
  source: 'derived: bending of a slit ring',
  limits: hard({ max: 1 }),
  moves: 'HOLD.bore_clearance, OUTSIDE, material',
  run: (view, { pass: { max = 1 } }) => {
    const rows = view.held.flatMap((one) => {
      const { ring, play } = placeOf(one, view);
      const loose = loosePlaceOf(one, view)?.play ?? play;
      return ring && !ring.halves ? [{ one, play, strain: strainOf(ring, play), loose: strainOf(ring, loose) }] : [];
    });
    if (rows.length === 0) return undefined;
    const { one, play, strain } = rows.reduce((a, b) => (b.strain > a.strain ? b : a));
    const allowed = max * view.material.creep.strain;
    const others = rows.filter((row) => row.one !== one && row.strain > allowed);
    const too = othersToo(others.map((row) => row.one.name));
    if (strain <= allowed && rows.some(({ loose }) => loose > allowed)) return notJudged('screw.major');
    const cure =
      strain > allowed
        ? `; use ${view.closer ?? `a smaller ${sectionOf(one)}.bore_clearance`}, a thinner wall or a tougher plastic`
        : '';
    return valued(
      exactly(strain / view.material.creep.strain),
      `${plain(100 * strain, 2)} % in the ${one.name}, whose bore may be ${plain(play, 2)} mm wide of the shaft; ${view.material.name} takes ${plain(100 * allowed, 2)} %${too}${cure}`,
    );
  },
};

function strainOf(ring: ClampRing, play: number): number {
  return closingStrain({ ...ring, play: Math.max(0, play) });
}

/** A hub that holds a screw over its crests: little area, and grease. */
const crestGrip: HeldCheck = {
  ...grip,
  id: 'crest-grip',
  title: "Pressure on the screw's crests",
  unit: 'MPa',
  moves: 'screw, HOLD.degreased, HOLD.clamp',
  run: (view, inForce) => {
    const one = view.held.find(({ shaft, grip: { clamp } }) => shaft.crests && clamp);
    if (!one) return undefined;
    const place = placeOf(one, view);
    const { ring } = place;
    const { preload } = gripOfHeld(one, view);
    const force = greatestPressing(ring!, BEDDED * preload * ring!.counted);
    const pressure = force / (CREST_SHARE * place.engagement * one.shaft.diameter.likely);
    const own = soft({ max: pressureWhileTightening(view.material) });
    const { max = Infinity } = inForce.of(own).pass;
    const turned = 'a turned end (turned_end) has all of it';
    const area = `the crests are 37 % of the bore, ${plain(pressure, 1)} MPa on them`;
    if (one.grip.friction < dryFriction(view.material))
      return told(
        'caution',
        `${area}, and grease leaves a friction of ${plain(one.grip.friction, 2)}: wash it off and say ${sectionOf(one)}.degreased: yes; ${turned}`,
        pressure,
      );
    const over = pressure > max;
    const cure = over ? ` of ${plain(max, 1)} MPa: they sink in; ${turned}` : '';
    return valued(exactly(pressure), `${area}${cure}`, own);
  },
};

/**
 * A strong clamp on a thin or short shaft sinks its bore in.
 *
 *     p = N/(l·d), N pressing one half of the bore with the screws as they are tightened, l held and d of the shaft
 */
const borePressure: HeldCheck = {
  ...grip,
  id: 'bore-pressure',
  title: 'Pressure of a clamped bore on its shaft',
  unit: 'MPa',
  moves: 'HOLD.clamp, HOLD.tightening, motor.shaft, shaft',
  run: (view, inForce) => {
    const rows = view.held.flatMap((one) => {
      const place = placeOf(one, view);
      if (one.shaft.crests || !one.grip.clamp || !place.ring) return [];
      const force = greatestPressing(place.ring, BEDDED * gripOfHeld(one, view).preload * place.ring.counted);
      return [{ one, pressure: force / (place.engagement * one.shaft.diameter.likely) }];
    });
    if (rows.length === 0) return undefined;
    const { one, pressure } = rows.reduce((a, b) => (b.pressure > a.pressure ? b : a));
    const own = soft({ max: pressureWhileTightening(view.material) });
    const { max = Infinity } = inForce.of(own).pass;
    const untold = rows.flatMap((row) => row.one.shaft.lengthField ?? []);
    if (pressure <= max && untold.length > 0) return notJudged(...untold);
    const cure =
      pressure > max
        ? ` of ${plain(max, 1)} MPa: it sinks in; use a smaller ${sectionOf(one)}.tightening, or a shaft that reaches further in`
        : '';
    return valued(exactly(pressure), `${plain(pressure, 1)} MPa on the bore of the ${one.name}${cure}`, own);
  },
};

/** Checks of grips, whatever the part. */
export const GRIP_CHECKS: readonly HeldCheck[] = [
  gripTorque,
  flatPressure,
  clampPressure,
  closing,
  crestGrip,
  borePressure,
];
