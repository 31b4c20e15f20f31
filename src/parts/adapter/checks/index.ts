import type { Check } from '../../../judge/check.js';
import { heat, shrinkAppliedOnce } from '../../common/checks.js';
import type { AdapterDesign } from '../dimensions.js';
import { carriageWall } from './carriage-wall.js';
import { catchSeat } from './catch-seat.js';
import {
  boughtThread,
  carriageClamp,
  carriagePosition,
  floorBending,
  headSeat,
  insertWall,
  nutClamp,
  nutPosition,
  nutRim,
  pocketFloor,
  screwEnters,
  screwLength,
  sleeveSeat,
  threadLength,
} from './joints.js';
import { keyBending } from './key-bending.js';
import { nutKept } from './nut-kept.js';
import { clocking, headRoom, holeEdge, mountRoom, plateNeck } from './place.js';
import {
  catchNut,
  floatBacklashCheck,
  mountBore,
  mountFloat,
  mountSeat,
  printSupport,
  rimHeight,
  rimWall,
} from './seat.js';
import { spigotRoom } from './spigot.js';
import { endStop, plateBending, plateSag } from './strength.js';

/** Every check of an adapter, in the order of the report. */
export const ADAPTER_CHECKS: readonly Check<AdapterDesign>[] = [
  clocking,
  headRoom,
  holeEdge,
  plateNeck,
  screwEnters,
  nutRim,
  nutPosition,
  carriagePosition,
  screwLength,
  threadLength,
  boughtThread,
  insertWall,
  pocketFloor,
  floorBending,
  mountSeat,
  mountBore,
  mountFloat,
  floatBacklashCheck,
  rimWall,
  rimHeight,
  spigotRoom,
  carriageWall,
  mountRoom,
  nutKept,
  keyBending,
  headSeat,
  nutClamp,
  sleeveSeat,
  carriageClamp,
  plateBending,
  plateSag,
  endStop,
  catchSeat,
  catchNut,
  printSupport,
  shrinkAppliedOnce,
  heat,
];
