import { xmlText as text } from '../output/xml-text.js';
import { plain } from '../units/format.js';
import { isMade } from './counts.js';
import type { IndexLinks } from './index-links.js';
import { badge, fileLink, inBlocks, materialsOf, path } from './index-marks.js';
import type { MachineRows, ManifestRow, Standing } from './manifest.js';

/** Names that are told of the machines that want a part. */
const MOST_NAMED = 4;

/** A distinct part with all that want it. */
export interface WantedPart {
  /** its files as the first machine has them, a row each */
  readonly rows: readonly ManifestRow[];
  readonly pieces: number;
  /** parts of machines that it stands for */
  readonly count: number;
  /** the first of them */
  readonly wanted: readonly string[];
}

/** Distinct parts in the order in which machines want them; a part that is no part of a plan counts for itself. */
export function wantedParts(machines: Iterable<MachineRows>): WantedPart[] {
  const found = new Map<string, { rows: ManifestRow[]; pieces: number; count: number; wanted: string[] }>();
  for (const { parts } of machines) {
    let last = '';
    for (const row of parts) {
      const own = `${row.machine} ${row.role}`;
      const key = `${row.address === '' ? own : row.address} ${row.verdict}`;
      const there = found.get(key);
      const part = there ?? { rows: [], pieces: 0, count: 0, wanted: [] };
      if (!there) found.set(key, part);
      if (own !== last) {
        part.count++;
        part.pieces += row.quantity + row.spare;
        if (part.wanted.length < MOST_NAMED) part.wanted.push(own);
      }
      if (part.wanted[0] === own) part.rows.push(row);
      last = own;
    }
  }
  return [...found.values()];
}

/** A fleet part by part: an entry each, with its figures, what is to mind, and how many of it are wanted. */
export function partEntries(parts: readonly WantedPart[], links: IndexLinks): Iterable<string> {
  return inBlocks(entries(parts, links));
}

function* entries(parts: readonly WantedPart[], links: IndexLinks): Iterable<string> {
  for (const part of parts) yield entry(part, links);
}

function entry({ rows, pieces, count, wanted }: WantedPart, { files }: IndexLinks): string {
  const { role, part, name, verdict, folder, reasons } = rows[0]!;
  const page = folder !== null && [`${folder}/report.html`, `${folder}/report.json`].find((one) => files.has(one));
  const picture = folder !== null && files.has(`${folder}/picture.png`) ? `${folder}/picture.png` : undefined;
  const image = picture ? `<img src="${path(picture)}" alt="" width="64" height="48" loading="lazy">` : '';
  const called = text(name === '' ? role : name);
  const title = page ? `<a href="${path(page)}">${image}${called}</a>` : called;
  const more = count - wanted.length;
  const who = `${wanted.join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
  const own = rows.flatMap(({ file, mass, bounds, material }) =>
    file === null ? [] : [`<li>${fileLink(file)} <small>${text(figures(material, mass, bounds))}</small></li>`],
  );
  return `<article data-find="${text(`${name} ${role} ${part}`.toLowerCase())}" data-kinds="${text(part)}" data-pieces="${isMade({ verdict }) ? pieces : 0}" data-verdict="${verdict}" data-material="${text(materialsOf(rows))}"><h3>${title} ${part === '' ? '' : `<small>${text(part)}</small> `}${badge(verdict)}</h3><p>${pieces} for ${text(who)}</p>${own.length === 0 ? '' : `<ul>${own.join('')}</ul>`}${reasonsOf(reasons, verdict)}</article>`;
}

function figures(material: string | null, mass: number | null, bounds: ManifestRow['bounds']): string {
  const size = bounds ? [0, 1, 2].map((axis) => plain(bounds[1][axis]! - bounds[0][axis]!, 1)).join(' × ') : '';
  return [material ?? '', mass === null ? '' : `${plain(mass, 1)} g`, size === '' ? '' : `${size} mm`]
    .filter((word) => word !== '')
    .join(', ');
}

function reasonsOf(reasons: readonly string[], verdict: Standing): string {
  if (reasons.length === 0) return '';
  const list = `<ul>${reasons.map((reason) => `<li>${text(reason)}</li>`).join('')}</ul>`;
  return `<details${isMade({ verdict }) ? '' : ' open'}><summary>${reasons.length} to mind</summary>${list}</details>`;
}
