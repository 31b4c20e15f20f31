/** A field with its present value. */
export interface Knob {
  readonly path: string;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly grain: number;
  readonly now: number;
  /** the only values that there are, in order; whole steps between `least` and `most` where none are named */
  readonly values?: readonly number[];
  /** what goes with a new value, such as the layer with a nozzle */
  readonly also?: (value: number) => Readonly<Record<string, number>>;
}
