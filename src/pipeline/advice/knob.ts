import type { Setting } from '../../judge/advice.js';

/** New values by dotted path. */
export type Changes = Readonly<Record<string, Setting>>;

/** A field with its present value. */
export type Knob = FigureKnob | WordKnob;

/** A field that holds a figure. */
export interface FigureKnob {
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

/** A field that holds one of a few words. */
export interface WordKnob {
  readonly path: string;
  /** those to be tried, the simplest first */
  readonly words: readonly string[];
  readonly now: string;
  /** so much another word counts when cures are ranked; one unless said otherwise */
  readonly grains?: number;
}

/** Whether a field holds a figure. */
export function isFigure(knob: Knob): knob is FigureKnob {
  return !('words' in knob);
}

/** The same field with another present value. */
export function movedTo(knob: Knob, now: Setting | undefined): Knob {
  if (now === undefined) return knob;
  return isFigure(knob) ? { ...knob, now: Number(now) } : { ...knob, now: String(now) };
}
