/** Stretches of a line, [from, to] in turn, rising and apart. */
export type Spans = readonly number[];

export const NONE: Spans = [];

/** How stretches are put together. */
export type Joining = 'union' | 'difference' | 'intersection';

const KEEP: Record<Joining, (inFirst: boolean, inSecond: boolean) => boolean> = {
  union: (first, second) => first || second,
  difference: (first, second) => first && !second,
  intersection: (first, second) => first && second,
};

/** Stretches put together, over the ends of both in turn. */
export function joinedSpans(kind: Joining, a: Spans, b: Spans): Spans {
  const keep = KEEP[kind];
  if (b.length === 0) return keep(true, false) ? a : NONE;
  const kept: number[] = [];
  let [i, j, was] = [0, 0, false];
  while (i < a.length || j < b.length) {
    const z = j === b.length || a[i]! <= b[j]! ? a[i]! : b[j]!;
    while (a[i] === z) i += 1;
    while (b[j] === z) j += 1;
    const is = keep(i % 2 === 1, j % 2 === 1);
    if (is !== was) kept.push(z);
    was = is;
  }
  return kept;
}
