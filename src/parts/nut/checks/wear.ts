import { type Check, notJudged, soft, valued } from '../../../fit/check.js';
import { slidingPerTravel, slidingSpeed } from '../../../mechanics/sliding.js';
import { threadPressure } from '../../../mechanics/thread/bearing-pressure.js';
import { pressureVelocity, wearDepth } from '../../../mechanics/thread/wear.js';
import { plain } from '../../../units/format.js';
import { exactly, shifted, smallest } from '../../../units/measured.js';
import type { NutDesign } from '../dimensions.js';
import { boreGrowth, isHeld, judgedFit } from '../stack.js';
import { engagementOf } from './strength.js';

type NutCheck = Check<NutDesign>;
const wear = { group: 'wear', question: 'holds', source: 'common practice' } as const;

/** Grease about doubles what a plastic nut stands. @source common-practice */
const GREASED = 2;

/** Figures from here on are those of POM and PA, which have been published; lower ones are cautious guesses. */
const PUBLISHED_PV = 0.1;

/** A nut that rubs too hard and too fast melts. */
export const wearPv: NutCheck = {
  ...wear,
  id: 'wear-pv',
  title: 'Pressure times sliding speed',
  unit: 'MPa·m/s',
  moves: 'duty.load, duty.feed, duty.moving, duty.grease, body.length, material',
  run: (design) => {
    const { duty, material, finished, screw } = design;
    if (duty.load === undefined) return notJudged('duty.load');
    if (duty.feed === undefined) return notJudged('duty.feed');
    const pressure = threadPressure({ ...engagementOf(design), axialForce: duty.load, share: 1 });
    const speed = slidingSpeed({
      feed: duty.feed,
      lead: finished.lead,
      meanDiameter: screw.pitchDiameter.likely,
    });
    const moving = duty.moving ?? 1;
    const pv = pressureVelocity({ pressure, slidingSpeed: speed, moving });
    const [dry, greased] = [material.pvLimit, GREASED * material.pvLimit];
    const most = duty.grease === 'greased' ? greased : dry;
    const share =
      duty.moving === undefined ? 'all the time, as duty.moving is missing' : `${plain(100 * moving, 0)} % of the time`;
    return valued(
      exactly(pv),
      `${plain(pressure)} MPa at ${plain(speed, 0)} mm/s ${share}; ${material.name} stands ${plain(dry)} MPa·m/s dry, ${plain(greased)} greased`,
      soft({ max: most }, { max: material.pvLimit >= PUBLISHED_PV ? most : 3 * most }),
    );
  },
};

const TRAVEL = 100_000;
/** Wear that a user notices as play: half the backlash that is usual on a light axis. */
const NOTICED = 0.05;

/** Wear adds to the backlash. */
export const wearDepthCheck: NutCheck = {
  ...wear,
  id: 'wear-depth',
  title: 'Wear of the flanks in 100 m of travel',
  unit: 'mm',
  moves: 'duty.load, body.length, material',
  run: (design) => {
    const { duty, material, finished, screw } = design;
    if (material.wear === undefined) return undefined;
    if (duty.load === undefined) return notJudged('duty.load');
    const pressure = threadPressure({ ...engagementOf(design), axialForce: duty.load, share: 1 });
    const sliding = TRAVEL * slidingPerTravel({ lead: finished.lead, meanDiameter: screw.pitchDiameter.likely });
    const depth = wearDepth({ wearRate: material.wear, pressure, slidingDistance: sliding });
    const until =
      depth > 0 ? `; ${plain((0.1 * TRAVEL) / (1000 * depth), 0)} m until the play has grown by 0.1 mm` : '';
    return valued(
      exactly(depth),
      `${plain(depth, 4)} mm off the flanks, measured dry${until}`,
      soft({ max: NOTICED }, { max: 3 * NOTICED }),
    );
  },
};

/** A nut that fits dry may bind when it has taken up moisture. */
export const moistureCheck: NutCheck = {
  ...wear,
  id: 'moisture',
  question: 'turns',
  title: 'Clearance left in moist air',
  unit: 'mm',
  limits: soft({ min: 0.05 }),
  moves: 'fit.diametral, fit.axial, carriage.bore, body.diameter, body.length, material',
  run: (design) => {
    const { material, finished } = design;
    if (material.moistureGrowth === 0) return undefined;
    const { diametral, play } = judgedFit(design);
    const bore = boreGrowth(design);
    const longer = material.moistureGrowth * finished.length;
    const held = isHeld(design);
    const how = held
      ? `closes by ${plain(-bore)} mm if its body is held all around`
      : `opens by ${plain(bore)} mm as nothing holds the body`;
    const left = smallest(shifted(diametral, bore), shifted(play, -longer));
    return valued(
      left,
      `the bore ${how}, the pitch drifts by ${plain(longer)} mm over the nut; ${plain(left.likely)} mm are left, measured two days after printing`,
    );
  },
};
