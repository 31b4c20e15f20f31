/** Length inside the shape, and its moments about x, y and z = 0. */
export type Sums = readonly [length: number, x: number, y: number, z: number];

export const ZERO: Sums = [0, 0, 0, 0];

export function added(a: Sums, b: Sums, weight: number): Sums {
  return [a[0] + weight * b[0], a[1] + weight * b[1], a[2] + weight * b[2], a[3] + weight * b[3]];
}

/** A stretch of y or x: as it is, or as middle − half·cos φ where an end of it is a root. */
export interface Panel {
  readonly middle: number;
  readonly half: number;
  readonly isRoot: boolean;
  /** within −1 to 1, or φ within 0 to π */
  readonly from: number;
  readonly to: number;
}

export function panelOver(low: number, high: number, isRoot: boolean): Panel {
  const [from, to] = isRoot ? [0, Math.PI] : [-1, 1];
  return { middle: (low + high) / 2, half: (high - low) / 2, isRoot, from, to };
}

/** A panel's lower and upper half. */
export function halved(panel: Panel): readonly [Panel, Panel] {
  const middle = (panel.from + panel.to) / 2;
  return [
    { ...panel, to: middle },
    { ...panel, from: middle },
  ];
}

/** Where a panel begins and ends. */
export function endsOf(panel: Panel): readonly [low: number, high: number] {
  return [place(panel, -1)[0], place(panel, 1)[0]];
}

/** Place and weight of a node of the rule, −1 to 1. */
function place({ middle, half, isRoot, from, to }: Panel, node: number): readonly [at: number, weight: number] {
  const u = (from + to + (to - from) * node) / 2;
  const share = (half * (to - from)) / 2;
  return isRoot ? [middle - half * Math.cos(u), share * Math.sin(u)] : [middle + half * u, share];
}

/** Nodes of Gauss's rule of three on −1 to 1 and of Kronrod's that holds it, with the weights of the latter and the former. */
const NODES = [
  [-0.7745966692414834, 0.2684880898683334, 5 / 9],
  [0, 0.4509165386584741, 8 / 9],
  [0.7745966692414834, 0.2684880898683334, 5 / 9],
  [-0.9604912687080202, 0.1046562260264673, 0],
  [-0.4342437493468026, 0.4013974147759622, 0],
  [0.4342437493468026, 0.4013974147759622, 0],
  [0.9604912687080202, 0.1046562260264673, 0],
] as const;

/** What stands at the three nodes of Gauss's rule, from the lower end up. */
export function atGauss(panel: Panel, of: (at: number) => Sums): readonly [Sums, Sums, Sums] {
  const [low, middle, high] = NODES;
  const found = ([node]: (typeof NODES)[number]) => of(place(panel, node)[0]);
  return [found(low), found(middle), found(high)];
}

/** What the rule finds over a panel, and how far the lesser rule within it is off. */
export interface Ruled {
  readonly panel: Panel;
  readonly sums: Sums;
  readonly off: number;
}

/**
 * The integral over a panel by Kronrod's rule of seven points.
 *
 * @param panel  where
 * @param of     what is integrated
 * @param known  what stands at the nodes of Gauss's rule, where it is known
 * @source geometry: Gauss–Kronrod rule of 3 and 7 points
 */
export function ruled(panel: Panel, of: (at: number) => Sums, known: readonly Sums[] = []): Ruled {
  let sums = ZERO;
  let lesser = 0;
  for (const [i, [node, fine, coarse]] of NODES.entries()) {
    const [at, weight] = place(panel, node);
    const found = known[i] ?? of(at);
    sums = added(sums, found, fine * weight);
    lesser += coarse * weight * found[0];
  }
  return { panel, sums, off: Math.abs(sums[0] - lesser) };
}
