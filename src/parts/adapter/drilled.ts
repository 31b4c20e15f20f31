import { plain } from '../../units/format.js';
import type { Float } from '../common/float.js';
import type { AdapterDesign } from './dimensions.js';
import type { NutSide } from './sides.js';

/** What lets a bought flange float: its holes drilled to what stands in them and the float, or less of both beside its body. */
export function drilledWords({ nut, spacers }: Pick<AdapterDesign, 'nut' | 'spacers'>): string {
  if (!nut || !spacers) return '';
  const wanted = floatHole(spacers);
  if (wanted > roomBeside(nut) + 1e-9)
    return `; holes of ${plain(wanted)} mm cut into the nut's body: take thinner sleeves, less float, or float.spacer: bare`;
  const sleeves = spacers.spacer === 'bare' ? ', or wider for sleeves' : '';
  return `; drill the holes of the nut to ${plain(wanted)} mm${sleeves}`;
}

/** Hole that leaves its float to what stands in it. */
function floatHole({ pin, sideways }: Float): number {
  return pin + 2 * sideways;
}

/** The widest hole of the nut's own pattern that stays off its body. */
export function roomBeside({ pattern, body }: NutSide): number {
  return 2 * Math.min(...pattern.centres.map(([x, y]) => Math.hypot(x, y) - body.most / 2));
}
