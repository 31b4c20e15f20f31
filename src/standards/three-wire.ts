import { fault } from '../units/faults.js';
import { requireNotNegative, requirePositive, requireRange } from '../units/require.js';
import { flankAngleOf, type ThreadForm } from './threads/form.js';

/** The flanks of a thread, by its form or by the angle of one flank [deg]. */
export type FlankChoice = { readonly form: ThreadForm } | { readonly flankAngle: number };

const DEGREE = Math.PI / 180;

function flankOf(choice: FlankChoice): number {
  const angle = 'form' in choice ? flankAngleOf(choice.form) : choice.flankAngle;
  requireRange('flankAngle', angle, 3, 60);
  return angle * DEGREE;
}

/**
 * Pitch diameter of a screw measured over three wires.
 *
 *     d2 = M − W·(1 + 1/sin α + (tan²λ / 2)·cos α·cot α) + (P/2)·cot α,   tan λ = lead / (π·d2)
 *
 * At small lead angles: 30° trapezoid M = d2 + 4.8637 W − 1.8660 P, Acme M = d2 + 4.9939 W − 1.9334 P,
 * 60° M = d2 + 3 W − 0.8660 P. The lead term is left out when no lead is given.
 *
 * @param p.form or p.flankAngle  α  form of the thread, or the angle of one flank  [deg]  3 to 60
 * @param p.pitch  P  distance of neighbouring crests         [mm]  > 0
 * @param p.lead  travel of one turn, where the lead angle is to be allowed for [mm]  0 or above
 * @param p.wire  W  diameter of the wires                    [mm]  > 0
 * @param p.over  M  measured over the wires                  [mm]  > 0
 * @returns d2                                                [mm]
 * @throws InputError a value is outside its range, or the wires and the measure cannot belong together
 * @validity the wires touch the flanks, not the root; good to a micrometre up to a lead angle of 5 deg. Beyond, d2 comes
 *   out too small, see `steepLeadDoubt`
 * @source asme-b1.2: measurement over three wires, best-wire method with lead angle term, from memory
 * @source derived: the constants follow from the flank angle
 * @example pitchDiameterOverWires({ form: 'trapezoidal', pitch: 2, wire: 1.035, over: 8.302 }) // 7.000 mm
 */
export function pitchDiameterOverWires(
  p: FlankChoice & { readonly pitch: number; readonly lead?: number; readonly wire: number; readonly over: number },
): number {
  const flank = flankOf(p);
  requirePositive('pitch', p.pitch);
  requirePositive('wire', p.wire);
  requirePositive('over', p.over);
  const lead = p.lead ?? 0;
  requireNotNegative('lead', lead);
  const plain = p.over - p.wire * (1 + 1 / Math.sin(flank)) + p.pitch / (2 * Math.tan(flank));
  const leadTerm = (p.wire * Math.cos(flank)) / (2 * Math.tan(flank));
  let diameter = plain;
  for (let round = 0; round < 30 && diameter > 0; round += 1) {
    diameter = plain - leadTerm * (lead / (Math.PI * diameter)) ** 2;
  }
  if (!(diameter > 0))
    throw fault('over', p.over, 'must be the measure over all three wires; this is too small for them');
  return diameter;
}

/**
 * What three wires measure over a thread of known pitch diameter: the inverse of `pitchDiameterOverWires`.
 *
 *     M = d2 + W·(1 + 1/sin α + (tan²λ / 2)·cos α·cot α) − (P/2)·cot α
 *
 * @param p.form or p.flankAngle  α  form of the thread, or the angle of one flank  [deg]  3 to 60
 * @param p.pitch  P  distance of neighbouring crests         [mm]  > 0
 * @param p.lead  travel of one turn                          [mm]  0 or above
 * @param p.wire  W  diameter of the wires                    [mm]  > 0
 * @param p.pitchDiameter  d2                                 [mm]  > 0
 * @returns M, over the wires                                 [mm]
 * @throws InputError a value is outside its range
 * @source asme-b1.2: measurement over three wires, from memory
 * @example measureOverWires({ form: 'metric-v', pitch: 1, wire: 0.577, pitchDiameter: 5.35 }) // 6.215 mm
 */
export function measureOverWires(
  p: FlankChoice & {
    readonly pitch: number;
    readonly lead?: number;
    readonly wire: number;
    readonly pitchDiameter: number;
  },
): number {
  const flank = flankOf(p);
  requirePositive('pitch', p.pitch);
  requirePositive('wire', p.wire);
  requirePositive('pitchDiameter', p.pitchDiameter);
  const slope = (p.lead ?? 0) / (Math.PI * p.pitchDiameter);
  const perWire = 1 + 1 / Math.sin(flank) + (slope ** 2 * Math.cos(flank)) / (2 * Math.tan(flank));
  return p.pitchDiameter + p.wire * perWire - p.pitch / (2 * Math.tan(flank));
}

/**
 * The wire that touches the flanks at the pitch diameter, where an error of the flank angle does least.
 *
 *     W = P / (2·cos α)        0.5176 P at 15°, 0.5165 P at 14.5°, 0.5774 P at 30°
 *
 * @param p.form or p.flankAngle  α  form of the thread, or the angle of one flank  [deg]  3 to 60
 * @param p.pitch  P  distance of neighbouring crests         [mm]  > 0
 * @returns W, the best wire                                  [mm]
 * @throws InputError a value is outside its range
 * @validity lead angle left out
 * @source asme-b1.2: best-wire size
 * @example bestWire({ form: 'trapezoidal', pitch: 2 }) // 1.035 mm
 */
export function bestWire(p: FlankChoice & { readonly pitch: number }): number {
  requirePositive('pitch', p.pitch);
  return p.pitch / (2 * Math.cos(flankOf(p)));
}

/**
 * By how much `pitchDiameterOverWires` may come out too small on a steep screw, where a straight wire no longer lies in
 * the groove as it does in the section across the helix.
 *
 *     e = W·tan³λ,   tan λ = lead / (π·d2)
 *
 * Contact of a straight cylinder with the helicoid, worked out point by point, gives 0.6·W·tan³λ at lead angles from 5 to
 * 20 deg; this bound leaves room.
 *
 * @param p.wire  W  diameter of the wires                    [mm]  > 0
 * @param p.lead  travel of one turn                          [mm]  0 or above
 * @param p.pitchDiameter  d2                                 [mm]  > 0
 * @returns e, 0 or above                                     [mm]
 * @throws InputError a length is not above 0
 * @source derived: a bound over contact worked out numerically, in no standard
 * @example steepLeadDoubt({ wire: 1.035, lead: 8, pitchDiameter: 7 }) // 0.050 mm
 */
export function steepLeadDoubt(p: {
  readonly wire: number;
  readonly lead: number;
  readonly pitchDiameter: number;
}): number {
  requirePositive('wire', p.wire);
  requirePositive('pitch_diameter', p.pitchDiameter);
  return p.wire * (p.lead / (Math.PI * p.pitchDiameter)) ** 3;
}
