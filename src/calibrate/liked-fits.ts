import type { Calibration, LikedFit } from './calibration.js';
import { type LadderKind, POCKET_KINDS, type PocketKind } from './feature.js';
import { type FeltStep, likedClearance } from './ladder.js';
import type { Results } from './results.js';
import { cameOut, type Process, pocketCameOut } from './thread-fit.js';

/** Fits by hand, of threads and of pockets. */
export interface LikedFits {
  readonly thread: Calibration['thread'] | undefined;
  readonly pockets: Calibration['pockets'];
  readonly unknown: readonly string[];
}

interface Step extends FeltStep {
  readonly kind: LadderKind;
  readonly axial: number;
}

/** What the hand likes of each ladder, and what the ladders do not tell. */
export function likedFits(runs: readonly Results[], real: Process): LikedFits {
  const steps = runs.flatMap((run): Step[] => {
    const { plane, axial, hole_offset } = run.applied;
    const drawn: Process = { plane, axial, holeOffset: hole_offset };
    return Object.entries(run.tried ?? {}).flatMap(([mark, row]): Step[] => {
      if (row.felt === undefined) return [];
      if (row.thread && run.screw) {
        const came = cameOut(row.thread, run.screw, drawn, real);
        return [{ kind: 'thread', mark, clearance: came.diametral, axial: came.axial, felt: row.felt }];
      }
      const kind = POCKET_KINDS.find((one) => row[one] !== undefined);
      if (!kind) return [];
      const clearance = pocketCameOut(row[kind]!, drawn, real) - row.for!;
      return [{ kind, mark, clearance, axial: 0, felt: row.felt }];
    });
  });
  const pockets: Partial<Record<PocketKind, LikedFit>> = {};
  const unknown: string[] = [];
  let thread: LikedFits['thread'];
  for (const kind of ['thread', ...POCKET_KINDS] as const) {
    const own = steps.filter((step) => step.kind === kind);
    if (own.length === 0) continue;
    const liked = likedClearance(own);
    if (!liked.known) unknown.push(`${kind.replace('_', ' ')} fit: ${liked.why}.`);
    else if (kind === 'thread')
      thread = { diametral: liked.clearance, axial: between(own, liked.clearance), half: liked.half, how: liked.how };
    else pockets[kind] = { clearance: liked.clearance, half: liked.half, how: liked.how };
  }
  return { thread, pockets, unknown };
}

/** Axial clearance at a diametral one, between the steps that were printed. */
function between(steps: readonly { readonly clearance: number; readonly axial: number }[], at: number): number {
  const rising = [...steps].sort((a, b) => a.clearance - b.clearance);
  const above = rising.find(({ clearance }) => clearance >= at) ?? rising.at(-1)!;
  const below = rising.findLast(({ clearance }) => clearance <= at) ?? rising[0]!;
  if (above.clearance === below.clearance) return below.axial;
  const share = (at - below.clearance) / (above.clearance - below.clearance);
  return below.axial + share * (above.axial - below.axial);
}
