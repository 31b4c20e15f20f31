import { execFileSync } from 'node:child_process';
import { appendFileSync, chmodSync, existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { SHIPPED } from '../../../src/presets/shipped.js';
import { localMaker, type Maker } from '../../../src/work/fleet/makers.js';
import { noMaker } from '../../../src/work/fleet/no-maker.js';
import { runShare } from '../../../src/work/fleet/share.js';
import { CUBES } from '../../support/cube-kind.js';
import { accounts, filesBelow, folderOf, kernel, manifestIn, openCubes, runCubes } from '../../support/fleet-folder.js';

const TWO = `fleet: two
machines:
  a: {parts: {foot: {part: {part: cube, name: foot, size: 10, hole: 1}, quantity: 4}}}
  b: {parts: {foot: {part: {part: cube, name: foot, size: 10 mm, hole: 1}}, head: {part: {part: cube, size: 12}}}}
`;
const bad = (size: string) => TWO.replace('size: 12', `size: ${size}`);

/** A maker that counts what it makes. */
function counting(): { maker: () => Maker; made: string[] } {
  const made: string[] = [];
  const maker = () => {
    const local = localMaker({ kernel, kinds: CUBES });
    return {
      ...local,
      make: (job: Parameters<Maker['make']>[0]) => {
        made.push(String(job.sheet.name));
        return local.make(job);
      },
    };
  };
  return { maker, made };
}

describe('runFleet', () => {
  it('makes each distinct part once, and gives every machine its own files', async () => {
    const cwd = folderOf({ 'fleet.yaml': TWO });
    const { maker, made } = counting();
    const { manifest } = await runCubes(cwd, { maker });
    expect(made.sort()).toEqual(['foot', 'head']);
    expect(
      manifest.parts.map(({ machine, role, file, quantity, verdict }) => [machine, role, file, quantity, verdict]),
    ).toEqual([
      ['a', 'foot', 'machines/a/a.foot.stl', 4, 'caution'],
      ['b', 'foot', 'machines/b/b.foot.stl', 1, 'caution'],
      ['b', 'head', 'machines/b/b.head.stl', 1, 'caution'],
    ]);
    // a cube of 10 mm of 1.24 g/cm³ weighs 1.24 g, one of 12 mm 2.14272 g
    expect(manifest.filament).toEqual([{ material: 'pla', mass: expect.closeTo(5 * 1.24 + 2.14272, 4) }]);
    // four screws a cube, six cubes
    expect(manifest.hardware).toEqual([{ item: 'socket cap screw ISO 4762', size: 'M3x10', count: 24 }]);
    const { there, told } = accounts(join(cwd, 'out'));
    expect(told).toEqual(there);
  });

  it('makes a part whose failed check its machine accepts, and only for that machine', async () => {
    const small = 'part: {part: cube, name: foot, size: 3}';
    const cwd = folderOf({
      'fleet.yaml': `fleet: f
kinds: {k: {parts: {foot: {${small}}}}}
machines:
  a: {kind: k, parts: {foot: {accept: {cube-size: a shim is enough here}}}}
  b: {kind: k}
`,
      'rows.csv': 'machine,role,part,size,accept.cube-size\nc,foot,cube,3,a shim is enough here\n',
    });
    const { manifest } = await runCubes(cwd);
    expect(manifest.parts.map(({ machine, verdict, reasons }) => [machine, verdict, reasons[0]])).toEqual([
      ['a', 'caution', 'cube-size accepted: a shim is enough here'],
      ['b', 'fail', 'cube-size: the edge is 3 mm'],
    ]);
    const rows = await runCubes(cwd, { file: 'rows.csv', out: join(cwd, 'rows') });
    expect(rows.manifest.parts[0]).toMatchObject({ machine: 'c', verdict: 'caution' });
  });

  it('gives the same bytes again from the cache, into another folder, and makes nothing then', async () => {
    const cwd = folderOf({ 'fleet.yaml': TWO });
    const first = await runCubes(cwd, { zip: true, bed: { width: 100, depth: 100 } });
    const { maker, made } = counting();
    const again = await runCubes(cwd, { zip: true, bed: { width: 100, depth: 100 }, out: join(cwd, 'other'), maker });
    expect([first.made, first.reused, again.made, again.reused, made]).toEqual([2, 0, 0, 2, []]);
    expect(filesBelow(join(cwd, 'other'))).toEqual(filesBelow(join(cwd, 'out')));
    const fresh = await runCubes(cwd, {
      zip: true,
      bed: { width: 100, depth: 100 },
      out: join(cwd, 'third'),
      stores: [{ folder: join(cwd, 'new') }],
    });
    expect(fresh.made).toBe(2);
    expect(filesBelow(join(cwd, 'third'))).toEqual(filesBelow(join(cwd, 'out')));
  });

  it('lists a bad part with its reason, and makes the others', async () => {
    for (const [size, verdict, reason] of [
      ['3', 'fail', 'cube-size: the edge is 3 mm'],
      [
        '-2 mm',
        'wrong',
        `fleet.yaml:4:${bad('-2 mm').split('\n')[3]!.indexOf('-2 mm') + 1} size: -2 mm; must be above 0`,
      ],
    ] as const) {
      const cwd = folderOf({ 'fleet.yaml': bad(size) });
      const { manifest } = await runCubes(cwd);
      expect(manifest.machines.map((row) => [row.machine, row.complete, row.verdict])).toEqual([
        ['a', true, 'caution'],
        ['b', false, verdict],
      ]);
      expect(manifest.parts.at(-1)).toMatchObject({
        role: 'head',
        file: null,
        verdict,
        reasons: expect.arrayContaining([reason]),
      });
      expect(existsSync(join(cwd, 'out/machines/b/b.foot.stl'))).toBe(true);
      const { there, told } = accounts(join(cwd, 'out'));
      expect(told).toEqual(there);
    }
  });

  it('clears files of parts that are no longer there, and leaves strangers alone', async () => {
    const cwd = folderOf({ 'fleet.yaml': TWO });
    await runCubes(cwd, { zip: true });
    writeFileSync(join(cwd, 'out/machines/b/notes.txt'), 'mine');
    writeFileSync(
      join(cwd, 'fleet.yaml'),
      TWO.replace(/ {2}b: .*\n/, '  c: {parts: {foot: {part: {part: cube, size: 9}}}}\n'),
    );
    await runCubes(cwd);
    const { there, told } = accounts(join(cwd, 'out'));
    const { 'machines/b/notes.txt': mine, ...ours } = there;
    expect(mine).toBeDefined();
    expect(ours).toEqual(told);
    expect(readdirSync(join(cwd, 'out')).sort()).toEqual([
      'hardware.csv',
      'index.html',
      'machines',
      'manifest.csv',
      'manifest.json',
      'parts',
      'printing.csv',
    ]);
  });

  it('heals what was damaged in the cache or in the folder', async () => {
    const cwd = folderOf({ 'fleet.yaml': TWO });
    await runCubes(cwd);
    const before = filesBelow(join(cwd, 'out'));
    const entries = Object.keys(filesBelow(join(cwd, 'cache')));
    for (const damage of ['entry.json', '.stl']) {
      for (const name of entries.filter((one) => one.endsWith(damage))) appendFileSync(join(cwd, 'cache', name), ' ');
      const again = await runCubes(cwd);
      expect([again.made, filesBelow(join(cwd, 'out'))]).toEqual([2, before]);
    }
    writeFileSync(join(cwd, 'out/machines/a/a.foot.stl'), 'worn');
    rmSync(join(cwd, 'out/parts'), { recursive: true });
    await runCubes(cwd);
    expect(filesBelow(join(cwd, 'out'))).toEqual(before);
    rmSync(join(cwd, 'cache'), { recursive: true });
    await runCubes(cwd);
    expect(filesBelow(join(cwd, 'out'))).toEqual(before);
  });

  it('waits for no pipe in the cache or in place of a manifest', async () => {
    const cwd = folderOf({ 'fleet.yaml': TWO });
    await runCubes(cwd);
    const before = filesBelow(join(cwd, 'out'));
    for (const name of Object.keys(filesBelow(join(cwd, 'cache'))).filter((one) => /entry\.json|head\.stl/.test(one))) {
      rmSync(join(cwd, 'cache', name));
      execFileSync('mkfifo', [join(cwd, 'cache', name)]);
    }
    expect((await runCubes(cwd)).made).toBe(2);
    expect(filesBelow(join(cwd, 'out'))).toEqual(before);
    rmSync(join(cwd, 'out/manifest.json'));
    execFileSync('mkfifo', [join(cwd, 'out/manifest.json')]);
    await expect(runCubes(cwd)).rejects.toThrow('is no manifest of a fleet');
  });

  it('refuses the folder of another fleet, and one that cannot be written', async () => {
    const cwd = folderOf({ 'fleet.yaml': TWO, 'other.yaml': TWO.replace('fleet: two', 'fleet: three'), file: '' });
    await runCubes(cwd);
    await expect(runCubes(cwd, { file: 'other.yaml' })).rejects.toThrow('holds the fleet two');
    await expect(runCubes(cwd, { out: join(cwd, 'file') })).rejects.toThrow(/in the way/);
    await expect(runCubes(cwd, { out: join(cwd, 'new'), stores: [{ folder: join(cwd, 'file') }] })).rejects.toThrow(
      /in the way/,
    );
    if (process.getuid?.() === 0) return;
    chmodSync(join(cwd, 'out'), 0o500);
    await expect(runCubes(cwd, { zip: true })).rejects.toThrow('no permission');
  });

  it('runs some machines alone, and keeps what is said of the others', async () => {
    const cwd = folderOf({ 'fleet.yaml': TWO });
    const part = await runCubes(cwd, { only: ['a'] });
    expect(part.manifest.machines.map(({ machine, verdict }) => [machine, verdict])).toEqual([
      ['a', 'caution'],
      ['b', 'missing'],
    ]);
    // b has the foot of a too, and is not given it
    expect(part.manifest.parts.filter(({ machine, file }) => machine === 'b' && file !== null)).toEqual([]);
    expect(part.manifest.counts).toMatchObject({ complete: 1, files: 1, pieces: 4 });
    const whole = await runCubes(cwd);
    writeFileSync(join(cwd, 'fleet.yaml'), TWO.replace('quantity: 4', 'quantity: 3'));
    const { manifest } = await runCubes(cwd, { only: ['a'] });
    expect(manifest.parts.slice(1)).toEqual(whole.manifest.parts.slice(1));
    expect(manifest.hardware[0]?.count).toBe(20);
    const { there, told } = accounts(join(cwd, 'out'));
    expect(told).toEqual(there);
  });

  it('stops after what is in hand, says what is not made, and goes on from there', async () => {
    const cwd = folderOf({ 'fleet.yaml': TWO });
    const { maker, made } = counting();
    const result = await runCubes(cwd, { maker, stopped: () => made.length > 0 });
    expect(result.stopped).toBe(true);
    expect(made).toHaveLength(1);
    expect(result.manifest.parts.map(({ verdict }) => verdict)).toContain('missing');
    const { there, told } = accounts(join(cwd, 'out'));
    expect(told).toEqual(there);
    const next = await runCubes(cwd, { maker });
    expect([next.made, next.reused, made.length]).toEqual([1, 1, 2]);
  });

  it('puts shares together to the same bytes as the whole, wrong sheets included', async () => {
    const files = {
      'fleet.yaml': `${bad('-1')}  c: {parts: {foot: {part: {part: cube, size: 3}}, leg: {part: {part: cube, size: 8}}}}\n`,
    };
    const cwd = folderOf(files);
    await runCubes(cwd);
    const { plan } = await openCubes(cwd);
    const shares = [1, 2, 3].map((index) => ({ index, count: 3, folder: join(cwd, `share-${index}`) }));
    for (const { index, count, folder } of shares) {
      await runShare(
        plan!,
        { index, count },
        {
          out: folder,
          stores: [{ folder: join(cwd, `cache-${index}`) }],
          maker: () => localMaker({ kernel, kinds: CUBES }),
          formats: ['stl'],
          onProgress: () => undefined,
          stopped: () => false,
        },
      );
    }
    const stores = [{ folder: join(cwd, 'none') }, ...shares] as const;
    const merged = await runCubes(cwd, { out: join(cwd, 'merged'), stores, maker: () => noMaker(CUBES) });
    expect(merged.made).toBe(0);
    expect(filesBelow(join(cwd, 'merged'))).toEqual(filesBelow(join(cwd, 'out')));
    const fewer = [{ folder: join(cwd, 'none') }, ...shares.slice(1)] as const;
    const partial = await runCubes(cwd, { out: join(cwd, 'partial'), stores: fewer, maker: () => noMaker(CUBES) });
    const standing = new Set(partial.manifest.parts.map(({ verdict }) => verdict));
    expect(standing.has('wrong')).toBe(true);
  });

  it.each([2, 3, 8])('%i runs at once of a fleet that is being edited leave what one of them leaves', async (count) => {
    const sizes = Array.from({ length: count }, (_, i) => 12 + i);
    const cwd = folderOf(
      Object.fromEntries(sizes.map((size) => [`${size}/fleet.yaml`, TWO.replace('size: 12', `size: ${size}`)])),
    );
    const stores = [{ folder: join(cwd, 'cache') }] as const;
    const run = (size: number, out: string) =>
      runCubes(join(cwd, `${size}`), { out: join(cwd, out), zip: true, labels: true, stores });
    const alone = await Promise.all(
      sizes.map(async (size) => {
        await run(size, `alone-${size}`);
        return filesBelow(join(cwd, `alone-${size}`));
      }),
    );
    await Promise.all(sizes.map((size) => run(size, 'out')));
    expect(alone).toContainEqual(filesBelow(join(cwd, 'out')));
    const { there, told } = accounts(join(cwd, 'out'));
    expect(told).toEqual(there);
    expect(readdirSync(cwd).filter((name) => name.startsWith('.'))).toEqual([]);
    expect(await run(12, 'out')).toMatchObject({ made: 0, reused: 2 });
  });

  it('a preset that changes makes the parts new that name it, and no others', async () => {
    const cwd = folderOf({ 'fleet.yaml': TWO });
    const place = { cwd, stdin: async function* () {} };
    const { openFleet } = await import('../../../src/work/fleet/open-fleet.js');
    const { KINDS } = await import('../../../src/pipeline/kinds.js');
    const { SOUND_NUT } = await import('../../support/nut-sheets.js');
    const sheet = (material: string) => JSON.stringify({ ...SOUND_NUT, material });
    writeFileSync(
      join(cwd, 'nuts.yaml'),
      `fleet: nuts\nmachines: {a: {parts: {x: {part: ${sheet('pla')}}, y: {part: ${sheet('petg')}}}}}\n`,
    );
    const addresses = async (presets: typeof SHIPPED) =>
      (await openFleet('nuts.yaml', place, { kinds: KINDS, presets, formats: ['stl'] })).plan!.parts.map(
        ({ address }) => address,
      );
    const before = await addresses(SHIPPED);
    expect(await addresses({ ...SHIPPED })).toEqual(before);
    const changed = { ...SHIPPED, 'materials/pla.yaml': `${SHIPPED['materials/pla.yaml']}\n# newly measured\n` };
    const after = await addresses(changed);
    expect([after[0] === before[0], after[1] === before[1]]).toEqual([false, true]);
  });

  it('keeps the cache below its limit, oldest first', async () => {
    const cwd = folderOf({ 'fleet.yaml': TWO });
    await runCubes(cwd, { cacheLimit: 1 });
    expect(Object.keys(filesBelow(join(cwd, 'cache')))).toEqual([]);
    const { there, told } = accounts(join(cwd, 'out'));
    expect(told).toEqual(there);
  });

  it('zips a machine: its printable files and reports, always alike', async () => {
    const cwd = folderOf({ 'fleet.yaml': TWO });
    await runCubes(cwd, { zip: true });
    const files = unzipSync(new Uint8Array(readFileSync(join(cwd, 'out/zips/b.zip'))));
    expect(Object.keys(files)).toEqual([
      'start.html',
      'hardware.csv',
      'print/b.foot.stl',
      'parts/foot/report.json',
      'print/b.head.stl',
      'parts/head/report.json',
    ]);
  });

  it('manifest and folder agree, whatever the fleet and whatever was there before', async () => {
    const part = fc.record({
      size: fc.constantFrom(-1, 3, 6, 7),
      quantity: fc.constantFrom(0, 1, 3),
      bodies: fc.constantFrom(1, 2),
    });
    const machines = fc.dictionary(
      fc.constantFrom('a', 'b', 'a_b'),
      fc.dictionary(fc.constantFrom('x', 'y-b1', 'y'), part),
      { minKeys: 1 },
    );
    await fc.assert(
      fc.asyncProperty(fc.array(machines, { minLength: 1, maxLength: 3 }), async (fleets) => {
        const cwd = folderOf({});
        for (const fleet of fleets) {
          const sheet = Object.entries(fleet).map(([name, parts]) => [
            name,
            {
              parts: Object.fromEntries(
                Object.entries(parts).map(([role, { quantity, ...cube }]) => [
                  role,
                  { quantity, part: { part: 'cube', ...cube } },
                ]),
              ),
            },
          ]);
          writeFileSync(join(cwd, 'fleet.yaml'), JSON.stringify({ fleet: 'any', machines: Object.fromEntries(sheet) }));
          await runCubes(cwd, { zip: true, bed: { width: 60, depth: 60 } });
          const { there, told } = accounts(join(cwd, 'out'));
          expect(told).toEqual(there);
          const files = manifestIn(join(cwd, 'out'))!.parts.flatMap(({ file, digest }) =>
            file === null ? [] : [[file, digest]],
          );
          for (const [file, digest] of files) expect(there[file!]).toBe(digest);
        }
      }),
      { numRuns: 12 },
    );
  });
});
