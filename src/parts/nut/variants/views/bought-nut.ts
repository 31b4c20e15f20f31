import { loftConvex } from '../../../../solid/convex-loft.js';
import { type NutPocket, nutPocketOutline } from '../../../common/bought-nut.js';
import { noted } from '../../../common/drawn/spread.js';
import type { Companion, HoleRow, SizeMark } from '../../../part-views.js';
import type { NutInSight } from '../../views/in-sight.js';
import type { Member } from '../../views/member.js';
import type { Variant } from '../types.js';

/** A pocket as it stands. */
interface PocketInSight {
  readonly pocket: NutPocket;
  readonly acrossFlats: number;
  readonly opens: 'face' | 'end';
  readonly floor: number;
  readonly mouth: number;
}

function pocketInSight({ print, bottom, top }: NutInSight, pocket: NutPocket, opens: 'face' | 'end'): PocketInSight {
  const acrossFlats = print.inside(pocket.acrossFlats);
  const depth = print.along(pocket.depth);
  const [floor, mouth] = opens === 'end' ? [top - depth, top] : [bottom + depth, bottom];
  return { pocket, acrossFlats, opens, floor, mouth };
}

/** A nut with the pocket of a metal nut that stands by over its thread. */
export function catchMember(nut: NutInSight, pocket: NutPocket & { readonly gap: number }, plain: Member): Member {
  const seen = pocketInSight(nut, pocket, 'end');
  const gap = nut.print.along(pocket.gap);
  return {
    ...withPocket(nut, seen, plain),
    threads: [{ bottom: nut.bottom, top: seen.floor }],
    rows: [pocketRow(nut, seen, 'catch nut')],
    notes: [
      `${pocketWords(pocket)}. It stands ${noted(pocket.gap)} off the working thread and bears nothing until that fails`,
    ],
    companions: [boughtNut(nut, seen, seen.floor + gap)],
  };
}

/** A body around a bought nut. */
export function holderMember(
  nut: NutInSight,
  { pocket, opens, bore }: Variant & { kind: 'holder' },
  plain: Member,
): Member {
  const seen = pocketInSight(nut, pocket, opens);
  const { bottom, top, print, spread } = nut;
  const diameter = print.inside(bore);
  const radius = diameter / 2;
  const pocketed = withPocket(nut, seen, plain);
  const end = opens === 'end' ? bottom : top;
  const size: SizeMark = {
    name: 'bore',
    value: diameter,
    sign: '⌀',
    ...spread(diameter, 'inside'),
    from: [-end, -radius],
    to: [-end, radius],
    side: opens === 'end' ? 'right' : 'left',
  };
  return {
    ...pocketed,
    threads: [],
    side: { strokes: [], sizes: [...pocketed.side.sizes, size] },
    rows: [{ label: 'B', at: [0, 0], diameter, note: 'screw passes' }, pocketRow(nut, seen, 'metal nut')],
    notes: [pocketWords(pocket)],
    companions: [boughtNut(nut, seen, opens === 'end' ? seen.floor : seen.floor - print.along(pocket.nut.height))],
  };
}

/** Faces, edges and sizes of a pocket. */
function withPocket({ spread }: NutInSight, seen: PocketInSight, plain: Member): Member {
  const { floor, mouth, acrossFlats } = seen;
  const ends = [Math.min(floor, mouth), Math.max(floor, mouth)] as const;
  const depth = ends[1] - ends[0];
  const half = acrossFlats / 2;
  return {
    ...plain,
    side: {
      strokes: [],
      sizes: [
        {
          name: 'pocket_depth',
          value: depth,
          ...spread(depth, 'along'),
          from: [-ends[1], half],
          to: [-ends[0], half],
          side: 'above',
        },
      ],
    },
    end: {
      strokes: [],
      sizes: [
        {
          name: 'pocket_across_flats',
          value: acrossFlats,
          ...spread(acrossFlats, 'inside'),
          from: [0, -half],
          to: [0, half],
          side: 'left',
        },
      ],
    },
  };
}

function pocketRow({ design }: NutInSight, { acrossFlats, pocket }: PocketInSight, what: string): HoleRow {
  const { designation } = design.screw;
  const note = `${pocket.shape}: ${designation ? `${designation} ` : ''}${what}`;
  return { label: 'N', at: [0, 0], diameter: acrossFlats, note };
}

function pocketWords({ shape, nut }: NutPocket): string {
  return `Pocket N for a metal ${shape} nut, ${noted(nut.acrossFlats)} across flats and ${noted(nut.height)} high`;
}

/** The metal nut in its pocket; the screw is seen through it. */
function boughtNut({ print }: NutInSight, { pocket }: PocketInSight, from: number): Companion {
  const outline = nutPocketOutline(pocket, pocket.nut.acrossFlats);
  const to = from + print.along(pocket.nut.height);
  return {
    name: 'metal nut',
    mesh: loftConvex(outline, [
      [from, 0],
      [to, 0],
    ]),
  };
}
