/**
 * Each facet as its first corner and the two sides that leave it, nine numbers a facet: what normals, areas and rays ask.
 *
 * @param positions  x, y, z of all corners               [mm]
 * @param triangles  three corners a facet
 * @returns a, b − a, c − a of facet after facet          [mm]
 * @example spannedFacets([0, 0, 0, 1, 0, 0, 0, 1, 0], [0, 1, 2]) // [0, 0, 0, 1, 0, 0, 0, 1, 0]
 */
export function spannedFacets(positions: ArrayLike<number>, triangles: ArrayLike<number>): Float64Array {
  const spanned = new Float64Array(3 * triangles.length);
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [3 * triangles[i]!, 3 * triangles[i + 1]!, 3 * triangles[i + 2]!];
    for (let axis = 0; axis < 3; axis++) {
      const at = 3 * i + axis;
      spanned[at] = positions[a + axis]!;
      spanned[at + 3] = positions[b + axis]! - positions[a + axis]!;
      spanned[at + 6] = positions[c + axis]! - positions[a + axis]!;
    }
  }
  return spanned;
}
