import type { Calibration } from '../calibrate/calibration.js';
import { rounded } from '../units/format.js';

/** A calibration as `calibrate --json` gives it; mm, and shrink as a fraction. */
export function calibrationJson(
  calibration: Calibration,
  about: { readonly profile: string; readonly revision: number; readonly file: string },
) {
  const { state, slicer, solution, outliers, thread, pockets, unknown, warnings, holeOffset } = calibration;
  return {
    leadwright: 1,
    ...about,
    state,
    slicer_compensates: slicer,
    estimates: Object.fromEntries(
      Object.entries(solution.estimates).map(([name, { value, standardError }]) => [
        name,
        {
          value: rounded(value),
          standard_error: rounded(standardError),
          borrowed: solution.borrowed.some((one) => one === name),
        },
      ]),
    ),
    ...(holeOffset ? { hole_spread: rounded(holeOffset.spread) } : {}),
    residuals: solution.residuals.map(({ mark, residual, standardised }) => ({
      mark,
      mm: rounded(residual),
      sigma: rounded(standardised, 3),
    })),
    outliers: outliers.map(({ mark, why }) => ({ mark, why })),
    ...(thread ? { fit: { diametral: rounded(thread.diametral), axial: rounded(thread.axial) } } : {}),
    pockets: Object.fromEntries(
      Object.entries(pockets).map(([kind, { clearance, half }]) => [
        kind,
        { clearance: rounded(clearance), half: rounded(half) },
      ]),
    ),
    unknown,
    warnings,
  };
}
