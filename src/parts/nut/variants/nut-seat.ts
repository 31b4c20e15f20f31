import { type Check, hard } from '../../../judge/check.js';
import { plain } from '../../../units/format.js';
import { borneShare, SUDDEN } from '../../common/borne-share.js';
import type { NutDesign } from '../dimensions.js';

/** What a bought nut rests on: the floor of its pocket. */
export function seatOf({ family, catchPocket, finished }: NutDesign) {
  const pocket = family?.kind === 'holder' ? family.pocket : catchPocket;
  if (!pocket) return undefined;
  const bore = family?.kind === 'holder' ? family.bore : finished.thread.major;
  const across = pocket.nut.acrossFlats;
  const floor = finished.length - pocket.depth;
  return {
    /** of the circle within the bought nut's flats, less the bore [mm²] */
    area: Math.max(1e-6, (Math.PI / 4) * (across ** 2 - bore ** 2)),
    /** around that circle, over the height of the plastic it rests on [mm²] */
    around: Math.PI * across * floor,
    floor,
  };
}

/** What a force on a bought nut does to its seat. */
export function seatStresses({ area, around }: { readonly area: number; readonly around: number }, force: number) {
  return [
    { kind: 'pressure', stress: force / area },
    { kind: 'shear', stress: force / around },
  ] as const;
}

/** The load goes from the metal nut into the plastic under it. */
export const nutSeat: Check<NutDesign> = {
  id: 'nut-seat',
  group: 'family',
  question: 'holds',
  title: 'Plastic under the metal nut, as a share of what it bears',
  unit: '',
  source: 'common practice',
  limits: hard({ max: 1 }),
  moves: 'duty.load, duty.temperature, body.length, material',
  grave: true,
  run: (design, { pass }) => {
    const seat = seatOf(design);
    if (!seat) return undefined;
    return borneShare(design, pass, {
      stresses: (force) => seatStresses(seat, force),
      sudden: SUDDEN,
      where: `on a floor of ${plain(seat.floor)} mm`,
      cure: 'a wider metal nut, a longer body, a stronger material or less heat',
    });
  },
};
