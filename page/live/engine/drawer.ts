import { openDB } from 'idb';
import type { Card } from '../state/cards.js';

/** Cards that the browser keeps. */
export interface Drawer {
  all(): Promise<readonly Card[]>;
  put(cards: readonly Card[]): Promise<void>;
  remove(card: Card): Promise<void>;
}

const STORE = 'cards';

/** The drawer of this browser; undefined where it keeps nothing. */
export async function openDrawer(): Promise<Drawer | undefined> {
  try {
    const base = await openDB('leadwright', 1, {
      upgrade: (fresh) => void fresh.createObjectStore(STORE, { keyPath: ['kind', 'name'] }),
    });
    return {
      all: () => base.getAll(STORE),
      put: async (cards) => {
        const change = base.transaction(STORE, 'readwrite');
        await Promise.all([...cards.map((card) => change.store.put(card)), change.done]);
      },
      remove: ({ kind, name }) => base.delete(STORE, [kind, name]),
    };
  } catch {
    return undefined;
  }
}
