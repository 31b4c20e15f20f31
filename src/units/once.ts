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
