import type { Assumptions } from '../../sheet/assumptions.js';

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

/** The clearances of a nut, and the class they come from. */
export interface Fit extends FitClass {
  readonly name: FitName | 'own';
}

/** A fit as a sheet gives it: a class, clearances of its own, or a class with one of them replaced. */
export interface GivenFit {
  readonly class?: FitName | undefined;
  readonly diametral?: number | undefined;
  readonly axial?: number | undefined;
}

/** The clearances that a sheet asks for; running, and listed as assumed, where it does not say. */
export function resolveFit(given: GivenFit | undefined, assumptions: Assumptions): Fit {
  const { diametral, axial } = given ?? {};
  if (given?.class === undefined && diametral !== undefined && axial !== undefined) {
    return { name: 'own', diametral, axial };
  }
  const name = given?.class ?? assumptions.or<FitName>(undefined, 'fit', 'running', 'turns freely by hand');
  const defaults = FIT_CLASSES[name];
  return { name, diametral: diametral ?? defaults.diametral, axial: axial ?? defaults.axial };
}
