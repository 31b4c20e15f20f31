import { xmlText as text } from '../output/xml-text.js';
import type { ManifestRow } from './manifest.js';
import { framed, type HashOf } from './page-frame.js';

const STYLE = `@page{size:A4;margin:8mm}
body{margin:0;font:9pt/1.3 system-ui,sans-serif;color:#000;background:#fff}
ul{display:grid;grid-template-columns:repeat(3,1fr);gap:0;margin:0;padding:0;list-style:none}
li{box-sizing:border-box;height:36mm;padding:3mm;border:.2mm dashed #888;overflow:hidden;break-inside:avoid}
b{display:block;font-size:12pt;overflow-wrap:anywhere}
code{font:7.5pt/1.3 ui-monospace,monospace}`;

/** Digits of a digest that tell files of a fleet apart. */
const DIGITS = 16;

/**
 * A sheet of labels, one a file for printers, to stick on bags: machine and part, pieces, material, and the first digits of
 * the file's SHA-256.
 * @param parts a row a file
 * @returns HTML, piece by piece
 */
export function labelsPage(fleet: string, parts: Iterable<ManifestRow>, hashOf: HashOf): Iterable<string> {
  return framed({ title: `${fleet} — labels`, style: STYLE, body: listed(parts) }, hashOf);
}

function* listed(parts: Iterable<ManifestRow>): Iterable<string> {
  yield '<ul>\n';
  for (const row of parts) if (row.file !== null) yield `${label(row)}\n`;
  yield '</ul>\n';
}

function label({ machine, role, name, file, quantity, spare, material, digest }: ManifestRow): string {
  const body = file?.split('.').slice(2, -1).join('.') ?? '';
  const pieces = spare > 0 ? `${quantity} + ${spare} spare` : `${quantity}`;
  const lines = [
    `<b>${text(machine)}</b>${text([role, body].filter((word) => word !== '').join(' '))}`,
    `${text(name)} · ${text(pieces)} × ${text(material ?? '')}`,
    `<code>${text((digest ?? '').slice(0, DIGITS))}</code>`,
  ];
  return `<li>${lines.join('<br>')}</li>`;
}
