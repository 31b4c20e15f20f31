import type { Finding } from '../../judge/check.js';
import { worked } from '../../units/format.js';
import { boundsText, figuresOf } from '../figures.js';
import { limitBeside, valueBeside } from '../inches.js';
import type { Report } from '../report.js';
import { xmlText } from '../xml-text.js';
import { badge } from './html.js';

const WORST_FIRST = { fail: 0, caution: 1, pass: 2 };
const COLUMNS = [
  ['rank', 'Verdict'],
  ['id', 'Check'],
  ['value', 'Value'],
  ['limit', 'Limit'],
  ['margin', 'Room'],
] as const;

/** All checks as a table that the script makes sortable and foldable; without it, and on paper, all is open. */
export function checksSection({ checks, units }: Pick<Report, 'checks' | 'units'>): string {
  const ordered = [...checks].sort((a, b) => WORST_FIRST[a.verdict] - WORST_FIRST[b.verdict]);
  const head = COLUMNS.map(([key, name], i) => {
    return `<th scope="col"${i > 1 ? ' class="n"' : ''}><button type="button" data-key="${key}">${name}</button></th>`;
  });
  return [
    '<div id="checks-tools" hidden>',
    '<span class="tool"><label for="checks-verdict">Show</label><select id="checks-verdict"><option value="all">all verdicts</option><option value="fail">failed</option><option value="caution">cautions</option><option value="pass">passed</option></select></span>',
    '<span class="tool"><label for="checks-words">with the words</label><input id="checks-words" type="search" autocomplete="off"></span>',
    '<span id="checks-count" role="status"></span>',
    '</div>',
    '<div class="scroll" tabindex="0" role="region" aria-label="Checks"><table id="checks-table"><caption>Every check with its figure; open a row for what it means.</caption>',
    `<thead><tr>${head.join('')}</tr></thead>`,
    ...ordered.map((finding, order) => checkRows(finding, order, units)),
    '</table></div>',
  ].join('\n');
}

function checkRows(finding: Finding, order: number, units: 'inch' | undefined): string {
  const { id, verdict, value, margin, limit, unit } = finding;
  const more = `check-${order + 1}`;
  const data = [
    ['order', order],
    ['rank', WORST_FIRST[verdict]],
    ['verdict', verdict],
    ['id', id],
    ['value', value ?? ''],
    ['limit', limit?.max ?? limit?.min ?? ''],
    ['margin', margin ?? ''],
  ].map(([name, text]) => ` data-${name}="${xmlText(String(text))}"`);
  return [
    `<tbody${data.join('')}><tr><td>${badge(verdict)}</td>`,
    `<th scope="row"><button type="button" class="fold" aria-expanded="true" aria-controls="${more}">${xmlText(id)}</button></th>`,
    `<td class="n">${xmlText(valueBeside(finding, units))}</td><td class="n">${xmlText(limitBeside(finding, units))}</td>`,
    `<td class="n">${margin === null ? '' : worked(margin, unit)}</td></tr>`,
    `<tr id="${more}"><td colspan="5"><dl>${details(finding)}</dl></td></tr></tbody>`,
  ].join('');
}

function details(finding: Finding): string {
  const { title, message, least, most, unit, limit, fail_limit, replaced_limit, source, moves, accepted } = finding;
  const [bounds, failing] = [limit, fail_limit].map((one) => boundsText(figuresOf({ ...finding, limit: one }).limit));
  const rows: [string, string | undefined][] = [
    ['Asks for', title],
    ['Found', message],
    [
      'Least to most',
      least === undefined || most === undefined || least === most
        ? undefined
        : `${worked(least, unit)} to ${worked(most, unit)} ${unit}`,
    ],
    ['Limit', bounds === '' ? undefined : `${bounds} ${unit}`],
    ['Fails outside', failing === '' || failing === bounds ? undefined : `${failing} ${unit}`],
    ['Limit of the sheet, instead of', replaced_limit && boundsText(replaced_limit)],
    ['Source', source],
    ['Moved by', moves],
    ['Accepted', accepted],
  ];
  return rows
    .flatMap(([name, text]) => (text === undefined ? [] : [`<div><dt>${name}</dt><dd>${xmlText(text)}</dd></div>`]))
    .join('');
}
