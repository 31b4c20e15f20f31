import { describe, expect, it } from 'vitest';
import { type Card, cardsOf, cardsText, profilesIn } from '../../../page/live/state/cards.js';

const CARDS: readonly Card[] = [
  { kind: 'profile', name: 'mill', text: 'revision: 1\n' },
  { kind: 'sheet', name: 'a', text: 'part: nut\n' },
];

describe('the drawer as a file', () => {
  it('comes back as it was, the same for any order', () => {
    expect(cardsOf(cardsText([...CARDS].reverse()))).toEqual(CARDS);
    expect(cardsText([...CARDS].reverse())).toBe(cardsText(CARDS));
  });

  it.each([
    ['no JSON', '{'],
    ['no drawer', '{"cards": []}'],
    ['a list', '[]'],
    ['null', 'null'],
  ])('is none: %s', (_, text) => {
    expect(cardsOf(text)).toBeUndefined();
  });

  it('leaves out what is no card', () => {
    const odd = [
      null,
      1,
      { kind: 'engine', name: 'x', text: '' },
      { kind: 'profile', name: '__proto__', text: 'a: 1' },
      { kind: 'sheet', name: '', text: '' },
      { kind: 'sheet', name: 'big', text: 'x'.repeat(300_000) },
      { kind: 'sheet', name: 'b', text: 7 },
    ];
    expect(cardsOf(JSON.stringify({ leadwright: 'drawer', cards: [...odd, CARDS[1]] }))).toEqual([CARDS[1]]);
  });

  it('gives profiles by name', () => {
    expect(profilesIn(CARDS)).toEqual({ mill: 'revision: 1\n' });
  });
});
