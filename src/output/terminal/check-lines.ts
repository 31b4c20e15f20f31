import type { Finding } from '../../fit/check.js';
import { boundsText, figure, valueText } from './figures.js';
import { columns, wrapped } from './layout.js';
import type { Paint } from './paint.js';

/** A check that wants attention: its figures, what it means, and what moves it. */
export function loudCheck(finding: Finding, { bold, bad, warn, dim }: Paint): string[] {
  const mark = finding.verdict === 'fail' ? bad(bold('FAIL')) : warn('look');
  const facts = [finding.title, valueText(finding), limitText(finding)].filter((part) => part !== '').join(' · ');
  return [
    `  ${mark}  ${bold(finding.id)}`,
    ...wrapped(facts, 8),
    ...wrapped(finding.message, 8),
    ...wrapped(`moved by: ${finding.moves}`, 8).map(dim),
    ...(finding.accepted === undefined ? [] : wrapped(`accepted: ${finding.accepted}`, 8)),
  ];
}

function limitText({ limit, margin, replaced_limit }: Finding): string {
  const bounds = limit ? boundsText(limit) : '';
  if (bounds === '') return '';
  const short = margin !== null && margin < 0 ? `, off by ${figure(-margin)}` : '';
  const replaced = replaced_limit ? `, the sheet's own instead of ${boundsText(replaced_limit)}` : '';
  return `limit ${bounds}${short}${replaced}`;
}

/** Checks that pass, one row each. */
export function quietChecks(findings: readonly Finding[]): string[] {
  const rows = findings.map((finding) => [
    `  ${finding.id}`,
    valueText(finding),
    finding.limit ? boundsText(finding.limit) : '',
    finding.margin === null ? '' : `room ${figure(finding.margin)}`,
    finding.replaced_limit ? 'own limit' : '',
  ]);
  return columns(rows);
}
