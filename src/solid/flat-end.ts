/**
 * A flat end over a convex ring: each second corner is cut off, then each second one of those that are left. What is
 * bored into its middle meets a few large facets there. (Where all facets share a corner, or lie in strips from side to
 * side, it meets dozens, and the kernel takes up to twice as long.)
 *
 * @param ring corners, counter-clockwise seen from above
 * @returns facets over those corners, upwards
 * @example flatEnd([4, 5, 6, 7]) // [[4, 5, 6], [6, 7, 4]]
 */
export function flatEnd(ring: readonly number[]): [number, number, number][] {
  const made: [number, number, number][] = [];
  for (let left = ring; left.length > 2; left = left.filter((_, i) => i % 2 === 0)) {
    for (let i = 0; i + 1 < left.length; i += 2) {
      const after = left[(i + 2) % left.length]!;
      if (after !== left[i]) made.push([left[i]!, left[i + 1]!, after]);
    }
  }
  return made;
}
