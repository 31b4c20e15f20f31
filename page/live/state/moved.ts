import type { Finding } from '../../../src/judge/check.js';
import type { Answer } from '../../../src/output/answers/answer.js';

/** Whether a field of the sheet moves what was found: by its own name, or by that of its section. */
export function isMovedBy({ moves }: Pick<Finding, 'moves'>, field: string): boolean {
  return moves.split(', ').some((name) => field === name || field.startsWith(`${name}.`));
}

/**
 * The questions that a field of the sheet moves, by their titles.
 *
 * @param field its path, such as `body.diameter`
 */
export function questionsMovedBy(
  field: string,
  { questions, checks }: { readonly questions: readonly Answer[]; readonly checks: readonly Finding[] },
): string[] {
  const moved = new Set(checks.filter((one) => isMovedBy(one, field)).map(({ question }) => question));
  return questions.filter(({ question }) => moved.has(question)).map(({ title }) => title);
}

/**
 * What is to be said aloud of a new answer: the questions whose word changed.
 *
 * @param before what was said last, by question; empty says all of it
 */
export function changedWords(
  before: ReadonlyMap<string, string>,
  after: readonly Answer[],
  wordOf: (answer: Answer) => string,
): string {
  return after
    .filter((answer) => before.get(answer.question) !== wordOf(answer))
    .map((answer) => `${answer.title} ${wordOf(answer)}`)
    .join('. ');
}
