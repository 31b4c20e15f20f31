import { xmlText as text } from '../output/xml-text.js';
import { STANDING_WORDS } from './counts.js';
import type { IndexLinks } from './index-links.js';
import { badge, fileLink, inBlocks, materialsOf, path, piecesText } from './index-marks.js';
import type { MachineRow, MachineRows, ManifestRow } from './manifest.js';
import { statusKey, statusWords } from './status.js';

/** Fleets up to this size stand open. */
const MOST_OPEN = 12;

/** A fleet machine by machine: an entry each, which opens on its parts. */
export function machineEntries(rows: Iterable<MachineRows>, count: number, links: IndexLinks): Iterable<string> {
  return inBlocks(entries(rows, count <= MOST_OPEN, links));
}

function* entries(rows: Iterable<MachineRows>, open: boolean, links: IndexLinks): Iterable<string> {
  for (const { machine, parts } of rows) yield entry(machine, parts, open, links);
}

function entry(machine: MachineRow, rows: readonly ManifestRow[], open: boolean, links: IndexLinks): string {
  const { machine: name, kind, group, verdict, complete } = machine;
  const about = [kind, group].filter((word) => word !== null);
  const state = [...about, complete ? 'complete' : 'incomplete'].join(', ');
  const notes = notesOf(machine).map((note) => `<li>${text(note)}</li>`);
  const zip = links.files.has(`zips/${name}.zip`) ? `<li>${fileLink(`zips/${name}.zip`)}</li>` : '';
  const parts = byRole(rows).map((own) => partItem(own, links));
  return `<details data-machine="${text(name.toLowerCase())}" data-kind="${text(kind ?? '')}" data-verdict="${verdict}"${open ? ' open' : ''}><summary>${text(name)} <small>${text(state)}</small> ${badge(verdict)}</summary><ul>${notes.join('')}${parts.join('')}${zip}</ul></details>`;
}

function notesOf({ unmeasured, odd, lacks, pairs }: MachineRow): string[] {
  return [
    ...(unmeasured ? ['It is not measured: nothing of it was made.'] : []),
    ...odd.map(({ role, message }) => `${role}: ${message}`),
    ...(lacks.length > 0 ? [`It lacks ${lacks.join(', ')}, which its kind lists.`] : []),
    ...pairs.filter((pair) => pair.verdict !== 'pass').map((pair) => `${pair.roles.join(' and ')}: ${pair.message}`),
  ];
}

/** The files of one part stand one after the other. */
function byRole(rows: readonly ManifestRow[]): ManifestRow[][] {
  return rows.reduce<ManifestRow[][]>((parts, row) => {
    const last = parts.at(-1);
    if (last && last[0]!.role === row.role) last.push(row);
    else parts.push([row]);
    return parts;
  }, []);
}

/** A part of a machine; what is to mind of a part that was made stands with it, below its own name. */
function partItem(rows: readonly ManifestRow[], { files, status }: IndexLinks): string {
  const { machine, role, verdict, folder, reasons } = rows[0]!;
  const page = folder !== null && [`${folder}/report.html`, `${folder}/report.json`].find((one) => files.has(one));
  const title = page ? `<a href="${path(page)}">${text(role)}</a>` : text(role);
  const links = rows.flatMap(({ file }) => (file === null ? [] : [fileLink(file, machine)]));
  const noted = status?.get(statusKey(machine, role));
  const told = links.length === 0 ? reasons.map((reason) => `<small>${text(reason)}</small>`) : [];
  return `<li class="${verdict}" data-part data-verdict="${verdict}" data-material="${text(materialsOf(rows))}">${piecesText(rows[0]!)} × ${title}, ${STANDING_WORDS[verdict]} ${links.join(' ')}${noted ? `<small>${text(statusWords(noted))}</small>` : ''}${told.join('')}</li>`;
}
