import type { ScrewEnds } from '../mechanics/ends.js';
import { endsOf } from '../parts/common/locating.js';
import type { Fields } from '../sheet/fields-map.js';
import type { ThrustBearing } from '../standards/bearings/thrust-bearing.js';
import { plain } from '../units/format.js';
import type { PartFacts } from './facts.js';
import { figureOf } from './known.js';
import { type Along, leftAtFarEnd } from './lengths.js';
import type { AxisSheet } from './sheet.js';

/** What follows for the parts of an axis from each other: who carries the screw, who gives, and how long it is free. */
export interface Follows {
  readonly fields: Fields;
  /** what goes before the words of the axis, by the kind of part */
  readonly ofKind: Readonly<Record<string, Fields>>;
  readonly ends: ScrewEnds;
  readonly thrustBearing: boolean;
}

interface Given {
  readonly sheet: Pick<AxisSheet, 'thrust_bearing' | 'duty' | 'motor' | 'lengths'>;
  readonly parts: readonly { readonly facts: PartFacts }[];
  readonly along: Along;
  /** travel per turn, where it is known */
  readonly lead?: number;
}

/** Fields that a part would else have to say of its neighbours. */
export function followsFrom({ sheet, parts, along, lead }: Given): Follows {
  const facts = parts.map(({ facts: own }) => own);
  const joint = facts.find((one) => one.joint)?.joint;
  const nuts = facts.flatMap(({ nut }) => nut ?? []);
  const holders = facts.flatMap(({ holder }) => holder ?? []);
  const thrustBearing = sheet.thrust_bearing === 'yes' || facts.some(({ collar }) => collar === true);
  const locates = holders.some(({ role }) => role === 'locating');
  const ends = endsOf(
    holders.some(({ role }) => role !== 'free'),
    joint?.kind,
  );
  const span = figureOf(along.span);
  const gap = leftAtFarEnd(along);
  const room = endRoom(along);
  const plate = facts.find((one) => one.plate !== undefined)?.plate;
  const shaft = joint?.shaft;
  const feed = sheet.duty?.feed;
  const fields = {
    thrust_bearing: thrustBearing ? 'yes' : 'no',
    locating_holder: locates ? 'yes' : 'no',
    // of one collar nobody knows whether another was bought; two hold the screw both ways
    ...(facts.filter(({ collar }) => collar).length > 1 ? { pair: 'yes' } : {}),
    ...(joint ? { coupling: joint.kind } : {}),
    ...(joint?.motorDepth === undefined ? {} : { hub_depth: mm(joint.motorDepth) }),
    ...(nuts.length > 0 ? { nut: nuts.every(({ floats }) => floats) ? 'floating' : 'rigid' } : {}),
    ...(gap === undefined ? {} : { nut_gap: mm(Math.max(0, gap)) }),
    ...(room === undefined ? {} : { end_room: mm(Math.max(0, room)) }),
    duty: {
      ends,
      ...(span && span.most > 0 ? { span: mm(span.most) } : {}),
      ...(feed === undefined || lead === undefined ? {} : { speed: Math.round((60 * feed) / lead) }),
    },
  };
  // of two collars the one whose balls run nearer to the screw
  const [bearing] = facts.flatMap((one) => one.bearing ?? []).sort((a, b) => a.bore + a.outside - b.bore - b.outside);
  const ofPlate = {
    // the axis counts from the face that the shaft stands out of, a plate from the motor's own face
    ...(plate === undefined || shaft === undefined ? {} : { motor: { shaft: { length: mm(shaft + plate) } } }),
    ...(bearing === undefined ? {} : { bearing: sizesOf(bearing) }),
  };
  const ofKind = Object.keys(ofPlate).length === 0 ? {} : { 'motor-plate': ofPlate };
  return { fields, ofKind, ends, thrustBearing };
}

function sizesOf({ bore, outside, height }: ThrustBearing): Fields {
  return { bore: mm(bore), outside: mm(outside), height: mm(height) };
}

/** What is free behind the end of the screw, by the least of the readings; one that is cut to order ends as it is ordered. */
function endRoom({ beyond, screwEnd, holderEnd, screw, stand }: Along): number | undefined {
  const [end, face] = [figureOf(screwEnd), figureOf(holderEnd)];
  if (!beyond || !face) return undefined;
  if (screw === undefined) return beyond.least - stand.most;
  return end && beyond.least - (end.most - face.least);
}

function mm(value: number): string {
  return `${plain(value, 2)} mm`;
}
