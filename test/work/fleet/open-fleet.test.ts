import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderOf, openCubes, runCubes } from '../../support/fleet-folder.js';

const CUBE = 'part: {part: cube, size: 10}';
const machines = (text: string) => `fleet: f\nmachines:\n${text}`;

async function linesOf(text: string, more: Readonly<Record<string, string>> = {}): Promise<readonly string[]> {
  const { plan, lines } = await openCubes(folderOf({ 'fleet.yaml': text, ...more }));
  return plan ? [] : lines;
}

async function sheetsOf(text: string, more: Readonly<Record<string, string>> = {}) {
  const { plan, lines } = await openCubes(folderOf({ 'fleet.yaml': text, ...more }));
  if (!plan) throw new Error(lines.join('\n'));
  const byAddress = new Map(plan.distinct.map(({ address, whole }) => [address, whole().sheet]));
  return plan.parts.map(({ machine, role, address }) => [machine, role, byAddress.get(address)]);
}

describe('openFleet', () => {
  it('puts sheets together: defaults below, then kind, group, machine and part', async () => {
    const text = `fleet: f
defaults: {hole: 1, limits: {cube-size: 4}}
kinds:
  k: {with: {size: 11}, parts: {p: {sheet: sub/cube.yaml, with: {bodies: 2}}}}
groups: {g: {with: {size: 12}}}
machines:
  kind: {kind: k}
  group: {kind: k, group: g}
  machine: {kind: k, group: g, with: {size: 13}}
  part: {kind: k, group: g, with: {size: 13}, parts: {p: {with: {size: 14, hole: null}}}}
`;
    const cube = { part: 'cube', name: 'c', hole: 2, bodies: 2, limits: { 'cube-size': 4 } };
    const { hole: _, ...solid } = cube;
    expect(await sheetsOf(text, { 'sub/cube.yaml': 'part: cube\nname: c\nsize: 10\nhole: 2\n' })).toEqual([
      ['kind', 'p', { ...cube, size: 11 }],
      ['group', 'p', { ...cube, size: 12 }],
      ['machine', 'p', { ...cube, size: 13 }],
      ['part', 'p', { ...solid, size: 14 }],
    ]);
  });

  it('takes rows of a spreadsheet beside the file, with the kinds of the file', async () => {
    const text = `fleet: f\nkinds: {k: {parts: {p: {${CUBE}}}}}\nrows: rows.csv\n`;
    const rows = '\uFEFFmachine;kind;role;size\r\na;k;p;7,5\r\nb;k;p;\r\n';
    expect(await sheetsOf(text, { 'rows.csv': rows })).toEqual([
      ['a', 'p', { part: 'cube', name: 'p', size: 7.5 }],
      ['b', 'p', { part: 'cube', name: 'p', size: 10 }],
    ]);
  });

  it('finds sheets by whole paths too, and says which table names no machine', async () => {
    const other = folderOf({ 'cube.yaml': 'part: cube\nsize: 10\n' });
    const rows = `machine,role,sheet\na,p,${other}/cube.yaml\nb,p,${other}/none.yaml\n`;
    const { plan } = await openCubes(folderOf({ 'rows.csv': rows }), 'rows.csv');
    expect(plan?.parts.map(({ wrong }) => wrong)).toEqual([undefined, [`${other}/none.yaml: no such file or folder`]]);
    const { lines } = await openCubes(folderOf({ 'rows.csv': 'machine,role\n' }), 'rows.csv');
    expect(lines).toEqual(['rows.csv: there is no machine below its header']);
  });

  it('says which accepted check is not known, and which cannot be accepted', async () => {
    const text = machines(`  a:
    parts:
      p: {${CUBE}, accept: {cube-sise: never mind}}
      q: {${CUBE}, accept: {solid-closed: never mind, heat: short}}
`);
    const { manifest } = await runCubes(folderOf({ 'fleet.yaml': text }));
    expect(manifest.parts.map(({ reasons }) => reasons)).toEqual([
      [expect.stringMatching(/^fleet\.yaml:5:\d+ accept: cube-sise; unknown check; did you mean cube-size\?$/)],
      [
        expect.stringMatching(/^fleet\.yaml:6:\d+ accept: solid-closed; a broken solid cannot be accepted$/),
        expect.stringMatching(/^fleet\.yaml:6:\d+ accept: heat=short; wants a reason of at least 10 characters$/),
      ],
    ]);
  });

  it('says where in the rows a sheet is wrong', async () => {
    const cwd = folderOf({ 'rows.csv': 'machine,role,part,size,hole\na,ok,cube,9,\na,bad,cube,9,11\n' });
    const { manifest } = await runCubes(cwd, { file: 'rows.csv' });
    expect(manifest.fleet).toBe('rows');
    expect(manifest.parts.at(-1)?.reasons).toEqual(['rows.csv:3:5 hole: 11; must be below size']);
  });

  it('a part sheet that is not there or not YAML is that part’s matter', async () => {
    const line = `  a: {parts: {x: {sheet: none.yaml}, y: {${CUBE}}, z: {quantity: 1}}}`;
    const { manifest } = await runCubes(folderOf({ 'fleet.yaml': machines(`${line}\n`) }));
    expect(manifest.parts.map(({ verdict, reasons }) => [verdict, reasons[0]])).toEqual([
      ['wrong', 'none.yaml: no such file or folder'],
      ['caution', expect.any(String)],
      ['wrong', `fleet.yaml:3:${line.indexOf('{quantity') + 1} z: has no sheet; give sheet or part`],
    ]);
  });

  it('a role that is misspelt is told with the nearest that has a sheet', async () => {
    const text = machines(`  a: {parts: {rail: {${CUBE}}}}\n  b: {parts: {rial: {quantity: 1}}}\n`);
    const { manifest } = await runCubes(folderOf({ 'fleet.yaml': text }));
    expect(manifest.parts.at(-1)?.reasons[0]).toMatch(/has no sheet; give sheet or part, or did you mean rail\?$/);
  });

  it('a part sheet in place of a fleet file is one line, not a line a field', async () => {
    const cwd = folderOf({ 'fleet.yaml': 'part: nut\nname: a\nscrew: Tr8x2\n' });
    await expect(runCubes(cwd)).rejects.toThrow(
      /^fleet.yaml:1:7 part: nut; makes this the sheet of one part, and no fleet[^\n]*$/,
    );
  });

  it.each([
    [machines('  a/b: {}\n'), 'must be 1 to 64 letters'],
    [machines('  "..": {}\n'), 'must be 1 to 64 letters'],
    [machines('  CON: {}\n'), 'reserved device name'],
    [machines(`  ${'x'.repeat(300)}: {}\n`), 'must be 1 to 64 letters'],
    [machines('  Lift: {}\n  lift: {}\n'), 'must differ from Lift'],
    [machines(`  a: {parts: {P: {${CUBE}}, p: {${CUBE}}}}\n`), 'must differ from P'],
    [machines(`  a: {parts: {"x\\u0007": {${CUBE}}}}\n`), 'must be 1 to 64 letters'],
    [machines(`  a: {parts: {p: {${CUBE}, axis: ../z}}}\n`), 'must be 1 to 64 letters'],
    ['fleet: nul\nmachines: {}\n', 'reserved device name'],
    ['fleet: f\n', 'there is no machine'],
    ['fleet: f\nmachine: {}\n', 'did you mean machines?'],
    [`fleet: f\nkinds: {press: {}}\n${machines('  a: {kind: pres}\n').slice(9)}`, 'did you mean press?'],
    [`fleet: f\ndefaults: {sise: 3}\n${machines('  a: {}\n').slice(9)}`, 'did you mean size?'],
    [machines(`  a: {parts: {p: {${CUBE}, quantity: -1}}}\n`), 'whole number from 0 to 10000'],
    [machines(`  a: {parts: {p: {${CUBE}, quantity: 1.5}}}\n`), 'whole number'],
    ['fleet: f\nrows: none.csv\n', 'no such file'],
    ['', 'empty'],
  ])('refuses %j', async (text, told) => {
    expect((await linesOf(text)).join('\n')).toContain(told);
  });

  it('leaves wrongly given machines out where it is told to go on', async () => {
    const cwd = folderOf({ 'fleet.yaml': machines(`  a: {parts: {p: {${CUBE}}}}\n  a/b: {parts: {p: {${CUBE}}}}\n`) });
    const { plan, lines } = await openCubes(cwd, 'fleet.yaml', true);
    expect([plan?.machines.map(({ name }) => name), lines.length]).toEqual([['a'], 1]);
  });

  it('lists what a kind wants and a machine lacks', async () => {
    const text = `fleet: f\nkinds: {k: {needs: [x], parts: {p: {${CUBE}}}}}\nmachines:\n  a: {kind: k}\n  b: {kind: k, parts: {x: {${CUBE}}, p: {quantity: 0}}}\n  c: {kind: k, parts: {x: {${CUBE}}}}\n`;
    const { manifest } = await runCubes(folderOf({ 'fleet.yaml': text }));
    expect(manifest.machines.map(({ lacks, complete }) => [lacks, complete])).toEqual([
      [['x'], false],
      [['p'], false],
      [[], true],
    ]);
  });

  it('never climbs out of the output folder, whatever an earlier manifest says', async () => {
    const cwd = folderOf({ 'fleet.yaml': machines(`  a: {parts: {p: {${CUBE}}}}\n`), 'precious.txt': 'mine' });
    await runCubes(cwd);
    const forged = {
      leadwright: 1,
      fleet: 'f',
      machines: [],
      parts: [],
      files: ['../precious.txt', 'machines/../../precious.txt', '/etc/hostname'].map((file) => ({ file, digest: '' })),
    };
    writeFileSync(join(cwd, 'out/manifest.json'), JSON.stringify(forged));
    await runCubes(cwd);
    const { filesBelow } = await import('../../support/fleet-folder.js');
    expect(Object.keys(filesBelow(cwd))).toContain('precious.txt');
  });
});
