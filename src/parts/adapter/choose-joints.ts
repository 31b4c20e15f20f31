import { Assumptions } from '../../sheet/assumptions.js';
import type { Joint } from '../common/joints.js';
import { inputOf, type Known } from './input.js';
import { type LayoutInput, layoutThatFits } from './layout.js';
import type { AdapterSheet } from './sheet.js';

/** Joints in the order of preference: what holds best in plastic and lets the nut be fitted last comes first. */
const NUT_JOINTS: readonly Joint[] = ['insert', 'tapped', 'hexagon', 'counterbore', 'through'];
const CARRIAGE_JOINTS: readonly Joint[] = ['counterbore', 'through', 'insert', 'hexagon', 'tapped'];
/** What is tapped already wants a head in the plate, not a second thread. */
const TO_TAPPED: readonly Joint[] = ['counterbore', 'through'];

/** Joints that the sheet leaves open are the first that find room; they are listed. */
export function withJoints(sheet: AdapterSheet, known: Known, notes: Assumptions): Known {
  const { nut, carriage } = known;
  const [nutGiven, carriageGiven] = [sheet.nut?.joint, sheet.carriage.joint];
  if ((nutGiven !== undefined || nut === undefined) && carriageGiven !== undefined) return known;
  const ofNut = nutGiven === undefined ? (nut?.tapped ? TO_TAPPED : NUT_JOINTS) : [nutGiven];
  const ofCarriage = carriageGiven === undefined ? (carriage.tapped ? TO_TAPPED : CARRIAGE_JOINTS) : [carriageGiven];
  const tries = ofNut.flatMap((nutJoint) =>
    ofCarriage.map((carriageJoint) => ({
      ...known,
      nut: nut && { ...nut, joint: nutJoint },
      carriage: { ...carriage, joint: carriageJoint },
    })),
  );
  const found = tries.find((one) => roomy(inputOf(sheet, one, new Assumptions())));
  const chosen = found ?? tries[0]!;
  const why = found ? 'the first joint that finds room' : 'no joint finds room';
  if (nut && nutGiven === undefined) notes.note('nut.joint', chosen.nut!.joint, why);
  if (carriageGiven === undefined) notes.note('carriage.joint', chosen.carriage.joint, why);
  return chosen;
}

/** Whether a layout fits, with the wall that inserts want. */
function roomy(input: LayoutInput): boolean {
  const laid = layoutThatFits(input);
  const inserts = [input.nut?.hole.joint, input.carriage.hole.joint].includes('insert');
  return laid !== undefined && (!inserts || laid.ligament.gap >= INSERT_WALL);
}

const INSERT_WALL = 1.5;
