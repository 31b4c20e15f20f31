import { type Bounds, notJudged, type Outcome, valued } from '../../judge/check.js';
import { keeps } from '../../judge/judge.js';
import { plain } from '../../units/format.js';
import { exactly } from '../../units/measured.js';

/** Turning, a bearing is to last so many million turns. @source common-practice */
const MILLION_TURNS = 100;

/** What pushes a bearing along its axis, and what it carries there [N]. */
export interface BearingLoad {
  /** stands for good */
  readonly load: number;
  /** the motor's, stalled */
  readonly jam: number;
  readonly carries: {
    readonly forGood: number;
    readonly moment: number;
    /** with which it lasts a million turns */
    readonly turning: number;
  };
  /** fields of the sheet without which nobody knows the load */
  readonly missing: readonly string[];
  readonly cure: string;
}

/**
 * The worst share that a bearing's load takes of what the bearing carries along its axis; where something is not told only a fail is.
 *
 *     max(F/F_good, F·100^(1/3)/C, F_jam/F_moment)
 */
export function judgeBearingLoad({ load, jam, carries, missing, cure }: BearingLoad, pass: Bounds): Outcome {
  const lasting = carries.turning / Math.cbrt(MILLION_TURNS);
  const rows = [
    { share: load / carries.forGood, words: `${plain(load, 0)} N for good of ${plain(carries.forGood, 0)} N` },
    {
      share: load / lasting,
      words: `${plain(load, 0)} N of the ${plain(lasting, 0)} N with which it lasts ${MILLION_TURNS} million turns`,
    },
    { share: jam / carries.moment, words: `${plain(jam, 0)} N of ${plain(carries.moment, 0)} N when the axis jams` },
  ];
  const worst = rows.reduce((a, b) => (b.share > a.share ? b : a));
  const holds = keeps(worst.share, pass);
  if (holds && missing.length > 0) return notJudged(...missing);
  return valued(
    exactly(worst.share),
    `${worst.words}${holds ? '' : `; ${cure}; the list of your bearing may rate it higher`}`,
  );
}
