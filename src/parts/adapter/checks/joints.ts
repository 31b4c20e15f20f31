import {
  type Check,
  hard,
  type LimitsInForce,
  notJudged,
  type Outcome,
  soft,
  told,
  valued,
} from '../../../judge/check.js';
import { keeps } from '../../../judge/judge.js';
import { pressureWhileTightening } from '../../../mechanics/strength/allowable.js';
import type { Pull } from '../../../sheet/sections/duty.js';
import { fastenerThread } from '../../../standards/fasteners/sizes.js';
import { plain, upwards, worked } from '../../../units/format.js';
import { exactly, scaled, shifted, sum } from '../../../units/measured.js';
import {
  type BoltedPattern,
  clampForce,
  type HeadOnHole,
  judgeClamp,
  judgeEngagement,
  judgeHeads,
  judgePosition,
  missRead,
  patternError,
} from '../../common/bolting.js';
import { floatHead } from '../../common/float.js';
import { turned } from '../../common/hole-pattern.js';
import { headRadius, holdsThread, seatDiameter, seatName, washerRadius } from '../../common/joints.js';
import { judgeFloors, type PocketedPattern } from '../../common/pocket-floor.js';
import { remedyWords } from '../../common/remedy-words.js';
import { holeResidual, planeResidual } from '../../common/residual.js';
import { reachAlong } from '../../common/slab.js';
import type { AdapterDesign } from '../dimensions.js';
import { drilledWords } from '../drilled.js';
import type { PatternHoles } from '../plan.js';
import { carriageScrews, nutScrews, type Screws } from '../screws.js';
import { flangeShape, insideFlangeOf } from '../seated-nut.js';
import type { Side } from '../sides.js';
import { slabOf } from '../slab.js';

type AdapterCheck = Check<AdapterDesign>;
const joint = { group: 'mount', question: 'holds', source: 'common practice' } as const;

/** A side of the plate with the holes that were drawn for it. */
interface Drawn {
  readonly side: Side;
  readonly holes: PatternHoles;
}

function nutSide({ nut, layout: { plate } }: AdapterDesign): Drawn | undefined {
  return nut && plate.nutHoles ? { side: nut, holes: plate.nutHoles } : undefined;
}

function carriageSide({ carriage, layout: { plate } }: AdapterDesign): Drawn {
  return { side: carriage, holes: plate.carriageHoles };
}

function bolted({ holes }: Drawn, edge?: BoltedPattern['edge']): BoltedPattern {
  const held = Math.min(holes.to - holes.from, holes.blind ?? Infinity);
  return { hole: holes.hole, centres: holes.centres, length: held, ...(edge ? { edge } : {}) };
}

/** How far the plate lies on the carriage along a unit vector. */
function plateEdge({ layout: { plate } }: AdapterDesign): NonNullable<BoltedPattern['edge']> {
  const { outline } = slabOf(plate);
  return (along) => reachAlong(outline, along);
}

/** How far the nut's flange lies on the plate. */
function flangeEdge({ nut, layout: { clocking } }: AdapterDesign): NonNullable<BoltedPattern['edge']> {
  const outline = flangeShape(nut!.flange).map((at) => turned(at, clocking.turn));
  return (along) => reachAlong(outline, along);
}

/** Outside of what stands in the holes of the bought part: a screw, or the sleeve around it. */
function pinOf({ side, holes }: Drawn, { nut, spacers }: AdapterDesign): number {
  return side === nut && spacers ? spacers.pin : fastenerThread(holes.hole.screw!).diameter;
}

/** Whether holes of the bought part let it float. */
function floats({ side }: Drawn, { nut, spacers }: AdapterDesign): boolean {
  return spacers !== undefined && side === nut;
}

/** Whether all screws of a pattern go in together. */
function position(drawn: Drawn | undefined, design: AdapterDesign, limits: LimitsInForce): Outcome | undefined {
  const screw = drawn?.holes.hole.screw;
  if (!drawn || screw === undefined) return undefined;
  const { pattern, tapped } = drawn.side;
  const nominal = fastenerThread(screw).diameter;
  const held = holdsThread(drawn.holes.hole.joint);
  const { diameter } = drawn.holes.hole;
  const plate = held ? exactly(0) : shifted(holeResidual(design, diameter), diameter - nominal);
  const bought = tapped ? 0 : pattern.diameter.likely - pinOf(drawn, design);
  return judgePosition(
    {
      error: patternError(missRead(pattern.spacing), planeResidual(design, pattern.spacing.likely)),
      play: scaled(shifted(plate, bought), 0.5),
      pattern: bolted(drawn),
      cause: held && tapped ? '; both sides are threaded, which leaves no play' : '',
      remedy: floats(drawn, design) ? drilledWords(design) : undefined,
    },
    design,
    limits,
  );
}

/** Screws that miss the holes of the nut. */
export const nutPosition: AdapterCheck = {
  ...joint,
  id: 'hole-position-nut',
  question: 'meets-nut',
  title: "Error of the nut's pattern",
  unit: 'mm',
  moves: 'nut.holes, nut.joint',
  run: (design, limits) => position(nutSide(design), design, limits),
};

/** Screws that miss the holes of the carriage. */
export const carriagePosition: AdapterCheck = {
  ...joint,
  id: 'hole-position-carriage',
  question: 'meets-carriage',
  title: 'Error of the carriage holes',
  unit: 'mm',
  moves: 'carriage.holes, carriage.joint',
  run: (design, limits) => position(carriageSide(design), design, limits),
};

/** Screws between nut and plate against the load that would open the joint. */
export const nutClamp: AdapterCheck = {
  ...joint,
  id: 'bolt-clamp-nut',
  title: "Clamp of nut's screws over load",
  unit: '',
  moves: 'nut.joint, nut.holes, material, duty.pull',
  run: (design, limits) => {
    const drawn = nutSide(design);
    // sleeves and shoulders are clamped to the plate; bare screws are not tightened
    if (!drawn || (design.kind === 'floating' && (design.spacers?.spacer ?? 'bare') === 'bare')) return undefined;
    return judgeClamp(bolted(drawn, flangeEdge(design)), { ...design, carries: carriedByNut(design) }, limits);
  },
};

/** The way of the load that the nut's screws carry: a flange on the carriage's side is pulled off its seat by what presses the plate on. */
function carriedByNut({ nut }: AdapterDesign): Pull {
  return nut!.seat === 'outside' ? 'away' : 'onto';
}

/** A sleeve stands on the plate with all of its screw's force. */
export const sleeveSeat: AdapterCheck = {
  ...joint,
  id: 'sleeve-seat',
  title: 'Pressure of sleeves, tightening',
  unit: 'MPa',
  source: 'derived: strength by duration and heat',
  moves: 'nut.joint, float.sleeve, material',
  run: (design, limits) => {
    const stands = sleeveStand(design);
    if (!stands) return undefined;
    const { own, force, ring } = stands;
    if (force === 0) return valued(exactly(0), 'they stand on the brass of the inserts', own);
    const { max = Infinity } = limits.of(own).pass;
    const pressure = force / ring;
    const none = 'neither inserts nor wider sleeves carry them: a stiffer plastic, or float.spacer: bare';
    const cure = pressure > max ? remedyWords(design, 'sleeve-seat', none) : '';
    return valued(
      exactly(pressure),
      `${plain(force, 0)} N on a ring of ${plain(ring, 1)} mm² give ${plain(pressure, 1)} MPa of ${plain(max, 1)} MPa${cure}`,
      own,
    );
  },
};

/** What presses on the ring of plastic under a sleeve, and what that bears: none of it where an insert stands there. */
export function sleeveStand(design: AdapterDesign) {
  const drawn = nutSide(design);
  const { spacers, material } = design;
  if (!drawn || !spacers || spacers.spacer === 'bare') return undefined;
  const { joint: kind, diameter } = drawn.holes.hole;
  const own = hard({ max: pressureWhileTightening(material) });
  // a sleeve is wider by a millimetre than the fine hole, so that it never falls into the medium one
  const ring = (Math.PI / 4) * (spacers.pin ** 2 - diameter ** 2);
  if (kind === 'insert') return { own, force: 0, ring, diameter };
  const clamp = clampForce(bolted(drawn).hole, bolted(drawn).length, material);
  return clamp && { own, force: clamp.fresh, ring, diameter };
}

/** Screws between plate and carriage against the load that would open the joint. */
export const carriageClamp: AdapterCheck = {
  ...joint,
  id: 'bolt-clamp-carriage',
  title: "Clamp of carriage's screws over load",
  unit: '',
  moves: 'carriage.joint, carriage.holes, material, duty.pull',
  run: (design, limits) =>
    judgeClamp(bolted(carriageSide(design), plateEdge(design)), { ...design, carries: 'away' }, limits),
};

/** Heads, washers and nuts that fall through the holes of the plate, or of what it joins. */
export const headSeat: AdapterCheck = {
  ...joint,
  id: 'head-seat',
  title: 'Heads and nuts on their holes',
  unit: 'mm',
  grave: true,
  moves: 'nut.holes, nut.joint, carriage.holes, carriage.joint',
  run: (design, limits) => {
    const sides = [
      { drawn: nutSide(design), name: "nut's flange", field: 'nut.holes.screw' },
      { drawn: carriageSide(design), name: 'carriage', field: 'carriage.holes.screw' },
    ];
    const heads = sides.flatMap(({ drawn, name }) => (drawn ? headsOf(drawn, name, design) : []));
    const untold = sides.flatMap(({ drawn, field }) => (drawn?.side.pattern.screwUnsure ? [field] : []));
    return judgeHeads(heads, untold, limits);
  },
};

/**
 * Heads lie on a bought flange as far as that reaches; where the middle of a hole lies beside it, less than half a head does.
 *
 *     rim = middle of a hole to the edge of the flange − ⌀hole/2, the least, against −⌀hole/2
 */
export const nutRim: AdapterCheck = {
  ...joint,
  id: 'nut-rim',
  question: 'meets-nut',
  title: "Flange beyond the nut's holes",
  unit: 'mm',
  moves: 'nut.flange, nut.holes',
  grave: true,
  run: ({ nut, kind }, limits) => {
    if (!nut || kind !== 'joined') return undefined;
    const { centres, diameter } = nut.pattern;
    const radius = diameter.likely / 2;
    const own = soft({ min: 0 }, { min: -radius });
    const toEdge = Math.min(...centres.map(insideFlangeOf(nut.flange)));
    const rim = toEdge - radius;
    const found =
      toEdge < 0
        ? `the middles of the nut's holes lie ${worked(-toEdge, 'mm')} mm beside its flange, and nothing holds it by them`
        : `${plain(rim, 2)} mm of the bought flange beyond its holes`;
    const washers = toEdge < 0 ? '' : ', or lay washers under the heads';
    const cure = keeps(rim, limits.of(own).pass) ? '' : `; measure flange and holes again${washers}`;
    return valued(exactly(rim), `${found}${cure}`, own);
  },
};

function headsOf(drawn: Drawn, name: string, design: AdapterDesign): HeadOnHole[] {
  const { side, holes } = drawn;
  const { hole } = holes;
  if (hole.screw === undefined) return [];
  const screw = fastenerThread(hole.screw).diameter;
  const held = holdsThread(hole.joint);
  const ours = {
    what: seatName(hole),
    across: seatDiameter(hole),
    hole: sum(exactly(hole.diameter), holeResidual(design, hole.diameter)),
    screw,
  };
  const bare = held || hole.joint === 'hexagon';
  const floats = side === design.nut ? design.spacers : undefined;
  const theirs = {
    what: `${floats?.spacer === 'shoulder' || (bare && !floats) ? 'head' : 'washer'} on the ${name}`,
    across: floats ? floatHead(floats) : 2 * (bare ? headRadius({ ...hole, joint: 'through' }) : washerRadius(hole)),
    hole: side.pattern.diameter,
    screw: pinOf(drawn, design),
  };
  return [...(held ? [] : [ours]), ...(side.tapped ? [] : [theirs])];
}

/** A screw that is too short holds nothing, one that is too long bottoms. */
export const screwLength: AdapterCheck = {
  ...joint,
  id: 'screw-length',
  question: 'screws-go-in',
  title: 'Length of the screws',
  unit: '',
  moves: 'plate.thickness, nut.joint, carriage.joint',
  run: (design) => {
    const rows: (readonly [string, Screws])[] = [];
    const [nut, carriage] = [nutScrews(design), carriageScrews(design)];
    if (nut) rows.push(['nut', nut]);
    if (carriage) rows.push(['carriage', carriage]);
    if (rows.length === 0) return undefined;
    const none = rows.find(([, { length, range }]) => length === undefined && range);
    if (none) {
      const [name, { size, range }] = none;
      const [least, most] = range!;
      return told(
        'fail',
        `no usual ${size} screw of the ${name} is ${plain(least, 1)} to ${plain(most, 1)} mm long: change plate.thickness by a millimetre, or the joint`,
      );
    }
    const missing = rows.find(([, screws]) => screws.missing);
    if (missing)
      return told('caution', `length of the ${missing[0]}'s screws not stated: ${missing[1].missing} is missing`);
    return told(
      'pass',
      rows.map(([name, { size, length, count }]) => `${name}: ${count} × ${size}x${plain(length!)}`).join(', '),
    );
  },
};

/**
 * A thread needs length to hold.
 *
 *     l/d = min(plate at the hole, depth of a blind hole) / ⌀screw, the least of inserts and tapped holes
 */
export const threadLength: AdapterCheck = {
  ...joint,
  id: 'thread-engagement',
  title: 'Threaded length, in diameters',
  unit: '',
  limits: soft({ min: 1.5 }, { min: 1 }),
  moves: 'plate.thickness',
  run: (design, { pass: { min = 0 } }) =>
    judgeEngagement(
      [nutSide(design), carriageSide(design)].flatMap((drawn) => (drawn ? [bolted(drawn)] : [])),
      min,
      'plate',
    ),
};

/**
 * A thin sheet has few turns of thread for the screws that hold on to it.
 *
 *     l/d = carriage.thickness / ⌀screw, of a tapped nut nut.flange.thickness / ⌀screw, the least
 */
export const boughtThread: AdapterCheck = {
  ...joint,
  id: 'machine-thread',
  title: 'Thread in tapped holes of carriage and nut, in diameters',
  unit: '',
  limits: soft({ min: 1 }, { min: 0.5 }),
  moves: 'carriage.thickness, carriage.thread, nut.thread, carriage.holes.screw, nut.holes.screw',
  run: ({ nut, carriage }, { pass, fail }) => {
    const rows = [
      ...tappedRow(nut, { name: "the nut's flange", thickness: nut?.flangeThickness, field: 'nut.flange.thickness' }),
      ...tappedRow(carriage, {
        name: 'the carriage',
        thickness: carriage.thickness?.likely,
        field: 'carriage.thickness',
      }),
    ];
    const known = rows.flatMap((row) => (row.turns === undefined ? [] : [{ ...row, turns: row.turns }]));
    const untold = rows.filter(({ turns }) => turns === undefined).map(({ field }) => field);
    const [worst] = known.toSorted((a, b) => a.turns - b.turns);
    const fails = worst !== undefined && !keeps(worst.turns, fail ?? pass);
    if (untold.length > 0 && !fails) return notJudged(...untold);
    if (!worst) return undefined;
    const cure = keeps(worst.turns, pass) ? '' : '; put nuts behind clear holes, or take smaller screws';
    return valued(exactly(worst.turns), `${worst.words}${cure}`);
  },
};

/** Turns of thread of a tapped side, in diameters; not known where its thickness is not. */
function tappedRow(
  side: Side | undefined,
  { name, thickness, field }: { readonly name: string; readonly thickness: number | undefined; readonly field: string },
) {
  const screw = side?.pattern.screw;
  if (!side?.tapped || screw === undefined) return [];
  if (thickness === undefined) return [{ field, words: '', turns: undefined }];
  const turns = thickness / fastenerThread(screw).diameter;
  return [{ field, turns, words: `${screw} in ${plain(thickness, 1)} mm of ${name}` }];
}

/**
 * What holds an insert must not burst.
 *
 *     wall = the least wall of the plate, as for clocking
 */
export const insertWall: AdapterCheck = {
  ...joint,
  id: 'pocket-wall',
  title: 'Least wall beside pockets',
  unit: 'mm',
  limits: soft({ min: 2 }, { min: 1.5 }),
  moves: 'plate.outline, clocking',
  run: (design, { pass: { min = 0 } }) => {
    const drawn = [nutSide(design), carriageSide(design)];
    if (!drawn.some((one) => one?.holes.hole.joint === 'insert')) return undefined;
    const { gap, what } = design.layout.ligament;
    const cure = gap < min ? '; a wider outline or another turn gives more' : '';
    return valued(exactly(gap), `${worked(gap, 'mm')} mm between ${what}${cure}`);
  },
};

/**
 * A pocket needs a floor for its screw to pull on.
 *
 *     n = (plate at the hole − depth of the pocket) / layer height, the least
 */
export const pocketFloor: AdapterCheck = {
  ...joint,
  id: 'pocket-floor',
  title: 'Floor of pockets, in layers',
  unit: '',
  limits: soft({ min: 8 }, { min: 4 }),
  moves: 'plate.thickness, nut.joint, carriage.joint',
  run: (design, { pass: { min = 0 } }) => {
    const floors = pocketed(design).map(({ floor }) => floor);
    if (floors.length === 0) return undefined;
    const least = Math.min(...floors);
    const { layer } = design.printer;
    const cure = least < min * layer ? `; make the plate ${upwards(min * layer - least)} mm thicker` : '';
    return valued(exactly(least / layer), `${worked(least, 'mm')} mm of floor under the deepest pocket${cure}`);
  },
};

/** The floor under sunk heads and nuts is a ledge that the screws pull on. */
export const floorBending: AdapterCheck = {
  ...joint,
  id: 'floor-bending',
  title: 'Bending of the floor under sunk heads and nuts',
  unit: 'MPa',
  moves: 'plate.thickness, nut.joint, carriage.joint, duty.load, duty.pull, material',
  grave: true,
  run: (design, limits) => judgeFloors(pocketed(design), design, limits),
};

/** Patterns whose heads or nuts sit in pockets of the plate, the plastic under them, and the way of the load that they carry. */
export function pocketed(design: AdapterDesign): (PocketedPattern & { readonly carries: Pull })[] {
  const nut = nutSide(design);
  return [
    ...(nut ? [{ ...nut.holes, carries: carriedByNut(design), edge: flangeEdge(design) }] : []),
    { ...carriageSide(design).holes, carries: 'away' as const, edge: plateEdge(design) },
  ].flatMap(({ hole, centres, pocket, from, to, carries, edge }) =>
    pocket ? [{ hole, centres, pocket, floor: to - from - pocket.depth, carries, edge }] : [],
  );
}

/**
 * Holes that a screw cannot enter at all.
 *
 *     play = ⌀hole of nut or carriage − ⌀screw, or − ⌀sleeve or shoulder around it, the least; threaded holes aside
 */
export const screwEnters: AdapterCheck = {
  ...joint,
  id: 'hole-size',
  question: 'screws-go-in',
  title: 'Play of screws in their holes',
  unit: 'mm',
  limits: hard({ min: 0 }),
  moves: 'nut.holes.diameter, carriage.holes.diameter',
  run: (design, { pass: { min = 0 } }) => {
    const plays = [nutSide(design), carriageSide(design)].flatMap((drawn) => {
      const screw = drawn?.holes.hole.screw;
      if (!drawn || screw === undefined || drawn.side.tapped) return [];
      return [{ drawn, play: drawn.side.pattern.diameter.likely - pinOf(drawn, design) }];
    });
    if (plays.length === 0) return undefined;
    const { drawn, play } = plays.reduce((a, b) => (b.play < a.play ? b : a));
    const larger = floats(drawn, design) ? drilledWords(design) : `; drill the holes ${upwards(min - play)} mm larger`;
    const cure = play < min ? `${larger}, or use a smaller screw` : '';
    return valued(exactly(play), `screws have ${worked(play, 'mm')} mm of play in the bought part's holes${cure}`);
  },
};
