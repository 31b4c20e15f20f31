import { VERSION } from '../version.js';
import { xmlText } from '../xml-text.js';
import type { PageData } from './page-data.js';

/** Where the page's script is: in the page, or in one file beside several pages. */
export type PageScript = { readonly inside: true } | { readonly src: string };

/** What stands in a page. Head and sections are HTML; the title is escaped here. */
export interface PageParts {
  readonly title: string;
  readonly head: readonly string[];
  readonly sections: readonly string[];
  /** what the script shows; a page without it runs nothing */
  readonly data?: PageData;
  readonly script?: PageScript;
}

/** Addresses of a shared script that go into a page as they are. */
const SOURCE = /^[A-Za-z0-9._/-]+$/;

/** A whole page: security policy, style, content, data and script. */
export async function pageShell({
  title,
  head,
  sections,
  data,
  script = { inside: true },
}: PageParts): Promise<string> {
  const assets = await import('./assets.js');
  return [
    '<!doctype html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${data ? policy(script, assets) : quietPolicy(assets)}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="color-scheme" content="light dark">',
    `<title>${xmlText(title)}</title>`,
    `<style>${assets.STYLE}</style>`,
    '</head>',
    '<body>',
    '<a class="skip" href="#part">To the part</a>',
    ...head,
    '<main>',
    ...sections,
    '</main>',
    `<footer><p>Made by leadwright ${VERSION} from the sheet; the figures are those of report.json.</p></footer>`,
    ...(data ? [dataTag(data), scriptTag(script, assets)] : []),
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

function dataTag(data: PageData): string {
  return `<script type="application/json" id="part-data">${JSON.stringify(data).replaceAll('<', '\\u003c')}</script>`;
}

/** A page that shares a script at `src`, as one that has it inside and needs no other file. */
export async function withScriptInside(page: string, src: string): Promise<string> {
  const assets = await import('./assets.js');
  const script = { src };
  const at = page.lastIndexOf(scriptTag(script, assets));
  if (at < 0) return page;
  const rest = page.slice(at + scriptTag(script, assets).length);
  return (
    page.slice(0, at).replace(policy(script, assets), policy({ inside: true }, assets)) +
    scriptTag({ inside: true }, assets) +
    rest
  );
}

function scriptTag(
  script: PageScript,
  { SCRIPT, VIEWER_DEFLATED }: Pick<Assets, 'SCRIPT' | 'VIEWER_DEFLATED'>,
): string {
  if ('src' in script) return `<script src="${xmlText(script.src)}"></script>`;
  return `<script type="application/octet-stream" id="viewer-code">${VIEWER_DEFLATED}</script>\n<script>${SCRIPT}</script>`;
}

type Assets = typeof import('./assets.js');

/** The script that pages of one fleet share: the viewer is there already when it is asked for. */
export async function sharedPageScript(): Promise<string> {
  const { VIEWER, SCRIPT } = await import('./assets.js');
  return `${VIEWER}\n${SCRIPT}\n`;
}

function hashes(all: readonly string[]): string {
  return all.map((hash) => `'${hash}'`).join(' ');
}

/** Nothing but the page's own style, and pictures inside it. */
function quietPolicy({ STYLE_HASHES }: Assets): string {
  return `default-src 'none'; style-src ${hashes(STYLE_HASHES)}; img-src data:; base-uri 'none'; form-action 'none'`;
}

/** Nothing but the page's own scripts and styles by their hashes, workers that it makes, and pictures inside it. */
function policy(script: PageScript, { SCRIPT_HASHES, STYLE_HASHES }: Assets): string {
  if ('src' in script && !SOURCE.test(script.src))
    throw new TypeError(`${script.src} cannot be the address of a script`);
  const source = 'src' in script ? `'self' file:` : hashes(SCRIPT_HASHES);
  return `default-src 'none'; script-src ${source}; worker-src blob:; style-src ${hashes(STYLE_HASHES)}; img-src data:; base-uri 'none'; form-action 'none'`;
}
