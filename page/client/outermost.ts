/** Ways in which a body's ends are looked for, around its axis and from end to end. */
const [AROUND, TILTS] = [32, 8];

/**
 * The corners of a body that reach furthest, as triples: what a picture of it is fitted by, from wherever it is seen.
 * Ends along the axes are exact; in other ways a convex body may reach beyond them by 1 − cos(180°/32) of its size,
 * half a percent.
 */
export function outermost(positions: ArrayLike<number>): Float32Array<ArrayBuffer> {
  const found = new Set(ways().map((way) => furthest(positions, way)));
  return Float32Array.from([...found].flatMap((i) => [positions[i]!, positions[i + 1]!, positions[i + 2]!]));
}

function ways(): [number, number, number][] {
  return Array.from({ length: TILTS + 1 }, (_, tilt) => (Math.PI * tilt) / TILTS).flatMap((tilt) =>
    Array.from({ length: AROUND }, (_, i) => (2 * Math.PI * i) / AROUND).map((turn): [number, number, number] => [
      Math.sin(tilt) * Math.cos(turn),
      Math.sin(tilt) * Math.sin(turn),
      Math.cos(tilt),
    ]),
  );
}

/** Where the triple begins that reaches furthest. */
function furthest(positions: ArrayLike<number>, [x, y, z]: readonly [number, number, number]): number {
  let [best, most] = [0, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < positions.length; i += 3) {
    const reach = x * positions[i]! + y * positions[i + 1]! + z * positions[i + 2]!;
    if (reach > most) [best, most] = [i, reach];
  }
  return best;
}
