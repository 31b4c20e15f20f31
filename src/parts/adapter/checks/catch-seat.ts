import { type Check, hard } from '../../../judge/check.js';
import { ledgeStress } from '../../../mechanics/flange/ledge.js';
import { plain } from '../../../units/format.js';
import { borneShare, SUDDEN } from '../../common/borne-share.js';
import type { AdapterDesign } from '../dimensions.js';

/**
 * The day the working nut fails, the catch nut falls on the floor of its pocket: what lies over the carriage's opening is a ledge
 * around the bore, whose corner is sharp.
 *
 *     share = greatest of pressure on the ring under the nut and stress of the ledge, over what the plastic bears
 *     ring = π/4·(w² − ⌀bore²), w = flats of the nut; ledge = π·w long, (w − ⌀bore)/4 wide, plate − pockets thick
 */
export const catchSeat: Check<AdapterDesign> = {
  id: 'nut-seat',
  group: 'strength',
  question: 'holds',
  title: 'Plastic under the catch nut, as a share of what it bears',
  unit: '',
  source: 'common practice',
  limits: hard({ max: 1 }),
  moves: 'plate.thickness, plate.bore, duty.load, duty.temperature, material',
  grave: true,
  run: (design, { pass }) => {
    const { catchNut, screw, duty, material, layout } = design;
    const { catchPocket, innerStep, thickness, bore } = layout.plate;
    if (!catchNut || !catchPocket || !screw) return undefined;
    const across = catchNut.acrossFlats;
    const floor = thickness - catchPocket.depth - (innerStep?.depth ?? 0);
    const ring = Math.max(1e-6, (Math.PI / 4) * (across ** 2 - bore ** 2));
    const ledge = { arm: Math.max(0, across - bore) / 4, root: Math.PI * across, thickness: floor };
    const backed = isBacked(design, across);
    return borneShare({ duty, material, screw }, pass, {
      stresses: (force) => [
        { kind: 'pressure', stress: force / ring },
        ...(backed ? [] : [{ kind: 'tension' as const, stress: ledgeStress({ ...ledge, force }) }]),
      ],
      sudden: SUDDEN,
      where: `on a floor of ${plain(floor, 2)} mm`,
      cure: 'a thicker plate, a stronger material or less heat',
    });
  },
};

/** Whether the carriage's opening is so narrow that all of the nut's floor lies on it. */
function isBacked({ carriage }: AdapterDesign, across: number): boolean {
  const aside = Math.hypot(...carriage.offset);
  return carriage.bore !== undefined && carriage.bore.most + 2 * aside < across;
}
