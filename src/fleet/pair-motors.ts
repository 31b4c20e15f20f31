import { SHAFT_ROOM } from '../axis/lengths.js';
import type { Verdict } from '../judge/check.js';
import { judge } from '../judge/judge.js';
import { BORE_MATCH } from '../parts/common/bore-match.js';
import { plain } from '../units/format.js';
import { exactly } from '../units/measured.js';
import type { Neighbour, PairFinding } from './neighbours.js';

/** What joins the shafts of an axis, against the plate that the motor's shaft comes out of: its bore, and how far it stands off. */
export function jointFindings(on: readonly Neighbour[]): PairFinding[] {
  return on.flatMap((part) => on.flatMap((plate) => [...shaftRoom(part, plate), ...plateBore(part, plate)]));
}

function shaftRoom({ role, made }: Neighbour, plate: Neighbour): PairFinding[] {
  const [depth, out] = [made.facts.joint?.motorDepth, plate.made.facts.standsOut];
  if (depth === undefined || out === undefined) return [];
  const verdict = judge(exactly(out - depth), SHAFT_ROOM);
  const cure = verdict === 'pass' ? '' : ': a shorter hub, a thinner plate, or a longer shaft';
  const message = `Of ${plain(out, 1)} mm of shaft that stand out of ${plate.role}, ${role} takes ${plain(depth, 1)} mm${cure}.`;
  return [{ id: 'axis-fit', verdict, roles: [role, plate.role], message }];
}

function plateBore({ role, made }: Neighbour, plate: Neighbour): PairFinding[] {
  const [bored, shaft] = [made.facts.joint?.motorBore?.likely, plate.made.facts.motorShaft?.likely];
  if (bored === undefined || shaft === undefined) return [];
  const message = `It is bored for a motor shaft of ${plain(bored)} mm, the motor of ${plate.role} has ${plain(shaft)} mm.`;
  return [{ id: 'coupling-motor', verdict: alike(bored, shaft), roles: [role, plate.role], message }];
}

/** What is made for a motor's shaft is made for that of the machine's motor. */
export function motorFindings({ role, made: { facts } }: Neighbour, motorShaft: number | undefined): PairFinding[] {
  const shaft = facts.joint?.motorBore ?? facts.motorShaft;
  if (shaft === undefined || motorShaft === undefined) return [];
  const made = facts.joint?.motorBore ? 'bored' : 'made';
  const message = `It is ${made} for a motor shaft of ${plain(shaft.likely)} mm, the machine's has ${plain(motorShaft)} mm.`;
  const id = facts.joint?.motorBore ? 'coupling-motor' : 'plate-motor';
  return [{ id, verdict: alike(shaft.likely, motorShaft), roles: [role], message }];
}

function alike(one: number, other: number): Verdict {
  return judge(exactly(Math.abs(one - other)), BORE_MATCH);
}
