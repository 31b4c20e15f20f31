import { plain as words } from '../../../../units/format.js';
import { type Clamp, printedClamp } from '../../../common/clamp.js';
import { clampAxesAlong } from '../../../common/drawn/clamp-axes.js';
import type { HoleRow } from '../../../part-views.js';
import { type NutInSight, nearestHole } from '../../views/in-sight.js';
import type { Member } from '../../views/member.js';
import { pinHoles } from '../pin-holes.js';
import type { Variant } from '../types.js';
import { clampRow, seatWords } from './clamped.js';
import type { PinInSight } from './pin-in-sight.js';
import { jointView } from './split-joint.js';

export type { PinInSight } from './pin-in-sight.js';

/** How far from the joint the section keeps, and how far the halves are pulled apart: a share of the body. */
const OFF_JOINT = 70;
const APART = 0.35;

/** Two halves at the plane y = 0: cut across their joint, which is shown by itself. */
export function splitMember(nut: NutInSight, family: Variant & { kind: 'split' }, plain: Member): Member {
  const { print, sizes, design } = nut;
  const clamp = family.clamp && printedClamp(family.clamp, print);
  const { diameter, length } = family.pins;
  const { radius, offset, height } = pinHoles(family.pins, print);
  const pin: PinInSight = { diameter: 2 * radius, offset, height };
  const away = APART * design.printed.body.across;
  return {
    ...plain,
    planes: [nearestHole(nut, 90, OFF_JOINT), nearestHole(nut, 270, OFF_JOINT)],
    end: {
      strokes: clamp ? ([1, -1] as const).flatMap((side) => clampAxesAlong(clamp, sizes.body.across / 2, side)) : [],
      sizes: [],
    },
    further: [jointView(nut, pin, clamp)],
    rows: rowsOf(pin, clamp, `pin ${words(diameter)}x${words(length)}`),
    notes: [
      `Halves a (upper) and b: pins P place them, ${clamp ? `screws C close them; ${seatWords(clamp, nut)}` : 'a hose clip closes them'}`,
    ],
    apart: { a: [0, away, 0], b: [0, -away, 0] },
  };
}

function rowsOf({ offset, height, diameter }: PinInSight, clamp: Clamp | undefined, pin: string): HoleRow[] {
  return [
    ...([1, -1] as const).map((side, i) => ({
      label: `P${i + 1}`,
      at: [side * offset, 0] as const,
      height,
      diameter,
      note: pin,
    })),
    ...(clamp ? ([1, -1] as const).map((side, i) => clampRow(clamp, `C${i + 1}`, side)) : []),
  ];
}
