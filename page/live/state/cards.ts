import { isFields } from '../../../src/sheet/fields-map.js';

/** A sheet or a profile that is kept. */
export interface Card {
  readonly kind: 'sheet' | 'profile';
  readonly name: string;
  readonly text: string;
}

/** More than this is no drawer of ours. */
const MOST = 2000;
const LONGEST = 262_144;

/** All cards as one file. */
export function cardsText(cards: readonly Card[]): string {
  const sorted = [...cards].sort((a, b) => (order(a) < order(b) ? -1 : 1));
  return `${JSON.stringify({ leadwright: 'drawer', cards: sorted }, null, 1)}\n`;
}

/**
 * The cards of a file.
 * @returns undefined where the text is no drawer; cards that are none are left out
 */
export function cardsOf(text: string): Card[] | undefined {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (!isFields(value) || value.leadwright !== 'drawer' || !Array.isArray(value.cards)) return undefined;
  return value.cards.slice(0, MOST).flatMap((one: unknown): Card[] => {
    if (!isFields(one)) return [];
    const { kind, name, text: own } = one;
    if ((kind !== 'sheet' && kind !== 'profile') || !isName(name) || typeof own !== 'string') return [];
    return own.length > LONGEST ? [] : [{ kind, name, text: own }];
  });
}

/** Profiles by their names. */
export function profilesIn(cards: readonly Card[]): Record<string, string> {
  return Object.fromEntries(cards.filter(({ kind }) => kind === 'profile').map(({ name, text }) => [name, text]));
}

function order({ kind, name }: Card): string {
  return `${kind} ${name}`;
}

function isName(name: unknown): name is string {
  return typeof name === 'string' && name !== '' && name !== '__proto__' && name.length <= 100;
}
