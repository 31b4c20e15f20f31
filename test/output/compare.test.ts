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
  return { from, report: readReport(report, from), files: files.filter(({ name }) => name !== 'report.json') };
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
