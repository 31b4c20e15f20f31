import type { Material } from '../../../presets/material.js';
import type { Printer } from '../../../presets/printer.js';
import { plain } from '../../../units/format.js';
import type { Measured } from '../../../units/measured.js';
import type { SizeChoice } from '../../part-views.js';

/** Way a size lies in the print: over material, across an opening, or upwards through the layers. */
export type SizeWay = 'outside' | 'inside' | 'along';

/** Least half-width that is worth a figure, mm. @source common-practice */
const LEAST = 0.02;

/**
 * Half-width that a size in use may come out with: what the shrink may differ, and the hole offset across an opening;
 * nothing for the sizes of the file, which are what they are.
 */
export function spreadOf(
  { material, printer }: { readonly material: Material; readonly printer: Printer },
  choice: SizeChoice,
): (size: number, way: SizeWay) => { spread?: number } {
  return (size, way) => {
    if (choice === 'printed') return {};
    const { plane, axial } = material.shrink;
    const shrink = way === 'along' ? axial : plane;
    const offset = way === 'inside' ? printer.holeSpread : 0;
    return { spread: Math.max(LEAST, (shrink.most - shrink.likely) * size + offset) };
  };
}

/** What is stated of a size: its figure as dimensions have it, its spread never smaller than it is. */
export function sizeWords(value: number, { spread }: { readonly spread?: number }): string {
  if (spread === undefined) return value.toFixed(3);
  return `${value.toFixed(2)} ±${roundedUp(spread)}`;
}

/** The same in a note, with its unit, which the drawing leaves out or puts inches for. */
export function notedSize(value: number, spread: { readonly spread?: number }): string {
  return `${sizeWords(value, spread)} mm`;
}

/** A length in a note that no spread is stated for. */
export function noted(value: number, places = 2): string {
  return `${plain(value, places)} mm`;
}

/** A reading in a note with how far it may be off, where it may. */
export function notedReading({ likely, most }: Measured): string {
  return most > likely ? `${plain(likely, 2)} ±${plain(most - likely, 2)} mm` : noted(likely);
}

/** A spread to hundredths, never smaller than it is. */
export function roundedUp(spread: number): string {
  return (Math.ceil(spread * 100 - 1e-6) / 100).toFixed(2);
}
