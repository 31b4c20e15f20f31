import type { Verdict } from '../check.js';

/** Play as it will come out: worst-case bounds, and the bounds that 19 of 20 prints keep. */
export interface FitFigure {
  readonly least: number;
  readonly likely: number;
  readonly most: number;
  /** mean less and plus two standard deviations */
  readonly usual: readonly [number, number];
}

/** Plain bounds of a figure. */
export interface FitRange {
  readonly least: number;
  readonly likely: number;
  readonly most: number;
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
  readonly diametral_clearance: FitFigure;
  /** radial, over the crests and over the roots of the screw */
  readonly crest_gap: FitFigure;
  readonly root_gap: FitFigure;
  /** what is left of the play when the pitch has drifted over the engaged length */
  readonly axial_clearance: FitFigure;
  readonly backlash: FitFigure;
  readonly probabilities: { readonly starts: number; readonly turns: number; readonly under_wanted_play: number };
  readonly wanted_play: number;
  /** causes of the spread of the axial clearance, the five largest */
  readonly contributors: readonly FitContributor[];
  /** what a screw made to the limits of its standard adds to the play, where only its designation is known */
  readonly screw_tolerance?: {
    readonly tolerance: string;
    readonly source: string;
    readonly diametral_clearance: FitRange;
    readonly backlash: FitRange;
  };
  /** how far each hole may be from its place, along the line from the centre */
  readonly holes?: readonly {
    readonly hole: number;
    readonly least: number;
    readonly likely: number;
    readonly most: number;
  }[];
  readonly effects_off: readonly string[];
}
