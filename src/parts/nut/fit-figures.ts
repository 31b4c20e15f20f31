import type { FitFigure } from '../../fit/stack/fit-block.js';
import { chanceAbove } from '../../fit/stack/probability.js';
import { type Spread, spreadLessDrift, spreadOf, USUAL } from '../../fit/stack/spread.js';
import type { StackResult } from '../../fit/stack/stack.js';
import { once, onceFor } from '../../units/once.js';
import type { NutDesign } from './dimensions.js';
import { type NutInput, type NutResult, nutChain, predictFit } from './stack.js';

/**
 * The fit of a nut as checks and report state it: one figure and one range each. A range holds 19 of 20 nuts; play is
 * that of a nut which has run in, unless it is called fresh.
 */
export interface FitFigures {
  readonly diametral: FitFigure;
  readonly crestGap: FitFigure;
  readonly rootGap: FitFigure;
  /** axial, over both flanks, on one tooth: what is lost when the load reverses */
  readonly play: FitFigure;
  /** what is left of it when the pitch has drifted over the engaged length */
  readonly axial: FitFigure;
  /** the same with the edges of the layers still on */
  readonly freshAxial: FitFigure;
  /** axial play that those edges take */
  readonly layers: number;
}

/** How likely it is that the nut does what it should, 0 to 1. */
export interface FitChances {
  readonly starts: number;
  /** over its whole length, fresh from the printer */
  readonly turns: number;
  readonly turnsRunIn: number;
  readonly playBelow: (wanted: number) => number;
}

type Results = Readonly<Record<NutResult, StackResult<NutInput>>>;

interface Chain {
  readonly results: Results;
  readonly axial: Spread;
  readonly figures: FitFigures;
}

/** A dozen checks and the report ask for the fit of one design. */
const chainOf = onceFor((design: NutDesign): Chain => {
  const results = predictFit(design);
  const axial = spreadLessDrift(results.clear, results.drift);
  return { results, axial, figures: figuresOf(results, axial, nutChain(design).layers) };
});

/** Works the fit out. */
export function fitFigures(design: NutDesign): FitFigures {
  return chainOf(design).figures;
}

/** Figures and chances of one chain. */
export function fitWithChances(design: NutDesign): FitFigures & FitChances & { readonly results: Results } {
  const { results, axial, figures } = chainOf(design);
  const { layers } = figures;
  const diametral = spreadOf(results.diametral);
  const gaps = [results.crestGap, results.rootGap, results.entry].map(spreadOf);
  return {
    ...figures,
    starts: chanceAbove([diametral, ...gaps, moved(spreadOf(results.play), -layers)]).least,
    turns: chanceAbove([diametral, ...gaps, moved(axial, -layers)]).least,
    turnsRunIn: chanceAbove([diametral, ...gaps, axial]).least,
    playBelow: spreadOf(results.play).below,
    results,
  };
}

/** Each figure is worked out when it is first asked for. */
function figuresOf(results: Results, axial: Spread, layers: number): FitFigures {
  const plainly = (result: StackResult<NutInput>) => once(() => figure(spreadOf(result), bounds(result)));
  const [diametral, crestGap, rootGap, play] = [
    plainly(results.diametral),
    plainly(results.crestGap),
    plainly(results.rootGap),
    plainly(results.play),
  ];
  const lessDrift = once(() => figure(axial, axialBounds(results)));
  return {
    layers,
    get diametral() {
      return diametral();
    },
    get crestGap() {
      return crestGap();
    },
    get rootGap() {
      return rootGap();
    },
    get play() {
      return play();
    },
    get axial() {
      return lessDrift();
    },
    get freshAxial() {
      return less(lessDrift(), layers);
    },
  };
}

function axialBounds({ play, playLessDrift, playPlusDrift }: Results): readonly [number, number] {
  const least = Math.min(playLessDrift.worst.least, playPlusDrift.worst.least);
  const most = Math.min(playLessDrift.worst.most, playPlusDrift.worst.most, play.worst.most);
  return [least, Math.max(least, most)];
}

function bounds({ worst }: StackResult<NutInput>): readonly [number, number] {
  return [worst.least, worst.most];
}

/** Within the worst case, which first order and a normal tail might overstep. */
function figure({ quantile }: Spread, worst: readonly [number, number]): FitFigure {
  const within = (share: number) => Math.min(worst[1], Math.max(worst[0], quantile(share)));
  return { least: within(USUAL[0]), likely: within(0.5), most: within(USUAL[1]), worst };
}

function less({ least, likely, most, worst }: FitFigure, by: number): FitFigure {
  return { least: least - by, likely: likely - by, most: most - by, worst: [worst[0] - by, worst[1] - by] };
}

function moved({ below, quantile }: Spread, by: number): Spread {
  return { below: (x) => below(x - by), quantile: (share) => quantile(share) + by };
}
