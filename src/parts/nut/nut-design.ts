import type { DriveNumbers } from '../../drive/numbers.js';
import type { Material } from '../../presets/material.js';
import type { Printer } from '../../presets/printer.js';
import type { Screw } from '../../sheet/resolve-screw.js';
import type { CarriedDuty, Pull } from '../../sheet/sections/duty.js';
import type { Effects } from '../../sheet/sections/effects.js';
import type { Measured } from '../../units/measured.js';
import type { NutPocket } from '../common/bought-nut.js';
import type { Fit } from '../common/fit-classes.js';
import type { Float } from '../common/float.js';
import type { HolePattern } from '../common/hole-pattern.js';
import type { Joint, JointHole } from '../common/joints.js';
import type { DesignBase } from '../part-kind.js';
import type { Mark } from './mark-asked.js';
import type { NutSizes } from './nut-sizes.js';
import type { Variant } from './variants/types.js';

export type HeadSide = 'body' | 'flange' | 'none';

export interface Holes extends HolePattern {
  readonly joint: Joint;
  readonly head: HeadSide;
  /** how its pockets are roofed where they open on the bed */
  readonly roof?: JointHole['roof'];
}

/** What the nut is mounted to. */
export interface Carriage {
  readonly bore?: Measured;
  readonly thickness?: Measured;
  readonly holes?: HolePattern;
}

/** A nut, worked out. */
export interface NutDesign extends DesignBase {
  readonly part: 'nut' | 'twin-nut';
  readonly screw: Screw;
  readonly fit: Fit;
  readonly finished: NutSizes;
  readonly printed: NutSizes;
  readonly holes?: Holes;
  readonly carriage: Carriage;
  /** how it floats; undefined where its screws are tightened */
  readonly float?: Float;
  readonly mounting?: 'flange-up' | 'flange-down';
  /** its body stands away from the carriage, on which the flange's own face lies; left out where the body goes through */
  readonly stands?: 'away';
  readonly mark?: Mark;
  readonly material: Material;
  readonly printer: Printer;
  readonly duty: CarriedDuty;
  /** ways in which the standing load must be borne */
  readonly pulls: readonly Pull[];
  /** effects of the printer that the predicted fit counts */
  readonly effects: Effects;
  readonly calipers: number;
  readonly drive: DriveNumbers;
  /** how it differs from a plain nut */
  readonly family?: Variant;
  /** on the body end, for a metal nut that stands by */
  readonly catchPocket?: NutPocket & { readonly gap: number };
}
