import { type Check, hard, valued } from '../../../judge/check.js';
import { allKeep } from '../../../judge/judge.js';
import { plain, worked } from '../../../units/format.js';
import { scaled, shifted, smallest } from '../../../units/measured.js';
import { fourLines, LEAST_WALL } from '../../common/walls.js';
import type { NutDesign } from '../dimensions.js';
import { openingRadius } from '../pockets.js';
import { pinHoles } from '../variants/pin-holes.js';
import { widestBore } from '../variants/twin.js';
import { pinToBore } from '../variants/walls.js';
import { besideBore, holesToBore } from '../walls.js';

type NutCheck = Check<NutDesign>;

/**
 * A thin wall splits.
 *
 *     wall = least of w/2 − R, axis to nearest hole − ⌀hole/2 − R, and axis to a split nut's pins − ⌀bore/2 − R, ± half the doubt of the screw's major
 *     R = ⌀major of the nut/2, of a twin nut 0.3 mm more; w = least across the body, its flats and the flange's flats
 */
export const wall: NutCheck = {
  id: 'wall',
  group: 'body',
  question: 'holds',
  title: 'Least wall beside the thread',
  unit: 'mm',
  source: 'common practice',
  limits: hard({ min: LEAST_WALL }),
  moves: 'body.diameter, holes.circle',
  run: ({ finished, holes, screw, printer, family }, limits) => {
    const bore = widestBore(finished, family);
    const spread = scaled(shifted(screw.major, -screw.major.likely), -0.5);
    const beside = besideBore(finished, bore);
    const inFlange = holes ? holesToBore(holes.centres, openingRadius(holes), bore) : Infinity;
    const toPin = family?.kind === 'split' ? pinToBore(pinHoles(family.pins), bore) : Infinity;
    const least = smallest(...[beside, inFlange, toPin].map((one) => shifted(spread, one)));
    const lines = least.likely / printer.lineWidth;
    const own = limitsFor(printer.nozzle);
    const { pass } = limits.of(own);
    const slimmest = 2 * bore + 2 * (pass.min! + spread.likely - spread.least);
    const cure = allKeep(least, pass)
      ? ''
      : toPin < Math.min(beside, inFlange)
        ? ' beside the pins; a deeper lead_in sets them off'
        : inFlange < beside
          ? '; a larger circle of holes leaves more'
          : `; a body of ${plain(slimmest, 2)} mm is the slimmest for this screw`;
    return valued(least, `${worked(least.likely, 'mm')} mm, ${plain(lines, 1)} lines${cure}`, own);
  },
};

/** Four lines carry a load; 1.6 mm are four lines of the usual nozzle, and a wide nozzle wants more. */
function limitsFor(nozzle: number) {
  return { pass: { min: fourLines(nozzle) }, fail: { min: LEAST_WALL } };
}
