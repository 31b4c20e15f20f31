import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { createEngine, type Pictures } from '../../../page/live/engine/engine.js';
import { makePart } from '../../../src/pipeline/make.js';
import { startSheet } from '../../../src/pipeline/start-sheets.js';

const wasm = readFileSync(createRequire(import.meta.url).resolve('manifold-3d/manifold.wasm'));
const engine = createEngine(async () => wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength));
const NUT = 'part: nut\nname: a\nscrew: Tr8x2\nbody: {diameter: 20, length: 14}\nprinter: {compensation: file}\n';

/** What must be accepted of a sheet for it to be made. */
function failedOf(sheet: string) {
  const judged = engine.judge({ sheet });
  const checks = 'report' in judged ? judged.report.checks : [];
  return checks
    .filter(({ verdict }) => verdict === 'fail')
    .map(({ id }) => ({ check: id, reason: 'tried on the page' }));
}

describe('the engine of the live page', () => {
  it('judges as the command does, and tells mistakes as data with their line', () => {
    const judged = engine.judge({ sheet: NUT });
    expect('report' in judged && judged.report.questions.map(({ title }) => title)).toEqual([
      'Goes on?',
      'Turns?',
      'Holds?',
      // of a nut without holes nobody told what holds it
      'Mounts?',
      'Prints?',
      // of a screw that may let its axis down nobody told whether it is level
      'The axis?',
    ]);
    expect(engine.judge({ sheet: NUT.replace('20', 'wide') })).toMatchObject({
      mistakes: [{ path: 'body.diameter', value: 'wide', at: { line: 4 } }],
    });
    expect(engine.judge({ sheet: '' })).toMatchObject({ mistakes: [{ allowed: 'the sheet is empty' }] });
  });

  it('judges an axis, a row a part, and gives each of its parts a sheet of its own', () => {
    const judged = engine.judge({ sheet: startSheet('axis') });
    if (!('report' in judged) || !judged.parts) throw new Error('the start sheet of an axis is no axis');
    const { report, parts } = judged;
    expect(report.sentence).not.toBe('');
    const rows = report.questions.map(({ question }) => question);
    for (const { role, sheet } of parts) {
      expect(rows).toContain(role);
      const own = engine.judge({ sheet });
      if (!('report' in own)) throw new Error(`the sheet of ${role} has mistakes`);
      const found = report.checks.filter(({ question }) => question === role);
      expect(found.map(({ id, verdict }) => [id, verdict])).toEqual(
        own.report.checks.map(({ id, verdict }) => [`${role}/${id}`, verdict]),
      );
    }
    expect(engine.cures({ sheet: startSheet('axis').replace(/travel: [\d.]+/, 'travel: 400') })).toMatchObject({
      checks: expect.arrayContaining([expect.objectContaining({ check: 'axis-travel' })]),
    });
    expect(engine.sketch({ sheet: startSheet('axis') })).toBeUndefined();
    expect(engine.judge({ sheet: 'part: axis\nname: a\nparts: {}\n' })).toHaveProperty('mistakes');
  });

  it('makes every part of an axis', async () => {
    const sheet = startSheet('axis')
      .replace(/ {2}coupling:\n(?: {4}.*\n)+/, '')
      .replace('material: pc', 'material: petg');
    const accepted = failedOf(sheet);
    const made = await engine.make({ sheet, accepted }, 'all');
    if (!('files' in made)) throw new Error(made.refused);
    expect(made.files.map(({ name }) => name)).toEqual(expect.arrayContaining(['my-axis-nut.stl', 'report.html']));
    expect(made.files.every(({ name }) => !name.includes('/'))).toBe(true);
  });

  it('takes what is accepted, and refuses a reason that is too short', () => {
    const thin = NUT.replace('20', '10.4');
    const failed = engine.judge({ sheet: thin });
    expect('report' in failed && failed.report.verdict).toBe('fail');
    const id = 'report' in failed ? failed.report.checks.find(({ verdict }) => verdict === 'fail')!.id : '';
    const taken = engine.judge({ sheet: thin, accepted: [{ check: id, reason: 'a trial that carries nothing' }] });
    expect('report' in taken && taken.report.accepted).toEqual([{ check: id, reason: 'a trial that carries nothing' }]);
  });

  it('names a screw', () => {
    const named = engine.name({ major: [7.92], crests: { count: 10, length: 20.02 }, starts: 4 });
    expect('candidates' in named && named.candidates[0]!.designation).toBe('Tr8x8(P2)');
    expect(engine.name({})).toHaveProperty('mistakes');
  });

  it('gives the start sheet of every kind', () => {
    for (const kind of [
      'nut',
      'adapter',
      'coupling',
      'sleeve',
      'collar',
      'end-holder',
      'motor-plate',
      'coupon',
      'gauge',
    ])
      expect(engine.start(kind)).toBe(startSheet(kind));
  });

  it('sketches the section that it draws, with the same sizes', async () => {
    const { section } = (await engine.draw({ sheet: NUT })) as Pictures;
    const sketch = engine.sketch({ sheet: NUT })!;
    expect(sketch.sizes).toEqual(section.sizes);
    expect(sketch.hatched.flat().length).toBe(section.hatched.flat().length);
    expect(engine.sketch({ sheet: 'part: nut' })).toBeUndefined();
    expect(engine.sketch({ sheet: startSheet('coupon') })).toBeUndefined();
  });

  it('draws the section, and nothing of a sheet with mistakes', async () => {
    const pictures = (await engine.draw({ sheet: NUT })) as Pictures;
    const view = pictures.section;
    expect(pictures.others[0]!.strokes.length).toBeGreaterThan(3);
    expect(view.hatched.length).toBeGreaterThan(0);
    expect(view.strokes.length).toBeGreaterThan(8);
    expect(await engine.draw({ sheet: 'part: nut' })).toBeUndefined();
  });

  it('says in words where no solids can be built, and judges all the same', async () => {
    const bare = createEngine(async () => new ArrayBuffer(0));
    expect(await bare.draw({ sheet: NUT })).toEqual({ why: expect.stringMatching(/builds no solids/) });
    expect(await bare.make({ sheet: NUT }, 'all')).toEqual({ refused: expect.stringMatching(/builds no solids/) });
    expect(bare.judge({ sheet: NUT })).toHaveProperty('report');
  });

  it('makes the bytes of the command, or says in one line why not', async () => {
    const made = await engine.make({ sheet: NUT }, 'all');
    const { files } = await makePart(NUT, { formats: ['stl', '3mf', 'drawing', 'page'] });
    expect('files' in made && made.files.map(({ name }) => name)).toEqual(files.map(({ name }) => name));
    for (const [i, { bytes }] of files.entries())
      expect('files' in made && Buffer.from(made.files[i]!.bytes).equals(Buffer.from(bytes))).toBe(true);
    const first = await engine.make({ sheet: NUT }, 'stl');
    const stl = 'files' in first && first.files.find(({ name }) => name === 'a.stl');
    expect(stl && Buffer.from(stl.bytes).equals(Buffer.from(files.find(({ name }) => name === 'a.stl')!.bytes))).toBe(
      true,
    );
    expect(await engine.make({ sheet: 'part: nut' }, 'all')).toHaveProperty('refused');
  });
});
