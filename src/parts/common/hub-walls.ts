import { type Bore, boreReach, type ReachBesideSlit } from './bore.js';
import { type Clamp, nutPocketReach } from './clamp.js';
import type { SetScrewPocket } from './set-screw-pocket.js';
import type { Wall } from './walls.js';

/** A round body that holds a shaft. Finished sizes. */
export interface HeldBody {
  readonly outside: number;
  readonly bore: Bore;
  /** its width, its length from the open end, and whether a web ends it there */
  readonly slit?: {
    readonly width: number;
    readonly length: number;
    readonly web: boolean;
    readonly through?: true;
  };
  /** heights of its screws from the open end */
  readonly clamp?: Clamp;
  readonly setScrew?: SetScrewPocket;
  /** walls of the part's own */
  readonly more?: readonly Wall[];
}

/** Every wall beside bore, pockets and slit. */
export function heldWalls({ outside, bore, slit, clamp, setScrew, more = [] }: HeldBody): Wall[] {
  const radius = outside / 2;
  const reach = boreReach(bore);
  const walls: Wall[] = [{ where: 'bore to outside', size: radius - reach.most }, ...more];
  if (clamp) walls.push(...clampWalls(clamp, { radius, bore: reach, slit: slit?.width ?? 0 }));
  if (setScrew?.slot) {
    const { inner, thickness, width } = setScrew.slot;
    walls.push(
      { where: 'set screw nut to bore', size: inner - reach.far },
      {
        where: 'set screw nut to outside',
        // nearest at the slot's corners, along the radius
        size: radius - Math.hypot(inner + thickness, width / 2),
      },
    );
  }
  if (setScrew?.bore) walls.push({ where: 'insert to bore', size: setScrew.bore.inner - reach.far });
  return walls;
}

/** Walls beside the pockets of clamp screws. */
export function clampWalls(
  clamp: Clamp,
  at: { readonly radius: number; readonly bore: ReachBesideSlit; readonly slit: number },
): Wall[] {
  const { offset, hole, head, headSeat, nut, nutSeat, heights } = clamp;
  const corner = nutPocketReach(clamp);
  const pocket = clamp.washers ? Math.max(head, nut) : head;
  const outer = (seat: number) => Math.sqrt(Math.max(0, at.radius ** 2 - seat ** 2));
  const inner = (half: number, seat: number) => Math.hypot(Math.max(0, offset - half), seat) - at.bore.corner;
  const between =
    heights.length > 1 ? [{ where: 'between the pockets', size: heights[1]! - heights[0]! - pocket }] : [];
  return [
    { where: 'clamp screw to bore', size: offset - hole / 2 - at.bore.slit },
    { where: 'head pocket to outside', size: outer(headSeat) - offset - head / 2 },
    { where: 'nut pocket to outside', size: outer(nutSeat) - offset - corner },
    { where: 'head pocket to bore', size: inner(head / 2, headSeat) },
    { where: 'nut pocket to bore', size: inner(corner, nutSeat) },
    { where: 'head seat to slit', size: headSeat - at.slit / 2 },
    { where: 'nut seat to slit', size: nutSeat - at.slit / 2 },
    { where: 'pocket to the end', size: heights[0]! - pocket / 2 },
    ...between,
  ];
}
