import type { Finding } from '../../judge/check.js';
import { boundsText } from '../figures.js';
import { type FirstThing, urgency } from './answer.js';
import { listed, lowered } from './figure-line.js';
import { untoldFields, waitsFor } from './untold-fields.js';

/**
 * What to see to, the most urgent first: accepted fails, open ones, what fails but for a limit of the sheet's own, what can
 * hurt and was not told, then the rest. What was not judged for want of the same field is one thing.
 */
export function firstThings(findings: readonly Finding[]): FirstThing[] {
  const open = findings.filter(
    ({ word, usual_verdict }) => usual_verdict !== undefined || (word !== 'yes' && word !== 'not-told'),
  );
  const single = open.map((finding) => ({ rank: rankOf(finding), thing: thingOf(finding) }));
  const things = [...single, ...untold(findings)];
  return things.sort((a, b) => b.rank - a.rank).map(({ thing }) => thing);
}

/** Accepted fails stand before open ones: nobody may overlook what was taken all the same. */
function rankOf(finding: Finding): number {
  if (finding.accepted !== undefined) return 7;
  return finding.usual_verdict === 'fail' ? Math.max(5, urgency(finding)) : urgency(finding);
}

function thingOf(finding: Finding): FirstThing {
  const { id, word, title, message, accepted } = finding;
  const text = `${title}: ${message}${easedWords(finding)}`;
  return { word, checks: [id], text, ...(accepted === undefined ? {} : { accepted }) };
}

function easedWords({ usual_verdict, replaced_limit, unit }: Finding): string {
  if (usual_verdict === undefined || replaced_limit === undefined) return '';
  return `; by the limit of the sheet alone: usually ${boundsText(replaced_limit)} ${unit}`.trimEnd();
}

/** One thing for each missing field, with all that hangs on it. */
function untold(findings: readonly Finding[]): { readonly rank: number; readonly thing: FirstThing }[] {
  const groups = untoldFields(findings).map((field) => ({
    field,
    own: findings.filter((finding) => waitsFor(finding, field)),
  }));
  return groups
    .sort((a, b) => b.own.length - a.own.length)
    .map(({ field, own }) => {
      const grave = own.filter((finding) => finding.grave);
      const ordered = [...grave, ...own.filter((finding) => !finding.grave)];
      const names = ordered.map(({ title }) => lowered(title));
      const text = `${field} is not told, and without it nobody can judge: ${listed(names)}`;
      const checks = ordered.map(({ id }) => id);
      return { rank: Math.max(...own.map(urgency)), thing: { word: 'not-told', checks, text, field } };
    });
}
