import { describe, expect, it } from 'vitest';
import { threadSpans } from '../../../../src/solid/exact/lines/thread-spans.js';
import type { ThreadSweep } from '../../../../src/solid/thread-sweep.js';

/** Two starts with grooves at 1 and 3 mm up on +X, each 1 mm wide halfway up its flanks. */
const thread: ThreadSweep = {
  ridge: [
    [0.4, 5],
    [0.6, 4],
    [1.4, 4],
    [1.6, 5],
  ],
  pitch: 2,
  starts: 2,
  hand: 'right',
  columns: 48,
  from: 0,
  to: 4,
  airSide: 'outside',
  circumscribed: false,
};

const close = (found: readonly number[], wanted: readonly number[]) => {
  expect(found).toHaveLength(wanted.length);
  for (const [i, z] of wanted.entries()) expect(found[i]).toBeCloseTo(z, 12);
};

describe('lines along a thread', () => {
  it('meet the core over the whole length, and nothing past the crests', () => {
    expect(threadSpans(thread, 3, 0)).toEqual([0, 4]);
    expect(threadSpans(thread, 0, -6)).toEqual([]);
  });

  it('meet a ridge every pitch', () => {
    close(threadSpans(thread, 4.5, 0), [0, 0.5, 1.5, 2.5, 3.5, 4]);
  });

  it('find it a quarter of the lead higher a quarter turn on; lower where it is left-hand', () => {
    // lead 4, so that a quarter is half a pitch: grooves at 0, 2 and 4
    close(threadSpans(thread, 0, 4.5), [0.5, 1.5, 2.5, 3.5]);
    // an eighth of a turn is half a millimetre: up for the right hand, down for the left
    const at = 4.5 * Math.SQRT1_2;
    close(threadSpans(thread, at, at), [0, 1, 2, 3]);
    close(threadSpans({ ...thread, hand: 'left' }, at, at), [1, 2, 3, 4]);
  });
});
