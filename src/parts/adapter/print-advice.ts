import { nutPocketReach } from '../common/bought-nut.js';
import { boreOf, pocketRadius } from '../common/joints.js';
import { LEDGE } from '../common/ledge.js';
import type { PrintAdvice } from '../part-kind.js';
import type { PatternHoles, PlateSizes } from './plan.js';

/** The face that lies on the bed: whatever stands out of the plate points up, else the deeper ledge does. */
export function bedFace(plate: Omit<PlateSizes, 'outline' | 'flats' | 'cutouts'>): 'carriage' | 'outside' {
  if (plate.keys.length > 0) return 'carriage';
  if (plate.rim) return 'outside';
  return hanging(plate, 'outside') < hanging(plate, 'carriage') ? 'outside' : 'carriage';
}

/** Whether pockets of a pattern open on the bed. */
export function opensOnBed({ pocket, opens }: PatternHoles, bed: 'carriage' | 'outside'): boolean {
  return pocket !== undefined && (opens === 'high') === (bed === 'outside');
}

/** Patterns whose pockets are roofed as they are printed. */
export function roofedPatterns(plate: PlateSizes): PatternHoles[] {
  const bed = bedFace(plate);
  return [plate.nutHoles, plate.carriageHoles].flatMap((holes) =>
    holes?.roof && opensOnBed(holes, bed) ? [holes] : [],
  );
}

/** How far ceilings of pockets and steps that open to the bed hang over the openings below them, mm. */
export function hanging(plate: Omit<PlateSizes, 'outline' | 'flats' | 'cutouts'>, bed: 'carriage' | 'outside'): number {
  const { outerStep, innerStep, catchPocket, bore } = plate;
  const step = bed === 'outside' ? outerStep : innerStep;
  const caught = bed === 'outside' && catchPocket ? nutPocketReach(catchPocket) - bore / 2 : 0;
  const pockets = [plate.nutHoles, plate.carriageHoles].map((holes) => (holes ? ledgeOf(holes, bed) : 0));
  return Math.max(step ? (step.diameter - bore) / 2 : 0, caught, ...pockets);
}

function ledgeOf(holes: PatternHoles, bed: 'carriage' | 'outside'): number {
  const { pocket, hole, roof } = holes;
  return pocket && !roof && opensOnBed(holes, bed) ? pocketRadius(pocket) - boreOf(hole) / 2 : 0;
}

/** The same in words for the report. */
export function adapterAdvice(plate: PlateSizes): PrintAdvice {
  const bed = bedFace(plate);
  const ledge = hanging(plate, bed);
  const turn =
    bed === 'outside'
      ? 'carriage face up, outer face on the bed (turn the file over)'
      : 'outer face up, carriage face on the bed';
  const why = plate.rim
    ? 'the rim then points up'
    : plate.keys.length > 0
      ? 'the keys then point up'
      : 'the larger pockets then open upwards';
  return { face_up: turn, why, support: ledge > LEDGE.pass.max ? 'needed' : 'none' };
}
