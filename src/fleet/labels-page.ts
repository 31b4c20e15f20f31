import { xmlText as text } from '../output/xml-text.js';
import type { Manifest, ManifestRow } from './manifest.js';

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
 * @param hashOf SHA-256 of a text as base64, for the page's security policy
 */
export function labelsPage({ fleet, parts }: Manifest, hashOf: (text: string) => string): string {
  const labels = parts.filter(({ file }) => file !== null).map(label);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'sha256-${hashOf(STYLE)}'; base-uri 'none'; form-action 'none'">
<title>${text(fleet)} — labels</title>
<style>${STYLE}</style>
</head>
<body>
<ul>
${labels.join('\n')}
</ul>
</body>
</html>
`;
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
