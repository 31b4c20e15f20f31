import type { Bore } from './bore.js';

/** Sizes of a bore as they are named in a report. */
export function boreNames({ diameter, across, key }: Bore, before = ''): Record<string, number> {
  return {
    [`${before}bore_diameter`]: diameter,
    ...(across === undefined ? {} : { [`${before}bore_across_flat`]: across }),
    ...(key ? { [`${before}keyway_width`]: key.width, [`${before}keyway_depth`]: key.depth } : {}),
  };
}
