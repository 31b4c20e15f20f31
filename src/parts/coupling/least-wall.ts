import { boreReach } from '../common/bore.js';
import { heldWalls } from '../common/hub-walls.js';
import { setScrewTop } from '../common/set-screw-pocket.js';
import { thinnest, type Wall } from '../common/walls.js';
import { type HubPlan, MARK } from './hub-plan.js';
import { type InsertPlan, lobeHalfWidth } from './insert.js';
import { type JawPlan, jawWidth, slotLevels } from './jaws.js';

/** The thinnest wall of a hub by arithmetic: beside its bore and pockets, under its jaws, and of the jaws themselves. */
export function leastHubWall(hub: HubPlan): Wall {
  const { outside, length, bore, stop, slit, clamp, setScrew, mark, jaws } = hub;
  const floor = length - jaws.recess;
  const top = Math.max(
    0,
    slit?.to ?? 0,
    setScrew ? setScrewTop(setScrew) : 0,
    bore.key && stop ? stop.from : 0,
    clamp ? clamp.heights.at(-1)! + clamp.head / 2 : 0,
  );
  return thinnest([
    ...heldWalls({
      outside,
      bore,
      ...(slit ? { slit: { width: slit.width, length: slit.to, web: true } } : {}),
      ...(clamp ? { clamp } : {}),
      ...(setScrew ? { setScrew } : {}),
    }),
    { where: 'floor under the jaws', size: floor - top },
    ...(setScrew ? [{ where: 'set screw to the end', size: setScrew.height - setScrew.hole / 2 }] : []),
    ...(mark === undefined
      ? []
      : [
          { where: 'notch to bore', size: outside / 2 - MARK.depth - boreReach(bore).most },
          { where: 'notch under the jaws', size: length - mark - MARK.height },
        ]),
    ...jawWalls(jaws),
  ]);
}

/** A jaw across its inner end and along its flanks, where it is narrowest. */
function jawWalls(jaws: JawPlan): Wall[] {
  const { inner, outer, height, bevel } = jaws;
  // below the bevel, which only breaks the edge
  const lean = Math.max(...slotLevels(jaws).flatMap(([z, offset]) => (z <= height - bevel ? [offset] : [])));
  return [
    { where: 'jaw at its inner end', size: jawWidth(jaws, inner) - 2 * lean },
    { where: 'jaw along its flanks', size: outer - inner },
    { where: 'jaw over its floor', size: height },
  ];
}

/** The thinnest wall of an insert by arithmetic: of a lobe at either end, of its ring, or its height. */
export function leastInsertWall(insert: InsertPlan): Wall {
  const { ring, hole, reach, height } = insert;
  return thinnest([
    ...[ring, reach].map((at) => ({ where: 'lobe', size: 2 * lobeHalfWidth(insert, at) })),
    ...(hole > 0 ? [{ where: 'ring', size: ring - hole / 2 }] : []),
    { where: 'height', size: height },
  ]);
}
