import type { Tunable } from '../../judge/advice.js';
import { NOZZLE_TUNABLE } from '../common/tunables.js';
import type { MotorPlateDesign } from './dimensions.js';

const mm = { unit: 'mm' } as const;

/** Fields of a motor plate's sheet that advice may change, each with the range in which it makes sense. */
export const MOTOR_PLATE_TUNABLES: readonly Tunable<MotorPlateDesign>[] = [
  ...(['length', 'width', 'thickness'] as const).map(
    (side): Tunable<MotorPlateDesign> => ({
      ...mm,
      path: `plate.${side}`,
      least: 2,
      most: side === 'thickness' ? 30 : 300,
      step: 0.5,
      grain: 1,
      now: ({ finished }) => finished[side],
    }),
  ),
  {
    ...mm,
    path: 'fit.pilot',
    least: 0,
    most: 1.5,
    step: 0.05,
    grain: 0.1,
    now: ({ finished, motor }) => finished.pilot - motor.pilot.likely,
  },
  NOZZLE_TUNABLE,
];
