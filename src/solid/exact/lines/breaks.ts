import { circleCrossings, sideCrossings, type Way } from './crossings.js';
import type { Mark } from './marks.js';

/** A place where what lines find may change; a root where it may do so as one does. */
export interface Break {
  readonly at: number;
  readonly isRoot: boolean;
}

/** Breaks nearer than this are one, and stretches below it are left out, mm. */
export const NOTHING = 1e-9;

/** Over y the width of every circle grows as a root. */
export function yBreaks(marks: readonly Mark[]): Break[] {
  return distinct(
    marks.flatMap((mark): Break[] =>
      mark.kind === 'line'
        ? [mark.from[1], mark.to[1]].map((at) => ({ at, isRoot: mark.isRoot === true }))
        : [-1, 1].map((side) => ({ at: mark.center[1] + side * mark.radius, isRoot: true })),
    ),
  );
}

/** Where marks lie over one y. */
export function xBreaks(marks: readonly Mark[], y: number): Break[] {
  const way: Way = { from: [0, y], along: [1, 0] };
  const found: Break[] = [];
  for (const mark of marks) {
    const isRoot = mark.isRoot === true;
    for (const at of mark.kind === 'circle' ? circleCrossings(mark, way) : sideCrossings(mark, way))
      found.push({ at, isRoot });
  }
  return distinct(found);
}

function distinct(all: Break[]): Break[] {
  const found: Break[] = [];
  for (const { at, isRoot } of all.sort((a, b) => a.at - b.at)) {
    const last = found.at(-1);
    if (last && at - last.at < NOTHING) found[found.length - 1] = { at: last.at, isRoot: isRoot || last.isRoot };
    else found.push({ at, isRoot });
  }
  return found;
}
