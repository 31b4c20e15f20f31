import type { Finding } from '../../src/judge/check.js';
import { type Design, design } from '../../src/pipeline/design.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';
import { judgedBy, resolveLimits } from '../../src/pipeline/resolve-limits.js';

/**
 * Mutation testing must see which test runs what, so there nothing that a mutant may reach is kept from one test for the
 * next; the checks of a kind work on designs that are ready.
 */
export const KEEP = process.env.MUTANTS === undefined || /(?:parts\/[a-z]+|axis)\/checks/.test(process.env.MUTANTS);

const designs = new Map<string, Design>();

/** What one check finds of a sheet, without running the others; the same sheet is worked out once. */
export function findingOf(sheet: object, id: string): Finding | undefined {
  const key = JSON.stringify(sheet);
  const made = designs.get(key) ?? design(sheet);
  if (KEEP) designs.set(key, made);
  const kind = kindOfDesign(KINDS, made);
  // a copy, since checks keep with a design what they work out of it
  const one = { ...made };
  return kind.runChecks(one, resolveLimits(made.limits, judgedBy(kind, made)), id).at(-1);
}
