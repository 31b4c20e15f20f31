/** A field with its present value. */
export interface Knob {
  readonly path: string;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly grain: number;
  readonly now: number;
}
