import { type Check, soft, told, valued } from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { plain } from '../../../units/format.js';
import { exactly, shifted, widened } from '../../../units/measured.js';
import { judgeHeads } from '../../common/bolting.js';
import { shrinkAppliedOnce } from '../../common/checks.js';
import { headRadius, washerRadius } from '../../common/joints.js';
import { holeResidual, PLACE_SCATTER, planeResidual } from '../../common/residual.js';
import { LEAST_WALL } from '../../common/walls.js';
import type { EndHolderDesign } from '../dimensions.js';
import { edgeDistance } from '../layout.js';
import { openRadius } from '../plan.js';
import { thinnestWall } from '../walls.js';
import { jointOf } from './hold.js';

type HolderCheck = Check<EndHolderDesign>;
const about = { group: 'bolts', question: 'bolts-on', unit: 'mm', source: 'common practice' } as const;

/** Bolts pass their holes wherever the printer puts these; what is left lets the holder find its place. */
const holeClearance: HolderCheck = {
  ...about,
  id: 'hole-clearance',
  title: 'Play of bolts in their holes',
  limits: soft({ min: 0.2 }, { min: 0 }),
  moves: 'holes.fit, holes.diameter, printer.hole_offset',
  run: (design, { pass }) => {
    const { pattern, finished } = design;
    if (pattern.screw === undefined)
      return told('caution', 'no listed bolt passes these holes; name one (holes.screw)');
    const place = PLACE_SCATTER + planeResidual(design, pattern.spacing.likely).most;
    const hole = shifted(holeResidual(design, finished.holes.diameter), finished.holes.diameter);
    const play = widened(shifted(hole, -pattern.screwDiameter), place);
    const cure = keeps(play.least, pass) ? '' : '; take the coarse series (holes.fit: coarse)';
    return valued(play, `${pattern.screw} in ${plain(finished.holes.diameter, 2)} mm${cure}`);
  },
};

/** What sits on a hole is held by it. */
const headSeat: HolderCheck = {
  ...about,
  id: 'head-seat',
  title: 'Washers on their holes',
  grave: true,
  moves: 'holes.screw, holes.diameter',
  run: (design, limits) => {
    const { pattern, finished } = design;
    const hole = shifted(holeResidual(design, finished.holes.diameter), finished.holes.diameter);
    const across = 2 * washerRadius(jointOf(design));
    const rows = pattern.screw ? [{ what: 'washer', across, hole, screw: pattern.screwDiameter }] : [];
    return judgeHeads(rows, pattern.screwUnsure ? ['holes.screw'] : [], limits);
  },
};

/**
 * Washers lie on the body, clear of its edge and of the bearing.
 *
 *     room = min(hole to the edge of the body, hole to the middle − radius of the opening) − ⌀washer/2, the least
 */
const headRoom: HolderCheck = {
  ...about,
  id: 'head-room',
  title: 'Room around the washers',
  moves: 'holes, body.length, body.width',
  run: (design, inForce) => {
    const { finished } = design;
    const hole = jointOf(design);
    if (hole.screw === undefined) return undefined;
    const ring = washerRadius(hole);
    // under a plate the heads lie on it, and only its own opening is in their way
    const open = finished.cover ? finished.cover.bore / 2 : openRadius(finished);
    const room = Math.min(
      ...finished.holes.centres.map((at) => Math.min(edgeDistance(finished, at), Math.hypot(...at) - open) - ring),
    );
    const own = soft({ min: 0 }, { min: headRadius(hole) - ring });
    const isClear = keeps(room, inForce.of(own).pass);
    const cure = isClear ? '' : '; make the body larger, or set the holes further from the middle';
    return valued(exactly(room), `washers of ${plain(2 * ring, 1)} mm${cure}`, own);
  },
};

/**
 * Every wall is thick enough to be printed as one.
 *
 *     wall = least of body (its floor under a bearing), plate, ring of a lip, and distances of opening, holes and edge − radii
 */
const wall: HolderCheck = {
  ...about,
  id: 'wall',
  group: 'print',
  question: 'prints',
  title: 'Thinnest wall',
  limits: soft({ min: LEAST_WALL }, { min: 1.2 }),
  moves: 'body, holes',
  run: ({ finished, printer }, { pass }) => {
    const { where, size } = thinnestWall(finished);
    const cure = keeps(size, pass) ? '' : '; make the body larger or thicker';
    return valued(exactly(size), `${where}: ${plain(size, 2)} mm, ${plain(size / printer.lineWidth, 1)} lines${cure}`);
  },
};

/** Whether it can be bolted on and printed. */
export const BOLT_CHECKS: readonly HolderCheck[] = [holeClearance, headSeat, headRoom, wall, shrinkAppliedOnce];
