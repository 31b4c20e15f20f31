import type { Tunable } from '../../judge/advice.js';
import { NOZZLE_TUNABLE } from '../common/tunables.js';
import type { EndHolderDesign } from './dimensions.js';

const mm = { unit: 'mm' } as const;

/** Fields of a holder's sheet that advice may change, each with the range in which it makes sense. */
export const END_HOLDER_TUNABLES: readonly Tunable<EndHolderDesign>[] = [
  ...(['length', 'width', 'thickness'] as const).map(
    (side): Tunable<EndHolderDesign> => ({
      ...mm,
      path: `body.${side}`,
      least: 2,
      most: 300,
      step: 0.5,
      grain: 1,
      now: ({ finished }) => finished[side],
    }),
  ),
  {
    ...mm,
    path: 'body.cover',
    least: 2,
    most: 60,
    step: 0.5,
    grain: 1,
    now: ({ finished: { cover } }) => cover?.thickness,
  },
  {
    ...mm,
    path: 'bore',
    least: 2,
    most: 80,
    step: 0.1,
    grain: 0.1,
    now: ({ finished, bearing }) => (bearing ? undefined : finished.bore),
  },
  NOZZLE_TUNABLE,
];
