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

/** The first that can hurt; where none can, the first. */
export function gravest(findings: readonly Finding[]): Finding | undefined {
  return findings.find(({ grave }) => grave) ?? findings[0];
}
