import type { Readings } from '../../../src/identify/readings.js';
import type { Repair } from '../../../src/identify/slips.js';

/** A reading of a screw that a person may take, with how to take it. */
export interface Reading {
  readonly id: 'major' | 'crests' | 'starts' | 'travel' | 'minor' | 'crest' | 'crest_flat' | 'wires' | 'hand';
  readonly label: string;
  readonly unit: string;
  readonly how: string;
  /** what may be chosen, where it is no figure */
  readonly choices?: readonly string[];
}

/** Crests are read over as many pitches, and a nut's travel over as many turns. */
export const OVER = 10;

export const READINGS: readonly Reading[] = [
  {
    id: 'major',
    label: 'over the crests',
    unit: 'mm',
    how: 'Lay the flat of both jaws over the crests. Read three places, apart by a blank: 7.92 7.94 7.91.',
  },
  {
    id: 'crests',
    label: `${OVER} pitches`,
    unit: 'mm',
    how: 'From the edge of one crest to the same edge of the tenth further on. Count gaps, not crests: the first is nought.',
  },
  { id: 'starts', label: 'starts', unit: '', how: 'Look at the end of the screw: how many grooves begin there?' },
  {
    id: 'travel',
    label: `a nut's travel in ${OVER} turns`,
    unit: 'mm',
    how: 'Turn the old nut ten times round and measure how far it went.',
  },
  { id: 'minor', label: 'over the root', unit: 'mm', how: 'Lay the knife edges of the jaws into the groove.' },
  {
    id: 'crest',
    label: 'crests',
    unit: '',
    how: 'Flat like a step, sharp like a knife, or grooves as round as balls?',
    choices: ['flat', 'sharp', 'round'],
  },
  {
    id: 'crest_flat',
    label: 'width of a crest',
    unit: 'mm',
    how: 'Along the screw, from edge to edge of one crest.',
  },
  {
    id: 'wires',
    label: 'over three wires',
    unit: 'mm',
    how: 'Three wires or drill shanks of one size in the grooves: 8.45 with 1 is 8.45 mm over wires of 1 mm.',
  },
  {
    id: 'hand',
    label: 'hand',
    unit: '',
    how: 'Hold the screw upright: grooves that rise to the right are right-handed.',
    choices: ['right', 'left'],
  },
];

/** Typed for a reading that cannot be taken. */
export const CANNOT = 'cannot';

/** What a person typed, by reading. */
export type Typed = Readonly<Partial<Record<Reading['id'], string>>>;

/** A number as people type it, decimal point or comma; undefined where it is none yet. */
export function typedNumber(text: string): number | undefined {
  const plain = text
    .trim()
    .replace(',', '.')
    .replace(/\s*mm$/, '');
  const inches = /^([\d.]+)\s*(?:in|")$/.exec(plain);
  const value = inches ? Number(inches[1]) * 25.4 : plain === '' ? Number.NaN : Number(plain);
  return Number.isFinite(value) && value > 0 ? value : undefined;
}

/** Several readings of one size, apart by blanks or semicolons. */
export function typedNumbers(text: string): number[] {
  return wordsOf(text)
    .map((word) => typedNumber(word))
    .filter((value) => value !== undefined);
}

function wordsOf(text: string): string[] {
  return text.split(/[;\s]+(?!mm|in)/).filter((word) => word !== '');
}

/** What must be typed in place of a reading that cannot be used; undefined where it can, and where nothing is typed. */
export function faultOf(id: Reading['id'], text = ''): string | undefined {
  if (text.trim() === '' || text === CANNOT) return undefined;
  switch (id) {
    case 'major':
      return wordsOf(text).every((word) => typedNumber(word) !== undefined)
        ? undefined
        : 'must be lengths above 0, apart by a blank: 7.92 7.94 7.91';
    case 'crests':
    case 'travel':
      return spanned(text)
        ? undefined
        : `must be a length above 0, or one over another number than ${OVER}: 18.01 over 9`;
    case 'wires':
      return overWires(text) ? undefined : 'must be two lengths above 0: 8.45 with 1';
    case 'starts':
      return Number.isInteger(typedNumber(text)) ? undefined : 'must be a whole number from 1';
    case 'minor':
    case 'crest_flat':
      return typedNumber(text) === undefined ? 'must be a length above 0' : undefined;
    case 'crest':
    case 'hand':
      return undefined;
  }
}

/** The readings that can be used so far; undefined where nothing was measured. */
export function readingsOf(typed: Typed): Readings | undefined {
  const major = typedNumbers(typed.major ?? '');
  const [crests, travel] = [spanned(typed.crests), spanned(typed.travel)];
  const [minor, starts, crestFlat] = [typed.minor, typed.starts, typed.crest_flat].map((text) =>
    typedNumber(text ?? ''),
  );
  const wires = overWires(typed.wires);
  const cannot = READINGS.flatMap(({ id }) => (typed[id] === CANNOT && id !== 'hand' ? [id] : []));
  if (major.length === 0 && crests === undefined && travel === undefined && minor === undefined) return undefined;
  const crest = READINGS.find(({ id }) => id === 'crest')!.choices!.find((one) => one === typed.crest);
  return {
    ...(major.length > 0 ? { major } : {}),
    ...(crests === undefined ? {} : { crests }),
    ...(travel === undefined ? {} : { travel: { turns: travel.count, length: travel.length } }),
    ...(minor === undefined ? {} : { minor }),
    ...(crestFlat === undefined ? {} : { crestFlat }),
    ...(wires === undefined ? {} : { wires }),
    ...(starts === undefined || !Number.isInteger(starts) ? {} : { starts }),
    ...(crest === undefined ? {} : { crest: crest as 'flat' | 'sharp' | 'round' }),
    ...(cannot.length === 0 ? {} : { cannot }),
    ...(typed.hand === 'left' ? { hand: 'left' } : {}),
  };
}

/** `8.45 with 1`: over three wires of that diameter. */
function overWires(text = ''): Readings['wires'] {
  const [, over = '', wire = ''] = /^(.*?)\s+with\s+(.*)$/.exec(text.trim()) ?? [];
  const [size, thick] = [typedNumber(over), typedNumber(wire)];
  return size === undefined || thick === undefined ? undefined : { wire: thick, over: size };
}

/** A length over so many: `20.05`, or `18.01 over 9` where it was another number. */
function spanned(text = ''): { readonly count: number; readonly length: number } | undefined {
  const [, length, count] = /^(.*?)\s+over\s+(\d{1,3})$/.exec(text.trim()) ?? [undefined, text, String(OVER)];
  const value = typedNumber(length!);
  return value === undefined || Number(count) < 1 ? undefined : { count: Number(count), length: value };
}

/** What was typed, with a repair in place of what it mends. */
export function repaired(typed: Typed, { major, crests, travel, starts }: Repair['change']): Typed {
  const over = (length: number, count: number) => (count === OVER ? `${length}` : `${length} over ${count}`);
  return {
    ...typed,
    ...(major && { major: major.join(' ') }),
    ...(crests && { crests: over(crests.length, crests.count) }),
    ...(travel && { travel: over(travel.length, travel.turns) }),
    ...(starts === undefined ? {} : { starts: String(starts) }),
  };
}
