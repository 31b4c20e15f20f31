import { type NearestRow, nearestSeries } from '../../../identify/nearest-series.js';
import { type Check, type Outcome, soft, told, valued } from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { parseDesignation } from '../../../standards/threads/designation.js';
import { plain, worked } from '../../../units/format.js';
import { exactly, plusMinus } from '../../../units/measured.js';
import type { NutDesign } from '../dimensions.js';

/** A screw that fits no series, or two, was probably misread. */
const LIMITS = { best: 2, second: 3 };

/** A screw that was made without the allowance of its class is so much thicker, mm: es of position e at a pitch of 4 mm, and a little. */
const NO_ALLOWANCE = 0.1;

/** Sizes that are one, mm. */
const SAME = 1e-6;

/** Half-width of a length over crests, mm. */
const PITCH_DOUBT = 0.03;

/** The readings against the series of standards and of common practice. */
export const screwSeries: Check<NutDesign> = {
  id: 'screw-series',
  group: 'screw',
  question: 'goes-on',
  title: 'Nearest series, in deviations',
  unit: '',
  source: 'common practice',
  limits: soft({ max: LIMITS.best }),
  moves: 'screw.major, screw.pitch, screw.form',
  run: (design, { pass }) => {
    const { form, major, pitch, designation } = design.screw;
    if (form === 'free') return undefined;
    const [best, second] = nearestSeries({ form, major, pitch });
    if (!keeps(best.sigma, pass)) return valued(exactly(best.sigma), oddWords(design, best));
    if (designation === undefined) return namedOrTwin(best, second);
    const other = otherThan(design, best) ?? otherFlanks(design);
    return other
      ? told('caution', other, best.sigma)
      : valued(exactly(best.sigma), `readings agree with ${designation}`);
  },
};

/** Readings that fit a series, but not as the row that the sheet names. */
function otherThan({ screw: { designation } }: NutDesign, { row }: NearestRow): string | undefined {
  const named = parseDesignation(designation!);
  const isOwn = Math.abs(row.major - named.major) < SAME && Math.abs(row.pitch - named.pitch) < SAME;
  return isOwn
    ? undefined
    : `the readings are those of ${row.designation}, not of ${named.text}: measure again, or say ${row.designation}`;
}

/** Flanks that were read and lie beside what the class of the name allows. */
function otherFlanks({ screw: { designation, pitchDiameter, inHand } }: NutDesign): string | undefined {
  const { namedFlanks: own } = inHand;
  if (!own || (pitchDiameter.most >= own.least && pitchDiameter.least <= own.most + NO_ALLOWANCE)) return undefined;
  return `the pitch diameter of ${worked(pitchDiameter.likely, 'mm')} mm is not that of ${designation}, ${plain(own.least, 2)} to ${plain(own.most, 2)} mm: worn, or another screw; measure it again`;
}

function namedOrTwin(best: NearestRow, second: NearestRow): Outcome {
  const name = best.row.designation;
  if (second.sigma > LIMITS.second) return valued(exactly(best.sigma), `${name}, ${missWords(best)} off`);
  const other = second.row.designation;
  return told(
    'caution',
    `${name} or ${other}: the readings do not tell them apart; a pitch over more crests would`,
    best.sigma,
  );
}

function oddWords(design: NutDesign, best: NearestRow): string {
  const miscount = miscounted(design);
  if (miscount) return miscount;
  return `no series has this screw; nearest is ${best.row.designation}, ${missWords(best)} off. An odd screw is fine if the readings are right`;
}

/** One crest too many or too few is the usual slip; it shows where the other count fits a series. */
function miscounted({ screw: { crests, form, major } }: NutDesign): string | undefined {
  if (!crests || form === 'free') return undefined;
  for (const count of [crests.count - 1, crests.count + 1].filter((other) => other > 0)) {
    const [best] = nearestSeries({ form, major, pitch: plusMinus(crests.length / count, PITCH_DOUBT / count) });
    if (best.sigma <= LIMITS.best) {
      return `${plain(crests.length)} mm over ${crests.count} pitches fits no series, over ${count} it is ${best.row.designation}: count pitches from one edge to the same edge`;
    }
  }
  return undefined;
}

function missWords({ majorResidual, pitchResidual }: NearestRow): string {
  return `major ${signed(majorResidual)} mm and pitch ${signed(pitchResidual)} mm`;
}

function signed(value: number): string {
  return `${value < 0 ? '−' : '+'}${worked(Math.abs(value), 'mm')}`;
}
