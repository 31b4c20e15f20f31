import { beyond, line } from '../../common/drawn/strokes.js';
import { detailMark } from '../../common/drawn/thread-detail.js';
import { threadRoots } from '../../common/drawn/thread-roots.js';
import type { AskedView, Stroke } from '../../part-views.js';
import { directionOf, type NutInSight } from './in-sight.js';
import { type Member, onSide } from './member.js';
import { sideSizes } from './side-sizes.js';

/** The section along the axis, +Z to the left; the planes of its halves are turned into one. */
export function sideView(nut: NutInSight, member: Member): AskedView {
  const reach = beyond(member.top - nut.bottom);
  return {
    title: 'Section A–A',
    solid: {
      bodies: nut.bodies().map(({ shape }) => shape),
      sight: { kind: 'section', planes: member.planes },
      hidden: member.side.hidden ?? [],
    },
    strokes: [
      ...([1, -1] as const).flatMap((side, i) => holeAxes(nut, side, member.planes[i]!)),
      ...member.threads.flatMap((place) => threadRoots(nut.sizes, place)),
      line('centre', [reach - nut.bottom, 0], [-member.top - reach, 0]),
      ...detailMark(nut, member).strokes,
      ...member.side.strokes,
    ],
    sizes: [...sideSizes(nut, member), ...member.side.sizes],
    letters: [...detailMark(nut, member).letters, ...(member.side.letters ?? [])],
  };
}

/** Centre lines of the holes whose middle lies in the plane. */
function holeAxes({ holes }: NutInSight, side: 1 | -1, angle: number): Stroke[] {
  return holes
    .filter(({ at }) => Math.abs(((directionOf(at) - angle + 540) % 360) - 180) < 0.05)
    .map(({ at, ends: [low, high] }) => {
      const [r, reach] = [Math.hypot(...at), beyond(high - low)];
      return line('centre', onSide(side)([low - reach, r]), onSide(side)([high + reach, r]));
    });
}
