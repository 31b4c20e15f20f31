/**
 * A constant that costs something to work out, worked out when it is first asked for.
 * @example once(() => 6 * 7)() // 42
 */
export function once<T>(work: () => T): () => T {
  let known: { readonly value: T } | undefined;
  return () => {
    known ??= { value: work() };
    return known.value;
  };
}
