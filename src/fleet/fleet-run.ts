import type { MadePart, Outcome } from './made-part.js';
import type { FleetPlan, PlannedPart } from './plan.js';

/** What a run has at hand when its parts are gathered. */
export interface FleetRun {
  readonly plan: FleetPlan;
  /** machines that were run */
  readonly chosen: ReadonlySet<string>;
  readonly outcomes: ReadonlyMap<string, Outcome>;
}

/** Every part that has files, machine by machine. */
export function finishedParts({ plan, chosen, outcomes }: FleetRun): (PlannedPart & { readonly made: MadePart })[] {
  return plan.parts.flatMap((part) => {
    const outcome = outcomes.get(part.address);
    const isMade = chosen.has(part.machine) && outcome?.state === 'made' && outcome.made.files.length > 0;
    return isMade ? [{ ...part, made: outcome.made }] : [];
  });
}
