import type { ThreadForm } from '../../standards/threads/form.js';
import { trapezoidalClearance } from '../../standards/threads/trapezoidal.js';
import { requirePositive, requireRange } from '../../units/require.js';
import { radians } from '../angle.js';

/** The form of a thread in a plane through its axis, lengths [mm]: diameters, and the width of the groove at the pitch diameter. */
export interface ToothForm {
  readonly minor: number;
  readonly pitchDiameter: number;
  readonly major: number;
  readonly pitch: number;
  /** axial width of the air between two teeth at the pitch diameter */
  readonly grooveWidth: number;
  /** tangent of the flank angle in the axial plane */
  readonly flankSlope: number;
}

/** What a nut's thread is worked out from. */
export interface NutThreadInput {
  readonly form: ThreadForm | 'free';
  readonly flankAngle: number;
  readonly screwMajor: number;
  readonly screwPitchDiameter: number;
  readonly pitch: number;
  readonly diametralClearance: number;
  readonly axialClearance: number;
}

/** Clearance over the crests of an Acme nut: 0.020 in for pitches of 0.1 in and coarser, 0.010 in for finer ones. */
const ACME_COARSE_PITCH = 2.54 - 1e-9;

/** Room over the screw's crests in a V nut, on the diameter: common practice for printed threads. */
const V_CREST_ROOM = 0.2;

/**
 * The thread that a nut must have in use.
 *
 *     trapezoid, free angle   D1 = d − P + c         D2 = d2 + c   D4 = d + 2·a_c + c
 *     Acme                    D1 = d − P + c         D2 = d2 + c   D4 = d + 0.508 + c, or 0.254 below P = 2.54
 *     V                       D1 = d − 1.0825·P + c  D2 = d2 + c   D4 = d + 0.2 + c
 *     groove at D2            P/2 + a
 *
 * @param p.form                trapezoidal, acme, metric-v, or free for a trapezoid of another angle
 * @param p.flankAngle          α   one flank                                [degrees]  0 to 60
 * @param p.screwMajor          d   over the screw's crests                  [mm]       > 0
 * @param p.screwPitchDiameter  d2  pitch diameter of the screw              [mm]       > 0
 * @param p.pitch               P   distance of neighbouring crests          [mm]       > 0
 * @param p.diametralClearance  c   added to every diameter                  [mm]
 * @param p.axialClearance      a   added to the groove, over both flanks    [mm]
 * @returns the finished form; the pitch diameter is stated before the groove is widened [mm]
 * @throws InputError a value is outside its range
 * @source iso-2904: basic sizes of the nut, opened by the clearances
 * @example nutThread({ form: 'trapezoidal', flankAngle: 15, screwMajor: 8, screwPitchDiameter: 7, pitch: 2, diametralClearance: 0.3, axialClearance: 0.1 }).major // 8.8
 */
export function nutThread(p: NutThreadInput): ToothForm {
  requirePositive('screwMajor', p.screwMajor);
  requirePositive('screwPitchDiameter', p.screwPitchDiameter);
  requirePositive('pitch', p.pitch);
  requireRange('flankAngle', p.flankAngle, 0, 60);
  const c = p.diametralClearance;
  const depth = p.form === 'metric-v' ? 1.0825 : 1;
  return {
    minor: p.screwMajor - depth * p.pitch + c,
    pitchDiameter: p.screwPitchDiameter + c,
    major: p.screwMajor + crestRoom(p.form, p.pitch) + c,
    pitch: p.pitch,
    grooveWidth: p.pitch / 2 + p.axialClearance,
    flankSlope: Math.tan(radians(p.flankAngle)),
  };
}

/** Diametral room that the nut's root leaves over the screw's crest before clearance. */
function crestRoom(form: ThreadForm | 'free', pitch: number): number {
  if (form === 'metric-v') return V_CREST_ROOM;
  if (form === 'acme') return pitch >= ACME_COARSE_PITCH ? 0.508 : 0.254;
  return 2 * trapezoidalClearance(pitch);
}

/**
 * Axial width of the air in a thread at one diameter.
 *
 *     w(D) = w(D2) + (D2 − D)·tan α
 *
 * @param thread    its form
 * @param diameter  D  where the width is wanted [mm]
 * @returns w, negative beyond the point where the flanks meet [mm]
 * @source derived: straight flanks
 * @example grooveWidthAt({ minor: 6, pitchDiameter: 7, major: 8, pitch: 2, grooveWidth: 1, flankSlope: 0.5 }, 6) // 1.5
 */
export function grooveWidthAt(thread: ToothForm, diameter: number): number {
  return thread.grooveWidth + (thread.pitchDiameter - diameter) * thread.flankSlope;
}

/**
 * Free axial play of a nut on its screw, over both flanks.
 *
 *     play = c·tan α + a
 *
 * @param p.diametralClearance  c  at the pitch line                       [mm]
 * @param p.axialClearance      a  of the groove                           [mm]
 * @param p.flankAngle          α  one flank                               [degrees]  0 to 60
 * @returns play [mm]
 * @throws InputError the flank angle is outside its range
 * @source derived: two straight flanks
 * @example axialPlay({ diametralClearance: 0.4, axialClearance: 0, flankAngle: 15 }) // 0.1072
 */
export function axialPlay(p: {
  readonly diametralClearance: number;
  readonly axialClearance: number;
  readonly flankAngle: number;
}): number {
  requireRange('flankAngle', p.flankAngle, 0, 60);
  return p.diametralClearance * Math.tan(radians(p.flankAngle)) + p.axialClearance;
}

/**
 * Diameter at the root of a nut's groove: its major, or less where the flanks meet before it. Level flanks never meet.
 *
 *     D = min(D4, D2 + w/tan α)
 *
 * @param thread  the nut's form [mm]
 * @returns D [mm]
 * @source derived: straight flanks
 * @example rootDiameterOf({ minor: 6, pitchDiameter: 7, major: 10, pitch: 2, grooveWidth: 1, flankSlope: 0.5 }) // 9
 */
export function rootDiameterOf(thread: ToothForm): number {
  return Math.min(thread.major, thread.pitchDiameter + thread.grooveWidth / thread.flankSlope);
}
