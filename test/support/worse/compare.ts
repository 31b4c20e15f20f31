import type { Finding, Word } from '../../../src/judge/check.js';
import { findingsOf } from '../untold/compare.js';
import { at, type Sheet, told } from '../untold/sheet.js';
import { whyBetter } from './exempt.js';
import { STEPS } from './steps.js';

/** A range that crosses a limit is as open as a caution or a question. */
const RANK: Readonly<Record<Word, number>> = { yes: 0, perhaps: 1, but: 1, 'not-told': 1, no: 2 };

/** Checks that read better where something is harder, in a line each; those with a reason left out. */
export function betterThough(sheet: Sheet): string[] {
  return Object.keys(STEPS).flatMap((path) => betterAt(sheet, path));
}

/** The same of one field, by the steps that are given. */
export function betterAt(sheet: Sheet, path: string, step = STEPS[path]!): string[] {
  const now = at(sheet, path);
  const mild = now === undefined ? [] : (findingsOf(sheet) ?? []);
  return step(now).flatMap((harder) => {
    const hard = findingsOf(told(sheet, path, harder)) ?? [];
    return mild
      .filter(({ id }) => whyBetter(path, id) === undefined)
      .flatMap((row) => better(row, hard, sheet).map((how) => `${path}: ${String(harder)}: ${row.id} ${how}`));
  });
}

function better(mild: Finding, findings: readonly Finding[], sheet: Sheet): string[] {
  const same = findings.filter(({ id }) => id === mild.id);
  if (same.length === 0) return mild.word === 'yes' || findings.length === 0 ? [] : ['says nothing'];
  const hard = same.reduce((a, b) => (RANK[b.word] > RANK[a.word] ? b : a));
  if (RANK[hard.word] < RANK[mild.word]) return [`reads ${hard.word} in place of ${mild.word}`];
  const [room, was] = [roomOf(hard), roomOf(mild)];
  if (room === undefined || was === undefined || isLaidOut(sheet)) return [];
  return room > was + 1e-6 * Math.max(1, Math.abs(was)) ? [`has ${room} of its limit left in place of ${was}`] : [];
}

/** What is left to the limit, as a share of it where it is not 0: of two cases the worse may have another limit. */
function roomOf({ margin, limit }: Finding): number | undefined {
  if (margin === null || limit === null) return undefined;
  const bound = Math.abs(limit.max ?? limit.min ?? 0);
  return bound === 0 ? margin : margin / bound;
}

/** Couplings and sleeves lay themselves out anew for what they are to bear: of them only words are compared. */
function isLaidOut({ part }: Sheet): boolean {
  return part === 'coupling' || part === 'sleeve' || part === 'axis';
}
