import type { Identification } from './identify.js';

/**
 * An identification as plain data with the field names of the command's machine-readable answer.
 *
 * @param found an identification
 * @returns candidates, separable, next_measurement, contradictions, repairs, screw and further fields
 * @source derived: the same values under snake case names
 */
export function identificationJson(found: Identification): Record<string, unknown> {
  const { crestFlat, ...screw } = found.screw;
  return {
    candidates: found.candidates,
    fits: found.fits,
    separable: found.separable,
    twins: found.twins,
    next_measurement: found.nextMeasurement,
    contradictions: found.contradictions,
    repairs: found.repairs,
    screw: { ...screw, ...(crestFlat === undefined ? {} : { crest_flat: crestFlat }) },
    block: found.block,
  };
}
