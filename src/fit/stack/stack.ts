import type { Measured } from '../../units/measured.js';

/**
 * What a chain of sizes starts from. Its bounds are worst-case bounds. In statistics they are two standard deviations
 * from their middle; or, where nothing but the bounds is known (a tolerance, an effect between none and full), every
 * value between them is as likely as any other. Either way the middle is the mean.
 */
export interface StackInput<Input extends string> {
  readonly name: Input;
  readonly value: Measured;
  /** as likely anywhere between the bounds */
  readonly level?: boolean;
}

/** Works every result of a chain out from one value of each input. */
export type StackModel<Input extends string, Result extends string> = (
  at: Readonly<Record<Input, number>>,
) => Readonly<Record<Result, number>>;

/** What one input adds to the spread of a result. */
export interface Contribution<Input extends string> {
  readonly name: Input;
  /** change of the result for a unit of the input */
  readonly sensitivity: number;
  /** change of the result with the input at its bounds, against its likely value; `down` is not above 0 */
  readonly down: number;
  readonly up: number;
  /** standard deviation that it gives the result */
  readonly sigma: number;
  readonly level: boolean;
  /** share of the variance, 0 to 1 */
  readonly share: number;
}

/** A result with its bounds by the worst case and its spread in statistics. */
export interface StackResult<Input extends string> {
  /** every input at its worse bound at once */
  readonly worst: Measured;
  readonly mean: number;
  /** standard deviation */
  readonly sigma: number;
  /** largest share first, those without any left out */
  readonly contributions: readonly Contribution<Input>[];
}

/** Standard deviation of an input: a quarter of the distance of its bounds, or 1/√12 of it where it is level. @internal */
export function sigmaOf({ value, level = false }: Omit<StackInput<string>, 'name'>): number {
  return (value.most - value.least) / (level ? Math.sqrt(12) : 4);
}

/** The values of the inputs by name, each picked by `pick`. @internal */
export function valuesOf<Input extends string>(
  inputs: readonly StackInput<Input>[],
  pick: (input: StackInput<Input>) => number,
): Record<Input, number> {
  const values = Object.fromEntries(inputs.map((input) => [input.name, pick(input)]));
  return values as Record<Input, number>;
}
