import { boreSizes } from '../../common/drawn/bore-sizes.js';
import { clampAxesAlong } from '../../common/drawn/clamp-axes.js';
import { sectionPlanes } from '../../common/drawn/section-planes.js';
import { beyond, crossing } from '../../common/drawn/strokes.js';
import { threadRoot } from '../../common/drawn/thread-roots.js';
import { polar } from '../../common/hole-pattern.js';
import type { AskedView, SizeMark } from '../../part-views.js';
import type { CollarInSight } from './in-sight.js';

/** The collar seen from above, as it is printed. */
export function endView(collar: CollarInSight): AskedView {
  const { plan, radius } = collar;
  return {
    title: 'Seen from +Z',
    solid: {
      bodies: collar.shapes,
      sight: { kind: 'end', from: 1 },
      hidden: ['clamp', 'pin'],
    },
    strokes: [
      ...clampAxesAlong(plan.clamp, radius),
      ...(plan.halves ? clampAxesAlong(plan.clamp, radius, -1) : []),
      ...(plan.thread ? [threadRoot({ thread: plan.thread.tooth })] : []),
      ...crossing([0, 0], radius + beyond(radius)),
    ],
    sizes: endSizes(collar),
    ...(plan.halves ? {} : { planes: sectionPlanes([0, 180], () => radius) }),
    letters: [],
  };
}

function endSizes({ plan, radius, spread }: CollarInSight): SizeMark[] {
  const { slit, bore, clamp, outside, thread } = plan;
  const isRound = bore.form === 'round' || bore.form === 'hexagon';
  return [
    {
      name: 'slit_width',
      value: slit,
      ...spread(slit, 'inside'),
      from: [radius, -slit / 2],
      to: [radius, slit / 2],
      side: 'right',
    },
    {
      name: 'outside_diameter',
      value: outside,
      sign: '⌀',
      ...spread(outside, 'outside'),
      from: [0, -radius],
      to: [0, radius],
      side: 'left',
    },
    {
      name: 'clamp_offset',
      value: clamp.offset,
      ...spread(clamp.offset, 'outside'),
      from: [0, radius],
      to: [clamp.offset, radius],
      side: 'above',
    },
    ...(isRound || thread
      ? []
      : [
          {
            name: 'bore_diameter',
            value: bore.diameter,
            sign: '⌀',
            ...spread(bore.diameter, 'inside'),
            from: [0, 0] as const,
            to: polar(bore.diameter / 2, -60),
            side: 'leader' as const,
          },
        ]),
    ...(thread ? [] : boreSizes(bore, { before: '', spread })),
  ];
}
