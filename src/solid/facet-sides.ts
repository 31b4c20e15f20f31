/**
 * For each side of each facet of a closed mesh, the same side of its neighbour: side 3·f + k runs from corner k of facet
 * f to the next.
 */
export function neighbourSides(triangles: Uint32Array): Int32Array {
  const count = triangles.length;
  const other = new Int32Array(count).fill(-1);
  let corners = 0;
  for (let i = 0; i < count; i++) corners = Math.max(corners, triangles[i]! + 1);
  // sides by their lower corner, in lists
  const first = new Int32Array(corners).fill(-1);
  const next = new Int32Array(count);
  for (let i = 0; i < count; i++) {
    const a = triangles[i]!;
    const b = triangles[i % 3 === 2 ? i - 2 : i + 1]!;
    const low = Math.min(a, b);
    const high = Math.max(a, b);
    for (let k = first[low]!; k >= 0; k = next[k]!) {
      if (other[k]! >= 0) continue;
      const from = triangles[k]!;
      const to = triangles[k % 3 === 2 ? k - 2 : k + 1]!;
      // the neighbour runs along the side the other way
      if (Math.max(from, to) === high && from === b) {
        other[k] = i;
        other[i] = k;
        break;
      }
    }
    if (other[i]! < 0) {
      next[i] = first[low]!;
      first[low] = i;
    }
  }
  return other;
}
