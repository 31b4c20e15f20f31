/** What is asked for again soon is mostly among the last few thousand. */
const MOST = 4096;

/**
 * A function of a text that remembers its latest answers, so that its memory does not grow with what it is asked.
 * @param find works an answer out
 * @param most answers that are remembered
 */
export function recalled<T>(find: (key: string) => T, most = MOST): (key: string) => T {
  const known = new Map<string, T>();
  return (key) => {
    const held = known.get(key);
    if (held !== undefined) return held;
    const found = find(key);
    known.set(key, found);
    if (known.size > most) known.delete(known.keys().next().value!);
    return found;
  };
}
