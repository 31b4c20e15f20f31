import type { FitBlock, FitFigure } from '../../fit/stack/fit-block.js';
import { inchFigure } from '../inches.js';
import { columns, WIDTH, words, wrapped } from './layout.js';

/** The figures of a predicted fit under the names that people read. */
export const FIT_FIGURES = [
  ['diametral_clearance', 'diametral clearance'],
  ['crest_gap', 'crest gap'],
  ['root_gap', 'root gap'],
  ['axial_clearance_fresh', 'axial clearance, fresh'],
  ['axial_clearance', 'axial clearance, run in'],
  ['backlash', 'backlash, run in'],
] as const satisfies readonly (readonly [keyof FitBlock, string])[];

/** The fit as it will lie on the bench: play as usual, the chances, and what the spread comes from. */
export function fitLines(fit: FitBlock, width = WIDTH, units?: 'inch'): string[] {
  const inch = units === 'inch';
  return [
    ...wrapped(`${fit.words}: ${fitChances(fit)}`, 2, width),
    '',
    ...columns(
      [
        ['  mm', 'likely', '19 of 20 nuts', ...(inch ? ['in inches'] : [])],
        ...FIT_FIGURES.map(([name, told]) => [...row(told, fit[name]), ...(inch ? [inchRange(fit[name])] : [])]),
      ],
      { right: [1, 2, 3], gap: 3, width },
    ),
    '',
    ...columns(
      fit.contributors.map(({ name, down, up, share }, i) => [
        `  ${i === 0 ? 'spread from' : ''}`,
        name,
        signed(down),
        signed(up),
        `${(100 * share).toFixed(0)} %`,
      ]),
      { right: [2, 3, 4], width },
    ),
    ...wrapped(judgedBy(fit), 2, width),
  ];
}

/** The chances in words. */
export function fitChances({ probabilities, wanted_play }: FitBlock): string {
  const { starts, turns, turns_run_in, under_wanted_play } = probabilities;
  return `starts ${percent(starts)}, turns over its whole length ${percent(turns)} fresh and ${percent(turns_run_in)} run in, play below ${wanted_play} mm ${percent(under_wanted_play)} run in`;
}

/** What stood for the screw where its flanks were not read. */
export function judgedBy({ screw_tolerance }: FitBlock): string {
  if (!screw_tolerance) return 'play is that of one tooth; 19 of 20 nuts lie within the range';
  const { tolerance, source } = screw_tolerance;
  return `the pitch diameter was not measured: screws to ${tolerance} of ${source} are counted, each size within its limits as likely as any other`;
}

/** Never rounded up to certainty. */
function percent(chance: number): string {
  const shown = Math.floor(1000 * chance) / 10;
  return shown >= 99.9 ? 'above 99.9 %' : `${shown.toFixed(shown > 99 ? 1 : 0)} %`;
}

function row(name: string, { least, likely, most }: FitFigure): string[] {
  return [`  ${words(name)}`, fixed(likely), `${fixed(least)} to ${fixed(most)}`];
}

function inchRange({ least, likely, most }: FitFigure): string {
  return `${inchFigure(likely)}, ${inchFigure(least)} to ${inchFigure(most)}`;
}

function signed(value: number): string {
  return Math.abs(value) < 0.0005 ? '' : `${value > 0 ? '+' : '−'}${Math.abs(value).toFixed(3)}`;
}

function fixed(value: number): string {
  return value.toFixed(3);
}
