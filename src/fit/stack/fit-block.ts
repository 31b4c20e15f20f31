import type { Verdict } from '../../judge/check.js';

/** Play as it will come out: half of the prints lie below `likely`, 19 of 20 between `least` and `most`. */
export interface FitFigure {
  readonly least: number;
  readonly likely: number;
  readonly most: number;
  /** with everything at its worse bound at once: nothing lies outside */
  readonly worst: readonly [number, number];
}

/** One cause of spread, largest first. */
export interface FitContributor {
  readonly name: string;
  /** what it adds at its bounds, mm */
  readonly down: number;
  readonly up: number;
  /** share of the variance */
  readonly share: number;
}

/** The predicted fit of a part, all lengths in mm. */
export interface FitBlock {
  readonly outlook: Verdict;
  /** the same in words */
  readonly words: string;
  /** of one flank of the thread, against the normal to the axis, degrees */
  readonly flank_angle: number;
  readonly diametral_clearance: FitFigure;
  /** radial, over the crests and over the roots of the screw */
  readonly crest_gap: FitFigure;
  readonly root_gap: FitFigure;
  /** what is left of the play when the pitch has drifted over the engaged length, of a nut that has run in */
  readonly axial_clearance: FitFigure;
  /** the same fresh from the printer, the edges of its layers in full */
  readonly axial_clearance_fresh: FitFigure;
  /** lost motion of a nut that has run in */
  readonly backlash: FitFigure;
  readonly probabilities: {
    readonly starts: number;
    /** over the whole length, fresh from the printer */
    readonly turns: number;
    readonly turns_run_in: number;
    readonly under_wanted_play: number;
  };
  readonly wanted_play: number;
  /** causes of the spread of the axial clearance, the five largest */
  readonly contributors: readonly FitContributor[];
  /** the class that stood for the pitch diameter of the screw, which was not measured */
  readonly screw_tolerance?: { readonly tolerance: string; readonly source: string };
  /** how far each hole may be from its place, along the line from the centre */
  readonly holes?: readonly {
    readonly hole: number;
    readonly least: number;
    readonly likely: number;
    readonly most: number;
  }[];
  readonly effects_off: readonly string[];
}
