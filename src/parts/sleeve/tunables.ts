import type { Tunable } from '../../judge/advice.js';
import { boreClearanceTunable, LAYER_TUNABLE, NOZZLE_TUNABLE } from '../common/tunables.js';
import type { SleeveDesign, SleeveEnd } from './dimensions.js';

const mm = { unit: 'mm' } as const;

/** Fields of a sleeve's sheet that advice may change, each with the range in which it makes sense. */
export const SLEEVE_TUNABLES: readonly Tunable<SleeveDesign>[] = [
  {
    ...mm,
    path: 'outside_diameter',
    least: 6,
    most: 120,
    step: 0.5,
    grain: 2,
    now: ({ form, finished }) => (form === 'clamp' ? finished.outside : undefined),
  },
  { ...mm, path: 'length', least: 4, most: 200, step: 0.5, grain: 2, now: ({ finished }) => finished.length },
  clearance('motor_end', 'motor end'),
  clearance('screw_end', 'screw end'),
  LAYER_TUNABLE,
  NOZZLE_TUNABLE,
];

function clearance(section: 'motor_end' | 'screw_end', name: SleeveEnd['name']): Tunable<SleeveDesign> {
  const now = ({ form, ends }: SleeveDesign) =>
    form === 'clamp' ? ends.find((end) => end.name === name)?.clearance : undefined;
  return boreClearanceTunable(section, now);
}
