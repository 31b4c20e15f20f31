import { plain } from '../../units/format.js';
import { appliedWords } from '../common/applied.js';
import { CATCH_OFFER, screwHolding } from '../common/bought-nut.js';
import { crackCautions, DRIVE_CAUTIONS, LOCK_BY_NUTS, NUT_FLOATS, roofCautions } from '../common/cautions.js';
import { floatCare } from '../common/float.js';
import { CENTRE, meltIn, putIn, SEAT, withoutInserts } from '../common/mounting.js';
import type { Mounting, Particulars } from '../part-kind.js';
import type { AdapterDesign } from './dimensions.js';
import { adapterAdvice, roofedPatterns } from './print-advice.js';
import { adapterHardware, carriageRows, nutRows } from './screws.js';

/** What to buy, how to print, and what to beware of. */
export function adapterParticulars(design: AdapterDesign): Particulars {
  return {
    hardware: adapterHardware(design),
    mounting: mountingOf(design),
    cautions: [
      ...roofWords(design),
      ...crackCautions(design.material, LOCK_BY_NUTS),
      ...ownCautions(design),
      ...DRIVE_CAUTIONS,
    ],
    applied: appliedWords(design.material, design.printer),
    print: adapterAdvice(design.layout.plate),
  };
}

/** In the order of work: the nut onto the plate, the plate onto the carriage. */
function mountingOf(design: AdapterDesign): Mounting {
  const { material, nut, kind } = design;
  const [onPlate, onCarriage] = [nutRows(design), carriageRows(design)];
  const floats = kind === 'floating';
  return {
    put: [
      ...crackCautions(material, LOCK_BY_NUTS),
      ...meltIn(adapterHardware(design)),
      SEAT,
      ...roofWords(design),
      ...putIn(withoutInserts(onPlate), `The nut onto the plate${floats ? '' : ', finger tight'}`),
      ...floatWords(design),
      ...putIn(withoutInserts(onCarriage), 'The plate onto the carriage, finger tight'),
    ],
    settle: [
      floats
        ? `Run the axis to the end where the nut sits, and tighten the screws of the carriage alone, crosswise in two rounds.`
        : CENTRE,
      ...(nut ? [seatWords(design)] : []),
    ],
  };
}

function roofWords({ layout: { plate } }: AdapterDesign): string[] {
  return roofCautions(roofedPatterns(plate).map(({ hole }) => hole));
}

function seatWords({ seatHeight, carriage }: AdapterDesign): string {
  const [x, y] = carriage.offset;
  const shifted =
    x === 0 && y === 0
      ? ''
      : ` The axis of the screw stands ${plain(-x)} mm in x and ${plain(-y)} mm in y from the middle of the carriage's pattern.`;
  return `The nut's seat now stands ${plain(seatHeight)} mm from the carriage's face: set the limits of the axis anew.${shifted}`;
}

function ownCautions(design: AdapterDesign): string[] {
  const { nut, screw, catchNut } = design;
  return [
    ...(nut ? [seatWords(design)] : []),
    ...floatWords(design),
    ...(screw && !catchNut && screwHolding(screw) !== 'holds' ? [CATCH_OFFER] : []),
    `Tighten the screws of ${nut && design.kind !== 'floating' ? 'nut and carriage' : 'the carriage'} with the axis at the end where the nut sits, and again a day later: plastic settles under heads.`,
  ];
}

/** A floating nut that is clamped floats no more. */
function floatWords({ kind, hold, spacers, material }: AdapterDesign): string[] {
  if (kind !== 'floating') return [];
  if (hold === 'keys')
    return [
      `${NUT_FLOATS} between its keys: nothing is tightened on it. Nothing but its load holds it down: for a vertical axis whose weight rests on the nut only.`,
    ];
  return spacers
    ? [floatCare(spacers, material)]
    : [`${NUT_FLOATS}: do not tighten its screws; back them off until the flange moves by hand.`];
}
