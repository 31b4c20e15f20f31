/** How a free travel is looked for. */
export interface TravelSearch {
  /** where the end is expected; near it the search is short */
  readonly guess: number;
  /** nothing is looked for beyond this */
  readonly most: number;
  /** how exactly the end is found */
  readonly within: number;
}

/**
 * How far something can move before it is no longer free: first a bracket around the guess, as wide as is wanted where
 * the guess is good, then halves.
 *
 * @param isFree whether a travel is free; free up to some travel, and never beyond it
 * @param search guess, most and within, all in the unit of the travel
 * @returns the travel, 0 where nothing is free, `most` where all is
 * @example freeTravel((x) => x < 0.3, { guess: 0.25, most: 1, within: 0.001 }) // 0.3, to 0.001
 */
export function freeTravel(isFree: (travel: number) => boolean, search: TravelSearch): number {
  let [low, high] = bracket(isFree, search);
  while (high - low > 2.0001 * search.within) {
    const middle = (low + high) / 2;
    if (isFree(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The ends of a range in which it stops being free. */
function bracket(isFree: (travel: number) => boolean, { guess, most, within }: TravelSearch): [number, number] {
  const start = Math.min(Math.max(guess, 0), most);
  let [low, high] = [Math.max(0, start - within), Math.min(most, start + within)];
  for (let step = 2 * within; !isFree(low); step *= 2) {
    if (low === 0) return [0, 0];
    [low, high] = [Math.max(0, low - step), low];
  }
  if (high <= start - within) return [low, high];
  for (let step = 2 * within; isFree(high); step *= 2) {
    if (high === most) return [most, most];
    [low, high] = [high, Math.min(most, high + step)];
  }
  return [low, high];
}
