import { plain as words } from '../../../../units/format.js';
import { recessCone } from '../../../common/thread-bore.js';
import type { NutInSight } from '../../views/in-sight.js';
import type { Member } from '../../views/member.js';
import { recessOf } from '../twin.js';
import type { Family } from '../types.js';

/** Two threads with a wide bore between them, cut as a plain nut is. */
export function twinMember(nut: NutInSight, family: Family & { kind: 'twin' }, plain: Member): Member {
  const { print, sizes, bottom, top } = nut;
  const recess = recessOf(family, sizes, print.along);
  const cone = recessCone(recess, sizes.thread);
  return {
    ...plain,
    threads: [
      { bottom, top: bottom + recess.from },
      { bottom: bottom + recess.to, top },
    ],
    notes: [
      `Two threads of ${words(print.along(family.each), 2)}, ${words(print.along(family.apart), 2)} from middle to middle; between them ⌀${words(2 * recess.radius, 2)} over ${words(recess.to - recess.from - 2 * cone, 2)}, cones of 45° at its ends`,
      family.shift > 0
        ? `The upper thread is set off upwards by ${words(print.along(family.shift), 3)}`
        : 'Both threads on one helix',
    ],
  };
}
