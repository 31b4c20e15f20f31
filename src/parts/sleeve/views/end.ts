import { boreSeen } from '../../common/drawn/bore-seen.js';
import { boreSizes } from '../../common/drawn/bore-sizes.js';
import { clampSeenAlong } from '../../common/drawn/clamp-seen.js';
import { flipped } from '../../common/drawn/flipped.js';
import { roundEndSeen } from '../../common/drawn/round-end-seen.js';
import { beyond, crossing } from '../../common/drawn/strokes.js';
import { polar } from '../../common/hole-pattern.js';
import type { DrawnView, SizeMark, Stroke } from '../../part-views.js';
import { BEFORE, type SleeveInSight, sentence, stopBore } from './in-sight.js';

/** One end seen along the axis; 0 is the lower one of a clamp sleeve, seen from −Z, where +X lies to the left. */
export function endView(sleeve: SleeveInSight, which: 0 | 1): DrawnView {
  const { plan, radius, design } = sleeve;
  const isBelow = which === 0 && plan.bores[1] !== undefined;
  const strokes = endStrokes(sleeve, which);
  return {
    title: plan.bores[1] ? sentence(design.ends[which]!.name) : 'Either end',
    strokes: isBelow ? flipped(strokes) : strokes,
    hatched: [],
    sizes: endSizes(sleeve, which, isBelow ? -1 : 1),
    // above the line, as the width of the slit may be stated on it
    letters: ([1, -1] as const).map((way) => ({ at: [way * radius, 0], text: 'A', away: [0.7 * way, 0.71] })),
  };
}

function endStrokes({ plan, radius }: SleeveInSight, which: 0 | 1): Stroke[] {
  const { slit, bores, clamps } = plan;
  const { bore } = bores[which] ?? bores[0];
  return [
    ...roundEndSeen({ radius, chamfer: 0, bore, slit }),
    ...(bores[1] ? boreSeen(stopBore(plan), 'outline', slit) : []),
    ...(clamps[which] ? clampSeenAlong(clamps[which], radius) : []),
    ...crossing([0, 0], radius + beyond(radius)),
  ];
}

/** @param way −1 where +X lies to the left */
function endSizes({ plan, radius, spread }: SleeveInSight, which: 0 | 1, way: 1 | -1): SizeMark[] {
  const { slit, bores, clamps } = plan;
  const { bore } = bores[which] ?? bores[0];
  const [clamp, before] = [clamps[which], bores[1] ? BEFORE[which] : ''];
  const diameter: SizeMark = {
    name: `${before}bore_diameter`,
    value: bore.diameter,
    sign: '⌀',
    ...spread(bore.diameter, 'inside'),
    from: [0, 0],
    to: polar(bore.diameter / 2, -60),
    side: 'leader',
  };
  const offset = clamp && {
    name: `${before}clamp_offset`,
    value: clamp.offset,
    ...spread(clamp.offset, 'outside'),
    from: [0, 0] as const,
    to: [way * clamp.offset, radius] as const,
    side: 'above' as const,
  };
  const isRound = bore.form === 'round' || bore.form === 'hexagon';
  return [
    ...(which === 1 || !bores[1]
      ? [
          {
            name: 'slit_width',
            value: slit,
            ...spread(slit, 'inside'),
            from: [way * radius, -slit / 2],
            to: [way * radius, slit / 2],
            side: way === 1 ? 'right' : 'left',
          } as const,
        ]
      : []),
    ...(offset ? [offset] : []),
    ...(isRound ? [] : [diameter]),
    ...boreSizes(bore, { before, spread, flipped: way === -1 }),
  ];
}
