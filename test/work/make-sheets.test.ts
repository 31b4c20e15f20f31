import { mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { SolidFault } from '../../src/pipeline/solid-fault.js';
import { makeSheets } from '../../src/work/make-sheets.js';
import { CUBES } from '../support/cube-kind.js';
import { sharedKernel } from '../support/shared-kernel.js';

const kernel = sharedKernel;
const options = { kinds: CUBES, presets: {}, out: 'out', kernel };
async function* nothing() {}

function placeWith(sheets: Readonly<Record<string, string>>) {
  const cwd = mkdtempSync(join(tmpdir(), 'make-sheets-'));
  for (const [name, text] of Object.entries(sheets)) writeFileSync(join(cwd, name), text);
  return { cwd, stdin: nothing };
}

describe('makeSheets', () => {
  it('removes bodies of an earlier make that are no longer made', async () => {
    const place = placeWith({ 'a.yaml': 'part: cube\nname: a\nsize: 10\nbodies: 2\n' });
    await makeSheets(['a.yaml'], place, options);
    const folder = join(place.cwd, 'out/a');
    writeFileSync(join(folder, 'notes.txt'), 'mine');
    expect(readdirSync(folder).sort()).toEqual(['a-b1.stl', 'a-b2.stl', 'notes.txt', 'report.json']);
    writeFileSync(join(place.cwd, 'a.yaml'), 'part: cube\nname: a\nsize: 10\n');
    await makeSheets(['a.yaml'], place, options);
    expect(readdirSync(folder).sort()).toEqual(['a.stl', 'notes.txt', 'report.json']);
  });

  it('never removes what a report names outside its folder', async () => {
    const place = placeWith({ 'a.yaml': 'part: cube\nname: a\nsize: 10\n', 'b.stl': 'mine' });
    await makeSheets(['a.yaml'], place, options);
    const report = { leadwright: 1, bodies: [{ file: '../../b.stl' }, { file: 'notes.txt' }, { file: 7 }] };
    writeFileSync(join(place.cwd, 'out/a/report.json'), JSON.stringify(report));
    writeFileSync(join(place.cwd, 'out/a/notes.txt'), 'mine');
    await makeSheets(['a.yaml'], place, options);
    expect(readdirSync(place.cwd)).toContain('b.stl');
    expect(readdirSync(join(place.cwd, 'out/a'))).toContain('notes.txt');
  });

  it('a fault of ours in one sheet leaves the others alone', async () => {
    const place = placeWith({
      'a.yaml': 'part: cube\nname: a\nsize: 10\nbreaks: true\n',
      'b.yaml': 'part: cube\nname: b\nsize: 10\n',
    });
    const [a, b] = await makeSheets(['a.yaml', 'b.yaml'], place, options);
    expect(a).toMatchObject({ file: 'a.yaml', error: expect.any(Error) });
    expect(b).toMatchObject({ written: [join('out', 'b', 'b.stl'), join('out', 'b', 'report.json')] });
  });

  it('writes nothing where the mating test fails', async () => {
    const place = placeWith({ 'a.yaml': 'part: cube\nname: a\nsize: 10\nmates: false\n' });
    const [result] = await makeSheets(['a.yaml'], place, options);
    expect(result).toMatchObject({ error: expect.any(SolidFault) });
    expect(readdirSync(place.cwd)).toEqual(['a.yaml']);
  });
});
