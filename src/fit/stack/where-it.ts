/** Values are found this closely, mm. */
const CLOSE = 1e-6;

/** Beyond what numbers hold apart nothing closes in; then this many rounds are enough. */
const ROUNDS = 100;

/**
 * Where a rising function takes a value: along its slope, a little beyond what that promises, so that both ends close in;
 * by halving where that leads out or too slowly on.
 */
export function whereIt(
  rising: (x: number) => number,
  slope: (x: number) => number,
  value: number,
  from: number,
  to: number,
): number {
  let [low, high, step] = [from, to, to - from];
  let x = (from + to) / 2;
  for (let round = 0; round < ROUNDS && high - low > CLOSE; round += 1) {
    const short = value - rising(x);
    if (short > 0) low = x;
    else high = x;
    const along = short / slope(x) + 0.4 * CLOSE * Math.sign(short);
    const leads = Math.abs(along) < step / 2 && x + along > low && x + along < high;
    step = leads ? Math.abs(along) : (high - low) / 2;
    x = leads ? x + along : (low + high) / 2;
  }
  return (low + high) / 2;
}
