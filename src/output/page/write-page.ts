import { type DrawnSizes, writeDrawing } from '../drawing/write-drawing.js';
import type { PartInHand } from '../part-in-hand.js';
import { writePicture } from '../picture/picture.js';
import { VERSION } from '../version.js';
import { xmlText } from '../xml-text.js';
import { checksSection } from './checks-section.js';
import { driveSection } from './drive-section.js';
import { list, section } from './html.js';
import { assumptionsSection, filesSection, hardwareSection, sizesSection } from './lists-section.js';
import { pageData } from './mesh-data.js';
import { playSection } from './play-section.js';
import { stageSection } from './stage-section.js';
import { verdictSection } from './verdict-section.js';
import { workshopCard } from './workshop-card.js';

/** Where the page's script is: in the page, or in one file beside several pages. */
export type PageScript = { readonly inside: true } | { readonly src: string };

/** Largest name of a shared script that goes into the page's security policy as it is. */
const SOURCE = /^[A-Za-z0-9._/-]+$/;

const SECTIONS = [
  ['part', 'The part'],
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

/**
 * Writes the page of a part: one file that opens from the disk in any browser and asks for nothing else.
 *
 * @param part   the made part
 * @param drawn  views at the sizes that the drawing states
 * @param script inside the page, or the address of the script that several pages share, relative to the page
 * @returns HTML; the same text each time
 */
export async function writePage(
  part: PartInHand,
  drawn: DrawnSizes,
  script: PageScript = { inside: true },
): Promise<string> {
  const assets = await import('./assets.js');
  const { report } = part;
  const content = contentOf(part, drawn);
  const shown = SECTIONS.filter(([id]) => content[id] !== '');
  const links = shown.map(([id, title]) => `<a href="#${id}">${title}</a>`).join(' ');
  const data = JSON.stringify(pageData(part)).replaceAll('<', '\\u003c');
  return [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${policy(script, assets.SCRIPT_HASH)}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="color-scheme" content="light dark">',
    `<title>${xmlText(report.name)} – ${report.verdict}</title>`,
    `<style>${assets.STYLE}</style>`,
    '</head>',
    '<body>',
    '<a class="skip" href="#part">To the part</a>',
    verdictSection(report),
    `<nav aria-label="On this page">${links}</nav>`,
    '<main>',
    ...shown.map(([id, title]) => section(id, title, content[id])),
    '</main>',
    `<footer><p>Made by leadwright ${VERSION} from the sheet; the figures are those of report.json.</p></footer>`,
    `<script type="application/json" id="part-data">${data}</script>`,
    'src' in script ? `<script src="${xmlText(script.src)}"></script>` : `<script>${assets.SCRIPT}</script>`,
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

/** The script that pages of one fleet share. */
export async function sharedPageScript(): Promise<string> {
  return (await import('./assets.js')).SCRIPT;
}

/** Nothing but the page's own script by its hash, its own style, and pictures inside it. */
function policy(script: PageScript, hash: string): string {
  if ('src' in script && !SOURCE.test(script.src))
    throw new TypeError(`${script.src} cannot be the address of a script`);
  const source = 'src' in script ? `'self' file:` : `'${hash}'`;
  return `default-src 'none'; script-src ${source}; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'`;
}

function contentOf(part: PartInHand, drawn: DrawnSizes): Record<(typeof SECTIONS)[number][0], string> {
  const { report } = part;
  const picture = writePicture(part, { width: 640, height: 480 });
  return {
    part: stageSection(part, picture),
    card: workshopCard(report, drawn.views),
    checks: checksSection(report.checks),
    drawing: `<div class="sheet">${writeDrawing(report, drawn)}</div>`,
    play: playSection(report),
    drive: driveSection(report.drive),
    hardware: hardwareSection(report),
    sizes: [sizesSection(report), filesSection(report)].join('\n'),
    cautions: list(report.cautions),
    assumptions: assumptionsSection(report),
  };
}
