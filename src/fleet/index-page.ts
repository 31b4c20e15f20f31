import { xmlText as text } from '../output/xml-text.js';
import { plain } from '../units/format.js';
import { leftWords, STANDING_WORDS } from './counts.js';
import { INDEX_SCRIPT, INDEX_STYLE } from './index-look.js';
import type { MachineRow, Manifest, ManifestHead, ManifestRow, Standing } from './manifest.js';
import { framed, type HashOf } from './page-frame.js';
import type { PrintingDay } from './printing.js';
import { type Status, statusKey, statusWords } from './status.js';

/** What the index shows beside the manifest. */
export interface IndexLinks {
  /** paths of every file in the output folder */
  readonly files: Pick<ReadonlySet<string>, 'has'>;
  readonly hashOf: HashOf;
  /** names of all machines */
  readonly names: Iterable<string>;
  readonly days: readonly PrintingDay[];
  /** what people noted of the parts */
  readonly status?: Status;
}

/**
 * The fleet at a glance: a page without anything from elsewhere, whose filters hide rows and which reads without its
 * script too.
 *
 * @param manifest the run, summed up
 * @param links what may be linked to
 * @returns HTML, piece by piece
 */
export function indexPage(manifest: Manifest, links: IndexLinks): Iterable<string> {
  const page = { title: `${manifest.fleet} — fleet`, style: INDEX_STYLE, script: INDEX_SCRIPT, pictures: true };
  return framed({ ...page, body: bodyOf(manifest, links) }, links.hashOf);
}

function* bodyOf(manifest: Manifest, links: IndexLinks): Iterable<string> {
  yield `<header>
<h1>${text(manifest.fleet)}</h1>
${summary(manifest, links)}
</header>
<main>
`;
  yield* filters(manifest, links.names);
  yield '<p id="count" role="status" aria-live="polite"></p>\n';
  for (const { machine, parts } of manifest.rows) yield `${machineSection(machine, parts, links)}\n`;
  yield `<p id="none" hidden>No part answers to these filters.</p>\n${plates(manifest)}\n`;
  yield* days(links.days);
  yield `\n${totals(manifest)}\n</main>\n`;
}

function summary({ counts, verdict, filament }: ManifestHead, { files }: IndexLinks): string {
  const grams = filament.reduce((sum, { mass }) => sum + mass, 0);
  const figures: readonly (readonly [string, string])[] = [
    [`${counts.complete} of ${counts.machines}`, 'machines complete'],
    [`${counts.parts.made} of ${counts.parts.all}`, ['parts made', ...leftWords(counts)].join(', ')],
    [String(counts.pieces), 'pieces to print'],
    [String(counts.files), 'files for printers'],
    [`${plain(grams, 0)} g`, 'of filament'],
  ];
  const list = figures.map(([figure, what]) => `<li><b>${text(figure)}</b> ${text(what)}</li>`).join('');
  const more = `<a href="manifest.csv">manifest.csv</a> <a href="manifest.json">manifest.json</a> <a href="hardware.csv">hardware.csv</a> <a href="printing.csv">printing.csv</a>${files.has('labels.html') ? ' <a href="labels.html">labels</a>' : ''}`;
  return `<ul class="figures"><li>${badge(verdict)}</li>${list}</ul>\n<nav aria-label="Tables">${more}</nav>`;
}

function* filters({ words }: ManifestHead, names: Iterable<string>): Iterable<string> {
  yield `<form class="filters" role="search" hidden>
<label>Machine <input id="machine" type="search" list="machines" autocomplete="off" placeholder="any part of its name"></label>
<datalist id="machines">`;
  for (const name of names) yield option(name);
  yield `</datalist>
${choice('kind', 'Kind', words.kinds)}
${choice('verdict', 'Verdict', words.verdicts, STANDING_WORDS)}
${choice('material', 'Material', words.materials)}
<button type="reset">Show all</button>
</form>
`;
}

function choice(
  id: string,
  label: string,
  values: readonly string[],
  words: Readonly<Record<string, string>> = {},
): string {
  const options = values.map((value) => option(value, words[value]));
  return `<label>${label} <select id="${id}"><option value="">all</option>${options.join('')}</select></label>`;
}

function option(value: string, word = value): string {
  return `<option value="${text(value)}">${text(word)}</option>`;
}

function machineSection(machine: MachineRow, rows: readonly ManifestRow[], links: IndexLinks): string {
  const { machine: name, kind, group, verdict, complete, lacks, pairs } = machine;
  const about = [kind, group].filter((word) => word !== null).join(', ');
  const zip = links.files.has(`zips/${name}.zip`) ? ` <a href="${path(`zips/${name}.zip`)}">zip</a>` : '';
  const notes = [
    ...(machine.unmeasured ? ['It is not measured: nothing of it was made.'] : []),
    ...machine.odd.map(({ role, message }) => `${role}: ${message}`),
    ...(lacks.length > 0 ? [`It lacks ${lacks.join(', ')}, which its kind lists.`] : []),
    ...pairs.filter((pair) => pair.verdict !== 'pass').map((pair) => `${pair.roles.join(' and ')}: ${pair.message}`),
  ];
  return `<section data-machine="${text(name.toLowerCase())}" data-kind="${text(kind ?? '')}" data-verdict="${verdict}">
<h2 id="m-${text(name)}">${text(name)} ${about === '' ? '' : `<small>${text(about)}</small>`} ${badge(verdict)} <small>${complete ? 'complete' : 'incomplete'}${zip}</small></h2>
${notes.length === 0 ? '' : `<ul class="notes">${notes.map((note) => `<li>${text(note)}</li>`).join('')}</ul>`}
<div class="scroll" tabindex="0" role="region" aria-labelledby="m-${text(name)}"><table>
<thead><tr><th scope="col">Part</th><th scope="col">Verdict</th><th scope="col">Pieces</th><th scope="col">Material</th><th scope="col">Mass</th><th scope="col">Size</th><th scope="col">File</th></tr></thead>
<tbody>
${rows.map((row, i) => partRow(row, rows[i - 1], links)).join('\n')}
</tbody></table></div>
</section>`;
}

/** A row a file; further bodies of a part do not repeat its name and picture. */
function partRow(row: ManifestRow, before: ManifestRow | undefined, { files, status }: IndexLinks): string {
  const { role, part, name, verdict, quantity, spare, material, mass, bounds, file, folder, reasons } = row;
  const isFirst = before?.role !== role;
  const page = folder !== null && [`${folder}/report.html`, `${folder}/report.json`].find((one) => files.has(one));
  const picture = folder !== null && files.has(`${folder}/picture.png`) ? `${folder}/picture.png` : undefined;
  const image = picture ? `<img src="${path(picture)}" alt="" width="64" height="48" loading="lazy">` : '';
  const title = page ? `<a href="${path(page)}">${image}${text(role)}</a>` : text(role);
  const about = part === '' ? '' : `<small>${text(name === role ? part : `${part} ${name}`)}</small>`;
  const told = isFirst && reasons.length > 0 ? reasonsOf(reasons, verdict) : '';
  const noted = status?.get(statusKey(row.machine, role));
  const done = isFirst && noted ? `<small>${text(statusWords(noted))}</small>` : '';
  const size = bounds ? [0, 1, 2].map((axis) => plain(bounds[1][axis]! - bounds[0][axis]!, 1)).join(' × ') : '';
  const cells = [
    `<th scope="row"${isFirst ? '' : ' class="further"'}>${isFirst ? `${title}${about}${done}` : text(bodyIn(row))}</th>`,
    `<td>${isFirst ? badge(verdict) : ''}${told}</td>`,
    `<td class="n">${spare > 0 ? `${quantity} + ${spare}` : quantity}</td>`,
    `<td>${text(material ?? '')}</td>`,
    `<td class="n">${mass === null ? '' : `${plain(mass, 1)} g`}</td>`,
    `<td class="n">${size === '' ? '' : `${size} mm`}</td>`,
    `<td>${file === null ? '' : `<a href="${path(file)}" download>${text(file.split('/').at(-1) ?? '')}</a>`}</td>`,
  ];
  return `<tr data-verdict="${verdict}" data-material="${text(material ?? '')}">${cells.join('')}</tr>`;
}

/** `machines/a/a.coupon.bores.stl` → `bores` */
function bodyIn({ file, role }: ManifestRow): string {
  return file?.split('.').slice(2, -1).join('.') || role;
}

function reasonsOf(reasons: readonly string[], verdict: Standing): string {
  const list = `<ul>${reasons.map((reason) => `<li>${text(reason)}</li>`).join('')}</ul>`;
  const isOpen = verdict !== 'pass' && verdict !== 'caution';
  return `<details${isOpen ? ' open' : ''}><summary>${reasons.length} to mind</summary>${list}</details>`;
}

function plates({ plates: rows }: ManifestHead): string {
  if (rows.length === 0) return '';
  const list = rows.map(({ file, material, pieces }) => {
    const told = pieces.map(({ label, count }) => (count === 1 ? label : `${count} × ${label}`)).join(', ');
    return `<li><a href="${path(file)}" download>${text(file.split('/').at(-1) ?? '')}</a> <small>${text(material)}</small> ${text(told)}</li>`;
  });
  return `<section class="list"><h2>Plates</h2><ul>${list.join('')}</ul></section>`;
}

function* days(list: readonly PrintingDay[]): Iterable<string> {
  if (list.length === 0) return;
  yield '<section class="list"><h2>Printing days</h2><ul>';
  for (const { material, printer, pieces, mass, rows } of list) {
    yield `<li><b>${text(material)}</b> <small>${text(printer)}</small> ${pieces} pieces, ${plain(mass, 0)} g: `;
    let last = '';
    for (const { machine, role } of rows) {
      const name = `${machine} ${role}`;
      if (name !== last) yield text(last === '' ? name : `, ${name}`);
      last = name;
    }
    yield '</li>';
  }
  yield '</ul></section>';
}

function totals({ hardware, filament }: ManifestHead): string {
  const bought = hardware.map(({ item, size, count }) => `<li>${count} × ${text(item)} ${text(size)}</li>`).join('');
  const spools = filament.map(({ material, mass }) => `<li>${text(material)} ${plain(mass, 0)} g</li>`).join('');
  return `<section class="list"><h2>Hardware</h2><ul>${bought || '<li>none</li>'}</ul></section>
<section class="list"><h2>Filament</h2><ul>${spools || '<li>none</li>'}</ul></section>`;
}

function badge(verdict: Standing): string {
  return `<span class="badge ${verdict}">${STANDING_WORDS[verdict]}</span>`;
}

/** Names hold only letters, digits, points, - and _, so that a path needs no more than this. */
function path(file: string): string {
  return text(file.split('/').map(encodeURIComponent).join('/'));
}
