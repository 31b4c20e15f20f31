import type { LoftLevel } from '../../solid/convex-loft.js';
import { circleOutline, type Outline, sidesFor, turnedOutline } from '../../solid/outline.js';
import { type Bore, printedBore } from '../common/bore.js';
import { boreCut, flatsBehindRound } from '../common/bore-cut.js';
import type { BoreCut, Carved } from '../common/carved.js';
import { type Clamp, printedClamp } from '../common/clamp.js';
import { OVERSHOOT } from '../common/cut.js';
import type { PrintSizes } from '../common/print-sizes.js';
import { printedSetScrew, type SetScrewPocket } from '../common/set-screw-pocket.js';
import type { JawPlan } from './jaws.js';

/** One hub, standing on its end with the jaws up. Sizes of one kind: finished or printed. */
export interface HubPlan {
  readonly outside: number;
  /** without the jaws */
  readonly length: number;
  /** at the outside of the end, and at the mouth of the bore */
  readonly chamfer: number;
  readonly bore: Bore;
  /** a cone from here stops the shaft; undefined where the bore goes through */
  readonly stop?: { readonly from: number; readonly drop: number };
  readonly slit?: { readonly width: number; readonly to: number };
  readonly clamp?: Clamp;
  readonly setScrew?: SetScrewPocket;
  /** height of the shaft's end, shown by a notch on the outside */
  readonly mark?: number;
  readonly jaws: JawPlan;
}

/** The notch that shows the height of the shaft's end, mm; its direction in degrees. */
export const MARK = { width: 3, depth: 0.4, height: 0.6, angle: 135 };

/** Sizes of jaws as they must stand in the file: flanks and tips are outsides. */
function printedJaws(jaws: JawPlan, sizes: PrintSizes): JawPlan {
  const spread = (size: number) => sizes.outside(size) - sizes.across(size);
  return {
    ...jaws,
    height: sizes.along(jaws.height),
    outer: sizes.outside(2 * jaws.outer) / 2,
    inner: sizes.across(jaws.inner) - spread(2 * jaws.inner) / 2,
    halfSlot: sizes.across(jaws.halfSlot) - spread(2 * jaws.halfSlot) / 2,
    hollow: sizes.across(jaws.hollow),
    fillet: sizes.across(jaws.fillet),
    bevel: sizes.across(jaws.bevel),
    recess: sizes.along(jaws.recess),
  };
}

/** Sizes of a hub as they must stand in the file. */
export function printedHub(hub: HubPlan, sizes: PrintSizes): HubPlan {
  const { stop, slit, clamp, setScrew, mark } = hub;
  return {
    outside: sizes.outside(hub.outside),
    length: sizes.along(hub.length),
    chamfer: sizes.across(hub.chamfer),
    bore: printedBore(hub.bore, sizes),
    ...(stop ? { stop: { from: sizes.along(stop.from), drop: sizes.along(stop.drop) } } : {}),
    ...(slit ? { slit: { width: sizes.inside(slit.width), to: sizes.along(slit.to) } } : {}),
    ...(clamp ? { clamp: printedClamp(clamp, sizes) } : {}),
    ...(setScrew ? { setScrew: printedSetScrew(setScrew, sizes) } : {}),
    ...(mark === undefined ? {} : { mark: sizes.along(mark) }),
    jaws: printedJaws(hub.jaws, sizes),
  };
}

/** The hub's outline seen along its axis. */
function hubOutline({ outside }: HubPlan, chordError: number): Outline {
  return circleOutline({ radius: outside / 2, sides: sidesFor(outside / 2, chordError) });
}

/** Everything that is cut into the hub besides its jaws. */
export function carvedHub(hub: HubPlan, chordError: number): Carved {
  const { length, chamfer, slit, clamp, setScrew, mark, jaws } = hub;
  const top = length + jaws.height;
  const levels: LoftLevel[] = [
    [0, -chamfer],
    [chamfer, 0],
    ...(jaws.bevel > 0 ? [[top - jaws.bevel, 0] as const] : []),
    [top, -jaws.bevel],
  ];
  return {
    outline: hubOutline(hub, chordError),
    levels,
    broken: [0],
    bores: boreCuts(hub, chordError),
    ...(slit ? { slit: { width: slit.width, from: 0, to: slit.to } } : {}),
    clamps: clamp ? [clamp] : [],
    ...(setScrew ? { setScrew } : {}),
    marks: mark === undefined ? [] : [markAt(hub, mark)],
  };
}

/** How the sides of the bore move along the axis: mouth, and the cone that stops the shaft. */
function boreLevels({ chamfer, length, stop, jaws }: HubPlan): LoftLevel[] {
  const end = length - jaws.recess;
  const mouth: LoftLevel[] = [
    [-OVERSHOOT, chamfer + OVERSHOOT],
    [chamfer, 0],
  ];
  return stop
    ? [...mouth, [stop.from, 0], [stop.from + stop.drop, -stop.drop], [end + OVERSHOOT / 2, -stop.drop]]
    : [...mouth, [end + OVERSHOOT / 2, 0]];
}

function boreCuts(hub: HubPlan, chordError: number): BoreCut[] {
  const { bore, stop } = hub;
  const end = hub.length - hub.jaws.recess;
  const keywayEnds = [-OVERSHOOT, stop ? stop.from : end + OVERSHOOT / 4] as const;
  return flatsBehindRound(
    { ...boreCut(bore, { levels: boreLevels(hub), keywayEnds, ends: [0, end] }, chordError), broken: [0] },
    bore,
    'below',
    chordError,
  );
}

/** A notch in the outside whose lower edge stands where the shaft ends. */
function markAt({ outside }: HubPlan, height: number) {
  const radius = outside / 2;
  const notch: Outline = [
    [radius - MARK.depth, -MARK.width / 2],
    [radius + OVERSHOOT, -MARK.width / 2],
    [radius + OVERSHOOT, MARK.width / 2],
    [radius - MARK.depth, MARK.width / 2],
  ];
  return { outline: turnedOutline(notch, MARK.angle), from: height, to: height + MARK.height };
}
