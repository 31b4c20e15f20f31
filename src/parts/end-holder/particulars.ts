import { hexNut } from '../../standards/fasteners/nuts.js';
import { type FastenerSize, fastenerThread } from '../../standards/fasteners/sizes.js';
import { washer } from '../../standards/fasteners/washer.js';
import { appliedWords } from '../common/applied.js';
import { crackCautions, DRIVE_CAUTIONS, LOCK_BY_NUTS } from '../common/cautions.js';
import { capScrews, WASHER } from '../common/hardware-names.js';
import { putIn } from '../common/mounting.js';
import { nextCapScrewLength } from '../common/screw-length.js';
import type { HardwareRow, Mounting, Particulars } from '../part-kind.js';
import type { EndHolderDesign } from './dimensions.js';

/** What to buy, how to print, and what to beware of. */
export function endHolderParticulars(design: EndHolderDesign): Particulars {
  const { material, printer, bearing } = design;
  return {
    hardware: [...bearingRow(design), ...boltRows(design)],
    mounting: mountingOf(design),
    cautions: [...roleWords(design), ...crackCautions(material, LOCK_BY_NUTS), ...DRIVE_CAUTIONS],
    applied: appliedWords(material, printer),
    print: {
      face_up: bearing ? 'outer face up, frame face on the bed' : 'either face',
      why: bearing ? 'the pocket stands along the print axis and comes out round' : 'the bore comes out round',
      support: 'none',
    },
  };
}

function bearingRow({ bearing }: EndHolderDesign): HardwareRow[] {
  return bearing ? [{ item: 'deep-groove ball bearing', size: bearing.name, count: 1 }] : [];
}

function boltRows({ pattern, finished, frame }: EndHolderDesign): HardwareRow[] {
  const { screw } = pattern;
  if (screw === undefined) return [];
  const count = finished.holes.centres.length;
  const length = frame === undefined ? undefined : nextCapScrewLength(screw, gripOf(finished) + frame + endOf(screw));
  return [
    capScrews(screw, length, count, ...(frame === undefined ? ['frame.thickness'] : [])),
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

/** In the order of work: the bearing first, then over the end of the screw, then its bolts. */
function mountingOf(design: EndHolderDesign): Mounting {
  const { material, role, bearing } = design;
  return {
    put: [
      ...crackCautions(material, LOCK_BY_NUTS),
      ...(bearing ? bearingWords(design) : bushWords(design)),
      'Slide it over the end of the screw, seat it on the frame without bolts, and look for light under it.',
      ...putIn(boltRows(design)),
      ...(role === 'locating' ? [ALONE] : []),
    ],
    settle: role === 'free' ? [BY_EYE] : [SET, ...(role === 'guiding' ? [STAYS_FREE] : [])],
  };
}

const SET =
  'Set it with the axis driven to this end and its bolts loose: turn the screw by hand, let the holder find its place, tighten, and drive to the other end and back by hand.';
const BY_EYE = 'The ring touches nothing in work: centre it around the screw by eye with the axis at mid travel.';
const STAYS_FREE = 'The screw stays free along its axis: no collar, nut or circlip on this side.';
const ALONE =
  'It alone carries the screw along its axis: fix the inner ring between two collars or a shoulder and a nut, and leave the coupling slack along the axis.';

/** How it is set, by what it does, and how its bearing goes in. */
function roleWords(design: EndHolderDesign): string[] {
  const { role, bearing } = design;
  if (role === 'free') return [BY_EYE];
  return [SET, role === 'guiding' ? STAYS_FREE : ALONE, ...(bearing ? bearingWords(design) : bushWords(design))];
}

function bushWords({ role }: EndHolderDesign): string[] {
  return role === 'free' ? [] : ['A bush runs on the crests of the screw: grease it, and keep below 200 rpm.'];
}

/** How the bearing is put into its pocket. */
function bearingWords({ heldBy, bearing }: EndHolderDesign): string[] {
  const into = {
    lip: 'Push the bearing in by its outer ring alone, square, in one go and at room temperature: the lip snaps over it once, and is not made to be taken apart again and again.',
    press: 'Press the bearing in by its outer ring alone, square, in a vice with soft jaws; never by the inner ring.',
    plate: `Push the bearing ${bearing?.name ?? ''} into its pocket by hand, by its outer ring, and lay the plate over it: the bolts pull it tight.`,
  };
  return [
    ...(heldBy ? [into[heldBy]] : []),
    ...(bearing?.flange
      ? [
          'Its flange lies on the outer face: it carries what pulls the screw towards the frame, and nothing the other way.',
        ]
      : []),
  ];
}
