import { describe, expect, it } from 'vitest';
import { writeComparePage } from '../../src/output/compare/compare-page.js';
import { compareReports } from '../../src/output/compare/compare-reports.js';
import { comparisonText } from '../../src/output/compare/comparison-lines.js';
import { readReport } from '../../src/output/compare/stored-report.js';
import { makePart } from '../../src/pipeline/make.js';
import { InputError } from '../../src/units/faults.js';
import { CUBES } from '../support/cube-kind.js';

async function made(from: string, size: number) {
  const { files } = await makePart({ part: 'cube', name: from, size }, { kinds: CUBES, presets: {} });
  const report = new TextDecoder().decode(files.find(({ name }) => name === 'report.json')!.bytes);
  return { report: readReport(report, from), files: files.filter(({ name }) => name !== 'report.json') };
}

describe('compareReports', () => {
  it('finds sizes, checks, mass and bytes that changed', async () => {
    const changes = compareReports(await made('a', 10), await made('b', 12));
    expect(changes.same).toBe(false);
    expect(changes.sizes.find(({ of, name }) => of === 'finished' && name === 'edge')).toMatchObject({
      before: 10,
      after: 12,
    });
    expect(changes.checks.find(({ id }) => id === 'cube-size')).toMatchObject({ value: { before: 10, after: 12 } });
    // 1.24 g/cm³ · 1000 and 1728 mm³
    expect(changes.bodies[0]!.mass.before).toBeCloseTo(1.24, 4);
    expect(changes.bodies[0]!.mass.after).toBeCloseTo(2.14272, 4);
    expect(changes.files).toEqual([{ file: 'part.stl', bytes: { before: 684, after: 684 }, equal: false }]);
    const text = comparisonText(changes);
    expect(text).toMatch(/edge\s+10\.000\s+12\.000\s+\+2/);
    expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });

  it('says so where nothing changed, whatever the parts are called', async () => {
    const changes = compareReports(await made('a', 10), await made('b', 10));
    expect(changes.same).toBe(true);
    expect(comparisonText(changes)).toContain('the same');
  });

  it('tells first what went worse, in words, and nothing that only rounding moved', async () => {
    const [a, b] = [await made('z', 10), await made('z', 10)];
    const [first, second, ...others] = a.report.checks;
    const as = (row: typeof first, word: 'yes' | 'perhaps' | 'no', value: number) => ({ ...row!, word, value });
    const before = { ...a, report: { ...a.report, checks: [as(first, 'no', 1), as(second, 'yes', 2), ...others] } };
    const after = {
      ...b,
      report: { ...b.report, checks: [as(first, 'yes', 1), as(second, 'perhaps', 2.00001), ...others] },
    };
    const changes = compareReports(before, after);
    expect(changes.checks.map(({ id, went }) => [id, went])).toEqual([
      [second!.id, 'worse'],
      [first!.id, 'better'],
    ]);
    const text = comparisonText(changes, 60);
    expect(text).toMatch(/^z, earlier → z, later\n\nWent worse\n {2}yes → perhaps · /);
    expect(text).toMatch(/Went better\n {2}no → yes/);
    expect(text).not.toContain('2.00001');
    expect(text.split('\n').filter((line) => line.length > 60)).toEqual([]);
    const page = await writeComparePage(before, after, changes);
    expect(page.indexOf('Went worse')).toBeLessThan(page.indexOf('Both parts over each other'));
    // sizes that differ by less than is shown are the same
    const near = compareReports(a, {
      ...a,
      report: { ...a.report, dimensions: { ...a.report.dimensions, finished: { edge: 10.0004 } } },
    });
    expect(near.sizes.filter(({ name }) => name === 'edge' && near.same)).toEqual([]);
  });

  it('lays both parts over each other on a page', async () => {
    const [a, b] = [await made('a', 10), await made('b', 12)];
    const page = await writeComparePage(a, b, compareReports(a, b));
    expect(page).toContain('with the later part');
    expect(page).toContain('a → b');
  });

  it.each(['', '{}', '[1]', '{"leadwright":2}'])('refuses %j', (text) => {
    expect(() => readReport(text, 'x.json')).toThrow(InputError);
  });
});
