import { plain } from '../../../units/format.js';
import type { NutInSight } from './in-sight.js';

/** The thread and the edges in words. */
export function notesOf({ design, sizes }: NutInSight, isThreaded: boolean): string[] {
  const { thread, lead } = sizes;
  const { screw } = design;
  const edges = `edges broken ${plain(sizes.relief, 2)}${sizes.fillet > 0 ? `, fillet R ${plain(sizes.fillet, 2)}` : ''}`;
  if (!isThreaded) return [`For ${screw.designation ?? 'the measured screw'}; ${edges}`];
  return [
    `Thread for ${screw.designation ?? 'the measured screw'}: ${screw.hand}-hand, ${screw.starts} ${screw.starts === 1 ? 'start' : 'starts'}, pitch ${plain(thread.pitch)}, lead ${plain(lead)}`,
    `Flank angle ${plain((Math.atan(thread.flankSlope) * 180) / Math.PI, 1)}°; lead-in ${plain(sizes.leadIn, 2)} × 45° past the thread, ${edges}`,
  ];
}
