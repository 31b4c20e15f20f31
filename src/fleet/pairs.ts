import { SHAFT_ROOM } from '../axis/lengths.js';
import { screwsOfOneAxisMayDiffer, threadDifferences } from '../drive/axis-pair.js';
import type { Verdict } from '../judge/check.js';
import { judge } from '../judge/judge.js';
import { BORE_MATCH, OVER_CRESTS } from '../parts/common/bore-match.js';
import { plain } from '../units/format.js';
import { exactly } from '../units/measured.js';
import type { RememberedPart } from './made-part.js';

/** A part of a machine that was made, as its neighbours see it. */
export interface Neighbour {
  readonly role: string;
  readonly axis?: string | undefined;
  readonly made: RememberedPart;
}

/** What was found between the parts of one machine. */
export interface PairFinding {
  readonly id: 'axis-pair' | 'axis-fit' | 'coupling-motor' | 'coupling-screw';
  readonly verdict: Verdict;
  /** names of the parts concerned */
  readonly roles: readonly string[];
  readonly message: string;
}

/**
 * Compares the parts of a machine that belong together: the nuts of one axis by lead, hand and clearance (within
 * 0.05 mm), what else is made for a screw with theirs, who carries the screw along its axis, couplings
 * with what motor plates leave of the shaft, the bores of couplings with the machine's motor and with the screw of the nuts on their axis.
 *
 * @param neighbours the parts that were made
 * @param motorShaft diameter of the machine's motor shaft, where known  [mm]
 * @returns one finding for each pair that was compared
 * @source common-practice
 */
export function pairFindings(neighbours: readonly Neighbour[], motorShaft: number | undefined): PairFinding[] {
  return [
    ...nutPairs(neighbours),
    ...neighbours.flatMap((one) => sameScrew(one, neighbours)),
    ...carriedOnce(neighbours),
    ...neighbours.flatMap((one) => shaftFindings(one, neighbours)),
    ...neighbours.flatMap((one) => motorFindings(one, motorShaft)),
    ...neighbours.flatMap((one) => screwFindings(one, neighbours)),
  ];
}

function nutPairs(neighbours: readonly Neighbour[]): PairFinding[] {
  return neighbours.flatMap((first, i) =>
    neighbours.slice(i + 1).flatMap((second): PairFinding[] => {
      const [a, b] = [first.made.facts.nut, second.made.facts.nut];
      if (!a || !b || first.axis === undefined || first.axis !== second.axis) return [];
      const { may, reasons } = screwsOfOneAxisMayDiffer(a, b);
      const verdict = { yes: 'pass', 'with-care': 'caution', no: 'fail' } as const;
      return [{ id: 'axis-pair', verdict: verdict[may], roles: [first.role, second.role], message: reasons.join(' ') }];
    }),
  );
}

/** Whatever else runs on a screw is made for that of a nut on its axis. */
function sameScrew({ role, axis, made }: Neighbour, neighbours: readonly Neighbour[]): PairFinding[] {
  const { screw } = made.facts;
  if (!screw || axis === undefined) return [];
  const rows = neighbours.flatMap((other) => {
    const { nut } = other.made.facts;
    if (!nut || other.axis !== axis) return [];
    const hand = nut.hand === screw.hand ? [] : [`hand ${nut.hand} and ${screw.hand}`];
    return [{ other: other.role, differences: [...threadDifferences(nut, screw), ...hand] }];
  });
  // an axis may have two screws: the part belongs to the one that it suits best
  const best = rows.sort((a, b) => a.differences.length - b.differences.length)[0];
  if (!best) return [];
  const fits = best.differences.length === 0;
  const message = fits
    ? `It is made for the screw of ${best.other}.`
    : `It is made for another screw than ${best.other}: ${best.differences.join(', ')}.`;
  return [{ id: 'axis-fit', verdict: fits ? 'pass' : 'fail', roles: [role, best.other], message }];
}

const CARRIERS = {
  holder: 'an end holder that locates it',
  collar: 'a collar on a thrust bearing',
  sleeve: "the motor's own bearing, through a rigid sleeve",
} as const;

/** One place carries a screw along its axis; of an axis with two screws nobody tells which part is on which. */
function carriedOnce(neighbours: readonly Neighbour[]): PairFinding[] {
  const axes = [...new Set(neighbours.flatMap(({ axis }) => axis ?? []))];
  return axes.flatMap((axis): PairFinding[] => {
    const on = neighbours.filter((one) => one.axis === axis);
    const carriers = on.filter(({ made }) => made.facts.carries);
    const ways = [...new Set(carriers.map(({ made }) => made.facts.carries!))];
    if (ways.length === 0) return [];
    const words = ways.map((way) => CARRIERS[way]).join(' and ');
    const roles = carriers.map(({ role }) => role);
    if (ways.length === 1)
      return [{ id: 'axis-fit', verdict: 'pass', roles, message: `The screw is carried by ${words}.` }];
    const verdict = on.filter(({ made }) => made.facts.nut).length > 1 ? 'caution' : 'fail';
    const message = `The screw is carried by ${words}: they fight each other when it warms, keep one.`;
    return [{ id: 'axis-fit', verdict, roles, message }];
  });
}

/** What joins the shafts of an axis stands off the plate that the motor's shaft comes out of. */
function shaftFindings({ role, axis, made }: Neighbour, neighbours: readonly Neighbour[]): PairFinding[] {
  const depth = made.facts.motorDepth;
  if (depth === undefined || axis === undefined) return [];
  return neighbours.flatMap((plate): PairFinding[] => {
    const out = plate.made.facts.standsOut;
    if (out === undefined || plate.axis !== axis) return [];
    const verdict = judge(exactly(out - depth), SHAFT_ROOM);
    const cure = verdict === 'pass' ? '' : ': a shorter hub, a thinner plate, or a longer shaft';
    const message = `Of ${plain(out, 1)} mm of shaft that stand out of ${plate.role}, ${role} takes ${plain(depth, 1)} mm${cure}.`;
    return [{ id: 'axis-fit', verdict, roles: [role, plate.role], message }];
  });
}

function motorFindings({ role, made }: Neighbour, motorShaft: number | undefined): PairFinding[] {
  const bored = made.facts.motorShaft?.likely;
  if (bored === undefined || motorShaft === undefined) return [];
  const apart = Math.abs(bored - motorShaft);
  const message = `The coupling is bored for a motor shaft of ${plain(bored)} mm, the machine's has ${plain(motorShaft)} mm.`;
  return [{ id: 'coupling-motor', verdict: judged(apart), roles: [role], message }];
}

function screwFindings({ role, axis, made }: Neighbour, neighbours: readonly Neighbour[]): PairFinding[] {
  const bored = made.facts.screwShaft?.likely;
  if (bored === undefined || axis === undefined) return [];
  return neighbours.flatMap((other): PairFinding[] => {
    const screw = other.made.facts.nut;
    if (!screw || other.axis !== axis) return [];
    const over = bored - screw.major;
    const verdict = over < -OVER_CRESTS ? 'caution' : judged(Math.max(0, over));
    const turned = verdict === 'caution' && over < 0 ? ' Its end must be turned down.' : '';
    const message = `The coupling is bored for ${plain(bored)} mm, the screw of ${other.role} has ${plain(screw.major)} mm over its crests.${turned}`;
    return [{ id: 'coupling-screw', verdict, roles: [role, other.role], message }];
  });
}

function judged(apart: number): Verdict {
  return judge(exactly(apart), BORE_MATCH);
}
