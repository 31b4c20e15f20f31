import { type Bounds, type Check, hard, soft, told, valued } from '../../../judge/check.js';
import { allKeep, keeps } from '../../../judge/judge.js';
import { axialPlay } from '../../../mechanics/thread/nut-thread.js';
import { howMany, plain, upwards, worked } from '../../../units/format.js';
import { exactly, type Measured, plusMinus, sum } from '../../../units/measured.js';
import { onceFor } from '../../../units/once.js';
import { finerLayer, oneOf } from '../../common/finer-print.js';
import { FIT_CLASSES, type FitClass } from '../../common/fit-classes.js';
import type { NutDesign } from '../dimensions.js';
import { type FitFigures, fitFigures } from '../fit-figures.js';
import { flanksMeet } from '../flanks-meet.js';
import { lostByFloat } from '../float.js';
import { playTakenBySlit } from '../variants/slit-takes.js';
import { shiftOf } from '../variants/twin.js';
import { type BodyHeat, bodyHeat, warmer } from '../warmth.js';

type NutCheck = Check<NutDesign>;
const thread = { group: 'thread', question: 'goes-on', unit: 'mm', source: 'common practice' } as const;

/** A nut that is too small on the pitch line does not start. */
export const threadClearance: NutCheck = {
  ...thread,
  id: 'thread-clearance',
  title: 'Pitch-line clearance',
  limits: hard({ min: 0.15 }),
  moves: 'fit.diametral, printer.hole_offset, material.shrink.plane, screw.pitch_diameter',
  run: (design, limits) => {
    const { diametral } = fitFigures(design);
    const own = hard({ min: design.fit.name === 'close' ? 0.05 : 0.15 });
    const { pass } = limits.of(own);
    const { min = 0 } = pass;
    const cure = allKeep(diametral, pass)
      ? ''
      : `; a fit.diametral ${upwards(min - diametral.least)} mm larger gives it`;
    return valued(
      diametral,
      `${worked(diametral.likely, 'mm')} mm on the diameter between flanks; the nut starts from ${plain(min)} mm${cure}`,
      own,
    );
  },
};

/** How much friction warms a nut whose fit counts heat, K. */
function fitHeat(design: NutDesign): Pick<BodyHeat, 'likely' | 'most'> {
  return design.effects.temperature ? bodyHeat(design) : { likely: 0, most: 0 };
}

/** The fit of a nut as friction warms it. */
const warmFits = onceFor((design: NutDesign) => {
  const { likely, most } = fitHeat(design);
  return { likely: fitFigures(warmer(design, likely)), most: fitFigures(warmer(design, most)) };
});

/** A figure of the fit: what is likely in work, and the range from the air to the warmest that the nut may get. */
function inWork(design: NutDesign, figure: (fit: FitFigures) => Measured): Measured {
  const { likely, most } = warmFits(design);
  const all = [fitFigures(design), likely, most].map(figure);
  return {
    least: Math.min(...all.map((one) => one.least)),
    likely: figure(likely).likely,
    most: Math.max(...all.map((one) => one.most)),
  };
}

/** What one nut in forty is left with over its whole length, in work. */
const leftInWork = (design: NutDesign) => inWork(design, ({ axial }) => exactly(axial.least));

/** What friction does to a play, in words; empty where it does nothing. */
function warmedWords(design: NutDesign, { least }: Measured): string {
  const { most } = fitHeat(design);
  return warmer(design, most) === design
    ? ''
    : `; its own friction may warm it by up to ${plain(most, 0)} K, which leaves ${worked(least, 'mm')} mm`;
}

/** What keeps a nut cool that has its play in the air; empty where it has none there either. */
function coolCure(design: NutDesign, isCold: boolean): string {
  if (!isCold) return '';
  const grease = design.duty.grease === 'greased' ? '' : 'grease, ';
  return `${grease}a slower feed, less load or longer rests keep it cool; `;
}

/**
 * Play that is eaten by the pitch drifting over the engaged length: what one nut in forty is left with, between the air and the warmest that its own friction
 * may make it.
 *
 *     left = play − |drift of the pitch| − (α_p − α_s)·ΔT·L, ΔT by friction from 0 to f·F·v·s/(h·A), half of it likely; see `bodyHeat`
 */
export const threadPitchError: NutCheck = {
  ...thread,
  id: 'thread-pitch-error',
  question: 'turns',
  title: 'Least play left over the whole length',
  limits: hard({ min: 0.05 }),
  moves:
    'fit.axial, fit.diametral, family.shift, body.length, material.shrink.axial, screw.pitch_diameter, screw.wires, duty.temperature, duty.load, duty.feed, duty.on_time, duty.cycle, duty.grease',
  run: (design, { pass }) => {
    const { play, axial } = fitFigures(design);
    const left = leftInWork(design);
    const less = lessShift(design, pass.min! - left.least);
    const cool = coolCure(design, keeps(axial.least, pass));
    const cure = allKeep(left, pass) ? '' : `; ${cool}${less ? `${less} gives it` : tightCure(design, pass.min!)}`;
    return valued(
      left,
      `${rangeWords(play)} mm of play less the pitch error over ${plain(design.finished.length)} mm leaves ${rangeWords(axial)} mm in 19 of 20 nuts${warmedWords(design, left)}${cure}`,
    );
  },
};

/** A fresh print has the edges of its layers on: it may be tight where the run-in nut is not. */
export const threadRunningIn: NutCheck = {
  ...thread,
  id: 'thread-running-in',
  question: 'turns',
  title: 'Play fresh from the printer',
  limits: soft({ min: 0 }),
  moves:
    'printer.layer, fit.axial, family.shift, body.length, duty.temperature, duty.load, duty.feed, duty.on_time, duty.cycle, duty.grease',
  run: (design, { pass }) => {
    const { freshAxial, layers } = fitFigures(design);
    if (layers === 0) return undefined;
    const left = inWork(design, (fit) => fit.freshAxial);
    const cure = allKeep(left, pass)
      ? ''
      : oneOf(
          'run it in on the screw, dry, in short turns back and forth',
          finerLayer(design.printer, design.printer.layer),
          `take ${lessShift(design, pass.min! - left.least) ?? 'a larger fit.axial'}`,
        );
    return valued(
      left,
      `the edges of the layers take ${worked(layers, 'mm')} mm until the screw has worn them off; ${rangeWords(freshAxial)} mm are left over the whole length${warmedWords(design, left)}${cure}`,
    );
  },
};

/** What a twin nut's threads are to be set off less where that gives the play that lacks; undefined where it does not. */
function lessShift(design: NutDesign, lack: number): string | undefined {
  return lack <= shiftOf(design) ? `a family.shift ${upwards(lack)} mm smaller` : undefined;
}

/** What frees a nut that may be too tight: the size that was not read, or the fit that is enough without it. */
function tightCure(design: NutDesign, wanted: number): string {
  const { inHand } = design.screw;
  const isEnough = (fit: FitClass) => leftInWork(withFit(design, fit)).least >= wanted;
  const named = Object.entries(FIT_CLASSES).find(([, fit]) => isEnough(fit));
  const enough = named ? `fit: ${named[0]} is enough` : ownFit(design, isEnough);
  if (!inHand.level.includes('pitchDiameter')) return `a shorter nut or a larger fit.axial leaves more: ${enough}`;
  const { pitchDiameter, crest } = inHand;
  // limits of a standard, as they stand there
  const range = `${plain(pitchDiameter.least + crest.least)} to ${plain(pitchDiameter.most + crest.most)}`;
  return `measure the pitch diameter (screw.pitch_diameter, or screw.wires): unmeasured it may be ${range} mm; without it ${enough}`;
}

/** Clearances that are enough where no class is. */
function ownFit(design: NutDesign, isEnough: (fit: FitClass) => boolean): string {
  const { fit } = design;
  const diametral = Math.max(fit.diametral, FIT_CLASSES.loose.diametral);
  const steps = Array.from({ length: 40 }, (_, i) => Math.round(100 * (fit.axial + 0.05 * (i + 1))) / 100);
  const cut = (axial: number) => withFit(design, { diametral, axial }).finished.thread;
  const whole = steps.filter((step) => flanksMeet(cut(step)) === undefined);
  const axial = firstOf(whole, (step) => isEnough({ diametral, axial: step }));
  return axial === undefined
    ? 'no clearance is enough at this length'
    : `fit: {diametral: ${plain(diametral)}, axial: ${plain(axial)}} is enough`;
}

/** The first of rising steps that is enough, where all after it are; by halves. */
function firstOf(steps: readonly number[], isEnough: (step: number) => boolean): number | undefined {
  if (steps.length === 0) return undefined;
  const middle = Math.floor(steps.length / 2);
  const step = steps[middle]!;
  return isEnough(step)
    ? (firstOf(steps.slice(0, middle), isEnough) ?? step)
    : firstOf(steps.slice(middle + 1), isEnough);
}

/** The same nut cut for another fit. */
function withFit(design: NutDesign, { diametral, axial }: FitClass): NutDesign {
  const { fit, finished } = design;
  const wider = diametral - fit.diametral;
  const { minor, pitchDiameter, major, grooveWidth } = finished.thread;
  const cut = {
    ...finished.thread,
    minor: minor + wider,
    pitchDiameter: pitchDiameter + wider,
    major: major + wider,
    grooveWidth: grooveWidth + axial - fit.axial,
  };
  return { ...design, fit: { name: 'own', diametral, axial }, finished: { ...finished, thread: cut } };
}

function rangeWords({ least, most }: Pick<Measured, 'least' | 'most'>): string {
  return `${worked(least, 'mm')} to ${worked(most, 'mm')}`;
}

/** A trapezoid is hardly freed by opening its diameter. */
export const threadAxial: NutCheck = {
  ...thread,
  id: 'thread-axial',
  question: 'turns',
  title: 'Axial play over both flanks',
  limits: soft({ min: 0.1 }),
  moves: 'fit.axial, fit.diametral, family.shift',
  run: (design, { pass }) => {
    const { play } = fitFigures(design);
    const fromDiameter = axialPlay({
      diametralClearance: design.fit.diametral,
      axialClearance: 0,
      flankAngle: design.screw.flankAngle,
    });
    const lack = pass.min! - play.least;
    const more = lessShift(design, lack) ?? `a fit.axial ${upwards(lack)} mm larger`;
    const shift = shiftOf(design);
    const taken = shift > 0 ? `, and family.shift takes ${plain(shift)} mm` : '';
    const cure = allKeep(play, pass) ? '' : `; ${more} gives it`;
    return valued(
      play,
      `${worked(play.likely, 'mm')} mm in all, of which the diameter gives only ${worked(fromDiameter, 'mm')} mm${taken}${cure}`,
    );
  },
};

/** Lost motion at reversal. */
export const threadBacklash: NutCheck = {
  ...thread,
  id: 'thread-backlash',
  question: 'turns',
  title: 'Lost motion at reversal',
  limits: soft({ max: 0.3 }),
  moves: 'fit.axial, fit.diametral, float',
  run: (design, limits) => {
    const lost = lostByFloat(design);
    const taken = playTakenBySlit(design);
    const play = sum(lessTaken(fitFigures(design).play, taken), lost);
    const floats = lost.likely > 0 ? `, ${worked(lost.likely, 'mm')} mm of it by its float` : '';
    const slit =
      taken > 0 ? `, ${worked(taken, 'mm')} mm less with its slit closed as far as it goes and its back bears` : '';
    const { axis } = design.duty;
    const own = axis === 'vertical' ? 0.3 : 0.1;
    const { pass } = limits.of(soft({ max: own }));
    const { max: most = own } = pass;
    const cure = allKeep(play, pass)
      ? ''
      : lost.likely > 0
        ? '; a smaller fit.axial, float.along or float.sideways takes some of it out'
        : '; a smaller fit.axial, or a spring (family.kind: anti-backlash) takes it out';
    const usual = {
      vertical: 'is usual where weight holds one flank',
      horizontal: 'is usual where the load reverses',
      untold: 'is usual where the load reverses, as taken since duty.axis is missing',
    }[axis ?? 'untold'];
    return valued(
      play,
      `${worked(play.likely, 'mm')} mm of lost motion${floats}${slit}; up to ${plain(most)} mm ${most === own ? usual : 'is allowed by the sheet'}${cure}`,
      soft({ max: own }),
    );
  },
};

/** What is left of a play of which something is taken out; none is left where more is taken. */
function lessTaken({ least, likely, most }: Measured, taken: number): Measured {
  const left = (play: number) => Math.max(0, play - taken);
  return { least: left(least), likely: left(likely), most: left(most) };
}

/** Crest of the screw against the root of the nut. */
export const threadCrestGap: NutCheck = {
  ...thread,
  id: 'thread-crest-gap',
  title: "Radial gap over the screw's crests",
  limits: hard({ min: 0.05 }),
  moves: 'fit.diametral, screw.major',
  run: (design, { pass }) => {
    const { crestGap: gap } = fitFigures(design);
    return valued(gap, `${worked(gap.likely, 'mm')} mm of air over the screw's crests${airCure(gap, pass)}`);
  },
};

/** Crest of the nut against the root of the screw. */
export const threadRootGap: NutCheck = {
  ...thread,
  id: 'thread-root-gap',
  title: "Radial gap over the screw's roots",
  limits: hard({ min: 0.05 }),
  moves: 'fit.diametral, screw.minor',
  run: (design, { pass }) => {
    const { rootGap: gap } = fitFigures(design);
    return valued(
      gap,
      `${worked(gap.likely, 'mm')} mm of air between the nut's crests and the screw's core${airCure(gap, pass)}`,
    );
  },
};

/** Air over crests grows by half of what the diameter is opened. */
function airCure(gap: Measured, pass: Bounds): string {
  return allKeep(gap, pass) ? '' : `; a fit.diametral ${upwards(2 * (pass.min! - gap.least))} mm larger gives it`;
}

/**
 * Lead and pitch must agree with a whole number of starts.
 *
 *     off = |lead/(pitch · starts) − 1|, as read; 0 where no lead is read
 */
export const screwLead: NutCheck = {
  id: 'screw-lead',
  group: 'screw',
  question: 'goes-on',
  title: 'Starts by lead and pitch',
  unit: '',
  source: 'common practice',
  limits: hard({ max: 0.03 }),
  moves: 'screw.lead, screw.travel, screw.pitch, screw.starts',
  run: ({ screw }, { pass }) => {
    const off = Math.abs(screw.leadOverPitch / screw.starts - 1);
    const lead = screw.leadOverPitch * screw.pitchRead;
    const told = `lead ${plain(lead)} mm over pitch ${plain(screw.pitchRead)} mm is ${plain(screw.leadOverPitch)}`;
    const help = keeps(off, pass)
      ? `, so ${howMany(screw.starts, 'start')}`
      : '; starts come in whole numbers, so the pitch, the lead or a reading is wrong';
    return valued(plusMinus(off, 0), told + help);
  },
};

/** The wrong hand never goes on. */
export const screwHand: NutCheck = {
  id: 'screw-hand',
  group: 'screw',
  question: 'goes-on',
  title: 'Hand of the screw',
  unit: '',
  source: 'common practice',
  moves: 'screw.hand',
  run: ({ screw }) =>
    screw.handKnown
      ? told('pass', `${screw.hand}-hand thread`)
      : told(
          'caution',
          'hand not stated, right-hand assumed; hold the screw upright: a right-hand thread rises to the right',
        ),
};
