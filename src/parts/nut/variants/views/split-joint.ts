import type { Clamp } from '../../../common/clamp.js';
import { clampAxesAcross } from '../../../common/drawn/clamp-axes.js';
import { beyond, crossing, line } from '../../../common/drawn/strokes.js';
import { threadRoots } from '../../../common/drawn/thread-roots.js';
import { polar } from '../../../common/hole-pattern.js';
import type { AskedView, Letter, SizeMark, Stroke } from '../../../part-views.js';
import { HIDDEN, type NutInSight } from '../../views/in-sight.js';
import { clampLetter } from './clamped.js';
import type { PinInSight } from './pin-in-sight.js';

/** The face of half b that lies on half a, seen from there: +Z to the left, −X above. */
export function jointView(nut: NutInSight, pin: PinInSight, clamp: Clamp | undefined): AskedView {
  const { sizes, bottom, top, bodies } = nut;
  const reach = beyond(top - bottom);
  return {
    title: 'Joint of half b',
    solid: {
      bodies: bodies().flatMap(({ name, shape }) => (name === 'b' ? [shape] : [])),
      sight: { kind: 'side', upwards: 180 },
      hidden: HIDDEN,
    },
    strokes: [
      ...threadRoots(sizes, { bottom, top }),
      ...([1, -1] as const).flatMap((side) => [
        ...pinAxes(pin, side),
        ...(clamp ? clampAxesAcross(clamp, ([x, z]) => [-z, side * x]) : []),
      ]),
      line('centre', [reach - bottom, 0], [-top - reach, 0]),
    ],
    sizes: [...pinSizes(nut, pin), ...(clamp ? clampSizes(nut, clamp) : [])],
    letters: numbers(pin, clamp),
  };
}

function pinAxes({ diameter, offset, height }: PinInSight, side: 1 | -1): Stroke[] {
  return crossing([-height, side * offset], diameter / 2 + beyond(2 * diameter));
}

function pinSizes({ spread }: NutInSight, { diameter, offset, height }: PinInSight): SizeMark[] {
  const [dx, dy] = polar(diameter / 2, 45);
  return [
    {
      name: 'pin_offset',
      value: offset,
      ...spread(offset, 'outside'),
      from: [-height, 0],
      to: [-height, -offset],
      side: 'left',
    },
    {
      name: 'pin_height',
      value: height,
      ...spread(height, 'along'),
      from: [-height, -offset],
      to: [0, -offset],
      side: 'below',
    },
    {
      name: 'pin_hole_diameter',
      value: diameter,
      sign: '2 × ⌀',
      ...spread(diameter, 'inside'),
      from: [-height, offset],
      to: [-height + dx, offset + dy],
      alike: [[-height, -offset]],
      side: 'leader',
    },
  ];
}

function clampSizes({ spread }: NutInSight, { heights, offset }: Clamp): SizeMark[] {
  const height = heights[0]!;
  return [
    {
      name: 'clamp_offset',
      value: offset,
      ...spread(offset, 'outside'),
      from: [-height, 0],
      to: [-height, offset],
      side: 'left',
    },
    {
      name: 'clamp_height',
      value: height,
      ...spread(height, 'along'),
      from: [-height, offset],
      to: [0, offset],
      side: 'above',
    },
  ];
}

/** Numbers as in the hole table; 1 is on +X, below. */
function numbers({ offset, height, diameter }: PinInSight, clamp: Clamp | undefined): Letter[] {
  return ([-1, 1] as const).flatMap((side, i): Letter[] => [
    { at: [-height - 1.1 * diameter, side * (offset + 0.9 * diameter)], text: `P${i + 1}`, away: [0, 0], small: true },
    ...(clamp ? [clampLetter(clamp, `C${i + 1}`, side)] : []),
  ]);
}
