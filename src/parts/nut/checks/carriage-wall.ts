import type { Check } from '../../../judge/check.js';
import { exactly } from '../../../units/measured.js';
import { CARRIAGE_WALL, judgeCarriageWall } from '../../common/carriage-wall.js';
import type { NutDesign } from '../dimensions.js';

/**
 * Screws that stand in the carriage's bore hold on to nothing.
 *
 *     wall = axis to hole of the carriage − ⌀bore/2 − ⌀hole/2, the least; ⌀ of the screw where the hole is not told
 */
export const carriageWall: Check<NutDesign> = {
  ...CARRIAGE_WALL,
  id: 'carriage-wall',
  question: 'mounts',
  moves: 'holes.circle, carriage.bore, carriage.holes',
  run: ({ carriage, holes }, limits) =>
    holes &&
    judgeCarriageWall(
      { ...carriage, offset: [0, 0] },
      {
        centres: (carriage.holes ?? holes).centres,
        across: carriage.holes?.diameter ?? (holes.screwDiameter > 0 ? exactly(holes.screwDiameter) : holes.diameter),
      },
      limits,
    ),
};
