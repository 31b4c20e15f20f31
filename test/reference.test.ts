import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fieldRows } from '../scripts/reference/fields.js';
import { referencePages } from '../scripts/reference/pages.js';
import { reasonsOf } from '../scripts/reference/reasons.js';
import { AXIS_KIND } from '../src/axis/axis-kind.js';
import { KINDS } from '../src/pipeline/kinds.js';

const ROOT = join(import.meta.dirname, '..');
const FOLDER = join(ROOT, 'docs/reference');
const pages = await referencePages();
/** Those that have a form of another kind are told there. */
const OWN = KINDS.filter(({ formOf }) => formOf === undefined);

/** Fields that a message names of the sheet of another part, which it says. */
const OF_ANOTHER = new Set(['plate.thickness']);
/** Fields' names that are words before a colon too. */
const PROSE = new Set(['hand', 'load', 'part', 'nut']);

/** Whether a path leads into the sheet of one of an axis' parts. */
function isOfPart(field: string): boolean {
  const [parts, , ...rest] = field.split('.');
  const own = KINDS.flatMap(({ schema }) => fieldRows(schema).map(({ path }) => path));
  return parts === 'parts' && (rest.length === 0 || own.includes(rest.join('.')));
}

/** What moves a check may be no field, and is told in words then: parts of an axis, or several words. */
function isProse(text: string, leaves: ReadonlySet<string>): boolean {
  if (/[_.]/.test(text)) return false;
  return text.includes(' ') || (KINDS.some(({ kind }) => kind === text) && !leaves.has(text)) || text === 'nut';
}

describe('docs/reference', () => {
  it.each([...pages])('%s is what schemas and checks say now (npm run reference writes it)', (file, text) => {
    expect(readFileSync(join(FOLDER, file), 'utf8')).toBe(text);
  });

  it('holds no other page', () => {
    expect(readdirSync(FOLDER).sort()).toEqual([...pages.keys()].sort());
  });

  it.each(OWN)('says of each check of the kind $kind why it is there, and of each limit what it is', (kind) => {
    const reasons = reasonsOf(ROOT, `parts/${kind.kind}`);
    expect(kind.checks.filter(({ id }) => !reasons.has(id)).map(({ id }) => id)).toEqual([]);
    const page = pages.get(`${kind.kind}.md`)!;
    for (const { id, title, source } of kind.checks) {
      const section = page.split('#### ').find((part) => part.startsWith(`\`${id}\`: ${title}\n`));
      expect(section, id).toContain(`- source: ${source}`);
      expect(section, id).toMatch(/^- limits: \S/m);
    }
  });

  it.each(OWN)('gives the law by which each strength of the kind $kind is worked out', ({ kind, checks }) => {
    const laws = pages.get('laws.md')!;
    const sections = pages.get(`${kind}.md`)!.split('#### ');
    for (const { id } of checks.filter(({ unit }) => unit === 'MPa')) {
      const own = sections.find((part) => part.startsWith(`\`${id}\`: `))!;
      const named = [...own.matchAll(/^- formula: `.+=.+`, \[(\w+)\]\(laws\.md#\w+\)$/gm)].map(([, name]) => name);
      expect(named.length, id).toBeGreaterThan(0);
      for (const name of named) expect(laws).toContain(`\n## ${name}\n`);
    }
  });

  it.each([...OWN, AXIS_KIND])('says of each check of a $kind with a limit what it is worked out by', ({ kind }) => {
    const sections = pages.get(`${kind}.md`)!.split('#### ').slice(1);
    const without = sections.filter((one) => !/^- limits: none/m.test(one) && !/^- formula: `.*=.*`/m.test(one));
    expect(without.map((one) => one.split('\n')[0])).toEqual([]);
  });

  it.each([...OWN, AXIS_KIND])(
    'names fields of a $kind only by the path that they have in its sheet',
    ({ kind, schema }) => {
      const paths = new Set(fieldRows(schema).map(({ path }) => path.replaceAll('[]', '')));
      const leaves = new Set([...paths].map((path) => path.split('.').at(-1)!));
      const isField = (field: string) => paths.has(field) || isOfPart(field) || OF_ANOTHER.has(field);
      const said = [...pages.get(`${kind}.md`)!.matchAll(/^- (\*[a-z, ]+\*|moved by): (.*)$/gm)];
      const wrong = said.flatMap(([, word, text = '']) => [
        ...[...text.matchAll(/(?<![\w.-])[a-z][a-z_]*(?:\.[a-z_]+)+/g)]
          .map(([field]) => field)
          .filter((field) => !isField(field)),
        // `degreased: yes` without the section that it stands in
        ...[...text.replaceAll(/\{[^}]*\}/g, '{').matchAll(/(?<=[ (])([a-z][a-z_]*): (?=[\da-z{])/g)]
          .map(([, field]) => field!)
          .filter((field) => leaves.has(field) && !isField(field) && !PROSE.has(field)),
        ...[...text.matchAll(/(?<![\w.{ ,])[a-z]+_[a-z_]+(?![\w.])/g)]
          .map(([field]) => field)
          .filter((field) => !isField(field)),
        ...(word === 'moved by' ? text.split(', ').filter((field) => !isField(field) && !isProse(field, leaves)) : []),
      ]);
      expect([...new Set(wrong)], kind).toEqual([]);
    },
  );

  it('tells a law as the comment above it does', () => {
    const told = pages.get('laws.md')!;
    // shear of a thread, by its handbook formula
    expect(told).toMatch(
      /## threadShear\n\n.*\n\n```text\nτ = F \/ \(π·D·w·q·Le\/P\)\n```\n\n- p\.axialForce F load along the axis \[N\]/,
    );
    expect(pages.get('nut.md')).toContain('- formula: `τ = F / (π·D·w·q·Le/P)`, [threadShear](laws.md#threadshear)');
  });

  it('states fields with unit, range, default and example', () => {
    const nut = pages.get('nut.md')!;
    expect(nut).toMatch(
      /^\| `screw\.major` \| over the crests.* \| from 2\.5 mm to 60\.5 mm \| mm \| .* \| `7\.95 ± 0\.03 mm` \|$/m,
    );
    expect(nut).toMatch(
      /^\| `printer\.nozzle` \| .* \| from 0\.1 mm to 1\.5 mm \| mm \| 0\.4: the most common nozzle \| `0\.4 mm` \|$/m,
    );
    expect(nut).toMatch(/^\| `body\.length` \* \|/m);
  });
});
