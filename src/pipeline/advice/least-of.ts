import type { Found } from './search.js';

/** The cleanest and smallest first, one for each set of fields; one that holds another, which costs no more, is none. */
export function leastOf(found: readonly Found[]): Found[] {
  const sorted = [...found].sort((a, b) => a.costs.length - b.costs.length || a.change - b.change);
  const kept: Found[] = [];
  for (const one of sorted) if (!kept.some((other) => holdsAnother(one, other))) kept.push(one);
  return kept;
}

/** Whether a cure changes the same fields as another, or its very changes and more. */
function holdsAnother(one: Found, other: Found): boolean {
  const fields = Object.keys(other.changes);
  const isWider = Object.keys(one.changes).length > fields.length;
  return fields.every((path) => (isWider ? one.changes[path] === other.changes[path] : path in one.changes));
}
