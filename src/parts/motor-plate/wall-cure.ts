import type { Bounds } from '../../judge/check.js';
import { keeps } from '../../judge/judge.js';
import { plain } from '../../units/format.js';
import { turned } from '../common/hole-pattern.js';
import type { MotorPlatePlan } from './plan.js';
import { ligamentsOf } from './walls.js';

/** Turns of the machine's holes that are tried, degrees. */
const TURNS = [45, 15, 30, 60, 75];

/** What makes a wall of a plate as thick as is wanted, in words. */
export function wallCure(plan: MotorPlatePlan, where: string, wanted: Bounds): string {
  if (where === 'thickness') return 'make the plate thicker';
  if (where.endsWith('and edge')) return 'make the plate larger';
  if (!/machine hole|slot/.test(where)) return 'measure motor.square, motor.pilot and its screws again';
  const turn = TURNS.find((degrees) => standApart(withTurn(plan, degrees), wanted));
  return turn === undefined
    ? 'no turn of machine.holes sets them apart: take two plates, one on the other, or another motor'
    : `turned by ${plain(turn)}° they stand apart: machine.holes.start`;
}

function standApart(plan: MotorPlatePlan, wanted: Bounds): boolean {
  return ligamentsOf(plan).every(({ where, size }) => where.endsWith('and edge') || keeps(size, wanted));
}

function withTurn(plan: MotorPlatePlan, degrees: number): MotorPlatePlan {
  const centres = plan.machine.centres.map((at) => turned(at, degrees));
  return { ...plan, machine: { ...plan.machine, centres } };
}
