import { platePocket } from '../../standards/bearings/thrust-bearing.js';
import { springPinLength } from '../../standards/fasteners/spring-pin.js';
import { plain } from '../../units/format.js';
import { appliedWords } from '../common/applied.js';
import { boreReach } from '../common/bore.js';
import { DRIVE_CAUTIONS } from '../common/cautions.js';
import { clampCareWords, gripHardware, tighteningWords, WASH } from '../common/grip-hardware.js';
import type { HardwareRow, Particulars } from '../part-kind.js';
import type { CollarDesign } from './dimensions.js';
import type { CollarBearing } from './seat.js';

/** What to buy, how to print and set it, and what to beware of. */
export function collarParticulars(design: CollarDesign): Particulars {
  const { grip, finished, material, printer, bearing } = design;
  const care = clampCareWords([grip], design);
  return {
    hardware: [
      ...gripHardware({
        grip,
        outside: finished.outside,
        clamp: finished.clamp,
        halves: finished.halves,
        far: boreReach(finished.bore).far,
      }),
      ...boughtParts(design),
    ],
    cautions: [
      ...(bearing ? bearingWords(bearing) : []),
      ...settingWords(design),
      ...(tighteningWords(grip, material) === undefined ? [] : [tighteningWords(grip, material)!]),
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

function boughtParts({ bearing, finished, isBacked, shaft }: CollarDesign): HardwareRow[] {
  const { outside, pin, bore } = finished;
  const chord = pin ? 2 * Math.sqrt(Math.max(0, (outside / 2) ** 2 - (pin.hole / 2) ** 2)) : 0;
  const length = pin && springPinLength(pin.hole, chord);
  return [
    ...(bearing ? [{ item: 'thrust bearing with both washers', size: sizeWords(bearing), count: 1 }] : []),
    ...(pin && length !== undefined && length > bore.diameter
      ? [{ item: 'spring pin ISO 8752', size: `${plain(pin.hole)}x${length}`, count: 1 }]
      : []),
    ...(isBacked
      ? [{ item: 'metal clamp collar', size: `bore ${plain(Math.round(shaft.diameter.likely * 2) / 2)} mm`, count: 1 }]
      : []),
  ];
}

function sizeWords({ designation, bore, outside, height }: CollarBearing): string {
  const sizes = `${plain(bore)}x${plain(outside)}x${plain(height)}`;
  return designation ? `${designation}, ${sizes}` : sizes;
}

function bearingWords({ outside, height }: CollarBearing): string[] {
  const { diameter, depth } = platePocket({ outside, height });
  return [
    `The washer with the tighter bore turns with the collar, the one with the wider bore lies in the plate: a pocket there of ⌀${plain(diameter)} mm, ${plain(depth)} mm deep at most, so that the collar never rubs. Needles run on both washers, never on plastic.`,
  ];
}

function settingWords({ finished, isBacked }: CollarDesign): string[] {
  const set =
    'Push the collar up by hand with 5 to 10 N while it is tightened: an end play of 0 to 0.03 mm. More than 20 N of preload only makes the plastic give.';
  return [
    ...(finished.halves
      ? [
          'Put the halves around the shaft from the side and tighten the screws of both sides by turns, so that the gap between them is the same on either side.',
        ]
      : []),
    set,
    ...(finished.pin
      ? [
          `Then drill ${plain(finished.pin.hole)} mm through collar and screw, with the printed hole as the guide, blow the chips out and drive the pin in until no end of it stands out.`,
        ]
      : []),
    ...(isBacked
      ? [
          'Set the metal collar against this one and tighten it first. A set screw bruises the crests: put a pad or a brass tip under it.',
        ]
      : []),
  ];
}
