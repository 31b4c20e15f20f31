import { isMap, isNode, isScalar, isSeq } from 'yaml';

/** A key that stands twice in one map. */
export interface DuplicateKey {
  readonly path: readonly (string | number)[];
  /** where the later one starts, counted in characters */
  readonly offset: number;
}

/** Every key that repeats one before it in its map, in order. */
export function duplicateKeys(root: unknown): DuplicateKey[] {
  const found: DuplicateKey[] = [];
  collect(root, [], found);
  return found;
}

function collect(node: unknown, path: readonly (string | number)[], found: DuplicateKey[]): void {
  if (isSeq(node)) for (const [i, item] of node.items.entries()) collect(item, [...path, i], found);
  if (!isMap(node)) return;
  const seen = new Set<string>();
  for (const { key, value } of node.items) {
    const name = String(isScalar(key) ? key.value : key);
    if (seen.has(name)) found.push({ path: [...path, name], offset: isNode(key) ? (key.range?.[0] ?? 0) : 0 });
    seen.add(name);
    collect(value, [...path, name], found);
  }
}
