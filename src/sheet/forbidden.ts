import { isAlias, isMap, isNode, isScalar, isSeq } from 'yaml';

/** Something that a sheet may not hold. */
export interface Forbidden {
  readonly path: readonly (string | number)[];
  /** counted in characters */
  readonly offset: number;
  readonly allowed: string;
}

/** A name that every object of the language has, and that readers of plain values drop without a word. */
const PROTOTYPE = '__proto__';

/**
 * Everything in a text that would be read as something else than it says, or without end: tags, which turn a map into another kind of
 * value, and a name that no field can have.
 */
export function forbiddenIn(root: unknown): Forbidden[] {
  const found: Forbidden[] = [];
  const named = { count: 0 };
  collect(root, [], found, named);
  if (named.count > MOST_NAMED)
    found.unshift({
      path: [],
      offset: 0,
      allowed: `${named.count} anchors and aliases; must be at most ${MOST_NAMED}`,
    });
  return found;
}

/** Each alias is looked for among all anchors. */
const MOST_NAMED = 2000;

function collect(
  node: unknown,
  path: readonly (string | number)[],
  found: Forbidden[],
  named: { count: number },
): void {
  if (!isNode(node)) return;
  if (isAlias(node) || node.anchor !== undefined) named.count++;
  if (isAlias(node)) return;
  const refuse = (allowed: string) => found.push({ path, offset: node.range?.[0] ?? 0, allowed });
  if (node.tag !== undefined) refuse(`the tag ${node.tag.slice(0, 60)} is not read here; leave it out`);
  if (isSeq(node)) for (const [i, item] of node.items.entries()) collect(item, [...path, i], found, named);
  if (!isMap(node)) return;
  for (const { key, value } of node.items) {
    const name = String(isScalar(key) ? key.value : key);
    const here = [...path, name];
    if (isNode(key) && key.tag !== undefined) collect(key, here, found, named);
    if (name === PROTOTYPE)
      found.push({ path: here, offset: isNode(key) ? (key.range?.[0] ?? 0) : 0, allowed: 'no field has this name' });
    collect(value, here, found, named);
  }
}
