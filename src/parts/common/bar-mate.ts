import type { Shape } from '../../solid/recipe.js';
import { type Bore, boreOutlines, type Shaft } from './bore.js';

/** Chords of a bar stand out of its round by this; a shaft that leaves less room opens the slit. */
const BAR_CHORD = 0.002;

/** A shaft at its largest, or as large as the bore takes before its slit opens. */
export function largestBar(shaft: Shaft, bore: Bore): number {
  return Math.min(shaft.diameter.most, bore.diameter - 3 * BAR_CHORD);
}

/** A shaft of the bore's own form, as much smaller than it as the shaft is. */
export function barIn(bore: Bore, diameter: number, from: number, to: number): Shape {
  const smaller = bore.diameter - diameter;
  const shrunk = { ...bore, diameter, ...(bore.across === undefined ? {} : { across: bore.across - smaller }) };
  const { key: _, ...plainBore } = shrunk;
  const [outline] = boreOutlines(
    { ...plainBore, form: plainBore.form === 'keyed' ? 'round' : plainBore.form },
    BAR_CHORD,
  );
  return { kind: 'prism', outlines: [outline], from, to };
}
