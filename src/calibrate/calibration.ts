import type { Material } from '../presets/material.js';
import type { OffsetLine, Printer } from '../presets/printer.js';
import type { SlicerAnswer, State } from '../sheet/sections/profile.js';
import type { Measured } from '../units/measured.js';
import type { PocketKind } from './feature.js';
import type { Results } from './results.js';
import type { Estimate, Outlier, PrintSolution } from './solve-print.js';
import type { Clearances } from './thread-fit.js';

/** What was taken of a printer before anything was read. */
export interface Believed {
  readonly material: Material;
  readonly printer: Printer;
}

/** A clearance that the hand likes, with the half-width within which the neighbours would have felt otherwise. */
export interface LikedFit {
  readonly clearance: number;
  readonly half: number;
  readonly how: string;
}

/** What the readings of one printer and material come to. */
export interface Calibration {
  readonly runs: readonly Results[];
  readonly state: State;
  readonly slicer: SlicerAnswer;
  readonly solution: PrintSolution;
  /** readings and features that were left out */
  readonly outliers: readonly Outlier[];
  /** figures that are measured, ready for a profile; the others are not there */
  readonly plane?: Measured;
  readonly axial?: Measured;
  readonly holeOffset?: OffsetLine & { readonly spread: number };
  /** hole offset where it is told with its error: at 6 mm */
  readonly holeAtMiddle?: Estimate;
  readonly outsideOffset?: OffsetLine;
  readonly firstLayer?: number;
  readonly thread?: Clearances & { readonly half: number; readonly how: string };
  readonly pockets: Readonly<Partial<Record<PocketKind, LikedFit>>>;
  /** what is not yet known, and which feature would tell */
  readonly unknown: readonly string[];
  /** what to look at before the profile is used */
  readonly warnings: readonly string[];
}
