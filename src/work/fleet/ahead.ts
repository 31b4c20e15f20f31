/**
 * Works through items in order, with the next few begun already.
 * @param width how many are in hand at a time; at least 1
 * @param work  what is done with each; it must not reject, since nobody may come to wait for it
 * @returns each item with what came of it
 */
export async function* ahead<Item, Result>(
  items: readonly Item[],
  width: number,
  work: (item: Item) => Promise<Result>,
): AsyncGenerator<readonly [Item, Result]> {
  const begun: Promise<Result>[] = [];
  for (let at = 0, next = 0; at < items.length; at++) {
    for (; next < items.length && next < at + width; next++) begun.push(work(items[next]!));
    yield [items[at]!, await begun.shift()!];
  }
}
