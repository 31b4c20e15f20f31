import { reachOf } from '../../../../solid/convex.js';
import { plain as words } from '../../../../units/format.js';
import { type Clamp, printedClamp } from '../../../common/clamp.js';
import { clampFaces } from '../../../common/drawn/carved-faces.js';
import { clampSeenAlong } from '../../../common/drawn/clamp-seen.js';
import { lyingFaces } from '../../../common/drawn/cut-face.js';
import { halfTurned } from '../../../common/drawn/half-turned.js';
import { box, line } from '../../../common/drawn/strokes.js';
import { roofedOutline } from '../../../common/side-hole.js';
import type { HoleRow, Stroke } from '../../../part-views.js';
import { type NutInSight, nearestHole } from '../../views/in-sight.js';
import type { Member } from '../../views/member.js';
import type { Family } from '../types.js';
import { clampRow, seatWords } from './clamped.js';
import { jointView } from './split-joint.js';

/** How far from the joint the section keeps, and how far the halves are pulled apart: a share of the body. */
const OFF_JOINT = 70;
const APART = 0.35;

/** A pin's bore as it stands, on either side of the axis. */
export interface PinInSight {
  readonly diameter: number;
  readonly offset: number;
  readonly height: number;
  /** along Y to either side of the joint */
  readonly reach: number;
}

/** Two halves at the plane y = 0: cut across their joint, which is shown by itself. */
export function splitMember(nut: NutInSight, family: Family & { kind: 'split' }, plain: Member): Member {
  const { print, sizes, design } = nut;
  const clamp = family.clamp && printedClamp(family.clamp, print);
  const { diameter, offset, height, length } = family.pins;
  const pin: PinInSight = {
    diameter: print.inside(diameter + 0.1),
    offset: print.across(offset),
    height: print.along(height),
    reach: print.across(length / 2 + 0.25),
  };
  const away = APART * design.printed.body.across;
  return {
    ...plain,
    planes: [nearestHole(nut, 90, OFF_JOINT), nearestHole(nut, 270, OFF_JOINT)],
    faces: (angle) => ({
      added: [],
      cut: [
        ...(clamp ? [...clampFaces(clamp, angle), ...clampFaces(clamp, angle + 180)] : []),
        ...[1, -1].flatMap((side) => pinFaces(pin, side * pin.offset, angle)),
      ],
    }),
    inHalves: true,
    end: {
      strokes: [
        ...jointLines(nut),
        ...(clamp ? [clampSeenAlong(clamp, sizes.body.across / 2)].flatMap((one) => [...one, ...halfTurned(one)]) : []),
        ...pinsAlong(pin),
      ],
      sizes: [],
    },
    further: [jointView(nut, pin, clamp)],
    rows: rowsOf(pin, clamp, `pin ${words(diameter)}x${words(length)}`),
    notes: [
      `Halves a (upper) and b: pins P place them, ${clamp ? `screws C close them; ${seatWords(clamp)}` : 'a hose clip closes them'}`,
    ],
    apart: { a: [0, away, 0], b: [0, -away, 0] },
  };
}

function pinFaces({ diameter, height, reach }: PinInSight, x: number, angle: number) {
  return lyingFaces({ outline: roofedOutline(diameter / 2), at: [x, height], from: -reach, to: reach }, angle);
}

/** The joint from the bore outwards. */
function jointLines({ plate, body, sizes }: NutInSight): Stroke[] {
  return [0, 180].map((angle) => {
    const way = angle === 0 ? 1 : -1;
    return line('outline', [(way * sizes.thread.minor) / 2, 0], [way * reachOf(plate ?? body, angle), 0]);
  });
}

function pinsAlong({ diameter, offset, reach }: PinInSight): Stroke[] {
  return [1, -1].map((side) =>
    box('hidden', [side * offset - diameter / 2, -reach], [side * offset + diameter / 2, reach]),
  );
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
