import type { Check } from '../../../judge/check.js';
import { CARRIAGE_WALL, judgeCarriageWall } from '../../common/carriage-wall.js';
import type { AdapterDesign } from '../dimensions.js';

/**
 * Screws that stand in the carriage's opening hold on to nothing.
 *
 *     wall = middle of a hole of the carriage to the edge of its bore or slot − ⌀hole/2, the least
 */
export const carriageWall: Check<AdapterDesign> = {
  ...CARRIAGE_WALL,
  id: 'carriage-wall',
  question: 'meets-carriage',
  moves: 'carriage.bore, carriage.slot, carriage.holes, carriage.offset',
  run: ({ carriage, layout: { plate } }, limits) =>
    judgeCarriageWall(carriage, { centres: plate.carriageHoles.centres, across: carriage.pattern.diameter }, limits),
};
