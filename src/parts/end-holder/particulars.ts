import { hexNut } from '../../standards/fasteners/nuts.js';
import { type FastenerSize, fastenerThread } from '../../standards/fasteners/sizes.js';
import { washer } from '../../standards/fasteners/washer.js';
import { appliedWords } from '../common/applied.js';
import { crackCautions, DRIVE_CAUTIONS, LOCK_BY_NUTS } from '../common/cautions.js';
import { WASHER } from '../common/hardware-names.js';
import { nextCapScrewLength } from '../common/screw-length.js';
import type { HardwareRow, Particulars } from '../part-kind.js';
import type { EndHolderDesign } from './dimensions.js';

/** What to buy, how to print, and what to beware of. */
export function endHolderParticulars(design: EndHolderDesign): Particulars {
  const { material, printer, bearing } = design;
  return {
    hardware: hardwareOf(design),
    cautions: [...roleWords(design), ...crackCautions(material, LOCK_BY_NUTS), ...DRIVE_CAUTIONS],
    applied: appliedWords(material, printer),
    print: {
      face_up: bearing ? 'outer face up, frame face on the bed' : 'either face',
      why: bearing ? 'the pocket stands along the print axis and comes out round' : 'the bore comes out round',
      support: 'none',
    },
  };
}

function hardwareOf({ bearing, pattern, finished, frame }: EndHolderDesign): HardwareRow[] {
  const { screw } = pattern;
  const count = finished.holes.centres.length;
  const bearings = bearing ? [{ item: 'deep-groove ball bearing', size: bearing.name, count: 1 }] : [];
  if (screw === undefined) return bearings;
  const length = frame === undefined ? undefined : nextCapScrewLength(screw, gripOf(finished) + frame + endOf(screw));
  return [
    ...bearings,
    { item: 'socket cap screw ISO 4762', size: length === undefined ? screw : `${screw}x${length}`, count },
    { item: WASHER, size: screw, count: 2 * count },
    { item: 'hexagon nut ISO 4032', size: screw, count },
  ];
}

/** Washers under head and nut, the nut, and a pitch and a half that stands out, mm. */
function endOf(screw: FastenerSize): number {
  return 2 * washer(screw).thickness + hexNut(screw).height + 1.5 * fastenerThread(screw).pitch;
}

/** Plastic under the heads, mm. */
export function gripOf({ thickness, cover }: EndHolderDesign['finished']): number {
  return thickness + (cover?.thickness ?? 0);
}

/** How it is set, by what it does. */
function roleWords({ role, heldBy, bearing }: EndHolderDesign): string[] {
  const set =
    'Set it with the axis driven to this end and its bolts loose: turn the screw by hand, let the holder find its place, tighten, and drive to the other end and back by hand.';
  if (role === 'free')
    return ['The ring touches nothing in work: centre it around the screw by eye with the axis at mid travel.'];
  return [
    set,
    ...(role === 'guiding'
      ? ['The screw stays free along its axis: no collar, nut or circlip on this side.']
      : [
          'It alone carries the screw along its axis: fix the inner ring between two collars or a shoulder and a nut, and leave the coupling slack along the axis.',
        ]),
    ...(heldBy === 'lip'
      ? [
          'Push the bearing in by its outer ring alone, square, in one go and at room temperature: the lip snaps over it once, and is not made to be taken apart again and again.',
        ]
      : []),
    ...(bearing?.flange
      ? [
          'Its flange lies on the outer face: it carries what pulls the screw towards the frame, and nothing the other way.',
        ]
      : []),
    ...(heldBy === 'press'
      ? ['Press the bearing in by its outer ring alone, square, in a vice with soft jaws; never by the inner ring.']
      : []),
    ...(bearing ? [] : ['A bush runs on the crests of the screw: grease it, and keep below 200 rpm.']),
  ];
}
