/** Clearances of a fit class, mm. */
export interface FitClass {
  /** on the diameter */
  readonly diametral: number;
  /** along the axis, over both flanks */
  readonly axial: number;
}

/** Fit classes of a printed nut on a metal screw. @source common-practice */
export const FIT_CLASSES = {
  close: { diametral: 0.2, axial: 0.07 },
  running: { diametral: 0.3, axial: 0.1 },
  loose: { diametral: 0.4, axial: 0.25 },
} as const satisfies Record<string, FitClass>;

export type FitName = keyof typeof FIT_CLASSES;
