import type { Assumptions } from '../../sheet/assumptions.js';
import { measured } from '../../sheet/measured-field.js';
import { polygonArea } from '../../solid/outline.js';
import { fault } from '../../units/faults.js';
import { plain } from '../../units/format.js';
import type { Measured } from '../../units/measured.js';
import { type HolePattern, measuredPattern } from '../common/hole-pattern.js';
import type { Joint } from '../common/joints.js';
import type { Point } from './plan.js';
import type { FlangeSizes } from './seated-nut.js';
import type { AdapterSheet } from './sheet.js';

/** One side of the joint: what was measured, and how the plate meets it. */
export interface Side {
  readonly pattern: HolePattern;
  readonly joint: Joint;
  /** the holes of the bought part are tapped */
  readonly tapped: boolean;
}

export interface NutSide extends Side {
  readonly body: Measured;
  readonly length?: number;
  readonly flange: FlangeSizes;
  readonly flangeThickness: number;
  readonly seat: 'outside' | 'carriage';
  readonly stands: 'through' | 'away';
}

export interface CarriageSide extends Side {
  readonly bore?: Measured;
  readonly slot?: readonly [number, number];
  /** a ring that stands out of its face */
  readonly spigot?: Measured;
  readonly thickness?: Measured;
  readonly offset: Point;
  readonly room?: readonly Point[];
}

/** What keeps the parts in the middle of each other. */
export interface Registers {
  readonly nut: 'bore' | 'recess' | 'none';
  readonly carriage: 'rim' | 'recess' | 'none';
  /** on the diameter */
  readonly clearance: number;
}

const LOCATION = 0.2;

/** The nut as measured. Its joint is the preferred one where the sheet states none. */
export function nutSide(sheet: AdapterSheet, calipers: number, notes: Assumptions): NutSide | undefined {
  const given = sheet.nut;
  if (!given) return undefined;
  const { flange } = given;
  const shape = notes.or(flange.shape, 'nut.flange.shape', 'round', 'not given');
  const across = flange.diameter?.value ?? 0;
  if (given.length && given.length.value < flange.thickness.value)
    throw fault(
      'nut.length',
      `${plain(given.length.value)} mm`,
      `must be at least ${plain(flange.thickness.value)} mm, the thickness of its flange: it is measured over all`,
    );
  return {
    pattern: measuredPattern(given.holes, 'nut.holes', notes, calipers),
    joint: notes.or<Joint>(
      given.joint,
      'nut.joint',
      'insert',
      'holds best in plastic, and lets the nut be fitted last',
    ),
    tapped: given.thread === 'tapped',
    body: measured(given.body, calipers),
    ...(given.length ? { length: given.length.value } : {}),
    flange: {
      shape,
      size: flange.size ?? [across, across],
      ...(flange.flats === undefined ? {} : { flats: flange.flats }),
    },
    flangeThickness: flange.thickness.value,
    seat: notes.or<NutSide['seat']>(given.seat, 'nut.seat', 'outside', 'the flange lies on the outer face'),
    stands: notes.or<NutSide['stands']>(given.stands, 'nut.stands', 'through', 'the body enters the plate'),
  };
}

/** The carriage as measured, likewise. */
export function carriageSide(sheet: AdapterSheet, calipers: number, notes: Assumptions): CarriageSide {
  const { bore, slot, spigot, thickness, offset, holes, thread, joint, room } = sheet.carriage;
  const [x, y] = offset ?? [0, 0];
  const pattern = measuredPattern(holes, 'carriage.holes', notes, calipers);
  return {
    pattern: { ...pattern, centres: pattern.centres.map(([u, v]) => [u + x, v + y] as const) },
    joint: joint ?? 'counterbore',
    tapped: thread === 'tapped',
    ...(bore ? { bore: measured(bore, calipers) } : {}),
    ...(slot ? { slot } : {}),
    ...(spigot ? { spigot: measured(spigot, calipers) } : {}),
    ...(thickness ? { thickness: measured(thickness, calipers) } : {}),
    offset: [x, y],
    ...(room ? { room: counterClockwise(room) } : {}),
  };
}

/** What places the parts; refused where the nut's shape cannot be placed so. */
export function registersOf(sheet: AdapterSheet, nut: NutSide | undefined, notes: Assumptions): Registers {
  const given = sheet.register ?? {};
  const usual: Registers['nut'] = nut === undefined ? 'none' : nut.stands === 'through' ? 'bore' : 'recess';
  const kind = notes.or<Registers['nut']>(given.nut, 'register.nut', usual, 'keeps the nut in the middle');
  if (kind === 'recess' && nut && (nut.flange.shape !== 'round' || nut.flange.flats !== undefined))
    throw fault(
      'register.nut',
      'recess',
      'must be bore or none: only a plain round flange finds its middle in a recess',
    );
  if (kind === 'bore' && nut?.stands === 'away')
    throw fault('register.nut', 'bore', 'must be recess or none: the body stands away from the plate');
  if (nut === undefined && kind !== 'none')
    throw fault('register.nut', kind, 'must be none: a blank plate takes no nut');
  return {
    nut: kind,
    carriage: notes.or<Registers['carriage']>(
      given.carriage,
      'register.carriage',
      'none',
      'the screws alone place the plate',
    ),
    clearance: notes.or(given.clearance, 'register.clearance', LOCATION, 'slides in by hand'),
  };
}

/** Corners in counter-clockwise order, however they were given. */
export function counterClockwise(corners: readonly Point[]): readonly Point[] {
  return polygonArea(corners) < 0 ? corners.toReversed() : corners;
}
