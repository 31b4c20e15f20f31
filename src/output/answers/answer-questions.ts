import type { Finding } from '../../judge/check.js';
import type { Question } from '../../judge/question.js';
import { type Answer, urgency } from './answer.js';
import { figureLine } from './figure-line.js';

/** A limit that is known to be kept or missed counts as unsure by this share of it, so that it can be compared. */
const NOMINAL_DOUBT = 0.1;

/**
 * Answers what a kind asks: each question by its worst finding, of several alike by the one nearest to its limit.
 *
 * @param questions what the kind asks, in order
 * @param findings what was found
 * @returns a row a question that has findings; one that is asked only where something was told of it is left out else
 */
export function answerQuestions(questions: readonly Question[], findings: readonly Finding[]): Answer[] {
  return questions.flatMap(({ id, title, onlyWhereTold }) => {
    const own = findings.filter(({ question }) => question === id);
    const [first, ...rest] = own;
    if (!first || (onlyWhereTold && own.every(({ word, grave }) => word === 'not-told' && !grave))) return [];
    const lead = rest.reduce((a, b) => (leads(b, a) ? b : a), first);
    return [
      {
        question: id,
        title,
        word: lead.word,
        check: lead.id,
        text: figureLine(lead),
        ...(lead.accepted === undefined ? {} : { accepted: true as const }),
      },
    ];
  });
}

/** Whether one finding leads before another: the worse one, trifles last, then the one with less room. */
function leads(one: Finding, other: Finding): boolean {
  const keys = (finding: Finding) => [-urgency(finding), finding.trifle ? 1 : 0, roomInDoubts(finding)];
  const theirs = keys(other);
  const apart = keys(one)
    .map((key, i) => (key === theirs[i] ? 0 : key < theirs[i]! ? -1 : 1))
    .find((order) => order !== 0);
  return apart === -1;
}

/** Distance to the limit in units of the value's own uncertainty; negative outside, infinite where nothing is measured. */
function roomInDoubts({ margin, limit, value, uncertainty }: Finding): number {
  if (margin === null || limit === null || value === null) return Number.POSITIVE_INFINITY;
  const { min, max } = limit;
  const bound = min !== undefined && (max === undefined || value - min < max - value) ? min : (max ?? 0);
  const doubt = uncertainty > 0 ? uncertainty : NOMINAL_DOUBT * Math.abs(bound);
  if (doubt > 0) return margin / doubt;
  return margin < 0 ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
}
