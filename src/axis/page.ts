import { boundsText, figuresOf, valueText } from '../output/figures.js';
import { base64 } from '../output/page/base64.js';
import { driveSection } from '../output/page/drive-section.js';
import { badge, list, section, table } from '../output/page/html.js';
import { assumptionsSection, hardwareSection } from '../output/page/lists-section.js';
import { pageShell } from '../output/page/page-shell.js';
import { seeToList, verdictSection } from '../output/page/verdict-section.js';
import { xmlText } from '../output/xml-text.js';
import { alongTable } from './along-table.js';
import type { AxisDesign } from './axis-design.js';
import { axisCard } from './card.js';
import type { AxisReport, PartReport } from './report.js';

const SECTIONS = [
  ['part', 'The parts'],
  ['along', 'Along the screw'],
  ['see', 'To see to'],
  ['card', 'Workshop card'],
  ['checks', 'Across the parts'],
  ['drive', 'Drive'],
  ['hardware', 'Hardware'],
  ['cautions', 'Mind'],
  ['assumptions', 'Taken as given'],
] as const;

/** A part as the page of its axis shows it. */
export interface ShownPart extends PartReport {
  /** PNG */
  readonly picture?: Uint8Array;
}

/**
 * The page of an axis: its answers, its parts with their pictures, the card of the whole refit. It runs nothing.
 * @returns HTML; the same text each time
 */
export async function axisPage(report: AxisReport, axis: AxisDesign, parts: readonly ShownPart[]): Promise<string> {
  const content: Record<(typeof SECTIONS)[number][0], string> = {
    part: [partFigures(parts), ...parts.map(partLines)].join('\n'),
    along: alongTable(axis),
    see: seeToList(report),
    card: axisCard(report, axis),
    checks: ownChecks(report),
    drive: driveSection(report.drive),
    hardware: hardwareSection(report),
    cautions: list(report.cautions),
    assumptions: assumptionsSection(report),
  };
  const shown = SECTIONS.filter(([id]) => content[id] !== '');
  const links = shown.map(([id, title]) => `<a href="#${id}">${title}</a>`).join(' ');
  return pageShell({
    title: `${report.name} – ${report.verdict}`,
    head: [
      verdictSection({ ...report, applied: 'shrink and hole offset: on the page of each part' }),
      `<nav aria-label="On this page">${links}</nav>`,
    ],
    sections: shown.map(([id, title]) => section(id, title, content[id])),
  });
}

/** The parts side by side, so that the first screen shows what the axis is made of. */
function partFigures(parts: readonly ShownPart[]): string {
  const figures = parts.map(({ role, report, picture }) => {
    const alt = `${report.name}, a ${report.part}`;
    const image = picture
      ? `<img src="data:image/png;base64,${base64(picture)}" width="480" height="360" alt="${xmlText(alt)}">`
      : '';
    return `<figure>${image}<figcaption>${xmlText(role)} ${badge(report.verdict)}</figcaption></figure>`;
  });
  return `<div class="parts">${figures.join('\n')}</div>`;
}

function partLines({ role, folder, report }: ShownPart): string {
  const to = (file: string) => [...(folder === '' ? [] : [folder]), file].map(encodeURIComponent).join('/');
  const links = (report.files ?? []).map((file) => `<a href="${to(file)}">${xmlText(file)}</a>`);
  return [
    `<h3>${xmlText(role)}</h3>`,
    `<p>${xmlText(report.sentence)}</p>`,
    ...(links.length > 0 ? [`<p class="files"><strong>Files:</strong> ${links.join(' · ')}</p>`] : []),
  ].join('\n');
}

/** What goes across the parts; what each part was asked stands on its own page. */
function ownChecks({ checks }: AxisReport): string {
  const own = checks.filter(({ id }) => !id.includes('/'));
  const rows = own.map((finding) => [
    xmlText(finding.title),
    badge(finding.verdict),
    xmlText(valueText(finding)),
    boundsText(figuresOf(finding).limit),
    xmlText(`${finding.message}. ${finding.source}`),
  ]);
  return table(
    'What was asked across the parts',
    ['', 'verdict', 'value', 'limit', 'found, and by what'],
    rows,
    [2, 3],
  );
}
