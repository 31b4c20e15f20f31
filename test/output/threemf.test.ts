import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { readStl } from '../../src/output/read-stl.js';
import { decimal } from '../../src/output/threemf/decimal.js';
import { modelXml } from '../../src/output/threemf/model-xml.js';
import { type MadePart, makePart } from '../../src/pipeline/make.js';
import { measureMesh } from '../../src/solid/measure.js';
import type { Mesh } from '../../src/solid/mesh.js';
import { CUBES } from '../support/cube-kind.js';
import { readStrictly } from '../support/reference-reader.js';
import { sharedKernel } from '../support/shared-kernel.js';
import { modelFaults, threeMfFaults } from '../support/threemf-faults.js';

const SHEETS = join(import.meta.dirname, '../../presets/sheets');
const options = { kinds: CUBES, presets: {}, formats: ['stl', '3mf'] as const };

const known = new Map<string, Promise<MadePart>>();

/** A shipped sheet made once, whoever asks. */
function shipped(sheet: string): Promise<MadePart> {
  const made =
    known.get(sheet) ??
    makePart(readFileSync(join(SHEETS, sheet), 'utf8'), { formats: ['stl', '3mf'], kernel: sharedKernel });
  known.set(sheet, made);
  return made;
}

const make = async () => makePart({ part: 'cube', name: 'a', size: 10, bodies: 2 }, options);

function meshes(xml: string): Mesh[] {
  return [...xml.matchAll(/<object [^>]*>[\s\S]*?<\/object>/g)].map(([text]) => ({
    positions: Float64Array.from(
      [...text.matchAll(/<vertex x="([^"]+)" y="([^"]+)" z="([^"]+)"\/>/g)].flatMap((m) => m.slice(1).map(Number)),
    ),
    triangles: Uint32Array.from(
      [...text.matchAll(/<triangle v1="(\d+)" v2="(\d+)" v3="(\d+)"\/>/g)].flatMap((m) => m.slice(1).map(Number)),
    ),
  }));
}

describe('writeThreeMf', () => {
  it('holds what the core specification wants of a package', async () => {
    const { files } = await make();
    const zip = unzipSync(files.find(({ name }) => name === 'a.3mf')!.bytes);
    expect(Object.keys(zip).sort()).toEqual([
      '3D/3dmodel.model',
      'Metadata/thumbnail.png',
      '[Content_Types].xml',
      '_rels/.rels',
    ]);
    const relations = strFromU8(zip['_rels/.rels']!);
    expect(relations).toContain('Target="/3D/3dmodel.model"');
    expect(relations).toContain('http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel');
    expect([...zip['Metadata/thumbnail.png']!.slice(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  });

  // one body and several; plates of a fleet are tried where they are laid out
  it.each(['demo-nut.yaml', 'demo-coupling.yaml'])('keeps to the core specification: %s', async (sheet) => {
    const { files } = await shipped(sheet);
    const packages = files.filter(({ name }) => name.endsWith('.3mf'));
    expect(packages).toHaveLength(1);
    expect(threeMfFaults(packages[0]!.bytes)).toEqual([]);
  });

  it.each([
    ['demo-nut.yaml', 1],
    ['demo-coupling.yaml', 3],
    ['demo-adapter.yaml', 1],
  ])('passes the reference library, its bodies apart and on the bed: %s', async (sheet, count) => {
    const { files, report } = await shipped(sheet);
    const read = await readStrictly(files.find(({ name }) => name.endsWith('.3mf'))!.bytes);
    expect(read.warnings).toEqual([]);
    expect(read.objects).toHaveLength(count);
    expect(read.objects.filter(({ isSound }) => !isSound)).toEqual([]);
    expect(read.items.map(({ partNumber }) => `${partNumber}.stl`)).toEqual(report.bodies.map(({ file }) => file));
    expect(read.items.filter(({ hasTransform }) => hasTransform)).toEqual([]);
    for (const [i, { low, high }] of read.objects.entries()) {
      expect(low[2]).toBe(0);
      expect(Math.min(low[0]!, low[1]!)).toBeGreaterThan(1);
      for (const other of read.objects.slice(i + 1)) expect(other.low[0]! - high[0]!).toBeGreaterThan(5);
    }
  });

  it('lays a body that is printed the other way up on its other end', async () => {
    const { files, report } = await shipped('demo-adapter.yaml');
    const [row] = report.bodies;
    const [mesh] = meshes(
      strFromU8(unzipSync(files.find(({ name }) => name.endsWith('.3mf'))!.bytes)['3D/3dmodel.model']!),
    );
    const stl = readStl(files.find(({ name }) => name.endsWith('.stl'))!.bytes);
    const up = row!.turn_over ? -1 : 1;
    // heights over the bed, and how much of the surface lies there
    const heights = (all: Float64Array, sign: number) => {
      const z = [...all].filter((_, i) => i % 3 === 2).map((value) => sign * value);
      const bed = Math.min(...z);
      return [...new Set(z.map((value) => (value - bed).toFixed(4)))].sort();
    };
    expect(heights(mesh!.positions, 1)).toEqual(heights(stl.positions, up));
    expect(measureMesh(mesh!).volume).toBeCloseTo(row!.volume, 2);
  });

  it('is found at fault where it is', async () => {
    const { files } = await make();
    const xml = strFromU8(unzipSync(files.find(({ name }) => name === 'a.3mf')!.bytes)['3D/3dmodel.model']!);
    const spoilt: [string | RegExp, string, RegExp][] = [
      ['unit="millimeter"', 'unit="mm"', /unit/],
      [/<vertex x="[^"]*"/, '<vertex x="1,5"', /vertex x/],
      [/<triangle v1="\d+"/, '<triangle v1="99999"', /facets/],
      [/ pindex="\d+"/, ' pindex="7"', /material 7/],
      ['<object id="3"', '<object id="2"', /2 comes twice/],
      ['objectid="2"', 'objectid="1"', /no object/],
      ['name="lw:part"', 'name="part"', /name space/],
      [/<triangles>[\s\S]*?<\/triangles>/, '', /mesh holds/],
    ];
    expect(modelFaults(xml)).toEqual([]);
    for (const [from, to, said] of spoilt) expect(modelFaults(xml.replace(from, to)).join()).toMatch(said);
  });

  it('holds the meshes of the STL files, in millimetres, beside one another', async () => {
    const { files } = await make();
    const xml = strFromU8(unzipSync(files.find(({ name }) => name === 'a.3mf')!.bytes)['3D/3dmodel.model']!);
    expect(xml).toContain('<model unit="millimeter"');
    expect(xml).not.toContain('transform');
    const items = [...xml.matchAll(/<item objectid="(\d+)" partnumber="([^"]+)"\/>/g)].map((m) => m.slice(1));
    expect(items).toEqual([
      ['2', 'a-b1'],
      ['3', 'a-b2'],
    ]);
    const read = meshes(xml);
    ['a-b1.stl', 'a-b2.stl'].forEach((name, i) => {
      const stl = readStl(files.find((file) => file.name === name)!.bytes);
      const [wanted, got] = [measureMesh(stl), measureMesh(read[i]!)];
      expect(got).toMatchObject({ facets: wanted.facets, openEdges: 0, shells: 1 });
      // cubes of edge 10 about the axis: 8 mm off the corner of the bed, and 8 mm apart
      const first = 8 + 18 * i;
      expect(got.bounds).toEqual([
        [first, 8, 0],
        [first + 10, 18, 10],
      ]);
      // a cube of edge 10
      expect(got.volume).toBeCloseTo(1000, 6);
    });
  });

  it('gives the same bytes in every time zone', async () => {
    const zone = process.env.TZ;
    const bytes = async () => (await make()).files.find(({ name }) => name === 'a.3mf')!.bytes;
    process.env.TZ = 'Asia/Tokyo';
    const first = Buffer.from(await bytes());
    process.env.TZ = 'America/Lima';
    expect(first.equals(Buffer.from(await bytes()))).toBe(true);
    if (zone === undefined) delete process.env.TZ;
    else process.env.TZ = zone;
  });
});

describe('modelXml', () => {
  it('escapes names, and puts what the core does not know under a name space of its own', () => {
    const mesh = { positions: new Float64Array(), triangles: new Uint32Array() };
    const xml = modelXml([{ ...mesh, name: '<b>', material: 'a"b' }], {
      name: '<script>',
      part: 'nut',
      applied: 'a & b',
    });
    expect(xml).not.toMatch(/<script>|<b>/);
    expect(xml).toContain('<base name="a&quot;b"');
    const known =
      /^(?:Title|Designer|Description|Copyright|LicenseTerms|Rating|CreationDate|ModificationDate|Application)$|^lw:/;
    const names = [...xml.matchAll(/<metadata name="([^"]+)"/g)].map((m) => m[1]!);
    expect(names.filter((name) => !known.test(name))).toEqual([]);
    expect(xml).toContain('<metadata name="lw:applied">a &amp; b</metadata>');
  });
});

describe('decimal', () => {
  it('turns back into the same float32, never with an exponent', () => {
    const values = [0.1, 1 / 3, 18.705763, 1e-7, 3e-9, 123456.79, -0.05, 2 ** -30, 1e-12].map(Math.fround);
    for (const value of values) {
      expect(decimal(value)).not.toMatch(/e/i);
      expect(Math.fround(Number(decimal(value)))).toBe(value);
    }
    expect(decimal(-0)).toBe('0');
  });
});
