import { openDB } from 'idb';
import type { Card } from '../state/cards.js';
import type { ExactPackage } from '../state/exact-package.js';

/** Cards that the browser keeps, and the exact kernel that was handed over. */
export interface Drawer {
  all(): Promise<readonly Card[]>;
  put(cards: readonly Card[]): Promise<void>;
  remove(card: Card): Promise<void>;
  exact(): Promise<ExactPackage | undefined>;
  keepExact(exact: ExactPackage | undefined): Promise<void>;
}

const STORE = 'cards';
const KERNELS = 'kernels';
const EXACT = 'exact';

/** The drawer of this browser; undefined where it keeps nothing. */
export async function openDrawer(): Promise<Drawer | undefined> {
  try {
    const base = await openDB('leadwright', 2, {
      upgrade: (fresh, old) => {
        if (old < 1) fresh.createObjectStore(STORE, { keyPath: ['kind', 'name'] });
        fresh.createObjectStore(KERNELS);
      },
      // a newer page in another tab wants it
      blocking: (_old, _new, event) => (event.target as IDBDatabase).close(),
    });
    return {
      all: () => base.getAll(STORE),
      put: async (cards) => {
        const change = base.transaction(STORE, 'readwrite');
        await Promise.all([...cards.map((card) => change.store.put(card)), change.done]);
      },
      remove: ({ kind, name }) => base.delete(STORE, [kind, name]),
      exact: () => base.get(KERNELS, EXACT),
      keepExact: async (exact) => {
        await (exact ? base.put(KERNELS, exact, EXACT) : base.delete(KERNELS, EXACT));
      },
    };
  } catch {
    return undefined;
  }
}
