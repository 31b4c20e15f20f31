import { clampAxesAcross } from '../../common/drawn/clamp-axes.js';
import { beyond, crossing, line } from '../../common/drawn/strokes.js';
import { detailMark } from '../../common/drawn/thread-detail.js';
import { threadRoots } from '../../common/drawn/thread-roots.js';
import { polar } from '../../common/hole-pattern.js';
import type { AskedView, Letter, Point, SizeMark } from '../../part-views.js';
import { boreEnd } from '../plan.js';
import { acrossPlanes } from './across.js';
import type { CollarInSight } from './in-sight.js';
import { clampPlaces } from './places.js';

/** The section through the slit, +Z to the left, the slit on top: its wall is looked at, not cut. Of halves, the joint of one. */
export function sideView(collar: CollarInSight): AskedView {
  const { plan, radius } = collar;
  const { length, clamp, thread, pin } = plan;
  const stretch = { bottom: 0, top: boreEnd(plan) };
  const detail = thread && detailMark({ sizes: { thread: thread.tooth } }, { threads: [stretch] });
  return {
    title: plan.halves ? 'Joint of a half' : 'Section A–A',
    solid: {
      bodies: [collar.shapes[0]!],
      sight: plan.halves ? { kind: 'side', upwards: 0 } : { kind: 'section', planes: [0, 180] },
      hidden: ['clamp'],
    },
    strokes: [
      ...clampAxesAcross(clamp, onPaper),
      ...(plan.halves ? clampAxesAcross(clamp, ([x, z]) => onPaper([-x, z])) : []),
      ...(pin ? crossing(onPaper([0, pin.height]), pin.hole / 2 + 1) : []),
      ...(thread ? threadRoots({ thread: thread.tooth, leadIn: thread.leadIn }, stretch) : []),
      line('centre', [beyond(radius), 0], [-length - beyond(radius), 0]),
      ...(detail?.strokes ?? []),
    ],
    ...(plan.halves ? { planes: acrossPlanes(collar) } : {}),
    sizes: sideSizes(collar),
    letters: [...numbers(collar), ...(detail?.letters ?? [])],
  };
}

function onPaper([x, z]: Point): Point {
  return [-z, x];
}

function sideSizes({ plan, radius, spread }: CollarInSight): SizeMark[] {
  const { length, bore, thread, clamp, lip, pin, halves } = plan;
  const along = (name: string, value: number, ends: readonly [Point, Point], side: 'above' | 'below'): SizeMark => ({
    name,
    value,
    ...spread(value, 'along'),
    from: ends[0],
    to: ends[1],
    side,
  });
  const across = (name: string, value: number, x: number, side: 'left' | 'right'): SizeMark => ({
    name,
    value,
    sign: '⌀',
    ...spread(value, 'inside'),
    from: [x, -value / 2],
    to: [x, value / 2],
    side,
  });
  const hole = (name: string, value: number, places: readonly Point[]): SizeMark => {
    const at = places[0]!;
    const [dx, dy] = polar(value / 2, 40);
    return {
      name,
      value,
      sign: places.length > 1 ? `${places.length} × ⌀` : '⌀',
      ...spread(value, 'inside'),
      from: at,
      to: [at[0] + dx, at[1] + dy],
      alike: places,
      side: 'leader',
    };
  };
  const height = clamp.heights[0]!;
  // leaders lead to the right: the other end has more room, where no lip is stated
  const boreMark = () =>
    lip ? across('bore_diameter', bore.diameter, 0, 'right') : across('bore_diameter', bore.diameter, -length, 'left');
  return [
    along(
      'length',
      length,
      [
        [0, -radius],
        [-length, -radius],
      ],
      'below',
    ),
    ...(bore.form === 'round' && !thread ? [boreMark()] : []),
    along(
      'clamp_height',
      height,
      [
        [0, clamp.offset],
        [-height, clamp.offset],
      ],
      'above',
    ),
    hole(
      'clamp_hole_diameter',
      clamp.hole,
      clampPlaces(clamp, halves).map(({ x, height }) => onPaper([x, height])),
    ),
    ...(lip
      ? [
          across('lip_diameter', lip.diameter, -length, 'left'),
          along(
            'lip_depth',
            lip.depth,
            [
              [lip.depth - length, -lip.diameter / 2],
              [-length, -lip.diameter / 2],
            ],
            'below',
          ),
        ]
      : []),
    ...(pin
      ? [
          hole('pin_hole_diameter', pin.hole, [onPaper([0, pin.height])]),
          along(
            'pin_height',
            pin.height,
            [
              [0, -radius],
              [-pin.height, 0],
            ],
            'below',
          ),
        ]
      : []),
  ];
}

/** Numbers of the clamp screws beside their holes, as in the hole table. */
function numbers({ plan: { clamp, halves } }: CollarInSight): Letter[] {
  return clampPlaces(clamp, halves).map(({ label, x, height }) => ({
    at: [-height + clamp.head / 2, x + Math.sign(x) * (clamp.head / 2)],
    text: label,
    away: [0, 0],
  }));
}
