import { describe, expect, it } from 'vitest';
import { check } from '../../src/pipeline/check.js';
import { design } from '../../src/pipeline/design.js';
import { makePart } from '../../src/pipeline/make.js';
import { model } from '../../src/pipeline/model.js';
import { SolidFault } from '../../src/pipeline/solid-fault.js';
import { InputError } from '../../src/units/faults.js';
import { CUBES } from '../support/cube-kind.js';
import { sharedKernel } from '../support/shared-kernel.js';

const options = { kinds: CUBES, presets: {} };
const sheet = (more: object = {}) => ({ part: 'cube', name: 'a', size: 10, ...more });

function faultsOf(work: () => unknown) {
  try {
    work();
  } catch (error) {
    if (error instanceof InputError) return error.faults;
    throw error;
  }
  throw new Error('no fault was found');
}

describe('design', () => {
  it('takes a text or the same as an object', () => {
    expect(design('part: cube\nname: a\nsize: 10 mm\n', options)).toEqual(design(sheet({ size: '10 mm' }), options));
  });

  it.each([
    ['name: a\n', 'part', /^is missing; must be one of cube, axis$/],
    ['part: cubee\n', 'part', /did you mean cube\?/],
    ['part: split-nut\n', 'part', /leadwright new split-nut prints how its sheet begins/],
    ['part: 7\n', 'part', /^must be one of cube, axis$/],
    ['- a\n', '', /begins with part: cube/],
  ])('refuses %j', (text, path, allowed) => {
    const [fault] = faultsOf(() => design(text, options));
    expect(fault).toMatchObject({ path, at: { line: 1 } });
    expect(fault!.allowed).toMatch(allowed);
  });

  it('finds the place of a mistake between two fields', () => {
    const faults = faultsOf(() => design('part: cube\nname: a\nsize: 10\nhole:\n  12\n', options));
    expect(faults).toEqual([{ path: 'hole', value: '12', allowed: 'must be below size', at: { line: 5, column: 3 } }]);
  });

  it('shows all mistakes of a sheet at once', () => {
    const faults = faultsOf(() => design('part: cube\nname: ../a\nsize: -1\nsizze: 3\n', options));
    expect(faults.map(({ at }) => at?.line)).toEqual([2, 3, 4]);
  });
});

describe('limits of a sheet', () => {
  const limited = (limits: object, size = 10) => check(design(sheet({ size, limits }), options), options);
  const row = (report: ReturnType<typeof check>, id: string) => report.checks.find((finding) => finding.id === id);

  it('replace the bound that a check has, in the unit of the check', () => {
    expect(row(limited({ 'cube-size': '1.2 cm' }), 'cube-size')).toMatchObject({
      verdict: 'fail',
      limit: { min: 12 },
      replaced_limit: { min: 5 },
    });
    expect(row(limited({ 'cube-wish': { max: 8 } }), 'cube-wish')).toMatchObject({
      verdict: 'caution',
      limit: { max: 8 },
    });
  });

  it.each([
    [{ 'cube-sise': 3 }, 'limits.cube-sise', 'did you mean cube-size?'],
    [{ 'cube-size': { max: 3 } }, 'limits.cube-size.max', 'has no max'],
    [{ 'cube-size': '3 kg' }, 'limits.cube-size', 'unit must be one of'],
    [{ 'cube-size': '3 ± 1 mm' }, 'limits.cube-size', 'takes no ±'],
    [{ 'solid-closed': 3 }, 'limits.solid-closed', 'unknown check'],
  ])('refuse %j', (limits, path, allowed) => {
    const [fault] = faultsOf(() => limited(limits));
    expect(fault!.path).toBe(path);
    expect(fault!.allowed).toContain(allowed);
  });

  it('refuse with a place in a text', () => {
    const text = 'part: cube\nname: a\nsize: 10\nlimits:\n  cube-sise: 3\n';
    expect(faultsOf(() => design(text, options))[0]).toMatchObject({ at: { line: 5, column: 14 } });
  });
});

describe('check', () => {
  it('reports every check, with margins of those that pass', () => {
    const report = check(design(sheet(), options), options);
    expect(report.checks.map(({ id, verdict, margin }) => [id, verdict, margin])).toEqual([
      ['cube-size', 'pass', 5],
      ['cube-wish', 'pass', 10],
      ['heat', 'pass', null],
      ['cube-load', 'caution', null],
    ]);
    expect(report).toMatchObject({ leadwright: 1, part: 'cube', name: 'a', verdict: 'caution', bodies: [] });
  });

  it('counts an accepted fail as a caution, grave ones first', () => {
    const made = design(sheet({ size: 13, limits: { 'cube-size': 20 } }), options);
    const accept = [
      { check: 'cube-size', reason: 'small on purpose' },
      { check: 'heat', reason: 'a trial piece for the bench' },
    ];
    expect(check(made, options).verdict).toBe('fail');
    const report = check(made, { ...options, accept });
    expect(report.verdict).toBe('caution');
    expect(report.accepted.map((row) => row.check)).toEqual(['heat', 'cube-size']);
    expect(report.checks[0]).toMatchObject({ verdict: 'fail', accepted: 'small on purpose' });
  });

  it.each([
    ['cube-sise', 'x', 'did you mean cube-size?'],
    ['solid-closed', 'a good long reason', 'cannot be accepted'],
    ['mate-play', 'a good long reason', 'cannot be accepted'],
    ['heat', 'short', 'at least 10 characters'],
    ['cube-size', ' ', 'wants a reason'],
  ])('refuses to accept %s for "%s"', (id, reason, told) => {
    const made = design(sheet(), options);
    expect(() => check(made, { ...options, accept: [{ check: id, reason }] })).toThrow(told);
  });
});

describe('model and makePart', () => {
  it('model gives named bodies with their material', async () => {
    const bodies = await model(design(sheet({ bodies: 2 }), options), options);
    expect(bodies.map(({ name, material }) => [name, material])).toEqual([
      ['b1', 'pla'],
      ['b2', 'pla'],
    ]);
  });

  it('gives files that measure what was worked out, and a report of them', async () => {
    const { report, files } = await makePart(sheet(), options);
    expect(files.map(({ name }) => name)).toEqual(['a.stl', 'report.json']);
    // 12 facets of a cube; 10³ mm³ of PLA at 1.24 g/cm³ are 1.24 g
    expect(report.bodies).toEqual([
      {
        file: 'a.stl',
        material: 'pla',
        facets: 12,
        volume: 1000,
        mass: 1.24,
        closed: true,
        turn_over: false,
        bounds: [
          [-5, -5, 0],
          [5, 5, 10],
        ],
      },
    ]);
    expect(report.checks.slice(4).map(({ id, verdict }) => [id, verdict])).toEqual([
      ['solid-closed', 'pass'],
      ['solid-volume', 'pass'],
      ['solid-bounds', 'pass'],
      ['measured-wall', 'pass'],
      ['measured-overhang', 'pass'],
      ['solid-wall', 'pass'],
      ['mate-play', 'pass'],
    ]);
    expect(JSON.parse(new TextDecoder().decode(files[1]!.bytes))).toEqual(report);
  });

  it('names several bodies apart', async () => {
    const { files } = await makePart(sheet({ bodies: 2 }), options);
    expect(files.map(({ name }) => name)).toEqual(['a-b1.stl', 'a-b2.stl', 'report.json']);
  });

  it.each([
    ['a check', { size: 3 }, 'cube-size'],
    [
      'the volume of a sheet with a looser limit',
      { size: 4.5, measures: false, limits: { 'cube-size': 4 } },
      'solid-volume',
    ],
  ])('gives no file where %s fails', async (_, more, id) => {
    const { report, files } = await makePart(sheet(more), options);
    expect(files).toEqual([]);
    expect(report.verdict).toBe('fail');
    expect(report.bodies).toEqual([]);
    expect(report.checks.find((finding) => finding.verdict === 'fail')!.id).toBe(id);
  });

  it.each([
    ['volume', { measures: false }, /solid-volume is 999 \(a\.stl holds 1000 mm³, 1 mm³ were worked out\)/],
    ['mating', { mates: false }, /mate-play is 2 mm³/],
    [
      'volume, with a limit that lets nothing through,',
      { measures: false, limits: { 'cube-size': 4 } },
      /solid-volume/,
    ],
  ])('takes a wrong %s of a sheet that passed its checks for a fault of its own', async (_, more, told) => {
    const failed = makePart(sheet(more), options);
    await expect(failed).rejects.toThrow(SolidFault);
    await expect(failed).rejects.toThrow(told);
    await expect(failed).rejects.toThrow(/send the sheet and this line, leadwright \d/);
  });

  it('gives the same bytes twice, with a kernel in use or its own', async () => {
    const kernel = await sharedKernel;
    const first = await makePart(sheet(), { ...options, kernel });
    expect(await makePart(sheet(), options)).toEqual(first);
    expect(await makePart(sheet(), { ...options, kernel })).toEqual(first);
  });

  it('takes a recipe that is no solid for a fault of its own', async () => {
    const failed = makePart(sheet({ breaks: true }), options);
    await expect(failed).rejects.toThrow(Error);
    await expect(failed).rejects.not.toThrow(InputError);
  });
});
