/**
 * The known word closest to a mistyped one, or undefined when none is near (at most a third of its letters wrong).
 * Distance is the number of letters to insert, drop or change, or neighbours to swap.
 * @example nearest('thicknes', ['diameter', 'thickness']) // 'thickness'
 */
export function nearest(word: string, known: readonly string[]): string | undefined {
  if (word.length > 60) return undefined;
  const near = known
    .map((candidate) => ({ candidate, away: distance(word.toLowerCase(), candidate.toLowerCase()) }))
    .filter(({ candidate, away }) => isNear(away, Math.max(candidate.length, word.length)))
    .sort((a, b) => a.away - b.away || (a.candidate < b.candidate ? -1 : 1));
  return near[0]?.candidate;
}

/** One letter may be wrong in a short word, but not its only one. */
function isNear(away: number, length: number): boolean {
  return away <= Math.max(1, Math.floor(length / 3)) && away < length;
}

function distance(a: string, b: string): number {
  const rows = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = rows[i - 1]![j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      const swap =
        i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] ? rows[i - 2]![j - 2]! + 1 : Infinity;
      row.push(Math.min(change, swap, rows[i - 1]![j]! + 1, row[j - 1]! + 1));
    }
    rows.push(row);
  }
  return rows[a.length]![b.length]!;
}
