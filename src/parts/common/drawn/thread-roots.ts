import type { ToothForm } from '../../../mechanics/thread/nut-thread.js';
import type { Stroke } from '../../part-views.js';
import { arc, line } from './strokes.js';

/** A threaded bore as it is drawn. */
interface ThreadInSight {
  readonly thread: Pick<ToothForm, 'major'>;
  readonly leadIn: number;
}

/** Heights between which it stands. */
interface Stretch {
  readonly bottom: number;
  readonly top: number;
}

/** ISO 6410: the roots of a thread as thin lines, up to the cones at its ends. */
export function threadRoots({ thread, leadIn }: ThreadInSight, { bottom, top }: Stretch): Stroke[] {
  return [1, -1].map((side) => {
    const y = (side * thread.major) / 2;
    return line('thin', [-(bottom + leadIn), y], [-(top - leadIn), y]);
  });
}

/** ISO 6410: three quarters of the root, thin. */
export function threadRoot({ thread }: Pick<ThreadInSight, 'thread'>): Stroke {
  return arc('thin', [0, 0], thread.major / 2, 95, 355);
}
