import type { Measured } from '../../units/measured.js';

/**
 * What a chain of sizes starts from. Its bounds are worst-case bounds; in statistics they are two standard deviations
 * from their middle, so an effect that can only act one way (least = likely = 0) also moves the mean.
 */
export interface StackInput<Input extends string> {
  readonly name: Input;
  readonly value: Measured;
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

/** The values of the inputs by name, each picked by `pick`. @internal */
export function valuesOf<Input extends string>(
  inputs: readonly StackInput<Input>[],
  pick: (input: StackInput<Input>) => number,
): Record<Input, number> {
  const values = Object.fromEntries(inputs.map((input) => [input.name, pick(input)]));
  return values as Record<Input, number>;
}
