/** Room between boxes that would lie in one another [mm]. */
const GAP = 8;

/** Shifts along X that set boxes beside one another in their order, the first where it is; none where there is one. */
export function besideOneAnother(
  boxes: readonly (readonly [readonly number[], readonly number[]])[],
): (readonly [number, number, number])[] {
  let edge: number | undefined;
  return boxes.map(([low, high]) => {
    const shift = edge === undefined ? 0 : edge + GAP - low[0]!;
    edge = high[0]! + shift;
    return [shift, 0, 0] as const;
  });
}
