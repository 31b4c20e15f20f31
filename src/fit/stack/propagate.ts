import { type Contribution, type StackInput, type StackModel, type StackResult, sigmaOf, valuesOf } from './stack.js';

/**
 * Propagates the uncertainty of the inputs of a chain to its results, to first order.
 *
 *     worst   y ± Σ |∂y/∂xᵢ|·Δᵢ           mean  y + Σ ∂y/∂xᵢ·(mᵢ − xᵢ)        σ = √Σ (∂y/∂xᵢ·σᵢ)²
 *
 * with mᵢ the middle between an input's bounds, and σᵢ a quarter of their distance, or 1/√12 of it where an input is
 * level. Slopes are central differences over the bounds.
 *
 * @param inputs independent inputs, each with its bounds
 * @param model the chain, smooth between the bounds
 * @returns bounds, mean, standard deviation and contributions of every result, in the units of the model
 * @example propagate([{ name: 'x', value: { least: 1, likely: 2, most: 3 } }], ({ x }) => ({ y: 2 * x })).y.sigma // 1
 */
export function propagate<Input extends string, Result extends string>(
  inputs: readonly StackInput<Input>[],
  model: StackModel<Input, Result>,
): Readonly<Record<Result, StackResult<Input>>> {
  const likely = valuesOf(inputs, ({ value }) => value.likely);
  const nominal = model(likely);
  const ends = inputs
    .filter(({ value }) => value.most > value.least)
    .map(({ name, value, level = false }) => ({
      name,
      value,
      level,
      low: model({ ...likely, [name]: value.least }),
      high: model({ ...likely, [name]: value.most }),
    }));
  const resultOf = (key: Result): StackResult<Input> => {
    const parts = ends.map(({ name, value, level, low, high }) => {
      const sensitivity = (high[key] - low[key]) / (value.most - value.least);
      const sides = [sensitivity * (value.least - value.likely), sensitivity * (value.most - value.likely)];
      return {
        name,
        sensitivity,
        down: Math.min(0, ...sides),
        up: Math.max(0, ...sides),
        level,
        sigma: Math.abs(sensitivity) * sigmaOf({ value, level }),
        shift: sensitivity * ((value.least + value.most) / 2 - value.likely),
      };
    });
    const variance = total(parts.map(({ sigma }) => sigma ** 2));
    return {
      worst: {
        least: nominal[key] + total(parts.map(({ down }) => down)),
        likely: nominal[key],
        most: nominal[key] + total(parts.map(({ up }) => up)),
      },
      mean: nominal[key] + total(parts.map(({ shift }) => shift)),
      sigma: Math.sqrt(variance),
      contributions: ranked(parts, variance),
    };
  };
  const keys = Object.keys(nominal) as Result[];
  return Object.fromEntries(keys.map((key) => [key, resultOf(key)])) as Record<Result, StackResult<Input>>;
}

type Part<Input extends string> = Omit<Contribution<Input>, 'share'> & {
  readonly shift: number;
};

function ranked<Input extends string>(parts: readonly Part<Input>[], variance: number): Contribution<Input>[] {
  return parts
    .filter(({ sigma }) => sigma > 1e-12)
    .map(({ shift, ...part }) => ({ ...part, share: part.sigma ** 2 / variance }))
    .sort((a, b) => b.share - a.share || (a.name < b.name ? -1 : 1));
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
