import type { Remedy } from '../../judge/advice.js';

/** What carries a standing screw whatever the plastic does: metal behind it, or flanks and a pin, which want another sheet. */
export function carriedByMetal(): readonly Remedy[] {
  return [{ check: 'friction-alone', say: 'put a metal collar behind it', set: { backed_by: 'metal-collar' } }];
}
