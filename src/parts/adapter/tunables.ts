import type { Tunable } from '../../judge/advice.js';
import { BRIDGING_TUNABLE, floatTunables } from '../common/tunables.js';
import type { AdapterDesign } from './dimensions.js';

const mm = { unit: 'mm' } as const;

/** Fields of an adapter's sheet that advice may change, each with the range in which it makes sense. */
export const ADAPTER_TUNABLES: readonly Tunable<AdapterDesign>[] = [
  {
    ...mm,
    path: 'plate.thickness',
    least: 1,
    most: 100,
    step: 0.5,
    grain: 1,
    now: ({ layout }) => layout.plate.thickness,
  },
  {
    ...mm,
    path: 'plate.outline.rim',
    least: 0.8,
    most: 50,
    step: 0.1,
    grain: 1,
    now: ({ input: { outline } }) => (outline.shape === 'hull' ? outline.rim : undefined),
  },
  { ...mm, path: 'plate.bore', least: 1, most: 400, step: 0.1, grain: 0.5, now: ({ layout }) => layout.plate.bore },
  ...floatTunables<AdapterDesign>(({ spacers }) => spacers),
  BRIDGING_TUNABLE,
];
