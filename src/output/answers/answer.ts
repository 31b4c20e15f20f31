import type { Finding, Word } from '../../judge/check.js';

/** What a part kind asked, and what was found. */
export interface Answer {
  readonly question: string;
  /** such as `Goes on?` */
  readonly title: string;
  /** of the check that leads it, the worst */
  readonly word: Word;
  /** the check that leads it, by id */
  readonly check: string;
  /** its figure against its limit, in a line of plain words */
  readonly text: string;
  /** where it fails and was accepted all the same */
  readonly accepted?: true;
}

/** One thing to see to: a finding, or all that was not judged for want of one field. */
export interface FirstThing {
  readonly word: Word;
  readonly checks: readonly string[];
  readonly text: string;
  /** the field of the sheet that is missing */
  readonly field?: string;
  /** the reason by which a failed check was accepted */
  readonly accepted?: string;
}

const TEXTS: Readonly<Record<Word, string>> = {
  yes: 'yes',
  perhaps: 'perhaps',
  but: 'yes, but',
  no: 'no',
  'not-told': 'not told',
};

/** A word as people read it; an accepted fail keeps its `no`. */
export function wordText({ word, accepted }: Pick<Answer | FirstThing, 'word' | 'accepted'>): string {
  return accepted === undefined ? TEXTS[word] : `${TEXTS[word]}, accepted`;
}

/** A finding or an answer, as far as it tells how much it wants attention. */
type Urgent = Pick<Finding, 'word' | 'grave'> & { readonly accepted?: string | true };

/** How much a finding wants attention: open fails, accepted ones, what can hurt and was not told, then the rest; of cautions those that can hurt. */
export function urgency({ word, accepted, grave }: Urgent): number {
  if (word === 'no') return accepted === undefined ? 6 : 5;
  if (word === 'not-told') return grave ? 4 : 2;
  return { perhaps: 3, but: grave ? 1.5 : 1, yes: 0 }[word];
}

/** Of those that can hurt the fail furthest beyond its limit; where none can, the first. */
export function gravest(findings: readonly Finding[]): Finding | undefined {
  const grave = findings.filter(({ grave: hurts }) => hurts);
  return grave.length === 0
    ? findings[0]
    : grave.reduce((worst, next) => (timesBeyond(next) > timesBeyond(worst) ? next : worst));
}

/** How many times its limit a fail is beyond it; without bound where nothing is left, or nothing was measured, and 1 of what does not fail. */
function timesBeyond({ word, value, limit, fail_limit }: Finding): number {
  if (word !== 'no') return 1;
  const bounds = fail_limit ?? limit;
  if (value === null || !bounds) return Number.POSITIVE_INFINITY;
  const { min, max } = bounds;
  const over = max === undefined || value <= max ? 1 : max > 0 ? value / max : Number.POSITIVE_INFINITY;
  const under = min === undefined || value >= min ? 1 : value > 0 ? min / value : Number.POSITIVE_INFINITY;
  return Math.max(over, under);
}
