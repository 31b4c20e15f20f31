import type { FitBlock, FitFigure, FitRange } from '../../fit/stack/fit-block.js';
import { columns, words, wrapped } from './layout.js';

const FIGURES = ['diametral_clearance', 'crest_gap', 'root_gap', 'axial_clearance', 'backlash'] as const;

/** The fit as it will lie on the bench: play at worst and as usual, the chances, and what the spread comes from. */
export function fitLines(fit: FitBlock, width?: number): string[] {
  return [
    ...wrapped(`${fit.words}: ${chances(fit)}`, 2, width),
    '',
    ...columns(
      [['  mm', 'least', 'likely', 'most', '19 of 20 prints'], ...FIGURES.map((name) => row(name, fit[name]))],
      [1, 2, 3, 4],
      3,
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
      [2, 3, 4],
    ),
    ...toleranceLines(fit, width),
  ];
}

function chances({ probabilities: { starts, turns, under_wanted_play }, wanted_play }: FitBlock): string {
  return `starts ${percent(starts)}, turns over its whole length ${percent(turns)}, play below ${wanted_play} mm ${percent(under_wanted_play)}`;
}

/** Never rounded up to certainty. */
function percent(chance: number): string {
  const shown = Math.floor(1000 * chance) / 10;
  return shown >= 99.9 ? 'above 99.9 %' : `${shown.toFixed(shown > 99 ? 1 : 0)} %`;
}

function row(name: string, { least, likely, most, usual }: FitFigure): string[] {
  return [`  ${words(name)}`, fixed(least), fixed(likely), fixed(most), `${fixed(usual[0])} to ${fixed(usual[1])}`];
}

function toleranceLines({ screw_tolerance }: FitBlock, width?: number): string[] {
  if (!screw_tolerance) return [];
  const { tolerance, source, backlash } = screw_tolerance;
  return wrapped(`a screw made to ${tolerance} of ${source} has ${range(backlash)} mm of backlash`, 2, width);
}

function range({ least, likely, most }: FitRange): string {
  return `${fixed(least)} to ${fixed(most)}, likely ${fixed(likely)}`;
}

function signed(value: number): string {
  return Math.abs(value) < 0.0005 ? '' : `${value > 0 ? '+' : '−'}${Math.abs(value).toFixed(3)}`;
}

function fixed(value: number): string {
  return value.toFixed(3);
}
