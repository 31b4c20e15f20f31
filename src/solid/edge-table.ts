/** The edges of a mesh and how facets use them. */
export interface EdgeTable {
  /** number of edges */
  readonly count: number;
  /** for each edge, times it is run from its lower to its higher corner, then the other way: [up0, down0, up1, …] */
  readonly uses: Uint16Array;
  /** for each side of each facet its edge */
  readonly edgeOf: Uint32Array;
}

/**
 * Lists the edges of a mesh.
 *
 * @param corners  three a facet; names, equal for joined corners
 * @returns the edges in order of first use
 */
export function listEdges(corners: Uint32Array): EdgeTable {
  const sides = corners.length;
  // the edges of a corner are those that no lower one has: the latest of them, and before each the one before
  const latest = new Int32Array(1 + corners.reduce((most, corner) => Math.max(corner, most), 0)).fill(-1);
  const before = new Int32Array(sides);
  const highs = new Uint32Array(sides);
  const uses = new Uint16Array(2 * sides);
  const edgeOf = new Uint32Array(sides);
  let count = 0;
  for (let side = 0; side < sides; side++) {
    const a = corners[side]!;
    const b = corners[side % 3 === 2 ? side - 2 : side + 1]!;
    const low = Math.min(a, b);
    const high = Math.max(a, b);
    let edge = latest[low]!;
    while (edge >= 0 && highs[edge] !== high) edge = before[edge]!;
    if (edge < 0) {
      edge = count++;
      highs[edge] = high;
      before[edge] = latest[low]!;
      latest[low] = edge;
    }
    edgeOf[side] = edge;
    uses[2 * edge + (a < b ? 0 : 1)]!++;
  }
  return { count, uses, edgeOf };
}
