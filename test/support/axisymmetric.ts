/** A body of revolution on a grid, loaded along its axis. */
export interface Solid {
  /** lines of the grid, mm */
  readonly radii: readonly number[];
  readonly heights: readonly number[];
  readonly isSolid: (radius: number, height: number) => boolean;
  readonly isHeld: (radius: number, height: number) => boolean;
  /** on the node at a place, along the axis, N */
  readonly force: (column: number, row: number) => number;
  readonly poisson: number;
}

/** Stress along the axis in the middle of an element, for a modulus of 1. */
export interface AxialStress {
  readonly radius: number;
  readonly height: number;
  readonly width: number;
  readonly stress: number;
}

const GAUSS = [-1 / Math.sqrt(3), 1 / Math.sqrt(3)];

/** Finite elements: rings of rectangular section with four nodes each. */
export function axialStresses(solid: Solid): AxialStress[] {
  const { radii, heights } = solid;
  const columns = radii.length;
  const node = (i: number, j: number) => j * columns + i;
  const count = 2 * columns * heights.length;
  const band = 2 * (columns + 2);
  const stiffness = Array.from({ length: count }, () => new Float64Array(band));
  const elastic = elasticity(solid.poisson);
  const elements = heights.slice(1).flatMap((_, j) =>
    radii.slice(1).flatMap((_, i) => {
      const [a, b] = [radii[i + 1]! - radii[i]!, heights[j + 1]! - heights[j]!];
      const [radius, height] = [radii[i]! + a / 2, heights[j]! + b / 2];
      if (!solid.isSolid(radius, height)) return [];
      const nodes = [node(i, j), node(i + 1, j), node(i + 1, j + 1), node(i, j + 1)];
      return [{ a, b, inner: radii[i]!, radius, height, dofs: nodes.flatMap((n) => [2 * n, 2 * n + 1]) }];
    }),
  );
  for (const { a, b, inner, dofs } of elements) {
    for (const xi of GAUSS)
      for (const eta of GAUSS) {
        const { rows, radius } = strains({ xi, eta, a, b, inner });
        const weight = (2 * Math.PI * radius * a * b) / 4;
        const stressed = product(elastic, rows);
        for (let p = 0; p < 8; p++)
          for (let q = 0; q < 8; q++) {
            const off = dofs[q]! - dofs[p]!;
            if (off < 0) continue;
            const sum = rows.reduce((total, row, k) => total + row[p]! * stressed[k]![q]!, 0);
            stiffness[dofs[p]!]![off]! += weight * sum;
          }
      }
  }
  const used = new Set(elements.flatMap(({ dofs }) => dofs));
  const forces = new Float64Array(count);
  for (const [j, height] of heights.entries())
    for (const [i, radius] of radii.entries()) {
      const at = 2 * node(i, j);
      if (!used.has(at)) for (const dof of [at, at + 1]) stiffness[dof]![0] = 1;
      else if (solid.isHeld(radius, height)) stiffness[at + 1]![0]! += 1e9;
      else forces[at + 1] = solid.force(i, j);
    }
  const moved = solved(stiffness, forces, band);
  return elements.map(({ a, b, inner, radius, height, dofs }) => {
    const { rows } = strains({ xi: 0, eta: 0, a, b, inner });
    const strain = rows.map((row) => row.reduce((sum, one, k) => sum + one * moved[dofs[k]!]!, 0));
    return { radius, height, width: a, stress: elastic[1]!.reduce((sum, one, k) => sum + one * strain[k]!, 0) };
  });
}

/** Stresses across the radius, along the axis, around it, and shear, from the strains in that order. */
function elasticity(poisson: number): number[][] {
  const scale = 1 / ((1 + poisson) * (1 - 2 * poisson));
  const [on, off, shear] = [scale * (1 - poisson), scale * poisson, (scale * (1 - 2 * poisson)) / 2];
  return [
    [on, off, off, 0],
    [off, on, off, 0],
    [off, off, on, 0],
    [0, 0, 0, shear],
  ];
}

/** Strains by the movements of the four nodes of an element. */
function strains(at: { xi: number; eta: number; a: number; b: number; inner: number }): {
  rows: number[][];
  radius: number;
} {
  const corners = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ] as const;
  const shapes = corners.map(([x, y]) => ((1 + x * at.xi) * (1 + y * at.eta)) / 4);
  const across = corners.map(([x, y]) => (x * (1 + y * at.eta)) / (2 * at.a));
  const along = corners.map(([x, y]) => (y * (1 + x * at.xi)) / (2 * at.b));
  const radius = at.inner + (at.a * (1 + at.xi)) / 2;
  const pairs = (first: (k: number) => number, second: (k: number) => number) =>
    corners.flatMap((_, k) => [first(k), second(k)]);
  const none = () => 0;
  return {
    radius,
    rows: [
      pairs((k) => across[k]!, none),
      pairs(none, (k) => along[k]!),
      pairs((k) => shapes[k]! / radius, none),
      pairs(
        (k) => along[k]!,
        (k) => across[k]!,
      ),
    ],
  };
}

function product(a: readonly number[][], b: readonly number[][]): number[][] {
  return a.map((row) => b[0]!.map((_, q) => row.reduce((sum, one, k) => sum + one * b[k]![q]!, 0)));
}

/** By Cholesky's way, in a band. */
function solved(matrix: Float64Array[], forces: Float64Array, band: number): Float64Array {
  const count = forces.length;
  for (let i = 0; i < count; i++) {
    const row = matrix[i]!;
    const pivot = row[0]!;
    for (let k = 1; k < band && i + k < count; k++) {
      const factor = row[k]! / pivot;
      if (factor === 0) continue;
      const below = matrix[i + k]!;
      for (let q = k; q < band; q++) below[q - k]! -= factor * row[q]!;
      forces[i + k]! -= factor * forces[i]!;
    }
  }
  const moved = new Float64Array(count);
  for (let i = count - 1; i >= 0; i--) {
    const row = matrix[i]!;
    let sum = forces[i]!;
    for (let k = 1; k < band && i + k < count; k++) sum -= row[k]! * moved[i + k]!;
    moved[i] = sum / row[0]!;
  }
  return moved;
}
