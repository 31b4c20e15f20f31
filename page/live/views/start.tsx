import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { type Card, cardsOf } from '../state/cards.js';
import type { REASONS } from '../state/state.js';
import { useTop } from './use-top.js';

/** Sheets are small; what is larger is none. */
const LARGEST = 262_144;

interface Props {
  readonly reasons: typeof REASONS;
  readonly begin: (kind: string, screwFirst: boolean) => void;
  /** puts screws side by side */
  readonly compare: () => void;
  readonly open: (sheet: string) => void;
  readonly drawer: ComponentChildren;
  /** the cards of a drawer that was taken along */
  readonly take: (cards: readonly Card[]) => void;
}

/** What happened, in sentences; or a sheet that is there already. */
export function Start({ reasons, begin, compare, open, drawer, take }: Props) {
  useTop();
  const [wrong, setWrong] = useState('');
  const read = async (file: File | undefined) => {
    if (!file) return;
    const isDrawer = file.name.endsWith('.json');
    const most = isDrawer ? 16 * LARGEST : LARGEST;
    if (file.size > most) return setWrong(`${file.name}: ${file.size} bytes; at most ${most} are read`);
    const text = await file.text();
    if (!isDrawer) return open(text);
    const cards = cardsOf(text);
    if (cards) take(cards);
    setWrong(cards ? '' : `${file.name}: holds no drawer that was taken along from this page`);
  };
  return (
    <section class="card start" aria-label="What happened?">
      <h1>What happened?</h1>
      <ul>
        {reasons.map(({ kind, words, screwFirst }) => (
          <li key={kind}>
            <button type="button" onClick={() => begin(kind, screwFirst)}>
              {words}
            </button>
          </li>
        ))}
        <li>
          <button type="button" onClick={compare}>
            I change to another screw: which one?
          </button>
        </li>
      </ul>
      <p>
        <label class="quiet">
          or open a sheet, or a drawer:{' '}
          <input type="file" accept=".yaml,.yml,.json" onChange={(e) => read(e.currentTarget.files?.[0])} />
        </label>
      </p>
      {drawer}
      {wrong !== '' && <p role="alert">{wrong}</p>}
      <p class="quiet">
        A printed nut or coupling can drop an axis or throw a part: block the axis, isolate the power, guard what turns.
        Plastics creep. Not for lifting people or loads over people. Local codes and licensed practice come first.
      </p>
    </section>
  );
}
