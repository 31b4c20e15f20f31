import { SOLID_GROUP } from '../../judge/accept.js';
import type { Finding } from '../../judge/check.js';
import { gravest, urgency } from './answer.js';
import { figureWords, listed } from './figure-line.js';
import { untoldFields } from './untold-fields.js';

/**
 * The answer in one sentence: it fits, it fits if …, or do not print it yet, because ….
 * @param findings what was found
 * @param promise what a part that passes does, such as `It fits`
 */
export function sentence(findings: readonly Finding[], promise = 'It fits'): string {
  const open = findings.filter((finding) => urgency(finding) === 6);
  if (open.some(({ group, id }) => group === SOLID_GROUP || id.startsWith('mate-')))
    return 'Do not print it: the solid is not what was worked out, which is our own fault; please report it.';
  if (open.length > 0) return `Do not print it yet, because ${failing(open)}.`;
  const accepted = findings.filter(({ accepted: reason }) => reason !== undefined);
  const eased = findings.filter(({ usual_verdict }) => usual_verdict === 'fail');
  const condition = conditionOf(findings);
  const stood = [
    ...(accepted.length > 0 ? [`what you accepted although it fails: ${idsOf(accepted)}`] : []),
    ...(eased.length > 0 ? [`limits of your own, without which it fails: ${idsOf(eased)}`] : []),
  ];
  if (stood.length > 0)
    return `${promise} only as far as you stand by ${stood.join(', and by ')}${condition.startsWith(' if') ? `, and${condition}` : ''}.`;
  return condition === '' ? `${promise}: every check passes.` : `${promise}${condition}.`;
}

function idsOf(findings: readonly Finding[]): string {
  return findings.map(({ id }) => id).join(', ');
}

function failing(open: readonly Finding[]): string {
  const first = figureWords(gravest(open)!);
  return open.length === 1 ? `one check fails: ${first}` : `${open.length} checks fail, above all: ${first}`;
}

function conditionOf(findings: readonly Finding[]): string {
  const grave = untoldFields(findings.filter(({ grave: hurts }) => hurts));
  if (grave.length > 0) return ` if ${listed(grave)} ${grave.length === 1 ? 'allows' : 'allow'} it, which nobody told`;
  const unsure = gravest(findings.filter(({ word }) => word === 'perhaps'));
  if (unsure) return ` if all turns out as is likely, since this is not sure: ${figureWords(unsure)}`;
  const missing = untoldFields(findings);
  if (missing.length > 0) return `, as far as it can be judged without ${missing.join(', ')}`;
  const weak = gravest(findings.filter(({ word }) => word === 'but'));
  return weak ? `, but may disappoint: ${figureWords(weak)}` : '';
}
