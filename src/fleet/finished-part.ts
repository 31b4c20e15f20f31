import type { RememberedPart } from './made-part.js';
import type { PlannedPart } from './plan.js';

/** A part of a machine that has files. */
export type FinishedPart = PlannedPart & { readonly made: RememberedPart };
