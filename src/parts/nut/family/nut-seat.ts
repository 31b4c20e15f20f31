import { type Check, hard, notJudged, valued } from '../../../fit/check.js';
import { allowableStress, standingDuration } from '../../../mechanics/strength/allowable.js';
import { ROOM } from '../../../mechanics/strength/plastic.js';
import { plain } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { stallForce } from '../../common/stall-force.js';
import type { NutDesign } from '../dimensions.js';

/** A metal nut that takes over falls onto its seat: twice the load for a moment. @source textbook-design, sudden load */
const SUDDEN = 2;

interface Seat {
  /** of the circle within the bought nut's flats, less the bore [mm²] */
  readonly area: number;
  /** around that circle, over the height of the plastic it rests on [mm²] */
  readonly around: number;
  readonly floor: number;
}

/** What a bought nut rests on: the floor of its pocket. */
function seatOf({ family, catchPocket, finished }: NutDesign): Seat | undefined {
  const pocket = family?.kind === 'holder' ? family.pocket : catchPocket;
  if (!pocket) return undefined;
  const bore = family?.kind === 'holder' ? family.bore : finished.thread.major;
  const across = pocket.nut.acrossFlats;
  const floor = finished.length - pocket.depth;
  return {
    area: Math.max(1e-6, (Math.PI / 4) * (across ** 2 - bore ** 2)),
    around: Math.PI * across * floor,
    floor,
  };
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
  run: (design) => {
    const seat = seatOf(design);
    if (!seat) return undefined;
    const { duty, material } = design;
    if (duty.load === undefined) return notJudged('duty.load');
    const temperature = duty.temperature ?? ROOM;
    const sudden = Math.max(SUDDEN * duty.load, stallForce(design) ?? 0);
    const rows = (
      [
        [duty.load, standingDuration(duty.axis)],
        [sudden, 'moment'],
      ] as const
    ).flatMap(([force, duration]) =>
      (['pressure', 'shear'] as const).map((kind) => {
        const stress = force / (kind === 'pressure' ? seat.area : seat.around);
        const most = allowableStress(material, { kind, duration, temperature });
        return { force, kind, stress, most, share: most > 0 ? stress / most : Number.MAX_VALUE };
      }),
    );
    const worst = rows.reduce((a, b) => (b.share > a.share ? b : a));
    if (duty.temperature === undefined && worst.share <= 1) return notJudged('duty.temperature');
    const cure = worst.share > 1 ? '; a wider metal nut, a longer body, a stronger material or less heat' : '';
    return valued(
      exactly(worst.share),
      `${plain(worst.stress)} MPa of ${worst.kind} under ${plain(worst.force, 0)} N on a floor of ${plain(seat.floor)} mm, of ${plain(worst.most)} MPa at ${plain(temperature, 0)} °C${cure}`,
    );
  },
};
