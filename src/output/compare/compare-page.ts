import type { Staging } from '../../parts/part-views.js';
import { measureMesh } from '../../solid/measure.js';
import type { Body } from '../../solid/mesh.js';
import { weld } from '../../solid/weld.js';
import { howMany } from '../../units/format.js';
import { besideOneAnother } from '../beside.js';
import { section, table } from '../page/html.js';
import { pageData } from '../page/mesh-data.js';
import { pageShell } from '../page/page-shell.js';
import { stageSection } from '../page/stage-section.js';
import { stillPicture } from '../picture/picture.js';
import { readStl } from '../read-stl.js';
import { words } from '../terminal/layout.js';
import { xmlText } from '../xml-text.js';
import { type Change, type CheckChange, type ComparedPart, type Comparison, moved } from './compare-reports.js';
import { figureChange, wordChange } from './comparison-lines.js';

/**
 * A page with both parts over each other, the later one translucent, and what changed in figures.
 *
 * @param a the earlier part, @param b the later one, each with its STL files
 * @param comparison what `compareReports` found
 * @returns HTML that opens from the disk; the same text each time
 */
export async function writeComparePage(a: ComparedPart, b: ComparedPart, comparison: Comparison): Promise<string> {
  const [before, after] = [bodiesOf(a), bodiesOf(b)];
  const views = overlaid(before, after);
  const bodies = before.map(({ name, material, positions, triangles }) => ({ name, material, positions, triangles }));
  const report = { name: `${comparison.a} and ${comparison.b}`, part: b.report.part, bodies: bodies.map(boundsRow) };
  const stage =
    bodies.length === 0
      ? '<p>There are no STL files beside the earlier report.</p>'
      : stageSection({ report, views, bodies }, stillPicture({ bodies, views }));
  const { verdict } = comparison;
  const worse = section('worse', 'Went worse', checkTable(comparison, 'worse'));
  return pageShell({
    title: `${comparison.a} → ${comparison.b}`,
    head: [
      `<header><h1>${xmlText(comparison.a)} → ${xmlText(comparison.b)}</h1>`,
      `<p class="lead">${xmlText(summary(comparison))}</p>`,
      `<p class="facts">Verdict: ${verdict.before === verdict.after ? `${verdict.after}, as before` : `${verdict.before} → ${verdict.after}`}. The earlier part is solid, the later one translucent.</p></header>`,
    ],
    sections: [
      worse,
      section('part', 'Both parts over each other', stage),
      section('better', 'Went better', checkTable(comparison, 'better')),
      section('sizes', 'Sizes', sizeTables(comparison)),
      section('checks', 'Checks whose figures moved', checkTable(comparison, 'neither')),
      section('files', 'Mass and files', fileTables(comparison)),
    ],
    data: pageData({ bodies, views, report }),
  });
}

/** The solids beside a report, by their STL files. */
function bodiesOf({ report, files }: ComparedPart): Body[] {
  return report.bodies.flatMap(({ file, material }): Body[] => {
    const found = files.find(({ name }) => name === file);
    return found ? [{ name: file, material, ...weld(readStl(found.bytes)) }] : [];
  });
}

function boundsRow(body: Body) {
  return { bounds: measureMesh(body).bounds, turn_over: false };
}

/** Views for the overlay: each later body stands where its earlier one does. */
function overlaid(before: readonly Body[], after: readonly Body[]): Staging {
  const shifts = besideOneAnother(before.map((body) => boundsRow(body).bounds));
  return {
    companions: after.map((body, i) => ({ name: 'the later part', mesh: shiftedMesh(body, shifts[i] ?? [0, 0, 0]) })),
    inUse: Object.fromEntries(before.map(({ name }, i) => [name, { by: shifts[i]! }])),
    cutTowards: 0,
  };
}

function shiftedMesh({ positions, triangles }: Body, by: readonly [number, number, number]) {
  return { positions: positions.map((value, i) => value + by[(i % 3) as 0 | 1 | 2]), triangles };
}

function sizeTables({ sizes }: Comparison): string {
  return (['finished', 'printed'] as const)
    .map((of) => {
      const rows = sizes.filter((size) => size.of === of).map((size) => [xmlText(words(size.name)), ...cells(size, 3)]);
      return rows.length === 0
        ? ''
        : table(
            `${of === 'finished' ? 'Finished' : 'Printed'} sizes, mm`,
            ['', 'before', 'after', 'change'],
            rows,
            [1, 2, 3],
          );
    })
    .join('\n');
}

function summary({ same, sizes, checks }: Comparison): string {
  if (same) return 'Nothing that matters changed.';
  const went = (way: CheckChange['went']) => checks.filter((check) => check.went === way).length;
  const finished = sizes.filter(({ of }) => of === 'finished').length;
  return `${howMany(went('worse'), 'check')} went worse, ${went('better')} better; ${howMany(finished, 'finished size')} changed.`;
}

function checkTable({ checks }: Comparison, went: CheckChange['went']): string {
  const rows = checks
    .filter((check) => check.went === went)
    .map((check) => [
      xmlText(wordChange(check)),
      xmlText(`${check.title}${figureChange(check)}`),
      xmlText(check.message),
    ]);
  const captions = {
    worse: 'Checks that went worse',
    better: 'Checks that went better',
    neither: 'Checks whose figures moved',
  };
  return rows.length === 0 ? '' : table(captions[went], ['word', 'check', 'what it says now'], rows);
}

function fileTables({ bodies, files }: Comparison): string {
  const masses = bodies.map(({ body, mass }) => [xmlText(body), ...cells(mass, 2)]);
  const rows = files
    .filter(({ equal }) => !equal)
    .map(({ file, bytes }) => [xmlText(file), `${bytes.before ?? '–'}`, `${bytes.after ?? '–'}`]);
  return [
    masses.length === 0 ? '' : table('Mass, g', ['body', 'before', 'after', 'change'], masses, [1, 2, 3]),
    rows.length === 0 ? '' : table('Files that differ, bytes', ['file', 'before', 'after'], rows, [1, 2]),
  ].join('\n');
}

function cells(change: Change<number>, places: number): string[] {
  const step = moved(change);
  const text = (value: number | null) => (value === null ? '–' : value.toFixed(places));
  return [text(change.before), text(change.after), step === undefined ? '' : step.toFixed(places).replace('-', '−')];
}
