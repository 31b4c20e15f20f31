import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { call } from '../support/call.js';
import { folderOf } from '../support/fleet-folder.js';

const NUT = `part: nut
name: z
screw: {designation: Tr8x2, major: 7.95 mm, hand: right}
body: {shape: round, diameter: 14 mm, length: 15 mm}
flange: {shape: round, diameter: 32 mm, thickness: 4 mm}
holes: {count: 4, circle: 23 mm, start: 45 deg, screw: M3, head: flange}
fit: running
material: pa12
`;

interface Foreseen {
  readonly would: string;
  readonly reasons: readonly string[];
  readonly wanted: readonly { readonly machine: string; readonly role: string }[];
}

/** What a run of a fleet of such files would do, as `would machine role`, with the reasons. */
async function foreseen(files: Readonly<Record<string, string>>) {
  const file = 'fleet.yaml' in files ? 'fleet.yaml' : 'rows.csv';
  const { code, stdout, stderr } = await call(folderOf({ 'z.yaml': NUT, ...files }), [
    'fleet',
    file,
    '--dry-run',
    '--json',
  ]);
  if (code === 2) return { code, parts: [], reasons: [stderr], odd: [] };
  const answer: { parts: Foreseen[]; odd: { message: string }[] } = JSON.parse(stdout);
  return {
    code,
    parts: answer.parts.flatMap(({ would, wanted }) => wanted.map((one) => `${would} ${one.machine} ${one.role}`)),
    reasons: answer.parts.flatMap(({ reasons }) => reasons),
    odd: answer.odd.map(({ message }) => message),
  };
}

describe('readings that must be taken', () => {
  it('a blank cell under a reading lists the machine as not measured', async () => {
    const rows = 'machine;role;sheet;screw.major\na;left;z.yaml;7,92\nb;left;z.yaml;\nb;right;z.yaml;7,9\n';
    const { code, parts, reasons } = await foreseen({ 'rows.csv': rows });
    expect([code, parts.sort()]).toEqual([1, ['make a left', 'measure b left', 'measure b right']]);
    expect(reasons).toEqual([
      'rows.csv:3:4 screw.major: not measured; give the reading, or write: as template',
      'waits for the readings of left',
    ]);
  });

  it('a row may say that the template is meant', async () => {
    const rows = 'machine;role;sheet;screw.major\na;left;z.yaml;7,95\nb;left;z.yaml;As Template\n';
    // both are the template's 7.95 mm, so one part serves both
    expect(await foreseen({ 'rows.csv': rows })).toMatchObject({ code: 0, parts: ['make a left', 'make b left'] });
  });

  it('columns that are no readings may be blank', async () => {
    const rows = 'machine;role;sheet;body.length;duty.load;quantity\na;left;z.yaml;;;\n';
    expect(await foreseen({ 'rows.csv': rows })).toMatchObject({ code: 0, parts: ['make a left'] });
  });

  it('a kind or a part of a fleet file names what must be measured', async () => {
    const fleet = (more: string) => `fleet: f
kinds:
  k: {needs: [left, screw.major], parts: {left: {sheet: z.yaml}}}
  l: {parts: {left: {sheet: z.yaml, needs: [holes.circle]}}}
machines:
  a: {kind: k, parts: {left: {with: {screw: {major: 7.9}}}}}
  b: {kind: k}
  c: {kind: k, with: {screw: {major: as template}}}
  d: {kind: l}
${more}`;
    const { code, parts } = await foreseen({ 'fleet.yaml': fleet('') });
    expect([code, parts.sort()]).toEqual([1, ['make a left', 'make c left', 'measure b left', 'measure d left']]);
    const shared = await foreseen({
      'fleet.yaml': fleet('  e: {kind: k, group: g}\ngroups: {g: {with: {screw: {major: 7.9}}}}\n'),
    });
    expect(shared.parts).toContain('measure e left');
  });

  it('says which reading is not known', async () => {
    const text =
      'fleet: f\nkinds: {k: {needs: [screw.majr], parts: {left: {sheet: z.yaml}}}}\nmachines: {a: {kind: k}}\n';
    expect((await foreseen({ 'fleet.yaml': text })).reasons[0]).toContain(
      'needs: screw.majr; no such reading; did you mean screw.major?',
    );
  });

  it('as template is no value elsewhere', async () => {
    const rows = 'machine;role;sheet;body.length\na;left;z.yaml;as template\n';
    const { code, reasons } = await foreseen({ 'rows.csv': rows });
    expect([code, reasons[0]]).toEqual([1, expect.stringContaining('rows.csv:2:4 body.length: as template')]);
  });
});

describe('readings that stand alone', () => {
  const rows = (...majors: string[]) =>
    `machine;role;sheet;screw.major\n${majors.map((major, i) => `m${i};left;z.yaml;${major}`).join('\n')}\n`;

  it('are told with the likely slip, where they stand', async () => {
    const { odd } = await foreseen({ 'rows.csv': rows('7,29', '7,93', '7,95', '7,93') });
    expect(odd).toEqual([
      'rows.csv:2:4 screw.major: 7.29 stands alone, its 3 fellows read about 7.93; if two digits changed places, it was 7.92',
    ]);
  });

  it('are told of two only where a slip explains it', async () => {
    expect((await foreseen({ 'rows.csv': rows('7,29', '7,92') })).odd).toHaveLength(2);
    expect((await foreseen({ 'rows.csv': rows('7,6', '7,92') })).odd).toEqual([]);
  });

  it('are not told of worn screws, nor of screws of another designation', async () => {
    expect((await foreseen({ 'rows.csv': rows('7,85', '7,95', '7,92', '7,9') })).odd).toEqual([]);
    const two = 'machine;role;sheet;screw.designation;screw.major\n';
    const mixed = ['Tr8x2;7,9', 'Tr8x2;7,93', 'Tr8x2;7,95', 'Tr10x2;9,9'].map(
      (cells, i) => `m${i};left;z.yaml;${cells}`,
    );
    expect((await foreseen({ 'rows.csv': `${two}${mixed.join('\n')}\n` })).odd).toEqual([]);
  });

  it('stand in terminal, index and manifest, and make the machine a caution', async () => {
    const cwd = folderOf({ 'z.yaml': NUT, 'rows.csv': rows('7,29', '7,93', '7,95', '7,93') });
    const { stdout } = await call(cwd, ['fleet', 'rows.csv', '--formats', 'stl']);
    const told = 'screw.major: 7.29 stands alone';
    expect(stdout).toContain(told);
    expect(readFileSync(join(cwd, 'out/rows/index.html'), 'utf8')).toContain(told);
    expect(readFileSync(join(cwd, 'out/rows/manifest.csv'), 'utf8')).toContain(told);
    const manifest: { machines: { verdict: string; odd: object[] }[] } = JSON.parse(
      readFileSync(join(cwd, 'out/rows/manifest.json'), 'utf8'),
    );
    expect(manifest.machines[0]).toMatchObject({ odd: [{ field: 'screw.major', meant: 7.92 }] });
    expect(manifest.machines[0]?.verdict).not.toBe('pass');
  });
});
