import { pitchError } from '../../mechanics/thread/pitch-error.js';
import { plain } from '../../units/format.js';
import { appliedWords } from '../common/applied.js';
import { DRIVE_CAUTIONS } from '../common/cautions.js';
import type { Particulars } from '../part-kind.js';
import type { GaugeDesign } from './dimensions.js';
import { drillShanks } from './drill-shanks.js';

/** A chaser of a screw this thick has one slot more [mm]. @source common-practice */
const THICK = 14;

/** Turns after which a jam is told as an example. */
const JAMS_AFTER = 6;

/** How the rings are printed and tried, and how a piece of the screw chases a nut. */
export function gaugeParticulars(design: GaugeDesign): Particulars {
  const { material, printer } = design;
  return {
    hardware: [],
    cautions: [...tryingWords(design), ...boreWords(design), ...chaserWords(design), ...DRIVE_CAUTIONS],
    applied: appliedWords(material, printer),
    print: {
      face_up: 'the face with the figure',
      why: 'the threads stand, the figures open upwards; all rings in one print, as later nuts will be printed',
      support: 'none',
    },
  };
}

function tryingWords({ finished, screw }: GaugeDesign): string[] {
  const { play, turns } = finished.rings.at(-1)!;
  const pitch = screw.pitch.likely;
  const example = pitchError({ play, turns: JAMS_AFTER, pitch });
  return [
    'The steel screw is the gauge that must go in; nothing printed judges it. Wipe it clean, and try every ring by two fingers from both of its ends.',
    'The figures are the play along the axis in hundredths of a millimetre. The first ring that runs over the whole screw tells what this printer takes off: a nut printed the same way wants that ring’s play.',
    `2T tells the diameter, ${turns}T the pitch. 2T tight: flanks or bore. 2T free all along and ${turns}T jams after n turns, as many from either end: the pitch is off by ${plain(play)} / (n × ${plain(pitch)}); after ${JAMS_AFTER} turns that is ${plain(100 * example, 2)} %, and the file is scaled along the axis by ${plain(1 + example, 4)} where the ring measures short, by ${plain(1 - example, 4)} where it measures long.`,
    'A ring that must not go is not among them: a print is off by as much as such a ring would judge.',
  ];
}

function boreWords({ screw }: GaugeDesign): string[] {
  const shanks = drillShanks(screw);
  if (!shanks)
    return [
      'The bore of a nut is told by plain drill shanks, a tenth apart: the one that just goes in is its diameter.',
    ];
  return [
    `The bore of a nut is told by plain drill shanks: of a metal nut ${plain(shanks.goes, 1)} mm goes in and ${plain(shanks.mustNot, 1)} mm must not; a printed one is wider by its clearance on the diameter.`,
  ];
}

function chaserWords({ screw, material }: GaugeDesign): string[] {
  const slots = screw.major.likely >= THICK ? 4 : 3;
  const oil = material.stressCracks ? `no oil on ${material.name}, which it cracks` : 'a drop of oil';
  return [
    `A chaser is made of 30 to 40 mm of the same screw, same hand, same starts: ${slots} slots, 2 to 3 mm wide, 0.3 to 0.5 mm deeper than its root, 5 to 15° askew; the first 3 to 5 turns ground to a taper of 5 to 8°, the leading edges sharp and square, the trailing ones broken. Wear goggles.`,
    `Turn it half a turn on and a quarter back, blow the chips out every second turn, ${oil}. It leaves the screw’s own size: it takes seams and blobs away, gives no clearance, and makes no room for a pitch error.`,
  ];
}
