import type { Verdict } from '../../judge/check.js';
import { xmlText } from '../xml-text.js';

/** Verdicts in words, as a badge. The word carries the meaning, colour only helps. */
export function badge(verdict: Verdict): string {
  return `<span class="badge ${verdict}">${verdict}</span>`;
}

/** A section with its heading, or nothing where there is nothing to show. */
export function section(id: string, title: string, content: string): string {
  if (content === '') return '';
  return `<section id="${id}" aria-labelledby="${id}-title"><h2 id="${id}-title">${title}</h2>\n${content}\n</section>`;
}

/** A table with a head of its own; cells are HTML, `numbers` names the columns set to the right. */
export function table(
  caption: string,
  head: readonly string[],
  rows: readonly (readonly string[])[],
  numbers: readonly number[] = [],
): string {
  const align = (column: number) => (numbers.includes(column) ? ' class="n"' : '');
  const headCells = head.map((cell, i) => `<th scope="col"${align(i)}>${cell}</th>`).join('');
  const body = rows
    .map((cells) => {
      const [first = '', ...rest] = cells;
      return `<tr><th scope="row"${align(0)}>${first}</th>${rest.map((cell, i) => `<td${align(i + 1)}>${cell}</td>`).join('')}</tr>`;
    })
    .join('\n');
  return `<div class="scroll" tabindex="0" role="region" aria-label="${caption}"><table><caption>${caption}</caption><thead><tr>${headCells}</tr></thead><tbody>\n${body}\n</tbody></table></div>`;
}

/** A list of texts, which are escaped here. */
export function list(texts: readonly string[]): string {
  return texts.length === 0 ? '' : `<ul>${texts.map((text) => `<li>${xmlText(text)}</li>`).join('')}</ul>`;
}
