/**
 * Work that is done when it is first asked for, and not again.
 *
 * @param work what gives the value; without effects
 * @returns the same value at every call
 * @example once(() => 2 + 2)() // 4
 */
export function once<Value>(work: () => Value): () => Value {
  let known: { readonly value: Value } | undefined;
  return () => {
    known ??= { value: work() };
    return known.value;
  };
}

/**
 * Work that is done once for each object it is asked about, and forgotten together with that object.
 *
 * @param work what gives the value; without effects, and from what the object holds alone
 * @returns the same value at every call with the same object
 * @example onceFor((pair: number[]) => pair.length)([1, 2]) // 2
 */
export function onceFor<Key extends object, Value>(work: (key: Key) => Value): (key: Key) => Value {
  const known = new WeakMap<Key, { readonly value: Value }>();
  return (key) => {
    const found = known.get(key);
    if (found) return found.value;
    const value = work(key);
    known.set(key, { value });
    return value;
  };
}
