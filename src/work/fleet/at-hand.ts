import type { RememberedPart } from '../../fleet/made-part.js';
import type { DistinctPart } from '../../fleet/plan.js';
import { ahead } from './ahead.js';
import { type EntryStore, readEntry } from './entry-store.js';

/** Entries that are read and checked while an earlier one is dealt with. */
const READ_AHEAD = 4;

/** A part that a store holds whole. */
export interface Kept {
  readonly store: EntryStore;
  readonly made: RememberedPart;
}

/** Each part, in order, with what the first of the stores that holds it whole has of it. */
export function atHand(
  parts: readonly DistinctPart[],
  stores: readonly EntryStore[],
): AsyncGenerator<readonly [DistinctPart, Kept | undefined]> {
  return ahead(parts, READ_AHEAD, ({ address }) => keptIn(stores, address));
}

async function keptIn(stores: readonly EntryStore[], address: string): Promise<Kept | undefined> {
  for (const store of stores) {
    const made = await readEntry(store, address);
    if (made) return { store, made };
  }
  return undefined;
}
