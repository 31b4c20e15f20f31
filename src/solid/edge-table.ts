import { scatter } from './vertex-table.js';

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
  let size = 16;
  while (size < 2 * sides) size *= 2;
  const slots = new Int32Array(size).fill(-1);
  const lows = new Uint32Array(sides);
  const highs = new Uint32Array(sides);
  const uses = new Uint16Array(2 * sides);
  const edgeOf = new Uint32Array(sides);
  let count = 0;
  for (let side = 0; side < sides; side++) {
    const a = corners[side]!;
    const b = corners[side % 3 === 2 ? side - 2 : side + 1]!;
    const low = Math.min(a, b);
    const high = Math.max(a, b);
    let slot = scatter(Math.imul(low, 0x9e3779b1) ^ high) & (size - 1);
    let edge = slots[slot]!;
    while (edge >= 0 && (lows[edge] !== low || highs[edge] !== high)) {
      slot = (slot + 1) & (size - 1);
      edge = slots[slot]!;
    }
    if (edge < 0) {
      edge = count++;
      slots[slot] = edge;
      lows[edge] = low;
      highs[edge] = high;
    }
    edgeOf[side] = edge;
    uses[2 * edge + (a < b ? 0 : 1)]!++;
  }
  return { count, uses, edgeOf };
}
