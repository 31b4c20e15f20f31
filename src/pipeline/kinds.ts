import { adapterKind } from '../parts/adapter/index.js';
import { collarKind } from '../parts/collar/index.js';
import { couplingKind } from '../parts/coupling/index.js';
import { couponKind } from '../parts/coupon/index.js';
import { endHolderKind } from '../parts/end-holder/index.js';
import { gaugeKind } from '../parts/gauge/index.js';
import { motorPlateKind } from '../parts/motor-plate/index.js';
import { nutKind } from '../parts/nut/index.js';
import { twinNutKind } from '../parts/nut/twin-nut.js';
import { sleeveKind } from '../parts/sleeve/index.js';
import { inchKind } from './inch-kind.js';
import { type KnownKind, knownKind } from './known-kind.js';
import { namedKind } from './named-kind.js';
import { profiledKind } from './profiled-kind.js';
import { revisedKind } from './revised-kind.js';

/** The part kinds that ship. */
export const KINDS: readonly KnownKind[] = [
  knownKind(nutKind),
  knownKind(twinNutKind),
  knownKind(adapterKind),
  knownKind(couplingKind),
  knownKind(sleeveKind),
  knownKind(collarKind),
  knownKind(endHolderKind),
  knownKind(motorPlateKind),
  knownKind(couponKind),
  knownKind(gaugeKind),
]
  .map(profiledKind)
  .map(namedKind)
  .map(inchKind)
  .map(revisedKind);
