import { plain as words } from '../../../../units/format.js';
import { type Clamp, printedClamp } from '../../../common/clamp.js';
import { clampAxesAcross, clampAxesAlong } from '../../../common/drawn/clamp-axes.js';
import { notedSize } from '../../../common/drawn/spread.js';
import type { HoleRow, Letter, SizeMark } from '../../../part-views.js';
import { type NutInSight, nearestHole } from '../../views/in-sight.js';
import type { Member } from '../../views/member.js';
import type { Variant } from '../types.js';

/** A body with a slit on +X that one screw closes: cut through the slit, whose wall is looked at, and a hole. */
export function clampedMember(nut: NutInSight, family: Variant & { kind: 'clamped' }, plain: Member): Member {
  const { print, sizes, spread } = nut;
  const clamp = printedClamp(family.clamp, print);
  const width = print.inside(family.slit.width);
  const isFlanged = sizes.flange !== undefined;
  const from = print.along(family.slit.from);
  const radius = sizes.body.across / 2;
  const start: SizeMark = {
    name: 'slit_start',
    value: from,
    ...spread(from, 'along'),
    from: [-from, radius],
    to: [0, radius],
    side: 'above',
  };
  return {
    ...plain,
    planes: [0, nearestHole(nut, 180)],
    isSlit: true,
    side: {
      strokes: clampAxesAcross(clamp, ([x, z]) => [-z, x]),
      hidden: ['clamp'],
      sizes: [...(isFlanged ? [start] : []), clampHeight(clamp, nut)],
      letters: [clampLetter(clamp, 'C', 1)],
    },
    end: {
      strokes: clampAxesAlong(clamp, radius),
      sizes: [
        {
          name: 'slit_width',
          value: width,
          ...spread(width, 'inside'),
          from: [radius, -width / 2],
          to: [radius, width / 2],
          side: 'right',
        },
        clampOffset(clamp, nut),
        {
          name: 'body_diameter',
          value: sizes.body.across,
          sign: '⌀',
          ...spread(sizes.body.across, 'outside'),
          from: [0, -radius],
          to: [0, radius],
          side: 'left',
        },
      ],
    },
    rows: [clampRow(clamp, 'C')],
    notes: [`C closes the slit until the play is gone; ${seatWords(clamp, nut)}`],
  };
}

/** Height of a closing screw, in the section. */
function clampHeight({ heights, offset }: Clamp, { spread }: NutInSight): SizeMark {
  const height = heights[0]!;
  return {
    name: 'clamp_height',
    value: height,
    ...spread(height, 'along'),
    from: [-height, offset],
    to: [0, offset],
    side: 'above',
  };
}

/** How far a closing screw stands beside the axis, seen along that. */
function clampOffset({ offset }: Clamp, { spread, sizes }: NutInSight): SizeMark {
  const reach = sizes.body.across / 2;
  return {
    name: 'clamp_offset',
    value: offset,
    ...spread(offset, 'outside'),
    from: [0, reach],
    to: [offset, reach],
    side: 'above',
  };
}

/** A closing screw in the hole table. */
export function clampRow(
  { screw, screwLength, offset, heights, hole }: Clamp,
  label: string,
  side: 1 | -1 = 1,
): HoleRow {
  return {
    label,
    at: [side * offset, 0],
    height: heights[0]!,
    diameter: hole,
    note: `${screw}x${words(screwLength)}, nut ${screw}`,
  };
}

/** Where head and nut of a closing screw are seated. */
export function seatWords({ headSeat, nutSeat }: Clamp, { spread }: NutInSight): string {
  const [head, nut] = [headSeat, nutSeat].map((seat) => notedSize(seat, spread(seat, 'outside')));
  return `heads are seated ${head}, nuts ${nut} from the plane through the axis`;
}

/** Number of a clamp's screw beside its passage in a section: above the axis, or below it where the side is −1. */
export function clampLetter({ heights, offset, head }: Clamp, text: string, side: 1 | -1): Letter {
  return { at: [-heights[0]! - 0.8 * head, side * (offset + 0.45 * head)], text, away: [0, 0], small: true };
}
