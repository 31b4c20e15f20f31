import { boreSizes } from '../../common/drawn/bore-sizes.js';
import { clampAxesAlong } from '../../common/drawn/clamp-axes.js';
import { sectionPlanes } from '../../common/drawn/section-planes.js';
import { beyond, crossing } from '../../common/drawn/strokes.js';
import { polar } from '../../common/hole-pattern.js';
import type { AskedView, SizeMark } from '../../part-views.js';
import { BEFORE, type SleeveInSight, sentence } from './in-sight.js';

/** One end seen along the axis; 0 is the lower one of a clamp sleeve, seen from −Z, where +X lies to the left. */
export function endView(sleeve: SleeveInSight, which: 0 | 1): AskedView {
  const { plan, radius, design } = sleeve;
  const isBelow = which === 0 && plan.bores[1] !== undefined;
  const way = isBelow ? -1 : 1;
  const clamp = plan.clamps[which];
  return {
    title: plan.bores[1] ? sentence(design.ends[which]!.name) : 'Either end',
    solid: { bodies: sleeve.shapes, sight: { kind: 'end', from: way }, hidden: ['clamp'] },
    strokes: [...(clamp ? clampAxesAlong(clamp, radius, way) : []), ...crossing([0, 0], radius + beyond(radius))],
    sizes: endSizes(sleeve, which, way),
    planes: sectionPlanes([0, 180], () => radius, way),
    letters: [],
  };
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
          {
            name: 'outside_diameter',
            value: plan.outside,
            sign: '⌀',
            ...spread(plan.outside, 'outside'),
            from: [0, -radius],
            to: [0, radius],
            side: way === 1 ? 'left' : 'right',
          } as const,
        ]
      : []),
    ...(offset ? [offset] : []),
    ...(isRound ? [] : [diameter]),
    ...boreSizes(bore, { before, spread, flipped: way === -1 }),
  ];
}
