import { type Bounds, type Check, hard, soft, told, valued } from '../../../fit/check.js';
import { axialPlay } from '../../../mechanics/thread/nut-thread.js';
import { plain } from '../../../units/format.js';
import { halfWidth, type Measured, plusMinus, shifted, widened } from '../../../units/measured.js';
import type { NutDesign } from '../dimensions.js';
import { judgedFit } from '../stack.js';

type NutCheck = Check<NutDesign>;
const thread = { group: 'thread', question: 'goes-on', unit: 'mm', source: 'common practice' } as const;

/** A nut that is too small on the pitch line does not start. */
export const threadClearance: NutCheck = {
  ...thread,
  id: 'thread-clearance',
  title: 'Diametral clearance at the pitch line',
  limits: hard({ min: 0.15 }),
  moves: 'fit.diametral, printer.hole_offset, material.shrink.plane, screw.pitch_diameter',
  run: (design, limits) => {
    const { diametral } = judgedFit(design);
    const own = hard({ min: design.fit.name === 'close' ? 0.05 : 0.15 });
    const { min = 0 } = limits.of(own).pass;
    const cure = diametral.least < min ? `; a fit.diametral ${plain(min - diametral.least)} mm larger gives it` : '';
    return valued(
      diametral,
      `${plain(diametral.likely)} mm on the diameter between flanks; the nut starts from ${plain(min)} mm${cure}`,
      own,
    );
  },
};

/** Play that is eaten by the pitch drifting over the engaged length. */
export const threadPitchError: NutCheck = {
  ...thread,
  id: 'thread-pitch-error',
  question: 'turns',
  title: 'Play left over the whole length',
  limits: hard({ min: 0.05 }),
  moves: 'fit.axial, body.length, material.shrink.axial',
  run: (design, { pass: { min = 0 } }) => {
    const { play, axialResidual } = judgedFit(design);
    const length = design.finished.length;
    const drift = axialResidual * length;
    const pitchDoubt = (halfWidth(design.screw.pitch) / design.screw.pitch.likely) * length;
    const left = widened(shifted(play, -drift), pitchDoubt);
    const cure = left.least < min ? '; a shorter nut or a larger fit.axial leaves more' : '';
    return valued(
      left,
      `${plain(play.likely)} mm of play less ${plain(drift)} mm of pitch error over ${plain(length)} mm leaves ${plain(left.likely)} mm${cure}`,
    );
  },
};

/** A trapezoid is hardly freed by opening its diameter. */
export const threadAxial: NutCheck = {
  ...thread,
  id: 'thread-axial',
  question: 'turns',
  title: 'Axial play over both flanks',
  limits: soft({ min: 0.1, max: 0.25 }),
  moves: 'fit.axial, fit.diametral',
  run: (design) => {
    const { play } = judgedFit(design);
    const fromDiameter = axialPlay({
      diametralClearance: design.fit.diametral,
      axialClearance: 0,
      flankAngle: design.screw.flankAngle,
    });
    return valued(play, `${plain(play.likely)} mm in all, of which the diameter gives only ${plain(fromDiameter)} mm`);
  },
};

/** Lost motion when the load reverses. */
export const threadBacklash: NutCheck = {
  ...thread,
  id: 'thread-backlash',
  question: 'turns',
  title: 'Lost motion when the load reverses',
  limits: soft({ max: 0.3 }),
  moves: 'fit.axial, fit.diametral',
  run: (design, limits) => {
    const { play } = judgedFit(design);
    const { axis } = design.duty;
    const own = axis === 'vertical' ? 0.3 : 0.1;
    const { max: most = own } = limits.of(soft({ max: own })).pass;
    const usual = {
      vertical: 'is usual where weight holds one flank',
      horizontal: 'is usual where the load reverses',
      untold: 'is usual where the load reverses, as taken since duty.axis is missing',
    }[axis ?? 'untold'];
    return valued(
      play,
      `${plain(play.likely)} mm of lost motion; up to ${plain(most)} mm ${most === own ? usual : 'is allowed by the sheet'}`,
      soft({ max: own }),
    );
  },
};

/** Crest of the screw against the root of the nut. */
export const threadCrestGap: NutCheck = {
  ...thread,
  id: 'thread-crest-gap',
  title: "Radial gap over the screw's crests",
  limits: hard({ min: 0.05 }),
  moves: 'fit.diametral, screw.major',
  run: (design, { pass }) => {
    const { crestGap: gap } = judgedFit(design);
    return valued(gap, `${plain(gap.likely)} mm of air over the screw's crests${airCure(gap, pass)}`);
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
    const { rootGap: gap } = judgedFit(design);
    return valued(
      gap,
      `${plain(gap.likely)} mm of air between the nut's crests and the screw's core${airCure(gap, pass)}`,
    );
  },
};

/** Air over crests grows by half of what the diameter is opened. */
function airCure({ least }: Measured, { min = 0 }: Bounds): string {
  return least < min ? `; a fit.diametral ${plain(2 * (min - least))} mm larger gives it` : '';
}

/** Lead and pitch must agree with a whole number of starts. */
export const screwLead: NutCheck = {
  id: 'screw-lead',
  group: 'screw',
  question: 'goes-on',
  title: 'Starts by lead and pitch',
  unit: '',
  source: 'common practice',
  limits: hard({ max: 0.03 }),
  moves: 'screw.lead, screw.travel, screw.pitch, screw.starts',
  run: ({ screw }, { pass: { max = 0 } }) => {
    const off = Math.abs(screw.leadOverPitch / screw.starts - 1);
    const lead = screw.leadOverPitch * screw.pitchRead;
    const told = `lead ${plain(lead)} mm over pitch ${plain(screw.pitchRead)} mm is ${plain(screw.leadOverPitch)}`;
    const help =
      off > max
        ? `; starts come in whole numbers, so the pitch, the lead or a reading is wrong`
        : `, so ${screw.starts} start${screw.starts === 1 ? '' : 's'}`;
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
