import type { ThreadSweep } from '../../src/solid/thread-sweep.js';

/** A left-hand rod of two starts: flats of 0.8 at 5 and of 0.6 at 4, flanks of 0.3, four pitches long. */
export const SMALL_THREAD: ThreadSweep = {
  ridge: [
    [0.4, 5],
    [0.7, 4],
    [1.3, 4],
    [1.6, 5],
  ],
  pitch: 2,
  starts: 2,
  hand: 'left',
  columns: 48,
  from: 0,
  to: 8,
  airSide: 'outside',
  circumscribed: false,
};
