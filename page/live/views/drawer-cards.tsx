import { type Card, cardsText } from '../state/cards.js';
import { type Keep, Take } from './ledger.js';

interface Props {
  readonly keep: Keep;
  readonly open: (sheet: string) => void;
  readonly remove: (card: Card) => void;
}

/** What is kept in this browser: sheets to go on with, profiles that sheets may name. */
export function DrawerCards({ keep: { cards, put }, open, remove }: Props) {
  if (!put || cards.length === 0) return null;
  return (
    <section aria-label="The drawer">
      <h2>In the drawer</h2>
      <ul class="drawer">
        {cards.map((card) => (
          <li key={`${card.kind} ${card.name}`}>
            {card.kind === 'sheet' ? (
              <button type="button" onClick={() => open(card.text)}>
                {card.name}
              </button>
            ) : (
              <Take file={`${card.name}.yaml`} bytes={new TextEncoder().encode(card.text)} />
            )}{' '}
            <span class="quiet">{card.kind === 'sheet' ? 'a sheet' : 'a profile: name it in a sheet'}</span>{' '}
            <button
              type="button"
              class="quiet"
              aria-label={`take ${card.name} out of the drawer`}
              onClick={() => remove(card)}
            >
              take out
            </button>
          </li>
        ))}
      </ul>
      <p class="quiet">
        The browser may forget it: take it along as one file.{' '}
        <Take file="leadwright-drawer.json" bytes={new TextEncoder().encode(cardsText(cards))} />
      </p>
    </section>
  );
}
