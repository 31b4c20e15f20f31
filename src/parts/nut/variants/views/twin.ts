import { noted } from '../../../common/drawn/spread.js';
import { line } from '../../../common/drawn/strokes.js';
import { detailMark, threadDetail } from '../../../common/drawn/thread-detail.js';
import { recessCone } from '../../../common/thread-bore.js';
import type { AskedView, SizeMark, Stroke } from '../../../part-views.js';
import type { NutInSight } from '../../views/in-sight.js';
import type { Member, Threaded } from '../../views/member.js';
import { recessOf } from '../twin.js';
import type { Variant } from '../types.js';

/** Two threads with a wide bore between them, cut as a plain nut is. */
export function twinMember(nut: NutInSight, family: Variant & { kind: 'twin' }, plain: Member): Member {
  const { print, sizes, bottom, top } = nut;
  const recess = recessOf(family, sizes, print.along);
  const cone = recessCone(recess, sizes.thread);
  const upper = { bottom: bottom + recess.to, top };
  const lower = { bottom, top: bottom + recess.from };
  const shift = print.along(family.shift);
  const mark = shift > 0 ? detailMark(nut, { threads: [upper] }, SHIFT_LETTER) : { strokes: [], letters: [] };
  const { strokes, size } = apartSize(nut, lower, upper);
  return {
    ...plain,
    threads: [lower, upper],
    side: { strokes: [...strokes, ...mark.strokes], sizes: [size], letters: mark.letters },
    further: shift > 0 ? [shiftDetail(nut, shift)] : [],
    notes: [
      `Two threads of ${noted(print.along(family.each))}; between them ⌀${noted(2 * recess.radius)} over ${noted(recess.to - recess.from - 2 * cone)}, cones of 45° at its ends`,
      shift > 0
        ? `Detail ${SHIFT_LETTER}: the upper thread, set off the helix of the lower one`
        : 'Both threads on one helix',
    ],
  };
}

const SHIFT_LETTER = 'U';
/** A shift is drawn so large on paper, where it can be, and no more than so many times as it is. */
const SHIFT_ON_PAPER = 2;
const MOST_ENLARGED = 20;

/** From the middle of one thread to that of the other, each on a centre line of its own. */
function apartSize(
  { bottom, top, sizes: { body }, spread }: NutInSight,
  lower: Threaded,
  upper: Threaded,
): { readonly strokes: readonly Stroke[]; readonly size: SizeMark } {
  const [from, to] = [upper, lower].map((place) => -(place.bottom + place.top) / 2) as [number, number];
  const foot = -(body.across / 2 + 0.06 * (top - bottom));
  const value = to - from;
  return {
    strokes: [from, to].map((x) => line('centre', [x, 0], [x, foot])),
    size: {
      name: 'threads_apart',
      value,
      ...spread(value, 'along'),
      from: [from, foot],
      to: [to, foot],
      side: 'below',
    },
  };
}

/** The groove of the upper thread beside where the helix of the lower one would put it; upwards is to the left. */
function shiftDetail(nut: NutInSight, shift: number): AskedView {
  const { enlarged = 1, strokes, ...detail } = threadDetail(nut);
  const { minor, major, pitch } = nut.sizes.thread;
  const [low, high] = [minor / 2 - 0.1 * pitch, major / 2 + 0.25 * pitch];
  return {
    ...detail,
    title: SHIFT_LETTER,
    enlarged: Math.min(MOST_ENLARGED, Math.max(enlarged, SHIFT_ON_PAPER / shift)),
    strokes: [...strokes, ...[0, shift].map((x) => line('centre', [x, low], [x, high]))],
    sizes: [
      {
        name: 'thread_shift',
        value: shift,
        ...nut.spread(shift, 'along'),
        from: [0, high],
        to: [shift, high],
        side: 'above',
      },
    ],
  };
}
