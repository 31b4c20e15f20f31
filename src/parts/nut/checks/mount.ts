import { type Check, hard, type Limits, soft, told, valued } from '../../../judge/check.js';
import { allKeep, keeps } from '../../../judge/judge.js';
import { mostShare } from '../../../mechanics/bolt/lever-shares.js';
import { allowableStress } from '../../../mechanics/strength/allowable.js';
import { plain, upwards, worked } from '../../../units/format.js';
import { exactly, type Measured, scaled, shifted, smallest, sum } from '../../../units/measured.js';
import {
  type HeadOnHole,
  judgeClamp,
  judgeEngagement,
  judgeHeads,
  judgePosition,
  missRead,
  patternError,
  playLeft,
} from '../../common/bolting.js';
import { floatHead, floatWords } from '../../common/float.js';
import type { HolePattern } from '../../common/hole-pattern.js';
import { headRadius as bareHead, holdsThread, seatDiameter, seatName, washerRadius } from '../../common/joints.js';
import { judgeCases, judgedTemperature } from '../../common/load-cases.js';
import { fitPatterns } from '../../common/pattern-fit.js';
import { judgeFloors } from '../../common/pocket-floor.js';
import { remedyWords } from '../../common/remedy-words.js';
import { holeResidual, planeResidual } from '../../common/residual.js';
import { boreRoom, enteringBore, sidewaysInBore } from '../bore.js';
import type { Holes, NutDesign } from '../dimensions.js';
import { outsideBody } from '../edges.js';
import { stopOf } from '../float.js';
import { boreOf, edgeOf, jointOf, openingRadius, pocketedOf, pocketOf, seatRadius } from '../pockets.js';
import { leverOf } from '../variants/twin.js';
import { holesApart, holesToBore, holesToEdge } from '../walls.js';

type NutCheck = Check<NutDesign>;
const mount = { group: 'mount', question: 'mounts', source: 'common practice' } as const;

const LEAST_GAP = 0.3;
const LEAST_LIGAMENT = 1.2;

/** Holes that miss their screws. */
export const holePosition: NutCheck = {
  ...mount,
  id: 'hole-position',
  title: 'Error of the hole pattern',
  unit: 'mm',
  moves: 'holes.diameter, holes.circle, material.shrink.plane',
  run: (design, limits) => {
    const { holes, carriage } = design;
    if (!holes || holes.screwDiameter === 0) return undefined;
    if (holdsThread(holes.joint) && !carriage.holes) return undefined;
    const fit = carriage.holes ? mismatch(holes, carriage.holes) : undefined;
    const miss = fit?.miss ?? exactly(0);
    const cause =
      fit && miss.likely > 0.005 ? `, ${worked(miss.likely, 'mm')} mm of it because the two patterns differ` : '';
    return judgePosition(
      {
        error: patternError(miss, planeResidual(design, holes.spacing.likely)),
        play: halfPlay(design),
        pattern: boltedPattern(design),
        cause,
      },
      design,
      limits,
    );
  },
};

/** A nut that nothing holds turns with its screw. */
export const mountHeld: NutCheck = {
  ...mount,
  id: 'mount-held',
  title: 'What holds the nut',
  unit: '',
  moves: 'holes, flange',
  grave: true,
  run: ({ holes }) =>
    holes
      ? undefined
      : told(
          'caution',
          'no screws hold it, and what else may is not judged: its carriage must keep it from turning and from going along, with the motor stalled too; holes in a flange are judged',
        ),
};

/** Load on the joint against what its screws clamp with. */
export const boltClamp: NutCheck = {
  ...mount,
  id: 'bolt-clamp',
  question: 'holds',
  title: 'Clamp of screws over load',
  unit: '',
  moves: 'holes.screw, holes.count, holes.joint, material, duty.pull',
  run: (design, limits) =>
    design.holes && !design.float
      ? judgeClamp(boltedPattern(design), { ...design, carries: 'away' }, limits)
      : undefined,
};

/**
 * A thread needs length to hold.
 *
 *     l/d = thickness of the flange / ⌀screw, of inserts and tapped holes
 */
export const holeEngagement: NutCheck = {
  ...mount,
  id: 'hole-engagement',
  question: 'holds',
  title: 'Threaded length in the flange, in diameters',
  unit: '',
  limits: soft({ min: 1.5 }, { min: 1 }),
  moves: 'flange.thickness, holes.screw, holes.joint',
  run: (design, { pass: { min = 0 } }) =>
    design.holes ? judgeEngagement([boltedPattern(design)], min, 'flange') : undefined,
};

/** What holds a floating flange down must not sink into it. */
export const floatPull: NutCheck = {
  ...mount,
  id: 'float-pull',
  question: 'holds',
  title: 'Pressure under floating heads',
  unit: 'MPa',
  source: 'derived: strength by duration and heat',
  moves: 'holes.screw, holes.count, float.spacer, material, duty.load',
  run: (design, limits) => {
    const { holes, float, material } = design;
    if (!holes || !float) return undefined;
    const most = mostShare(holes.centres, leverOf(design), edgeOf(design.finished));
    const hole = printedHole(design, holes).most;
    const ring = (Math.PI / 4) * (floatHead(float) ** 2 - hole ** 2);
    const temperature = judgedTemperature(design.duty);
    return judgeCases(design, limits, {
      borne: ({ force, pull, duration }) =>
        pull === 'onto'
          ? undefined
          : {
              value: ring > 0 ? (most * force) / ring : Infinity,
              allowed: allowableStress(material, { kind: 'pressure', duration, temperature }),
              words: `${plain((most * force) / ring, 2)} MPa on the rings under ${holes.centres.length} heads`,
            },
      cure: 'more or larger screws, or plate washers',
    });
  },
};

/** Heads, washers and nuts that fall through their holes. */
export const headSeat: NutCheck = {
  ...mount,
  id: 'head-seat',
  question: 'holds',
  title: 'Heads and nuts on their holes',
  unit: 'mm',
  grave: true,
  moves: 'holes.screw, holes.diameter, carriage.holes.diameter',
  run: (design, limits) => {
    const { holes, carriage, float } = design;
    if (!holes) return undefined;
    const untold = holes.screwUnsure ? ['holes.screw'] : [];
    if (!holes.screw) return judgeHeads([], untold, limits);
    const joint = jointOf(holes);
    const ours: HeadOnHole = {
      what: float?.spacer === 'shoulder' ? 'head' : seatName(joint),
      across: float ? floatHead(float) : seatDiameter(joint),
      hole: printedHole(design, holes),
      screw: pinOf(design, holes),
    };
    const sleeve =
      float?.spacer === 'sleeve' && carriage.holes
        ? [
            {
              what: 'sleeve on the carriage',
              across: float.pin,
              hole: carriage.holes.diameter,
              screw: holes.screwDiameter,
            },
          ]
        : [];
    const head = holdsThread(holes.joint) || holes.joint === 'hexagon';
    const theirs = carriage.holes && {
      what: head ? 'head on the carriage' : 'washer on the carriage',
      across: 2 * (head ? bareHead(joint) : washerRadius(joint)),
      hole: carriage.holes.diameter,
      screw: holes.screwDiameter,
    };
    return judgeHeads(
      [...(holdsThread(holes.joint) ? [] : [ours]), ...(theirs ? [theirs] : []), ...sleeve],
      untold,
      limits,
    );
  },
};

/** A hole of the nut as it comes out of the printer. */
function printedHole(design: NutDesign, { diameter }: Holes): Measured {
  return sum(diameter, holeResidual(design, diameter.likely));
}

function boltedPattern({ holes, finished, family }: NutDesign) {
  const plate = finished.flange?.thickness ?? finished.length;
  return {
    hole: jointOf(holes!),
    centres: holes!.centres,
    length: plate,
    edge: edgeOf(finished),
    lever: leverOf({ family }),
  };
}

/** Outside of what stands in the nut's holes: a screw, or the sleeve around it. */
function pinOf({ float }: NutDesign, { screwDiameter }: Holes): number {
  return float?.pin ?? screwDiameter;
}

/** Half the play of screws in the nut's holes as they come out, and in the carriage's where they are known. */
function halfPlay(design: NutDesign): Measured {
  const { carriage } = design;
  const holes = design.holes!;
  // what is tightened on the carriage stands still while the nut floats
  const theirs = carriage.holes && !design.float ? carriage.holes.diameter.likely - holes.screwDiameter : 0;
  const ours = holdsThread(holes.joint) ? exactly(0) : shifted(printedHole(design, holes), -pinOf(design, holes));
  return scaled(shifted(ours, theirs), 0.5);
}

/** Distance by which the worst hole misses when the nut is turned and shifted as a whole, and that shift. */
function mismatch(own: HolePattern, theirs: HolePattern): { readonly miss: Measured; readonly shift: number } {
  const half = (theirs.spacing.most - theirs.spacing.likely + own.spacing.most - own.spacing.likely) / 2;
  const { miss, shift } = fitPatterns(own.centres, theirs.centres);
  return { miss: { least: Math.max(0, miss - half), likely: miss, most: miss + half }, shift };
}

/**
 * Heads that meet the body, or holes that do.
 *
 *     gap = lesser of centre to body − fillet − r and centre to bore with its lead-in, or to a stub, − r; worst hole
 *     r = greatest of head or its washer (with its float), pocket and hole there, by the bore any pocket; no flange: bore only
 */
export const holeClearance: NutCheck = {
  ...mount,
  id: 'hole-clearance',
  title: 'Heads and holes to the body',
  unit: 'mm',
  limits: hard({ min: LEAST_GAP }),
  moves: 'holes.circle, holes.screw, holes.head, body.diameter, fillet',
  run: ({ holes, finished, float }, { pass }) => {
    if (!holes) return undefined;
    const { body, flange, fillet, thread, leadIn } = finished;
    // a floating flange comes nearer to its heads by its float
    const head = float && holes.head !== 'none' ? floatHead(float) / 2 + float.sideways : seatRadius(holes);
    const opening = openingRadius(holes);
    const gaps = holes.centres.map((centre) => {
      const toBore = Math.hypot(...centre) - thread.major / 2 - leadIn;
      if (!flange) return toBore - Math.max(head, opening);
      const toBody = outsideBody(body, centre) - fillet;
      const pocket = pocketOf(holes);
      const onBody = Math.max(
        holes.head === 'body' ? head : 0,
        pocket?.side === 'body' ? opening : 0,
        boreOf(holes) / 2,
      );
      const onFace = Math.max(holes.head === 'flange' ? head : 0, opening);
      const toStub = flange.offset > 0 ? outsideBody(body, centre) : toBore;
      return Math.min(toBody - onBody, toStub - onFace);
    });
    const gap = Math.min(...gaps);
    const what = holes.head === 'none' ? 'holes' : `heads on the ${holes.head} side`;
    const cure = keeps(gap, pass)
      ? ''
      : `; ${upwards(pass.min! - gap)} mm are missing: use a larger circle, a smaller screw, a slimmer body, or heads on the other side`;
    return valued(exactly(gap), `${what} keep ${worked(gap, 'mm')} mm from body, fillet and bore${cure}`);
  },
};

/**
 * Holes that tear out.
 *
 *     ratio = least distance of a centre to the edge / ⌀screw; wanted too: (r + 1.2 mm) / ⌀screw
 *     r = radius of the hole's largest opening
 */
export const holeEdge: NutCheck = {
  ...mount,
  id: 'hole-edge',
  title: 'Holes to edge, in diameters',
  unit: '',
  limits: soft({ min: 1.5 }, { min: 1 }),
  moves: 'flange.diameter, holes.circle, holes.screw',
  run: ({ holes, finished }, { of }) => {
    if (!holes) return undefined;
    const unit = holes.screwDiameter || holes.diameter.likely;
    const edge = holesToEdge(finished, holes.centres, 0);
    const ligament = edge - openingRadius(holes);
    const least = (openingRadius(holes) + LEAST_LIGAMENT) / unit;
    const limits: Limits = { pass: { min: Math.max(1.5, least) }, fail: { min: Math.max(1, least) } };
    const { pass } = of(limits);
    const cure = keeps(edge / unit, pass)
      ? ''
      : `; ${upwards(pass.min! * unit - edge)} mm more of edge are wanted: a larger flange or a smaller circle`;
    return valued(
      exactly(edge / unit),
      `centres ${worked(edge, 'mm')} mm from the edge, ${worked(ligament, 'mm')} mm of material left${cure}`,
      limits,
    );
  },
};

/**
 * Holes that run into each other.
 *
 *     ligament = least distance of two centres − 2 · greater of r and (radius of the head or its washer − 0.6 mm)
 *     r = radius of the hole's largest opening
 */
export const holeSpacing: NutCheck = {
  ...mount,
  id: 'hole-spacing',
  title: 'Ligament between the holes',
  unit: 'mm',
  limits: hard({ min: LEAST_LIGAMENT }),
  moves: 'holes.count, holes.circle, holes.screw',
  run: ({ holes }, { pass }) => {
    if (!holes || holes.centres.length < 2) return undefined;
    const reach = Math.max(openingRadius(holes), seatRadius(holes) - LEAST_LIGAMENT / 2);
    const ligament = holesApart(holes.centres, reach);
    const cure = keeps(ligament, pass) ? '' : '; use fewer or smaller screws, or a larger circle';
    return valued(
      exactly(ligament),
      `${worked(ligament, 'mm')} mm between holes, their pockets, heads and washers${cure}`,
    );
  },
};

/**
 * What goes into the carriage's bore must enter it: the body, or the screw alone.
 *
 *     clearance = ⌀bore − ⌀ around body or stub as printed; where the screw goes in alone, ⌀bore − ⌀major
 */
export const mountBore: NutCheck = {
  ...mount,
  id: 'mount-bore',
  title: 'Clearance in the carriage',
  unit: 'mm',
  limits: { pass: { min: 0.15 }, fail: { min: 0 } },
  moves: 'body.diameter, carriage.bore, stands, flange.thickness',
  run: (design, { pass }) => {
    const { bore } = design.carriage;
    if (!bore) return undefined;
    const { what, across } = enteringBore(design);
    const clearance = boreRoom(design, bore);
    const cure = allKeep(clearance, pass)
      ? ''
      : remedyWords(
          design,
          'mount-bore',
          'no slimmer body, wider bore, turned mounting, thicker flange or plate between lets it in: take another flange, or keep the metal nut',
        );
    return valued(
      clearance,
      `a ${what} ${plain(across.likely)} mm across in a bore of ${plain(bore.likely)} mm leaves ${worked(clearance.likely, 'mm')} mm${cure}`,
    );
  },
};

/**
 * A flange that rides on its fillet does not seat.
 *
 *     fillet ≤ gap = (⌀bore of the carriage − width of the body)/2, not below 0
 */
export const mountSeat: NutCheck = {
  ...mount,
  id: 'mount-seat',
  title: 'Fillet beside the body',
  unit: 'mm',
  limits: soft({ max: 1 }),
  moves: 'fillet, carriage.bore',
  run: ({ carriage, finished, stands }, limits) => {
    if (!carriage.bore || !finished.flange || finished.fillet === 0 || stands === 'away') return undefined;
    const gap = Math.max(0, (carriage.bore.likely - finished.body.across) / 2);
    const own = soft({ max: gap });
    const cure = keeps(finished.fillet, limits.of(own).pass)
      ? ''
      : "; chamfer the edge of the carriage's bore by that much, or use a smaller fillet";
    return valued(
      exactly(finished.fillet),
      `a fillet of ${worked(finished.fillet, 'mm')} mm beside a gap of ${worked(gap, 'mm')} mm${cure}`,
      own,
    );
  },
};

/** How far the nut can move sideways before its screws are tightened; negative where not all of them go in at once. */
export function radialFloat(design: NutDesign): Measured | undefined {
  return sidewaysRoom(design, (inHoles) => inHoles);
}

/** The same less what its own pattern may come out off, which takes its part of the play in the holes. */
export function floatLeft(design: NutDesign): Measured | undefined {
  return sidewaysRoom(design, (inHoles) => lessPattern(design, inHoles));
}

/** What a pattern that comes out off leaves of the play in its holes. */
export function lessPattern(design: NutDesign, inHoles: Measured): Measured {
  const { holes, carriage } = design;
  if (!holes || holes.centres.length < 2) return inHoles;
  const { spacing } = holes;
  const read = carriage.holes ? exactly(0) : missRead(spacing);
  return playLeft(inHoles, read, planeResidual(design, spacing.likely));
}

function sidewaysRoom(design: NutDesign, left: (inHoles: Measured) => Measured): Measured | undefined {
  const { holes, carriage } = design;
  if (!holes || holes.screwDiameter === 0 || holdsThread(holes.joint)) return undefined;
  const inHoles = left(
    carriage.holes ? sum(scaled(mismatch(holes, carriage.holes).miss, -1), halfPlay(design)) : halfPlay(design),
  );
  const inBore = carriage.bore ? sidewaysInBore(design, carriage.bore) : undefined;
  return inBore ? smallest(inHoles, inBore) : inHoles;
}

/** An axis held by too many things at once bands or binds. */
export const mountFloat: NutCheck = {
  ...mount,
  id: 'mount-float',
  title: 'Sideways room of the nut',
  unit: 'mm',
  limits: soft({ min: 0.2, max: 0.5 }),
  moves: 'float, holes.diameter, carriage.bore',
  run: (design, { pass }) => {
    const { holes, float: floats } = design;
    const { min = 0 } = pass;
    const float = floatLeft(design);
    if (!holes || !float) return undefined;
    if (floats) {
      const stop = { ...stopOf({ ...design, float: floats, holes }), sideways: float };
      const cure = allKeep(float, pass) ? '' : remedyWords(design, 'mount-float', 'a float of 0.2 to 0.5 mm is usual');
      return valued(float, `${floatWords(floats, stop)}${cure}`);
    }
    const help =
      float.least < min
        ? remedyWords(design, 'mount-float', 'no wider hole or bore alone lets the nut find the screw')
        : '; tighten the screws with the axis at the end where the nut sits';
    const room =
      float.likely < 0
        ? 'no room to align: the nut goes in nowhere with all of its screws'
        : `room to align, no float: the nut can move ${worked(float.likely, 'mm')} mm sideways until its screws are tightened`;
    return valued(float, `${room}${help}`);
  },
};

/**
 * What holds an insert, a nut or a head must not burst.
 *
 *     wall = lesser of centre to edge − r and axis to centre − r − ⌀major of the nut/2
 *     r = radius of the hole's largest opening
 */
export const pocketWall: NutCheck = {
  ...mount,
  id: 'pocket-wall',
  title: 'Least wall beside pockets',
  unit: 'mm',
  moves: 'holes.circle, flange.diameter, body.diameter',
  run: ({ holes, finished }, { of }) => {
    if (!holes || holes.joint === 'through') return undefined;
    const wall = pocketWallOf(holes, finished);
    const limits = holes.joint === 'insert' ? soft({ min: 2 }, { min: 1.5 }) : hard({ min: 1.6 });
    const { pass } = of(limits);
    const missing = upwards(pass.min! - wall);
    const cure = keeps(wall, pass) ? '' : `; ${missing} mm are missing: a larger flange or another circle`;
    return valued(exactly(wall), `${worked(wall, 'mm')} mm beside the ${holes.joint}${cure}`, limits);
  },
};

function pocketWallOf(holes: Holes, finished: NutDesign['finished']): number {
  const opening = openingRadius(holes);
  return Math.min(
    holesToEdge(finished, holes.centres, opening),
    holesToBore(holes.centres, opening, finished.thread.major / 2),
  );
}

/**
 * A pocket needs a floor for its screw to pull on.
 *
 *     layers = (thickness of the flange − depth of the pocket) / layer; without a flange, length of the nut
 */
export const pocketFloor: NutCheck = {
  ...mount,
  id: 'pocket-floor',
  title: 'Floor of pockets, in layers',
  unit: '',
  limits: soft({ min: 8 }, { min: 4 }),
  moves: 'flange.thickness, holes.joint',
  run: (design, { pass }) => {
    const pocket = pocketedOf(design);
    if (!pocket) return undefined;
    const { printer } = design;
    const { floor } = pocket;
    const layers = floor / printer.layer;
    const missing = upwards(pass.min! * printer.layer - floor);
    const cure = keeps(layers, pass) ? '' : `; make the flange ${missing} mm thicker`;
    return valued(
      exactly(layers),
      `${worked(floor, 'mm')} mm of floor under a pocket ${plain(pocket.pocket.depth)} mm deep${cure}`,
    );
  },
};

/** The floor under sunk heads and nuts is a ledge that the screws pull on. */
export const floorBending: NutCheck = {
  ...mount,
  id: 'floor-bending',
  question: 'holds',
  title: 'Bending of the floor under sunk heads and nuts',
  unit: 'MPa',
  moves: 'flange.thickness, holes.joint, duty.load, duty.pull, material',
  grave: true,
  run: (design, limits) => {
    const pocketed = pocketedOf(design);
    return pocketed && judgeFloors([{ ...pocketed, carries: 'away' }], design, limits);
  },
};
