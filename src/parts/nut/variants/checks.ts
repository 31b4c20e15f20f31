import { type Check, hard, notJudged, soft, told, valued } from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { plain, upwards, worked } from '../../../units/format.js';
import { exactly } from '../../../units/measured.js';
import { CATCH_FINDING, CATCH_GAP, screwHolding, thinCatch } from '../../common/bought-nut.js';
import type { NutDesign } from '../dimensions.js';
import { openingRadius } from '../pockets.js';
import { neededSpringForce, springForceOf } from './anti-backlash.js';
import { keyBending } from './key-bending.js';
import { nutHeld } from './nut-held.js';
import { nutSeat } from './nut-seat.js';
import { pinHoles } from './pin-holes.js';
import { splitHold } from './split-hold.js';
import { twinBinding, twinPressure } from './twin-checks.js';
import { aroundNut, holesToJoint } from './walls.js';

type NutCheck = Check<NutDesign>;
const about = { group: 'family', question: 'holds', source: 'common practice' } as const;

const LEAST_LIGAMENT = 1.2;

/** What a holder, which has no thread of its own, is not judged by. */
const OF_A_THREAD = /^(thread-|print-(layers|thread-depth|overhang)$|wear-|wall$|creep$|moisture$)/;
/** What a nut whose play is taken up is not judged by. */
const PLAY: readonly string[] = ['thread-backlash', 'thread-axial'];

/** The checks of a plain nut, less those that its family makes pointless, and the family's own. */
export function withVariantChecks(checks: readonly NutCheck[]): readonly NutCheck[] {
  const own = [
    splitJoint,
    splitHold,
    pocketRoom,
    nutSeat,
    nutHeld,
    springForce,
    springTravel,
    keyBending,
    twinBinding,
    twinPressure,
    catchNut,
  ];
  return [...checks.map(unlessPointless), ...own];
}

function unlessPointless(check: NutCheck): NutCheck {
  return { ...check, run: (design, limits) => (isPointless(check.id, design) ? undefined : check.run(design, limits)) };
}

function isPointless(id: string, { family }: NutDesign): boolean {
  if (family?.kind === 'holder') return OF_A_THREAD.test(id);
  if (family?.kind === 'anti-backlash') return PLAY.includes(id);
  // what its slit takes out of the play is no loss of it
  if (family?.kind === 'clamped') return id === 'thread-axial';
  return false;
}

/**
 * Holes and pins must stay clear of each other and of the plane in which the nut is split.
 *
 *     wall = lesser of centre to joint and centre to line of a pin − radius of its bore, at the worst hole, − r
 *     r = radius of the hole's largest opening
 */
const splitJoint: NutCheck = {
  ...about,
  id: 'split-joint',
  title: 'Wall beside the joint',
  unit: 'mm',
  limits: hard({ min: LEAST_LIGAMENT }),
  moves: 'holes.start, holes.circle',
  run: ({ family, holes, finished }, { pass: { min = LEAST_LIGAMENT } }) => {
    if (family?.kind !== 'split' || !holes) return undefined;
    const least = holesToJoint(pinHoles(family.pins), holes.centres, openingRadius(holes));
    const cure =
      least < min ? `; turn the pattern: holes.start: ${plain(180 / finished.holes!.centres.length)} deg, for one` : '';
    return valued(exactly(least), `${worked(least, 'mm')} mm beside the plane through the axis along X${cure}`);
  },
};

/**
 * Holes through the body must not break into the pocket of a bought nut.
 *
 *     wall = least width of the body/2 − R; without a flange the lesser of this and axis to hole − r − R
 *     R = radius of the pocket over its corners, r = radius of the hole's largest opening
 */
const pocketRoom: NutCheck = {
  ...about,
  id: 'nut-pocket-wall',
  title: 'Wall around the bought nut',
  unit: 'mm',
  limits: hard({ min: LEAST_LIGAMENT }),
  moves: 'body, holes.circle',
  run: ({ family, catchPocket, finished, holes }, { pass: { min = LEAST_LIGAMENT } }) => {
    const pocket = family?.kind === 'holder' ? family.pocket : catchPocket;
    if (!pocket) return undefined;
    const beside = { centres: holes?.centres ?? [], opening: holes ? openingRadius(holes) : 0 };
    const least = aroundNut(pocket, finished, beside);
    const cure = least < min ? `; make the body ${upwards(2 * (min - least))} mm wider, or move the holes out` : '';
    return valued(exactly(least), `${worked(least, 'mm')} mm beside the corners of the bought nut${cure}`);
  },
};

/** The spring must overcome what pushes the two nuts together. */
const springForce: NutCheck = {
  ...about,
  id: 'spring-force',
  question: 'turns',
  title: 'Spring force over what it moves',
  unit: '',
  limits: soft({ min: 1.2 }, { min: 1 }),
  moves: 'duty.load, family.spring.working, family.spring.rate',
  run: (design, { pass: { min = 1 } }) => {
    const { family } = design;
    if (family?.kind !== 'anti-backlash') return undefined;
    const needed = neededSpringForce(design);
    if (needed === undefined) return notJudged('duty.load');
    const { working } = family.spring;
    const force = springForceOf(family);
    const cure =
      force < min * needed
        ? `; ${plain(needed * min, 1)} N are wanted: a stiffer spring, or a shorter family.spring.working`
        : '';
    return valued(
      exactly(force / needed),
      `${plain(force, 1)} N at ${plain(working)} mm keep both nuts on their flanks, so no play is left, against ${plain(needed, 1)} N${cure}`,
    );
  },
};

/**
 * A spring on its last turn is no spring.
 *
 *     left = length of the spring in the nut − its solid length
 */
const springTravel: NutCheck = {
  ...about,
  id: 'spring-travel',
  question: 'turns',
  title: 'Travel left in the spring',
  unit: 'mm',
  limits: soft({ min: 1 }, { min: 0.3 }),
  moves: 'family.spring.working',
  run: ({ family }, { pass: { min = 0 } }) => {
    if (family?.kind !== 'anti-backlash') return undefined;
    const { working, solid } = family.spring;
    const left = working - solid;
    const cure = left < min ? `; a family.spring.working from ${plain(solid + min)} mm on leaves it` : '';
    return valued(exactly(left), `${plain(working)} mm in the nut, solid at ${plain(solid)} mm${cure}`);
  },
};

/** A screw that does not hold wants a second, metal nut. */
export const catchNut: NutCheck = {
  id: 'catch-nut',
  group: 'drive',
  question: 'axis',
  source: 'common practice',
  title: 'Catch nut',
  unit: 'mm',
  limits: soft(CATCH_GAP.limits),
  moves: 'catch_nut, mounting',
  run: ({ catchPocket, screw, finished, duty, mounting, family }, { pass }) => {
    if (catchPocket && duty.axis === 'vertical' && mounting === 'flange-down')
      return told(
        'fail',
        'the pocket is on the body end, which is above: a nut there catches nothing. Mount the flange up, or leave catch_nut out',
      );
    // a pocket above the nut catches nothing
    const missing = [
      ...(duty.axis === undefined && mounting === 'flange-down' ? ['duty.axis'] : []),
      ...(duty.axis !== 'horizontal' && mounting === undefined ? ['mounting'] : []),
    ];
    if (catchPocket && missing.length > 0) return notJudged(...missing);
    const thin = catchPocket && thinCatch(catchPocket.nut.height, screw.pitch.likely);
    if (thin) return told('caution', thin);
    if (catchPocket) {
      const thread = finished.length - catchPocket.depth;
      const cure = keeps(catchPocket.gap, pass) ? '' : `; a catch_nut.gap of ${plain(CATCH_GAP.usual)} mm is usual`;
      return valued(
        exactly(catchPocket.gap),
        `the metal nut stands ${plain(catchPocket.gap)} mm off and bears nothing until the printed thread, ${worked(thread, 'mm')} mm of it, fails${cure}`,
      );
    }
    if (duty.axis === 'horizontal' || family?.kind === 'holder') return undefined;
    if (screwHolding(screw) === 'holds') return undefined;
    if (duty.axis === undefined) return notJudged('duty.axis');
    if (family?.kind === 'twin')
      return told(
        'caution',
        'a twin nut has no place for a metal one, and the screw may not hold its load without power: fit a brake or a counterweight',
      );
    return told('caution', CATCH_FINDING);
  },
};
