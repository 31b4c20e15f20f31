import type { Remedy } from '../../judge/advice.js';
import { rounded } from '../../units/format.js';
import type { Measured } from '../../units/measured.js';
import type { Float } from '../common/float.js';
import { sidewaysInBore } from './bore.js';
import { floatLeft, lessPattern } from './checks/mount.js';
import { stopOf } from './float.js';
import type { NutDesign } from './nut-design.js';

/** How far a nut moves sideways while its screws are loose, each way, and at the least [mm]. @source common-practice */
const USUAL_FLOAT = 0.35;
const LEAST_FLOAT = 0.2;

/** What is missing of a room, each way; below 0 where it is too wide. */
function missingOf({ least, likely }: Measured): number {
  return Math.max(USUAL_FLOAT - likely, LEAST_FLOAT - least);
}

/** Ways to let a nut find its screw before it is tightened: wider holes, a wider bore, both. */
export function floatRemedies(check: string): (design: NutDesign) => readonly Remedy[] {
  return (design) => {
    const { holes, carriage, float: floats } = design;
    const float = floatLeft(design);
    if (!holes || !float) return [];
    if (floats) return ownFloat(design, floats, check);
    const missing = 2 * missingOf(float);
    if (missing <= 0) return [];
    const drilled = { 'holes.diameter': tenths(holes.diameter.likely + missing) };
    const inBore = carriage.bore && 2 * missingOf(sidewaysInBore(design, carriage.bore));
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

/** A nut that floats: the bore of its carriage, its holes where the sheet states them, and what stands in them. */
function ownFloat(design: NutDesign, floats: Float, check: string): readonly Remedy[] {
  const { holes, carriage } = design;
  const inHoles = lessPattern(design, stopOf({ ...design, float: floats, holes: holes! }).sideways);
  const short = 2 * missingOf(inHoles);
  const inBore = carriage.bore && 2 * missingOf(sidewaysInBore(design, carriage.bore));
  const drilled = { 'holes.diameter': tenths(holes!.diameter.likely + short) };
  const bored = carriage.bore && inBore && inBore > 0 ? { 'carriage.bore': tenths(carriage.bore.likely + inBore) } : {};
  const sleeve = rounded(Math.floor(10 * (floats.pin - short) + 1e-9) / 10);
  const sideways = rounded(Math.ceil(100 * (floats.sideways + short / 2) - 1e-9) / 100);
  const words =
    short > 0 ? ['make the holes wider', 'thinner sleeves'] : ['make the holes narrower', 'thicker sleeves'];
  return [
    ...(Object.keys(bored).length > 0 ? [{ check, say: 'bore the carriage out', set: bored }] : []),
    { check, say: short > 0 ? 'more float' : 'less float', set: { 'float.sideways': sideways, ...bored } },
    { check, say: words[0]!, set: { ...drilled, ...bored } },
    ...(floats.spacer === 'sleeve' ? [{ check, say: words[1]!, set: { 'float.sleeve': sleeve, ...bored } }] : []),
  ];
}

function tenths(value: number): number {
  return rounded(Math.ceil(10 * value - 1e-9) / 10);
}
