import type { Remedy } from '../../judge/advice.js';
import { rounded } from '../../units/format.js';
import { sidewaysInBore } from './bore.js';
import { radialFloat } from './checks/mount.js';
import type { NutDesign } from './nut-design.js';

/** How far a nut moves sideways while its screws are loose, each way, mm. @source common-practice */
const USUAL_FLOAT = 0.35;

/** Ways to let a nut find its screw before it is tightened: wider holes, a wider bore, both. */
export function floatRemedies(check: string): (design: NutDesign) => readonly Remedy[] {
  return (design) => {
    const { holes, carriage, float: floats } = design;
    const float = radialFloat(design);
    if (!holes || !float || floats) return [];
    const missing = 2 * (USUAL_FLOAT - float.likely);
    if (missing <= 0) return [];
    const drilled = { 'holes.diameter': tenths(holes.diameter.likely + missing) };
    const inBore = carriage.bore && 2 * (USUAL_FLOAT - sidewaysInBore(design, carriage.bore).likely);
    const bored = carriage.bore && inBore ? { 'carriage.bore': tenths(carriage.bore.likely + inBore) } : {};
    return [
      { check, say: 'make the holes wider', set: drilled },
      ...(inBore !== undefined && inBore > 0
        ? [
            { check, say: 'bore the carriage out', set: bored },
            { check, say: 'make the holes wider and bore the carriage out', set: { ...drilled, ...bored } },
          ]
        : []),
    ];
  };
}

function tenths(value: number): number {
  return rounded(Math.ceil(10 * value - 1e-9) / 10);
}
