import type { DrawnViews } from '../../parts/draw-views.js';
import type { PartInHand } from '../part-in-hand.js';
import { stillPicture } from '../picture/picture.js';
import { checksSection } from './checks-section.js';
import { driveSection } from './drive-section.js';
import { fitPicture } from './fit-picture.js';
import { list, section } from './html.js';
import { assumptionsSection, fileLinks, filesSection, hardwareSection, sizesSection } from './lists-section.js';
import { pageData } from './mesh-data.js';
import { type PageScript, pageShell } from './page-shell.js';
import { playSection } from './play-section.js';
import { stageSection } from './stage-section.js';
import { seeToList, verdictSection } from './verdict-section.js';
import { workshopCard } from './workshop-card.js';

const SECTIONS = [
  ['part', 'The part'],
  ['see', 'To see to'],
  ['card', 'Workshop card'],
  ['checks', 'Checks'],
  ['drawing', 'Drawing'],
  ['play', 'Play'],
  ['drive', 'Drive'],
  ['hardware', 'Hardware'],
  ['sizes', 'Sizes'],
  ['cautions', 'Mind'],
  ['assumptions', 'Taken as given'],
] as const;

/** A drawing as it goes into a page. */
export interface DrawnPart {
  readonly views: DrawnViews;
  /** an SVG a sheet */
  readonly drawing: readonly string[];
  /** files that are written beside the page */
  readonly beside?: readonly string[];
}

/**
 * Writes the page of a part: one file that opens from the disk in any browser and asks for nothing else.
 *
 * @param part   the made part
 * @param drawn  its drawing, and the views that it was made from
 * @param script inside the page, or the address of the script that several pages share, relative to the page
 * @param picture its picture as PNG; rendered here unless it is at hand
 * @returns HTML; the same text each time
 */
export async function writePage(
  part: PartInHand,
  drawn: DrawnPart,
  script: PageScript = { inside: true },
  picture = stillPicture(part),
): Promise<string> {
  const { report } = part;
  // pages that share a script lie apart from the other files of their part
  const beside = 'src' in script ? [] : (drawn.beside ?? []);
  const content = contentOf(part, { ...drawn, beside }, picture);
  const shown = SECTIONS.filter(([id]) => content[id] !== '');
  const links = shown.map(([id, title]) => `<a href="#${id}">${title}</a>`).join(' ');
  return pageShell({
    title: `${report.name} – ${report.verdict}`,
    head: [verdictSection(report), `<nav aria-label="On this page">${links}</nav>`],
    sections: shown.map(([id, title]) => section(id, title, content[id])),
    data: pageData(part),
    script,
  });
}

function contentOf(
  part: PartInHand,
  drawn: DrawnPart,
  picture: Uint8Array,
): Record<(typeof SECTIONS)[number][0], string> {
  const { report } = part;
  return {
    part: stageSection(part, picture, [fileLinks(drawn.beside ?? []), fitPicture(report)].join('\n')),
    see: seeToList(report),
    card: workshopCard(report, drawn.views),
    checks: checksSection(report),
    drawing: `<div class="sheet" tabindex="0" role="region" aria-label="The drawing, scrolled sideways">${drawn.drawing.join('')}</div>`,
    play: playSection(report),
    drive: driveSection(report.drive),
    hardware: hardwareSection(report),
    sizes: [sizesSection(report), filesSection(report)].join('\n'),
    cautions: list(report.cautions),
    assumptions: assumptionsSection(report),
  };
}
