import { xmlText as text } from '../output/xml-text.js';
import { howMany, plain } from '../units/format.js';
import { leftWords, STANDING_WORDS } from './counts.js';
import type { IndexLinks } from './index-links.js';
import { INDEX_SCRIPT, INDEX_STYLE } from './index-look.js';
import { machineEntries } from './index-machines.js';
import { badge, fileLink } from './index-marks.js';
import { partEntries, wantedParts } from './index-parts.js';
import type { Manifest, ManifestHead } from './manifest.js';
import { framed } from './page-frame.js';
import type { PrintingDay } from './printing.js';

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
  const distinct = wantedParts(manifest.rows);
  const { machines } = manifest.counts;
  yield `<header>
<h1>${text(manifest.fleet)}</h1>
${summary(manifest, links)}
</header>
<main>
${filters(manifest)}
<fieldset class="view"><legend>Show</legend>${view('by-machine', `by machine (${machines})`, true)}${view('by-part', `by part (${distinct.length})`, false)}</fieldset>
<p id="count" role="status" aria-live="polite"></p>
<section class="machines"><h2>Machines</h2>
`;
  yield* machineEntries(manifest.rows, machines, links);
  yield '</section>\n<section class="parts"><h2>Parts</h2>\n';
  yield* partEntries(distinct, links);
  yield `</section>\n<p id="none" hidden>No part answers to these filters.</p>\n${plates(manifest)}\n`;
  yield* days(links.days);
  yield `\n${totals(manifest)}\n</main>\n`;
}

/** One of two ways to look at the fleet; the style shows it, so that no script is needed. */
function view(id: string, label: string, isFirst: boolean): string {
  return `<label><input type="radio" name="view" id="${id}"${isFirst ? ' checked' : ''}> ${label}</label>`;
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

function filters({ words }: ManifestHead): string {
  return `<form class="filters" role="search" hidden>
<label>Find <input id="machine" type="search" autocomplete="off" placeholder="any part of a name"></label>
${choice('kind', 'Kind', words.kinds)}
${choice('verdict', 'Verdict', words.verdicts, STANDING_WORDS)}
${choice('material', 'Material', words.materials)}
<button type="reset">Show all</button>
</form>`;
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

function plates({ plates: rows }: ManifestHead): string {
  if (rows.length === 0) return '';
  const list = rows.map(({ file, material, pieces }) => {
    const told = pieces.map(({ label, count }) => (count === 1 ? label : `${count} × ${label}`)).join(', ');
    return `<li>${fileLink(file)} <small>${text(material)}</small> <details><summary>${howMany(pieces.length, 'part')}</summary>${text(told)}</details></li>`;
  });
  return `<section class="list"><h2>Plates</h2><ul>${list.join('')}</ul></section>`;
}

function* days(list: readonly PrintingDay[]): Iterable<string> {
  if (list.length === 0) return;
  yield '<section class="list"><h2>Printing days</h2><ul>';
  for (const { material, printer, pieces, mass, rows } of list) {
    yield `<li><b>${text(material)}</b> <small>${text(printer)}</small> <details><summary>${howMany(pieces, 'piece')}, ${plain(mass, 0)} g</summary>`;
    let last = '';
    for (const { machine, role } of rows) {
      const name = `${machine} ${role}`;
      if (name !== last) yield text(last === '' ? name : `, ${name}`);
      last = name;
    }
    yield '</details></li>';
  }
  yield '</ul></section>';
}

function totals({ hardware, filament }: ManifestHead): string {
  const bought = hardware.map(({ item, size, count }) => `<li>${count} × ${text(item)} ${text(size)}</li>`).join('');
  const spools = filament.map(({ material, mass }) => `<li>${text(material)} ${plain(mass, 0)} g</li>`).join('');
  return `<section class="list"><h2>Hardware</h2><ul>${bought || '<li>none</li>'}</ul></section>
<section class="list"><h2>Filament</h2><ul>${spools || '<li>none</li>'}</ul></section>`;
}
