import type { Tunable } from '../../judge/advice.js';
import { boreClearanceTunable, LAYER_TUNABLE, NOZZLE_TUNABLE } from '../common/tunables.js';
import type { CollarDesign } from './dimensions.js';

const mm = { unit: 'mm' } as const;

/** Fields of a collar's sheet that advice may change, each with the range in which it makes sense. */
export const COLLAR_TUNABLES: readonly Tunable<CollarDesign>[] = [
  {
    ...mm,
    path: 'outside_diameter',
    least: 6,
    most: 120,
    step: 0.5,
    grain: 2,
    now: ({ finished }) => finished.outside,
  },
  { ...mm, path: 'length', least: 4, most: 100, step: 0.5, grain: 2, now: ({ finished }) => finished.length },
  boreClearanceTunable('hold', ({ finished, clearance }: CollarDesign) => (finished.thread ? undefined : clearance)),
  LAYER_TUNABLE,
  NOZZLE_TUNABLE,
];
