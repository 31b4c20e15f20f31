import type { KnownKind } from './known-kind.js';

/** The kind of that name, if there is one. */
export function findKind(kinds: readonly KnownKind[], name: unknown): KnownKind | undefined {
  return kinds.find(({ kind }) => kind === name);
}

/** The kind that made a design. */
export function kindOfDesign(kinds: readonly KnownKind[], design: { readonly part: string }): KnownKind {
  const kind = findKind(kinds, design.part);
  if (!kind) throw new TypeError(`no part kind is called ${design.part}`);
  return kind;
}
