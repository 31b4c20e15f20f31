import { platePocket } from '../../standards/bearings/thrust-bearing.js';
import { springPinLength } from '../../standards/fasteners/spring-pin.js';
import { plain } from '../../units/format.js';
import { appliedWords } from '../common/applied.js';
import { boreReach } from '../common/bore.js';
import { crackCautions, DRIVE_CAUTIONS } from '../common/cautions.js';
import { clampCareWords, gripHardware, PAINT, PREVAILING, tighteningWords, WASH } from '../common/grip-hardware.js';
import { putIn } from '../common/mounting.js';
import type { HardwareRow, Mounting, Particulars } from '../part-kind.js';
import type { CollarDesign } from './dimensions.js';
import type { CollarBearing } from './seat.js';

/** What to buy, how to print and set it, and what to beware of. */
export function collarParticulars(design: CollarDesign): Particulars {
  const { grip, finished, material, printer } = design;
  const care = clampCareWords([grip], design);
  return {
    hardware: [...clampRows(design), ...bearingRows(design), ...pinRows(design), ...backRows(design)],
    mounting: mountingOf(design),
    cautions: [
      ...bearingWords(design),
      ...settingWords(design),
      ...tighteningWords(grip, material),
      // a thread is held by its flanks, and may keep its grease
      ...(finished.thread ? care.filter((words) => words !== WASH) : care),
      ...DRIVE_CAUTIONS,
    ],
    applied: appliedWords(material, printer),
    print: {
      face_up: finished.lip ? 'the lip of the bearing' : 'the face away from the bearing, either one without',
      why: finished.lip
        ? 'the lip opens upwards, the bore comes out round, pockets are bridged'
        : 'the face under the bearing comes off the bed flat, the bore round, pockets are bridged',
      support: 'none',
    },
  };
}

function clampRows({ grip, finished }: CollarDesign): HardwareRow[] {
  const { outside, clamp, halves, bore } = finished;
  return gripHardware({ grip, outside, clamp, halves, far: boreReach(bore).far });
}

function bearingRows({ bearing }: CollarDesign): HardwareRow[] {
  return bearing ? [{ item: 'thrust bearing with both washers', size: sizeWords(bearing), count: 1 }] : [];
}

function pinRows({ finished: { outside, pin, bore } }: CollarDesign): HardwareRow[] {
  if (!pin) return [];
  const chord = 2 * Math.sqrt(Math.max(0, (outside / 2) ** 2 - (pin.hole / 2) ** 2));
  const length = springPinLength(pin.hole, chord);
  return length !== undefined && length > bore.diameter
    ? [{ item: 'spring pin ISO 8752', size: `${plain(pin.hole)}x${length}`, count: 1 }]
    : [];
}

function backRows({ isBacked, shaft }: CollarDesign): HardwareRow[] {
  if (!isBacked) return [];
  const size = `bore ${plain(Math.round(shaft.diameter.likely * 2) / 2)} mm`;
  return [{ item: 'metal clamp collar', size, count: 1 }];
}

function sizeWords({ designation, bore, outside, height }: CollarBearing): string {
  const sizes = `${plain(bore)}x${plain(outside)}x${plain(height)}`;
  return designation ? `${designation}, ${sizes}` : sizes;
}

function bearingWords({ bearing }: CollarDesign): string[] {
  if (!bearing) return [];
  const { diameter, depth } = platePocket(bearing);
  return [
    `The washer with the tighter bore turns with the collar, the one with the wider bore lies in the plate: a pocket there of ⌀${plain(diameter)} mm, ${plain(depth)} mm deep at most, so that the collar never rubs. Needles run on both washers, never on plastic.`,
  ];
}

/** In the order of work: bearing, collar, metal collar behind it, clamp, pin. */
function mountingOf(design: CollarDesign): Mounting {
  const { grip, material, finished } = design;
  return {
    put: [
      ...crackCautions(material, PREVAILING),
      // a thread is held by its flanks, and may keep its grease
      ...(finished.thread ? [] : [WASH]),
      ...putIn(bearingRows(design), 'Onto the screw first'),
      ...bearingWords(design),
      ...putIn(clampRows(design), 'Put in loosely'),
      finished.halves
        ? HALVES
        : finished.thread
          ? 'Turn the collar on up to the bearing; where it goes tight, spread its slit a little with a blade.'
          : 'Push the collar on up to the bearing.',
      ...putIn(backRows(design), 'Behind it'),
      ...(design.isBacked ? [BACK] : []),
      PUSH,
      ...(design.isPaired ? [PAIR] : []),
      ...tighteningWords(grip, material),
      ...pinWords(design),
      ...putIn(pinRows(design), 'The pin'),
      ...(grip.clamp ? [PAINT] : []),
    ],
    settle: [],
  };
}

const HALVES =
  'Put the halves around the shaft from the side and tighten the screws of both sides by turns, so that the gap between them is the same on either side.';
const PUSH =
  'Push the collar up by hand with 5 to 10 N while it is tightened: an end play of 0 to 0.03 mm. More than 20 N of preload only makes the plastic give.';
const PAIR =
  'Set the second collar on its own bearing against the other side of what both stand in; the end play of both together is 0 to 0.03 mm.';
const BACK =
  'Set the metal collar against this one and tighten it first. A set screw bruises the crests: put a pad or a brass tip under it.';

function pinWords({ finished: { pin } }: CollarDesign): string[] {
  return pin
    ? [
        `Then drill ${plain(pin.hole)} mm through collar and screw, with the printed hole as the guide, blow the chips out and drive the pin in until no end of it stands out.`,
      ]
    : [];
}

function settingWords(design: CollarDesign): string[] {
  const { finished, isBacked } = design;
  return [...(finished.halves ? [HALVES] : []), PUSH, ...pinWords(design), ...(isBacked ? [BACK] : [])];
}
