import { type Check, hard } from '../../../judge/check.js';
import { grooveRating } from '../../../standards/bearings/groove-rating.js';
import { judgeBearingLoad } from '../../common/bearing-rating.js';
import { stallForce } from '../../common/stall-force.js';
import type { EndHolderDesign } from '../dimensions.js';
import { loaded } from '../loads.js';

/** Balls that are pushed along the screw too much climb to the edge of their groove, dent it, and wear out. */
const bearingRating: Check<EndHolderDesign> = {
  id: 'bearing-rating',
  group: 'bearing',
  question: 'holds',
  title: "Bearing's load over its rating",
  unit: '',
  source: "ISO 76 and ISO 281, balls by the size of the bearing; handbooks' general practice along the axis",
  limits: hard({ max: 1 }),
  moves: 'bearing, role, thrust_bearing, duty.load, duty.motor.torque',
  run: (design, { pass }) => {
    const { role, bearing } = design;
    if (role !== 'locating' || !bearing) return undefined;
    const { duty } = loaded(design);
    const stall = stallForce({ duty, screw: design.screw });
    const { along, moment, turning } = grooveRating(bearing);
    return judgeBearingLoad(
      {
        load: duty.load ?? 0,
        jam: stall ?? 0,
        carries: { forGood: along, moment, turning },
        missing: [
          ...(duty.load === undefined ? ['duty.load'] : []),
          ...(stall === undefined ? ['duty.motor.torque'] : []),
        ],
        cure: 'a thrust bearing with a collar at the motor end (thrust_bearing: yes) and role: guiding here, a larger bearing, or less load',
      },
      pass,
    );
  },
};

/** Whether the bearing itself carries what it holds. */
export const RATING_CHECKS: readonly Check<EndHolderDesign>[] = [bearingRating];
