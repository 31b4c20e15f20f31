import { directionOf, type NutInSight } from '../../views/in-sight.js';
import { type Member, plainMember } from '../../views/member.js';
import { antiBacklashMember } from './anti-backlash.js';
import { catchMember, holderMember } from './bought-nut.js';
import { clampedMember } from './clamped.js';
import { splitMember } from './split.js';
import { twinMember } from './twin.js';

/** How a nut is drawn, by its family; a plain one is cut through its first hole. */
export function memberOf(nut: NutInSight): Member {
  const { family, catchPocket } = nut.design;
  const [first] = nut.holes;
  const plain = plainMember(first ? directionOf(first.at) : 0, nut);
  if (!family) return catchPocket ? catchMember(nut, catchPocket, plain) : plain;
  switch (family.kind) {
    case 'split':
      return splitMember(nut, family, plain);
    case 'clamped':
      return clampedMember(nut, family, plain);
    case 'holder':
      return holderMember(nut, family, plain);
    case 'anti-backlash':
      return antiBacklashMember(nut, family, plain);
    case 'twin':
      return twinMember(nut, family, plain);
  }
}
