/** Who puts a correction into the size: the file we write, the slicer, or nobody. */
export type Compensator = 'file' | 'slicer' | 'none';

/** How ceilings of pockets that open on the bed are made to print: closed by a layer to be drilled through, stepped, or not. */
export const BRIDGINGS = ['membrane', 'steps', 'none'] as const;
export type Bridging = (typeof BRIDGINGS)[number];

/** An offset of a contour as a line over the finished diameter. */
export interface OffsetLine {
  /** mm */
  readonly at_zero: number;
  /** mm per mm of diameter */
  readonly per_mm: number;
}

/** A nozzle and a layer that it prints. */
export interface NozzleAndLayer {
  readonly nozzle: number;
  readonly layer: number;
}

/** A printer with the settings that a part is printed with. */
export interface Printer {
  /** preset name, or `custom` */
  readonly name: string;
  readonly nozzle: number;
  readonly layer: number;
  readonly lineWidth: number;
  /** how much smaller than modelled a hole comes out, on the diameter, shrink aside */
  readonly holeOffset: OffsetLine;
  /** what stays uncertain of it after compensation, as a half-width on the diameter */
  readonly holeSpread: number;
  /** how much smaller than modelled an outside comes out, on the diameter, shrink aside */
  readonly outsideOffset: OffsetLine;
  /** how far the squashed first layer spreads, a side; undefined where nobody has measured it */
  readonly firstLayer?: number;
  readonly compensation: { readonly shrink: Compensator; readonly holes: Compensator };
  /** false where the sheet did not say who compensates */
  readonly compensationKnown: boolean;
  readonly chordError: number;
  readonly bridging: Bridging;
  /** nozzles and layers on the list of presets, from which advice is taken */
  readonly listed: readonly NozzleAndLayer[];
}
