import { plain, rounded } from '../../units/format.js';
import type { AdapterDesign } from './dimensions.js';
import { leftInHoles } from './float-stop.js';
import type { NutSide } from './sides.js';

/** Sideways float of a nut, each way, mm. @source common-practice */
export const USUAL_FLOAT = { min: 0.2, max: 0.5 } as const;

/** What lets a bought flange float: its holes drilled to what stands in them and the float, or less of both beside its body. */
export function drilledWords(design: AdapterDesign): string {
  const { nut, spacers } = design;
  if (!nut || !spacers) return '';
  const { least, likely } = leftInHoles(design);
  const sideways = Math.max(spacers.sideways, USUAL_FLOAT.min + likely - least);
  const wanted = rounded(Math.ceil(10 * (spacers.pin + 2 * sideways) - 1e-9) / 10);
  if (wanted > roomBeside(nut) + 1e-9)
    return `; holes of ${plain(wanted)} mm cut into the nut's body: take thinner sleeves, less float, or float.spacer: bare`;
  const sleeves = spacers.spacer === 'bare' ? ', or wider for sleeves' : '';
  return `; drill the holes of the nut to ${plain(wanted)} mm${sleeves}`;
}

/** The widest hole of the nut's own pattern that stays off its body. */
export function roomBeside({ pattern, body }: NutSide): number {
  return 2 * Math.min(...pattern.centres.map(([x, y]) => Math.hypot(x, y) - body.most / 2));
}
