import { xmlText as text } from '../output/xml-text.js';
import { STANDING_WORDS } from './counts.js';
import type { Standing } from './manifest.js';

/** A verdict as a coloured word. */
export function badge(verdict: Standing): string {
  return `<b class="badge ${verdict}">${STANDING_WORDS[verdict]}</b>`;
}

/** Names hold only letters, digits, points, - and _, so that a path needs no more than this. */
export function path(file: string): string {
  return text(file.split('/').map(encodeURIComponent).join('/'));
}

/** The link that hands a file on; what stands above it already, such as its machine, need not be told again. */
export function fileLink(file: string, above = ''): string {
  const name = file.split('/').at(-1) ?? '';
  const shown = name.startsWith(`${above}.`) ? name.slice(above.length + 1) : name;
  return `<a href="${path(file)}" download>${text(shown)}</a>`;
}

/** Materials of several files, as the filter compares them. */
export function materialsOf(rows: readonly { readonly material: string | null }[]): string {
  return [...new Set(rows.map(({ material }) => material ?? ''))].join('|');
}

/** Pieces in words: `2 + 1 spare`. */
export function piecesText({ quantity, spare }: { readonly quantity: number; readonly spare: number }): string {
  return spare > 0 ? `${quantity} + ${spare} spare` : String(quantity);
}

/** Entries that a browser lays out together, and only where they are seen; a multiple of every number of columns. */
const IN_A_BLOCK = 48;

/** Entries in blocks, piece by piece. */
export function* inBlocks(entries: Iterable<string>): Iterable<string> {
  let count = 0;
  for (const entry of entries) {
    if (count % IN_A_BLOCK === 0) yield `${count === 0 ? '' : '</div>\n'}<div class="block">\n`;
    yield `${entry}\n`;
    count++;
  }
  if (count > 0) yield '</div>\n';
}
