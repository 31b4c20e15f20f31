import { xmlText as text } from '../output/xml-text.js';
import type { HardwareRow } from '../parts/part-kind.js';
import { howMany } from '../units/format.js';
import { framed, type HashOf } from './page-frame.js';

/** A part of a machine, as its zip holds it. */
export interface HandedPart {
  readonly role: string;
  readonly name: string;
  readonly verdict: string;
  readonly pieces: number;
  readonly reasons: readonly string[];
  /** what goes to a printer, and what is read: path in the zip, and what it is */
  readonly links: readonly { readonly path: string; readonly what: string }[];
}

const STYLE = `:root{color-scheme:light dark}body{max-width:60rem;margin:1rem auto;padding:0 1rem;font:16px/1.5 system-ui,sans-serif}
table{border-collapse:collapse;width:100%}th,td{text-align:left;vertical-align:top;padding:.4rem .8rem .4rem 0;border-top:1px solid #888}
td a{display:block}small{display:block}`;

const MIND = [
  'Block or lower the axis, isolate the power, and wait for supplies to discharge before reaching in.',
  'Guard screws and couplings that turn; keep hair, cuffs and gloves away.',
  'Printed plastic creeps, wears and softens: retighten and measure after a day. No lifting of people, no loads over people.',
];

/** The page that a machine's zip is opened by: what it holds, what to buy, what to mind. */
export function startPage(
  machine: string,
  fleet: string,
  parts: readonly HandedPart[],
  hardware: readonly HardwareRow[],
  hashOf: HashOf,
): string {
  const rows = parts.map(({ role, name, verdict, pieces, reasons, links }) => {
    const told = reasons.map((reason) => `<small>${text(reason)}</small>`).join('');
    const files = links.map(({ path, what }) => `<a href="${text(path)}">${text(what)}</a>`).join('');
    return `<tr><th scope="row">${text(role)}<small>${text(name)}</small></th><td>${pieces}</td><td>${text(verdict)}${told}</td><td>${files}</td></tr>`;
  });
  const bought = hardware.map(({ item, size, count }) => `<li>${count} × ${text(item)} ${text(size)}</li>`);
  const body = `<h1>${text(machine)}</h1>
<p>${text(fleet)}: ${howMany(parts.length, 'part')}, ${howMany(
    parts.reduce((sum, { pieces }) => sum + pieces, 0),
    'piece',
  )} to print. Unpack the zip first; nothing else is needed.</p>
<table><thead><tr><th scope="col">Part</th><th scope="col">Pieces</th><th scope="col">Verdict</th><th scope="col">Files</th></tr></thead><tbody>
${rows.join('\n')}
</tbody></table>
<h2>Hardware</h2>
<ul>${bought.join('') || '<li>none</li>'}</ul>
<h2>Mind</h2>
<ul>${MIND.map((line) => `<li>${text(line)}</li>`).join('')}</ul>
`;
  return [...framed({ title: `${machine} — ${fleet}`, style: STYLE, body: [body] }, hashOf)].join('');
}
