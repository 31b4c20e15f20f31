import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { type Drawer, openDrawer } from '../engine/drawer.js';
import type { Card } from '../state/cards.js';
import type { ExactPackage } from '../state/exact-package.js';

/** What the browser keeps for the page, and how it is put there. */
export interface KeptThings {
  /** whether there is a drawer at all */
  readonly keeps: boolean;
  readonly put: (cards: readonly Card[]) => Promise<void>;
  readonly remove: (card: Card) => Promise<void>;
  readonly exact: ExactPackage | undefined;
  readonly handOver: (handed: ExactPackage | undefined) => void;
}

/**
 * Opens the drawer once.
 * @param tell gets the cards that lie in it, at first and whenever they change; the same function at every call
 */
export function useDrawer(tell: (cards: readonly Card[]) => void): KeptThings {
  const drawer = useRef<Drawer | undefined>(undefined);
  const [keeps, setKeeps] = useState(false);
  const [exact, setExact] = useState<ExactPackage>();
  const reread = useCallback(async () => {
    const cards = await drawer.current?.all();
    if (cards) tell(cards);
  }, [tell]);
  useEffect(() => {
    void openDrawer().then((opened) => {
      drawer.current = opened;
      setKeeps(opened !== undefined);
      void opened?.exact().then(setExact);
      return reread();
    });
  }, [reread]);
  return {
    keeps,
    put: async (cards) => {
      await drawer.current?.put(cards);
      await reread();
    },
    remove: async (card) => {
      await drawer.current?.remove(card);
      await reread();
    },
    exact,
    handOver: (handed) => {
      setExact(handed);
      // where the browser has no room for it, it is there while the page is
      drawer.current?.keepExact(handed).catch(() => undefined);
    },
  };
}
