/**
 * A copy without the field at the end of a path.
 * @example withoutField({ a: { b: 1, c: 2 } }, ['a', 'b']) // { a: { c: 2 } }
 */
export function withoutField<Root>(root: Root, path: readonly PropertyKey[]): Root;
export function withoutField(root: unknown, [key, ...rest]: readonly PropertyKey[]): unknown {
  if (typeof root !== 'object' || root === null || key === undefined) return root;
  if (Array.isArray(root)) return root.map((one, i) => (i === Number(key) ? withoutField(one, rest) : one));
  return Object.fromEntries(
    Object.entries(root).flatMap(([name, value]) =>
      name !== String(key) ? [[name, value]] : rest.length === 0 ? [] : [[name, withoutField(value, rest)]],
    ),
  );
}
