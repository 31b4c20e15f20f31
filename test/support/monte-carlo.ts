import { type StackInput, type StackModel, sigmaOf, valuesOf } from '../../src/fit/stack/stack.js';
import { seededNormal, seededUniform } from './seeded.js';

/** What many draws of a chain came to. */
export interface Drawn<Result extends string> {
  readonly mean: Readonly<Record<Result, number>>;
  readonly sigma: Readonly<Record<Result, number>>;
  /** the results of each draw */
  readonly rows: readonly Readonly<Record<Result, number>>[];
  /** share of the draws in which all named results were above 0 */
  readonly chanceAbove: (results: readonly Result[]) => number;
}

/**
 * Runs a chain many times with inputs drawn: from normal distributions, middle of the bounds as mean and a quarter of
 * their distance as standard deviation, or evenly between the bounds where an input is level. It takes the model as it
 * is, so it shows what first order leaves out.
 *
 * @param inputs independent inputs, each with its bounds
 * @param model the chain
 * @param options.draws how often, and options.seed, a whole number
 * @returns mean, standard deviation and chances; the same for the same seed
 */
export function monteCarlo<Input extends string, Result extends string>(
  inputs: readonly StackInput<Input>[],
  model: StackModel<Input, Result>,
  { draws, seed }: { readonly draws: number; readonly seed: number },
): Drawn<Result> {
  const normal = seededNormal(seed);
  const uniform = seededUniform(seed + 1);
  const drawn = ({ value: { least, likely, most }, level = false }: StackInput<Input>) =>
    level
      ? least + (most - least) * uniform()
      : (least + most) / 2 + sigmaOf({ value: { least, likely, most } }) * normal();
  const rows = Array.from({ length: draws }, () => model(valuesOf(inputs, drawn)));
  const keys = Object.keys(rows[0] ?? {}) as Result[];
  const each = (work: (values: number[]) => number) =>
    Object.fromEntries(keys.map((key) => [key, work(rows.map((row) => row[key]))])) as Record<Result, number>;
  return {
    rows,
    mean: each(meanOf),
    sigma: each((values) => {
      const mean = meanOf(values);
      return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
    }),
    chanceAbove: (results) => rows.filter((row) => results.every((key) => row[key] > 0)).length / draws,
  };
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
