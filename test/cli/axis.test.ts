import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { startSheet } from '../../src/pipeline/start-sheets.js';
import { AXIS_TEXT } from '../support/axis-sheets.js';
import { call, callFolder } from '../support/call.js';
import { filesBelow } from '../support/fleet-folder.js';

function folderWith(files: Readonly<Record<string, string>>): string {
  const cwd = callFolder();
  for (const [name, text] of Object.entries(files)) writeFileSync(join(cwd, name), text);
  return cwd;
}

/** The start sheet without its coupling, which takes the longest to build. */
const SMALL = startSheet('axis')
  .replace(/ {2}coupling:\n(?: {4}.*\n)+/, '')
  .replace('material: pc', 'material: petg');

describe('check of an axis', () => {
  it('answers in 24 lines: its own questions, then a line a part', async () => {
    const cwd = folderWith({ 'axis.yaml': AXIS_TEXT });
    const { code, stdout, stderr } = await call(cwd, ['check', 'axis.yaml']);
    expect(code, stderr).toBe(0);
    const rows = stdout.trimEnd().split('\n');
    expect(rows.length).toBeLessThanOrEqual(24);
    const at = (start: string) => rows.findIndex((row) => row.startsWith(`  ${start}`));
    const order = ['Parts agree?', 'Stands the heat?', 'nut ', 'coupling ', 'end-holder '].map(at);
    expect(order.every((row, i) => row > 0 && (i === 0 || row > order[i - 1]!))).toBe(true);
    expect(existsSync(join(cwd, 'out'))).toBe(false);
  });

  it('shows every figure of every part, and gives the axis with its parts', async () => {
    const cwd = folderWith({ 'axis.yaml': AXIS_TEXT });
    const all = (await call(cwd, ['check', 'axis.yaml', '--all'])).stdout;
    expect(all).toMatch(/axis-travel/);
    expect(all).toMatch(/coupling\/grip-torque/);
    const { part, parts, checks } = JSON.parse((await call(cwd, ['check', 'axis.yaml', '--json'])).stdout);
    expect(part).toBe('axis');
    expect(parts.map(({ role, report }: { role: string; report: { name: string } }) => [role, report.name])).toEqual([
      ['nut', 'paper-lift-nut'],
      ['coupling', 'paper-lift-coupling'],
      ['end-holder', 'paper-lift-end-holder'],
    ]);
    expect(checks.some(({ id }: { id: string }) => id === 'nut/wall')).toBe(true);
  });

  it('holds the screw in each part as printed where it is asked to', async () => {
    const cwd = folderWith({ 'axis.yaml': SMALL });
    const { checks } = JSON.parse((await call(cwd, ['check', 'axis.yaml', '--mate', '--json'])).stdout);
    const held = checks.filter(({ id }: { id: string }) => id.startsWith('nut/mate-'));
    expect(held.length).toBeGreaterThan(0);
    expect(held.map(({ verdict }: { verdict: string }) => verdict)).not.toContain('fail');
    const plainly = JSON.parse((await call(cwd, ['check', 'axis.yaml', '--json'])).stdout).checks;
    expect(plainly.length).toBe(checks.length - held.length);
  });

  it('places a mistake in any section', async () => {
    const cwd = folderWith({ 'axis.yaml': AXIS_TEXT.replace('diameter: 18 mm', 'diameter: -18 mm') });
    const { code, stderr } = await call(cwd, ['check', 'axis.yaml']);
    expect(code).toBe(2);
    expect(stderr).toMatch(/^axis\.yaml:\d+:\d+ parts\.nut\.body\.diameter: -18 mm; must be above 0\n$/);
  });

  it('exits with 1 where a part or what goes across fails, unless it is accepted by name', async () => {
    const cwd = folderWith({ 'axis.yaml': AXIS_TEXT.replace('travel: 240 mm', 'travel: 300 mm') });
    const failed = await call(cwd, ['check', 'axis.yaml']);
    expect(failed.code).toBe(1);
    expect(failed.stdout).toMatch(/--accept axis-travel=REASON/);
    const reason = 'the last 50 mm are never used';
    expect((await call(cwd, ['check', 'axis.yaml', '--accept', `axis-travel=${reason}`])).code).toBe(0);
    const role = await call(cwd, ['check', 'axis.yaml', '--accept', `nutt/wall=${reason}`]);
    expect([role.code, role.stderr]).toEqual([2, expect.stringMatching(/its parts: nut, coupling, end-holder/)]);
    const bare = await call(cwd, ['check', 'axis.yaml', '--accept', `wall=${reason}`]);
    expect([bare.code, bare.stderr]).toEqual([2, expect.stringMatching(/PART\/CHECK/)]);
    expect((await call(cwd, ['check', 'axis.yaml', '--accept', `nut/walll=${reason}`])).stderr).toMatch(
      /did you mean wall/,
    );
  });

  it('stands beside sheets of single parts, each with what is accepted of it', async () => {
    const cwd = folderWith({ 'axis.yaml': AXIS_TEXT, 'nut.yaml': startSheet('nut') });
    const { code, stdout } = await call(cwd, [
      'check',
      'axis.yaml',
      'nut.yaml',
      '--json',
      '--accept',
      'wall=on the bench',
    ]);
    expect(code).toBe(0);
    expect(JSON.parse(stdout).map(({ part }: { part: string }) => part)).toEqual(['axis', 'nut']);
    const twin = folderWith({ 'axis.yaml': AXIS_TEXT, 'b.yaml': startSheet('nut').replace('my-nut', 'Paper-Lift') });
    expect((await call(twin, ['check', 'axis.yaml', 'b.yaml'])).stderr).toMatch(/must differ from that of/);
  });
});

describe('make of an axis', () => {
  it('writes each part into its folder, one report, one page, and the same bytes again', async () => {
    const cwd = folderWith({ 'axis.yaml': SMALL });
    const accept = ['--accept', 'axis-locating=the coupling that is there carries it'];
    const { code, stdout, stderr } = await call(cwd, ['make', 'axis.yaml', ...accept]);
    expect(code, stderr).toBe(0);
    expect(stdout.trimEnd().split('\n').length).toBeLessThanOrEqual(24);
    const files = filesBelow(join(cwd, 'out'));
    expect(Object.keys(files).sort()).toEqual([
      'my-axis/end-holder/drawing.svg',
      'my-axis/end-holder/my-axis-end-holder.3mf',
      'my-axis/end-holder/my-axis-end-holder.stl',
      'my-axis/end-holder/report.html',
      'my-axis/end-holder/report.json',
      'my-axis/nut/drawing.svg',
      'my-axis/nut/my-axis-nut.3mf',
      'my-axis/nut/my-axis-nut.stl',
      'my-axis/nut/report.html',
      'my-axis/nut/report.json',
      'my-axis/report.html',
      'my-axis/report.json',
    ]);
    const page = readFileSync(join(cwd, 'out/my-axis/report.html'), 'utf8');
    const steps = [
      'Measure',
      'Order',
      'Print',
      'Block',
      'Isolate',
      'Take out',
      'Mount',
      'Turn by hand',
      'Set steps',
      'After the first hot day',
    ];
    const places = steps.map((step) => page.indexOf(`<strong>${step}`));
    expect(places.every((place, i) => place > 0 && (i === 0 || place > places[i - 1]!))).toBe(true);
    expect(page).not.toMatch(/<script|https?:/);
    await call(cwd, ['make', 'axis.yaml', ...accept, '--out', 'again']);
    expect(filesBelow(join(cwd, 'again'))).toEqual(files);
    // a part that is gone from the sheet goes from the folder; files of others stay
    writeFileSync(join(cwd, 'out/my-axis/nut/notes.txt'), 'mine');
    writeFileSync(join(cwd, 'axis.yaml'), SMALL.replace(/ {2}end-holder:\n(?: {4}.*\n)+/, ''));
    const fewer = await call(cwd, ['make', 'axis.yaml', ...accept, '--formats', 'stl']);
    expect(fewer.code, fewer.stderr).toBe(0);
    expect(Object.keys(filesBelow(join(cwd, 'out'))).sort()).toEqual([
      'my-axis/nut/my-axis-nut.stl',
      'my-axis/nut/notes.txt',
      'my-axis/nut/report.json',
      'my-axis/report.json',
    ]);
  }, 60_000);

  it('writes nothing at all where one part fails', async () => {
    const cwd = folderWith({
      'axis.yaml': AXIS_TEXT.replace('fit: running', 'fit: running\n    limits: {wall: 9 mm}'),
    });
    const { code, stdout } = await call(cwd, ['make', 'axis.yaml']);
    expect(code).toBe(1);
    expect(stdout).toMatch(/nothing was written/);
    expect(stdout).toMatch(/--accept nut\/wall=REASON/);
    expect(existsSync(join(cwd, 'out'))).toBe(false);
  });

  it('has no single picture', async () => {
    const cwd = folderWith({ 'axis.yaml': AXIS_TEXT });
    const { code, stderr } = await call(cwd, ['make', 'axis.yaml', '--picture', 'a.png']);
    expect(code).toBe(2);
    expect(stderr).toMatch(/--picture: a\.png; shows one part/);
  });
});

describe('an axis in a fleet', () => {
  const fleet = `fleet: lifts
kinds:
  lift: {motor: {shaft: 5 mm}, parts: {lift: {sheet: axis.yaml, axis: lift, needs: [screw.major]}}}
groups:
  warm: {with: {duty: {temperature: 30 C}}}
machines:
  a: {kind: lift, group: warm, parts: {lift: {with: {screw: {major: 7.94 ± 0.02 mm}}}}}
  b: {kind: lift, parts: {lift: {with: {screw: {major: 7.94 ± 0.02 mm}}}}}
  c: {kind: lift}
`;

  it('is one part: read, addressed, placed and told as one', async () => {
    const cwd = folderWith({ 'axis.yaml': SMALL, 'fleet.yaml': fleet });
    const { code, stdout } = await call(cwd, ['fleet', 'fleet.yaml', '--formats', 'stl,page', '--json']);
    expect(code).toBe(1);
    const manifest = JSON.parse(stdout);
    expect(
      manifest.machines.map(({ machine, complete }: { machine: string; complete: boolean }) => [machine, complete]),
    ).toEqual([
      ['a', true],
      ['b', true],
      ['c', false],
    ]);
    const files = Object.keys(filesBelow(join(cwd, 'out/lifts')));
    expect(files).toContain('machines/a/a.lift.nut.stl');
    expect(files).toContain('machines/b/b.lift.end-holder.stl');
    const pages = files.filter((file) => /^parts\/my-axis-[0-9a-f]{12}\/report\.html$/.test(file));
    expect(pages).toHaveLength(2);
    const page = readFileSync(join(cwd, 'out/lifts', pages[0]!), 'utf8');
    expect(page).toContain('After the first hot day');
    for (const [, link] of page.matchAll(/href="([^"#]+)"/g))
      expect(existsSync(join(cwd, 'out/lifts', pages[0]!, '..', link!)), link).toBe(true);
    const again = await call(cwd, ['fleet', 'fleet.yaml', '--formats', 'stl,page', '--dry-run']);
    expect(again.stdout).toMatch(/0 parts to make, 2 to reuse/);
  }, 60_000);

  it('accepts a check of one of its parts', async () => {
    const bad = SMALL.replace('fit: running', 'fit: running\n    limits: {wall: 9 mm}');
    const cwd = folderWith({ 'axis.yaml': bad, 'fleet.yaml': fleet.replace(/ {2}[bc]: .*\n/g, '') });
    expect((await call(cwd, ['fleet', 'fleet.yaml', '--dry-run'])).stdout).toMatch(/1 refused[\s\S]*nut\/wall/);
    const accept = ['--accept', 'a.lift.nut/wall=a trial on the bench'];
    expect((await call(cwd, ['fleet', 'fleet.yaml', '--dry-run', ...accept])).stdout).toMatch(/1 parts? to make/);
  });
});

describe('advice on an axis', () => {
  it('names the cures of its parts, which stand in their sections', async () => {
    const cwd = folderWith({ 'axis.yaml': SMALL.replace('thickness: 5 mm}', 'thickness: 2.4 mm}') });
    const { stdout } = await call(cwd, ['check', 'axis.yaml', '--advise', '--json']);
    const { advice } = JSON.parse(stdout);
    expect(advice.checks.some(({ check }: { check: string }) => check.startsWith('nut/'))).toBe(true);
  }, 60_000);
});
