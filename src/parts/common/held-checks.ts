import { type Check, hard, notJudged, soft, valued } from '../../judge/check.js';
import { keeps } from '../../judge/judge.js';
import { socketCapScrew } from '../../standards/fasteners/cap-screw.js';
import { hexNut } from '../../standards/fasteners/nuts.js';
import { washer } from '../../standards/fasteners/washer.js';
import { plain, worked } from '../../units/format.js';
import { exactly, type Measured, scaled } from '../../units/measured.js';
import { borePlay } from './bore-play.js';
import type { Clamp } from './clamp.js';
import { GRIP_CHECKS } from './grip-checks.js';
import { greasedIn, type HeldView, sectionOf } from './held.js';
import { heldWalls } from './hub-walls.js';
import { askedWhereWorse } from './untold.js';
import { LEAST_WALL, thinnest } from './walls.js';

/** Where a kind's sheet says what these checks hang on. */
export interface HeldFields {
  /** the outside of the body */
  readonly outside: string;
  /** the sections that hold a shaft each */
  readonly holds: readonly string[];
}

/** Checks of everything that holds a shaft, whatever the part; the fields that move them are the part's own. */
export function heldChecks<Design>(
  viewOf: (design: Design) => HeldView | undefined,
  fields: HeldFields,
): Check<Design>[] {
  const grips = askedWhereWorse(GRIP_CHECKS, [
    ...fields.holds.map((hold) => ({ field: `${hold}.degreased`, worse: (view: HeldView) => greasy(view, hold) })),
    ...LENGTHS.map((field) => ({ field, worse: (view: HeldView) => short(view, field) })),
  ]);
  return [...grips, wall, shaftEngagement, boreEntry, boreRunout, toolAccess, headInside, printBridge].map(
    (check): Check<Design> => ({
      ...check,
      moves: movesOf(check.moves, fields),
      run: (design, limits) => {
        const view = viewOf(design);
        return view && check.run(view, limits);
      },
    }),
  );
}

/** The same view with grease on a shaft of which nobody tells; undefined where the sheet does. */
function greasy(view: HeldView, hold: string): HeldView | undefined {
  const held = greasedIn(view.held, hold);
  return held && { ...view, held };
}

/** Where a sheet says how far a shaft may go in. */
const LENGTHS = ['motor.shaft.length', 'shaft.length', 'turned_end.length'];

/** Engaged length that is not too short, in diameters. @source common-practice */
const LEAST_ENGAGED = 1.5;

/** The same view with a shaft whose length nobody tells no longer than it must be; undefined where the sheet tells it. */
const short = (view: HeldView, field: string): HeldView | undefined =>
  view.held.some(({ shaft }) => shaft.lengthField === field)
    ? {
        ...view,
        held: view.held.map((one) =>
          one.shaft.lengthField === field
            ? { ...one, engagement: Math.min(one.engagement, LEAST_ENGAGED * one.shaft.diameter.likely) }
            : one,
        ),
      }
    : undefined;

/** `HOLD` stands for each section that holds a shaft, `OUTSIDE` for the outside of the body. */
function movesOf(moves: string, { outside, holds }: HeldFields): string {
  const named = moves
    .split(', ')
    .flatMap((field) => (field.startsWith('HOLD.') ? holds.map((one) => field.replace('HOLD', one)) : [field]))
    .map((field) => (field === 'OUTSIDE' ? outside : field));
  return [...new Set([...named, outside, ...holds])].join(', ');
}

type HeldCheck = Check<HeldView>;
const body = { group: 'body', question: 'holds', source: 'common practice' } as const;

/**
 * A thin wall splits.
 *
 *     wall = least of bore to outside, screws, pin and pockets to bore, outside, slit, end and each other
 *     bore to outside = ⌀outside/2 − farthest reach of the bore, keyway counted
 */
const wall: HeldCheck = {
  ...body,
  id: 'wall',
  title: 'Least wall beside bores and slits',
  unit: 'mm',
  moves: 'printer.nozzle',
  run: ({ held, printer }, limits) => {
    const walls = held.flatMap((one) =>
      heldWalls(one).map(({ where, size }) => ({ where: `${one.name}, ${where}`, size })),
    );
    const { where, size } = thinnest(walls);
    const own = soft({ min: Math.max(LEAST_WALL, 4 * printer.nozzle) }, { min: LEAST_WALL });
    const cure = keeps(size, limits.of(own).pass) ? '' : '; a larger outside gives it room';
    return valued(exactly(size), `${plain(size, 2)} mm: ${where}${cure}`, own);
  },
};

/**
 * Shafts that end short slip and split the body.
 *
 *     ratio = engaged length / ⌀shaft, the least of all that are held
 */
const shaftEngagement: HeldCheck = {
  ...body,
  id: 'shaft-engagement',
  title: 'Engaged length, in diameters',
  unit: '',
  limits: hard({ min: LEAST_ENGAGED }),
  moves: 'motor.shaft.length, shaft.length',
  run: ({ held }, { pass: { min = 0 } }) => {
    const rows = held.map((one) => ({ one, ratio: one.engagement / one.shaft.diameter.likely }));
    const { one, ratio } = rows.reduce((a, b) => (b.ratio < a.ratio ? b : a));
    const untold = held.flatMap(({ shaft }) => shaft.lengthField ?? []);
    if (ratio >= min && untold.length > 0) return notJudged(...untold);
    const cure = ratio < min ? '; the shaft must reach further in, or the bore be longer' : '';
    return valued(exactly(ratio), `${plain(one.engagement, 1)} mm in the ${one.name}${cure}`);
  },
};

/**
 * A bore that comes out too narrow does not go on, or only where it is forced open.
 *
 *     play = ⌀bore as it comes out of the printer − ⌀shaft, the least of all that are held
 */
const boreEntry: HeldCheck = {
  ...body,
  id: 'bore-entry',
  question: 'goes-on',
  title: 'Play of the shaft as it goes in',
  unit: 'mm',
  limits: soft({ min: 0 }, { min: -0.1 }),
  moves: 'HOLD.bore_clearance, printer.compensation, printer.hole_offset',
  grave: true,
  run: (view, { pass: { min = 0 } }) => {
    const rows = view.held.map((one) => ({ one, play: borePlay(one, view).likely }));
    const { one, play } = rows.reduce((a, b) => (b.play < a.play ? b : a));
    const cure =
      play < min
        ? `; let slicer or file compensate (printer.compensation), or more ${sectionOf(one)}.bore_clearance`
        : '';
    return valued(
      exactly(play),
      `the bore of the ${one.name} comes out ${plain(one.shaft.diameter.likely + play, 2)} mm wide${cure}`,
    );
  },
};

/** A bore that is pulled to one side wobbles. */
const boreRunout: HeldCheck = {
  ...body,
  id: 'bore-runout',
  question: 'turns',
  title: 'Eccentricity of the shaft',
  unit: 'mm',
  limits: soft({ max: 0.1 }),
  moves: 'HOLD.bore_clearance',
  run: (view, { pass: { max = 0.1 } }) => {
    const offsets = view.held.map((one) => {
      const { least, likely, most } = scaled(borePlay(one, view), 0.5);
      const off: Measured = { least: Math.max(0, least), likely: Math.max(0, likely), most: Math.max(0, most) };
      return { one, off };
    });
    const { one, off: worst } = offsets.reduce((a, b) => (b.off.most > a.off.most ? b : a));
    const cure = worst.most > max ? `; a smaller ${sectionOf(one)}.bore_clearance keeps it in the middle` : '';
    return valued(
      worst,
      `half of the play of bore and shaft, ${worked(worst.likely, 'mm')} mm to one side, ${worked(worst.most, 'mm')} mm at most${cure}`,
    );
  },
};

/**
 * A key must find its screw.
 *
 *     room = ⌀head pocket − ⌀head
 *     room with washers = lesser of ⌀head pocket − ⌀washer and ⌀nut pocket − greater of ⌀washer and nut over corners
 */
const toolAccess: HeldCheck = {
  ...body,
  id: 'tool-access',
  question: 'goes-on',
  title: 'Room around the screw heads',
  unit: 'mm',
  limits: hard({ min: 0.2 }),
  moves: 'HOLD.clamp.screw, HOLD.clamp.washers',
  trifle: true,
  run: ({ held }, { pass }) => {
    const rows = held.flatMap(({ clamp }) => (clamp ? [clamp] : []));
    if (rows.length === 0) return undefined;
    const room = Math.min(...rows.map(headRoom));
    const keys = [...new Set(rows.map(({ screw }) => `${plain(socketCapScrew(screw).key)} mm for ${screw}`))];
    const cure = keeps(room, pass) ? '' : '; drill the pockets wider, or take a slimmer key';
    return valued(exactly(room), `straight in from the side with a key of ${keys.join(', ')}${cure}`);
  },
};

/** Room around the head or the washer, and around a nut that a nut driver holds. */
function headRoom({ head, nut, screw, washers }: Clamp): number {
  const { headDiameterKnurled } = socketCapScrew(screw);
  if (!washers) return head - headDiameterKnurled;
  const { outside } = washer(screw);
  return Math.min(head - outside, nut - Math.max(outside, hexNut(screw).acrossCorners));
}

/**
 * Nothing may stick out of a turning body.
 *
 *     room = ⌀outside/2 − greater of √((x + ⌀head/2)² + (s + w + k)²) and √((x + ⌀hole/2)² + (L − w − s)²)
 *     x = axis to screw, s = middle of the slit to seat of the head, w = washer, k = height of the head, L = screw
 */
const headInside: HeldCheck = {
  ...body,
  id: 'head-inside',
  question: 'turns',
  title: 'Screws under the outline',
  unit: 'mm',
  limits: hard({ min: 0 }),
  moves: 'OUTSIDE',
  trifle: true,
  run: ({ held }, { pass }) => {
    const rooms = held.flatMap(({ clamp, outside }) => {
      if (!clamp) return [];
      const { headDiameterKnurled, headHeight } = socketCapScrew(clamp.screw);
      const under = clamp.washers ? washer(clamp.screw).thickness : 0;
      const head = Math.hypot(clamp.offset + headDiameterKnurled / 2, clamp.headSeat + under + headHeight);
      const end = Math.hypot(clamp.offset + clamp.hole / 2, clamp.screwLength - under - clamp.headSeat);
      return [outside / 2 - Math.max(head, end)];
    });
    if (rooms.length === 0) return undefined;
    const room = Math.min(...rooms);
    const found =
      room < 0
        ? `they stand out of it by ${plain(-room, 2)} mm and catch when it turns`
        : `they keep ${plain(room, 2)} mm inside it, so that it catches nothing when it turns`;
    const cure = keeps(room, pass) ? '' : '; a larger outside or a smaller clamp screw takes them in';
    return valued(exactly(room), `${found}${cure}`);
  },
};

/**
 * Roofs that are printed over air.
 *
 *     bridge = widest of slit, slot of a set screw’s nut, 0.414 · ⌀head pocket and nut across flats/√3
 *     nut pocket with washers = 0.414 · its ⌀
 */
const printBridge: HeldCheck = {
  ...body,
  group: 'print',
  id: 'print-bridge',
  question: 'prints',
  title: 'Widest bridge',
  unit: 'mm',
  limits: soft({ max: 10 }),
  moves: 'HOLD.clamp',
  run: ({ held }, { pass }) => {
    const bridges = held.flatMap(({ slit, clamp, setScrew }) => [
      ...(slit ? [slit.width] : []),
      ...(clamp
        ? [clamp.washers ? clamp.nut * (Math.SQRT2 - 1) : clamp.nut / Math.sqrt(3), clamp.head * (Math.SQRT2 - 1)]
        : []),
      ...(setScrew?.slot ? [setScrew.slot.thickness] : []),
    ]);
    if (bridges.length === 0) return undefined;
    const widest = Math.max(...bridges);
    const cure = keeps(widest, pass) ? '' : '; smaller clamp or set screws, or support under it';
    return valued(exactly(widest), `${plain(widest, 2)} mm, printed without support; round roofs close at 45°${cure}`);
  },
};
