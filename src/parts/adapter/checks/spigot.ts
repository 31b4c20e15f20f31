import { type Check, hard, valued } from '../../../judge/check.js';
import { plain, worked } from '../../../units/format.js';
import { scaled, shifted } from '../../../units/measured.js';
import type { AdapterDesign } from '../dimensions.js';

/**
 * A ring that stands out of the carriage keeps the plate off, unless it finds room in it.
 *
 *     room = ⌀recess on that face − ⌀ring, or where there is none ⌀bore of the plate − ⌀ring − 2 · offset
 */
export const spigotRoom: Check<AdapterDesign> = {
  id: 'spigot-room',
  group: 'mount',
  question: 'meets-carriage',
  source: 'common practice',
  title: "Room for the carriage's ring",
  unit: 'mm',
  limits: hard({ min: 0 }),
  moves: 'carriage.spigot, register.carriage, plate.bore',
  run: ({ carriage, layout: { plate } }, { pass: { min = 0 } }) => {
    const { spigot, offset } = carriage;
    if (!spigot) return undefined;
    const { innerStep: recess, bore } = plate;
    const opening = recess
      ? { across: recess.diameter, aside: Math.hypot(recess.center[0] - offset[0], recess.center[1] - offset[1]) }
      : { across: bore, aside: Math.hypot(...offset) };
    const room = shifted(scaled(spigot, -1), opening.across - 2 * opening.aside);
    const where = recess
      ? `a recess ${plain(recess.depth)} mm deep, which must be deeper than it is high`
      : "the plate's bore";
    const cure = room.least < min ? '; register.carriage: recess takes it in, or a wider plate.bore' : '';
    const off = room.likely < 0 ? ', and the plate would ride on it' : '';
    return valued(
      room,
      `a ring of ${plain(spigot.likely)} mm has ${worked(room.likely, 'mm')} mm in ${where}${off}${cure}`,
    );
  },
};
