/**
 * Which unknowns the rows of a linear problem settle: those that no combination left free by the rows can move.
 *
 * The rows are orthogonalised one by one; what is left of a unit vector after taking out the space they span is the
 * part of that unknown which the rows do not see.
 *
 * @param rows   slopes of each row, one number an unknown
 * @param count  number of unknowns
 * @returns for each unknown, whether the rows settle it
 * @source linear algebra: an unknown is settled where its unit vector lies in the row space
 * @example toldApart([[1, 1, 0], [2, 2, 0]], 3) // [false, false, false]
 */
export function toldApart(rows: readonly (readonly number[])[], count: number): boolean[] {
  const scales = Array.from({ length: count }, (_, k) => Math.hypot(...rows.map((row) => row[k]!)) || 1);
  const basis: number[][] = [];
  for (const row of rows) {
    const scaled = row.map((slope, k) => slope / scales[k]!);
    const length = Math.hypot(...scaled);
    const rest = withoutSpan(withoutSpan(scaled, basis), basis);
    const left = Math.hypot(...rest);
    if (left > NOTHING * length) basis.push(rest.map((part) => part / left));
  }
  return Array.from({ length: count }, (_, k) => {
    const unit = Array.from({ length: count }, (__, i) => (i === k ? 1 : 0));
    return Math.hypot(...withoutSpan(unit, basis)) < SEEN;
  });
}

/** A row whose new part is smaller than this share of it tells nothing new. */
const NOTHING = 1e-7;
const SEEN = 1e-5;

function withoutSpan(vector: readonly number[], basis: readonly (readonly number[])[]): number[] {
  return basis.reduce<number[]>(
    (rest, one) => {
      const along = rest.reduce((sum, part, i) => sum + part * one[i]!, 0);
      return rest.map((part, i) => part - along * one[i]!);
    },
    [...vector],
  );
}
