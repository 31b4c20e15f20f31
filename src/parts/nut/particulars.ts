import { withPlay } from '../../drive/drive-numbers.js';
import { EFFECTS } from '../../sheet/sections/effects.js';
import { hexNut } from '../../standards/fasteners/nuts.js';
import { type FastenerSize, fastenerThread } from '../../standards/fasteners/sizes.js';
import { washer } from '../../standards/fasteners/washer.js';
import { worked } from '../../units/format.js';
import { appliedWords } from '../common/applied.js';
import { crackCautions, DRIVE_CAUTIONS, GREASE_ALONE, LOCK_BY_NUTS, roofCautions } from '../common/cautions.js';
import { type Float, floatCare, floatGrip, floatHardware } from '../common/float.js';
import { capScrews, WASHER } from '../common/hardware-names.js';
import { holdsThread } from '../common/joints.js';
import { CENTRE, meltIn, putIn, SEAT, withoutInserts } from '../common/mounting.js';
import { nextCapScrewLength } from '../common/screw-length.js';
import type { HardwareRow, Mounting, Particulars } from '../part-kind.js';
import { radialFloat } from './checks/mount.js';
import type { Carriage, Holes, NutDesign } from './dimensions.js';
import { nutFit } from './fit-block.js';
import { fitFigures } from './fit-figures.js';
import { lostByFloat } from './float.js';
import { jointOf, pocketOf } from './pockets.js';
import { pocketRoof, printAdvice } from './print-advice.js';

/** What to buy, how to print, and what to beware of. */
export function nutParticulars(design: NutDesign): Particulars {
  return {
    hardware: hardware(design),
    mounting: mountingOf(design),
    cautions: [
      ...roofWords(design),
      ...materialCautions(design),
      ...(design.float ? [floatCare(design.float, design.material)] : []),
      ...switchedOff(design),
      ...DRIVE_CAUTIONS,
    ],
    applied: appliedWords(design.material, design.printer),
    print: printAdvice(design),
    fit: nutFit(design),
    // one figure of play, that of the fit
    drive: withPlay(design.drive, Math.max(0, fitFigures(design).play.likely + lostByFloat(design).likely)),
  };
}

/** In the order of work; a nut that floats has its place as soon as its screws are tight. */
function mountingOf(design: NutDesign): Mounting {
  const { float, material, holes } = design;
  const rows = hardware(design);
  return {
    put: [
      ...crackCautions(material, ...lockWords(design)),
      ...meltIn(rows),
      SEAT,
      ...roofWords(design),
      ...putIn(withoutInserts(rows)),
      ...(float ? [floatCare(float, material)] : []),
    ],
    settle: float || !holes ? [] : [centring(design)],
  };
}

/** How the nut finds its place before its screws are tightened. */
function centring(design: NutDesign): string {
  const room = radialFloat(design);
  return room
    ? `It can shift ${worked(room.likely, 'mm')} mm sideways. Run the axis to the end where the part sits, let the screw centre it, then tighten crosswise in two rounds.`
    : CENTRE;
}

function roofWords(design: NutDesign): string[] {
  return roofCautions(design.holes && pocketRoof(design) ? [jointOf(design.holes)] : []);
}

function lockWords({ holes, family }: NutDesign): string[] {
  return [...(holes ? [LOCK_BY_NUTS] : []), ...(family?.kind === 'holder' ? [] : [GREASE_ALONE])];
}

function materialCautions(design: NutDesign): string[] {
  const { material } = design;
  const grows = `${material.name} grows with moisture: let the nut reach room air before measuring it, and check the fit again in humid weather.`;
  return [...(material.moistureGrowth < 0.003 ? [] : [grows]), ...crackCautions(material, ...lockWords(design))];
}

function hardware({ holes, finished, carriage, float }: NutDesign): HardwareRow[] {
  if (!holes?.screw) return [];
  if (float) return floatingHardware(float, holes, carriage);
  const { screw, joint } = holes;
  const count = holes.centres.length;
  const plate = finished.flange?.thickness ?? finished.length;
  const depth = pocketOf(holes)?.pocket.depth ?? 0;
  const washers = washersOn(screw, holes, carriage);
  const grip = plate - (joint === 'counterbore' ? depth : 0) + washers * washer(screw).thickness;
  const nutAndEnd = hexNut(screw).height + 1.5 * fastenerThread(screw).pitch;
  const beyond = holdsThread(joint) ? -plate / 3 : joint === 'hexagon' ? nutAndEnd - depth : nutAndEnd;
  const length = carriage.thickness ? nextCapScrewLength(screw, grip + carriage.thickness.likely + beyond) : undefined;
  const rows: HardwareRow[] = [capScrews(screw, length, count, ...untold(carriage.thickness))];
  if (joint === 'insert') rows.push({ item: 'heat-set insert', size: screw, count });
  else if (joint !== 'tapped') rows.push({ item: 'hexagon nut ISO 4032', size: screw, count });
  if (washers > 0) rows.push({ item: WASHER, size: screw, count: washers * count });
  return rows;
}

/** Washers on each screw: on the flange, or the roof of its counterbore, and on the carriage, where they do not fall through. */
function washersOn(screw: FastenerSize, { joint, roof, diameter }: Holes, carriage: Carriage): number {
  const onFlange = joint === 'through' || (joint === 'counterbore' && roof !== undefined);
  const under = [
    ...(onFlange ? [diameter.likely] : []),
    ...(joint === 'through' ? [carriage.holes?.diameter.likely ?? 0] : []),
  ];
  return under.filter((hole) => hole < washer(screw).outside).length;
}

/** Sleeves or shoulders with what holds them to the carriage. */
function floatingHardware(float: Float, { centres }: Holes, { thickness }: Carriage): HardwareRow[] {
  const { screw, spacer } = float;
  const count = centres.length;
  const nuts = { item: 'hexagon nut ISO 4032', size: screw, count };
  if (spacer === 'shoulder') return [...floatHardware(float, count), nuts];
  const beyond = hexNut(screw).height + 1.5 * fastenerThread(screw).pitch + washer(screw).thickness;
  const least = thickness && floatGrip(float) + thickness.likely + beyond;
  const length = least === undefined ? undefined : nextCapScrewLength(screw, least);
  return [
    capScrews(screw, length, count, ...untold(thickness)),
    ...floatHardware(float, count),
    nuts,
    { item: WASHER, size: screw, count: 2 * count },
  ];
}

function untold(thickness: Carriage['thickness']): string[] {
  return thickness ? [] : ['carriage.thickness'];
}

/** A fit that leaves something out must say so. */
function switchedOff({ effects }: NutDesign): string[] {
  const off = EFFECTS.filter((effect) => !effects[effect]);
  return off.length === 0 ? [] : [`The predicted fit leaves out: ${off.join(', ')}, as the sheet says.`];
}
