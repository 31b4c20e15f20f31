import { untoldWords } from '../../parts/common/hardware-words.js';
import { plain } from '../../units/format.js';
import { flatSizes } from '../flat-sizes.js';
import { inchSize } from '../inches.js';
import type { Report } from '../report.js';
import { words } from '../terminal/layout.js';
import { xmlText } from '../xml-text.js';
import { table } from './html.js';

/** Finished and printed sizes side by side. */
export function sizesSection({ dimensions, applied, figures, units }: Report): string {
  const isInch = units === 'inch';
  const [finished, printed] = [new Map(flatSizes(dimensions.finished)), new Map(flatSizes(dimensions.printed))];
  const names = [...new Set([...finished.keys(), ...printed.keys()])];
  const cell = (value: number | undefined) => (value === undefined ? '–' : value.toFixed(3));
  const rows = names.map((name) => {
    const [a, b] = [finished.get(name), printed.get(name)];
    const change = a === undefined || b === undefined ? '' : (b - a).toFixed(3).replace('-', '−');
    const told = [xmlText(words(name)), cell(a), cell(b), change === '0.000' || change === '−0.000' ? '·' : change];
    return isInch ? [...told, inchSize(name, a), inchSize(name, b)] : told;
  });
  return [
    `<p>${[applied, ...(figures ? [figures] : [])].map((words) => `${xmlText(words)}.`).join(' ')}</p>`,
    table(
      isInch ? 'Finished and printed sizes, mm, then inches' : 'Finished and printed sizes, mm',
      ['', 'finished', 'printed', 'change', ...(isInch ? ['finished, in', 'printed, in'] : [])],
      rows,
      isInch ? [1, 2, 3, 4, 5] : [1, 2, 3],
    ),
  ].join('\n');
}

/** What to buy, with boxes to tick. */
export function hardwareSection({ hardware }: Pick<Report, 'hardware'>): string {
  if (hardware.length === 0) return '';
  const rows = hardware.map((row, i) => {
    const words = `${row.count} × ${row.size}${untoldWords(row)}, ${row.item}`;
    return `<li><label class="tick"><input type="checkbox" id="hardware-${i + 1}"> ${xmlText(words)}</label></li>`;
  });
  return `<ul class="ticks">${rows.join('')}</ul>`;
}

/** Every default that was used. */
export function assumptionsSection({ assumptions }: Report): string {
  if (assumptions.length === 0) return '';
  const rows = assumptions.map(({ field, value, why }) => [
    xmlText(field),
    xmlText(typeof value === 'number' ? plain(value, 4) : value),
    xmlText(why),
  ]);
  return table('What the sheet did not say', ['field', 'taken as', 'why'], rows);
}

/** The files that lie beside the page, to be opened or sent to the printer. */
export function fileLinks(files: readonly string[]): string {
  if (files.length === 0) return '';
  const links = files.map((file) => `<a href="${encodeURIComponent(file)}">${xmlText(file)}</a>`);
  return `<p class="files"><strong>Files:</strong> ${links.join(' · ')} · <a href="#card">workshop card</a></p>`;
}

/** Files and bodies as they were written. */
export function filesSection({ bodies }: Report): string {
  const rows = bodies.map(({ file, material, facets, volume, mass }) => [
    xmlText(file),
    xmlText(material),
    `${(volume / 1000).toFixed(2)} cm³`,
    `${mass.toFixed(1)} g`,
    `${facets}`,
  ]);
  return rows.length === 0 ? '' : table('Bodies', ['file', 'material', 'volume', 'mass', 'facets'], rows, [2, 3, 4]);
}
