import type { Clamp } from '../../../common/clamp.js';
import { clampSeenAcross } from '../../../common/drawn/clamp-seen.js';
import { flatArea } from '../../../common/drawn/flat-area.js';
import { beyond, crossing, line, loop } from '../../../common/drawn/strokes.js';
import { roofedOutline } from '../../../common/side-hole.js';
import type { DrawnView, Letter, Point, SizeMark, Stroke } from '../../../part-views.js';
import type { NutInSight } from '../../views/in-sight.js';
import { profileOf, threadFace } from '../../views/material.js';
import { onSide } from '../../views/member.js';
import { threadStrokes } from '../../views/side.js';
import { clampLetter } from './clamped.js';
import type { PinInSight } from './split.js';

/** The face of half b that lies on half a, seen from there: +Z to the left, −X above. */
export function jointView(nut: NutInSight, pin: PinInSight, clamp: Clamp | undefined): DrawnView {
  const { sizes, bottom, top } = nut;
  const faces = ([1, -1] as const).flatMap((side) =>
    flatArea([profileOf(nut, side === 1 ? 180 : 0)], [threadFace(sizes, { bottom, top })]).map((points) =>
      points.map(onSide(side)),
    ),
  );
  const reach = beyond(top - bottom);
  return {
    title: 'Joint of half b',
    strokes: [
      ...faces.map((points) => loop('outline', points)),
      ...threadStrokes(sizes, { bottom, top }),
      ...([1, -1] as const).flatMap((side) => pinSeen(pin, side)),
      // a head is sunk into half b on +X, below; a nut on −X
      ...(clamp
        ? [
            ...clampSeenAcross(clamp, ([x, z]) => [-z, -x], 'head'),
            ...clampSeenAcross(clamp, ([x, z]) => [-z, x], 'nut'),
          ]
        : []),
      line('centre', [reach - bottom, 0], [-top - reach, 0]),
    ],
    hatched: [],
    sizes: [...pinSizes(nut, pin), ...(clamp ? clampSizes(nut, clamp) : [])],
    letters: numbers(pin, clamp),
  };
}

function pinSeen({ diameter, offset, height }: PinInSight, side: 1 | -1): Stroke[] {
  const outline = roofedOutline(diameter / 2).map(([x, z]): Point => [-(height + z), side * (offset + x)]);
  return [loop('outline', outline), ...crossing([-height, side * offset], diameter / 2 + beyond(2 * diameter))];
}

function pinSizes({ spread }: NutInSight, { diameter, offset, height }: PinInSight): SizeMark[] {
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
      to: [-height + 0.35 * diameter, offset + 0.35 * diameter],
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
    { at: [-height - 1.1 * diameter, side * (offset + 0.9 * diameter)], text: `P${i + 1}`, away: [0, 0] },
    ...(clamp ? [clampLetter(clamp, `C${i + 1}`, side)] : []),
  ]);
}
