import { existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { progressLines, progressText } from '../../src/cli/fleet-progress.js';
import { listedMachines, readFleetSheet } from '../../src/fleet/read-sheet.js';
import { startSheet } from '../../src/pipeline/start-sheets.js';
import { SHIPPED } from '../../src/presets/shipped.js';
import { readYaml } from '../../src/sheet/read-yaml.js';
import { call, callFolder } from '../support/call.js';
import { accounts, filesBelow, folderOf } from '../support/fleet-folder.js';
import { nutSheet } from '../support/nut-sheets.js';
import { smallFleet } from '../support/small-fleet.js';
import { threeMfFaults } from '../support/threemf-faults.js';

const STL = ['--formats', 'stl'];

describe('fleet', () => {
  it('makes the start fleet as it is, cautions aside', async () => {
    const cwd = callFolder();
    await call(cwd, ['new', 'fleet', '--to', 'my-fleet.yaml']);
    expect(readFileSync(join(cwd, 'my-fleet.yaml'), 'utf8')).toBe(startSheet('fleet'));
    const dry = await call(cwd, ['fleet', 'my-fleet.yaml', '--dry-run']);
    expect([dry.code, dry.stdout.split('\n')[0]]).toEqual([0, '3 parts to make, 0 to reuse, 0 refused']);
    expect(existsSync(join(cwd, 'out'))).toBe(false);
    const { code, stdout } = await call(cwd, ['fleet', 'my-fleet.yaml', '--plates', '200x200', '--zip', ...STL]);
    expect([code, stdout]).toEqual([0, expect.stringContaining('3 of 3 machines complete')]);
    const { there, told } = accounts(join(cwd, 'out/my-fleet'));
    expect(told).toEqual(there);
    const plates = join(cwd, 'out/my-fleet/plates');
    expect(readdirSync(plates)).toEqual(['pa12-001.3mf', 'petg-001.3mf']);
    for (const name of readdirSync(plates)) expect(threeMfFaults(readFileSync(join(plates, name))), name).toEqual([]);
  }, 120_000);

  it('takes presets by name wherever a field may stand: defaults, profiles, kinds, machines and tables', async () => {
    const fleet = (motor: string) => `fleet: named
defaults: {material: petg, printer: nozzle-0.4-layer-0.2}
profiles: {bearing: {material: pa12, printer: nozzle-0.4-layer-0.08}}
kinds:
  camera:
    motor: ${motor}
    with: {screw: tr8x2}
    parts:
      plate: {part: {part: adapter, name: plate, nut: round-22-on-16, carriage: {bore: 10.8 mm, thickness: 8 mm, holes: {count: 4, circle: 32 mm, screw: M3}}}}
      guard: {part: {part: collar, name: guard, motor: frame-17}}
      rings: {part: {part: gauge, name: rings, profile: bearing}}
machines:
  one: {kind: camera}
  two: {kind: camera, motor: {preset: frame-23}, with: {screw: {designation: tr10x2}}, parts: {guard: {with: {motor: frame-11}}}}
rows: rows.csv
`;
    const rows = `machine,kind,role,screw,material,printer,nut,motor.preset
three,camera,plate,,,,round-25-on-19,
three,camera,guard,tr10x2,,,,frame-14
three,camera,rings,tr8x4-p2,pa12,nozzle-0.4-layer-0.12,,
`;
    const cwd = folderOf({ 'fleet.yaml': fleet('frame-17'), 'rows.csv': rows, 'slip.yaml': fleet('frame-18') });
    const { code, stdout } = await call(cwd, ['fleet', 'fleet.yaml', '--dry-run']);
    expect([code, stdout.split('\n')[0]]).toEqual([0, '9 parts to make, 0 to reuse, 0 refused']);
    const slip = await call(cwd, ['fleet', 'slip.yaml', '--dry-run']);
    expect([slip.code, slip.stderr]).toEqual([
      2,
      expect.stringMatching(/^slip\.yaml:6:12 kinds\.camera\.motor: frame-18; no motor preset .*frame-17/),
    ]);
    // 1/4 in: the shaft of a 2.3 in frame; that of its kind is put under it when the fleet is put together
    const machines = listedMachines(readFleetSheet(fleet('frame-17'), 'fleet.yaml', SHIPPED));
    expect(machines.map(({ name, motorShaft }) => [name, motorShaft])).toEqual([
      ['one', undefined],
      ['two', 6.35],
    ]);
  });

  it('shards, merges, and refuses what cannot be', async () => {
    const cwd = folderOf({ 'fleet.yaml': smallFleet(3) });
    expect((await call(cwd, ['fleet', 'fleet.yaml', '--out', 'whole', ...STL])).code).toBe(0);
    for (const share of [1, 2]) {
      const args = [
        'fleet',
        'fleet.yaml',
        '--shard',
        `${share}/2`,
        '--out',
        `s${share}`,
        '--cache',
        `c${share}`,
        ...STL,
      ];
      expect(await call(cwd, args)).toMatchObject({
        code: 0,
        stdout: expect.stringContaining(`share ${share}/2 of small`),
      });
    }
    expect(
      (await call(cwd, ['merge', 'fleet.yaml', 's1', 's2', '--out', 'merged', '--cache', 'c3', ...STL])).code,
    ).toBe(0);
    expect(filesBelow(join(cwd, 'merged'))).toEqual(filesBelow(join(cwd, 'whole')));
    const missing = await call(cwd, ['merge', 'fleet.yaml', 's0', 's1', '--out', 'none']);
    expect([missing.code, missing.stderr]).toEqual([2, 'leadwright: s0: no such folder\n']);
    mkdirSync(join(cwd, 's0'));
    const { code, stdout } = await call(cwd, ['merge', 'fleet.yaml', 's0', '--out', 'none', '--cache', 'c4', ...STL]);
    expect([code, stdout]).toEqual([1, expect.stringContaining('no share holds it whole, made by this program')]);
  }, 120_000);

  it.each([
    [['--jobs', '0'], '--jobs: 0; must be a whole number from 1 to 64'],
    [['--jobs', 'many'], '--jobs'],
    [['--shard', '4/3'], '--shard'],
    [['--plates', '5x5'], '--plates'],
    [['--only', 'tow'], '--only: tow; no machine of this name; did you mean two?'],
    [['--formats', '3mf'], '--formats: 3mf; must hold stl'],
    [['--dry-rum'], 'did you mean --dry-run?'],
  ])('refuses %j in one line', async (more, told) => {
    const cwd = folderOf({ 'fleet.yaml': smallFleet(1) });
    const { code, stdout, stderr } = await call(cwd, ['fleet', 'fleet.yaml', ...more]);
    expect([code, stdout, stderr.trimEnd().split('\n').length]).toEqual([2, '', 1]);
    expect(stderr).toContain(told);
    expect(readdirSync(cwd)).toEqual(['fleet.yaml']);
  });

  it('tells before anything is made which part of its kind a machine lacks, of the machines that are asked for', async () => {
    const { machines, ...fleet } = JSON.parse(smallFleet(1));
    const lacking = { ...machines.two, kind: 'lift' };
    const cwd = folderOf({
      'fleet.yaml': JSON.stringify({
        ...fleet,
        kinds: { lift: { needs: ['guard'] } },
        machines: { ...machines, lacking },
      }),
    });
    const dry = async (...more: string[]) => call(cwd, ['fleet', 'fleet.yaml', '--dry-run', ...more]);
    const { code, stdout } = await dry();
    expect([code, stdout.split('\n').slice(0, 2)]).toEqual([
      1,
      ['1 part to make, 0 to reuse, 0 refused', '  lacking: lacks guard, which its kind lists'],
    ]);
    expect(JSON.parse((await dry('--json')).stdout).lacks).toEqual([{ machine: 'lacking', role: 'guard' }]);
    expect((await dry('--only', 'one')).code).toBe(0);
  });

  it('tells before anything is made what does not go together, and ends as the run would', async () => {
    // one axis cannot travel 2 and 3 mm a turn
    const nut = (screw: string) => ({ axis: 'z', part: nutSheet({ name: screw.toLowerCase(), screw }) });
    const machines = { one: { parts: { left: nut('Tr10x2'), right: nut('Tr10x3') } } };
    const cwd = folderOf({ 'fleet.yaml': JSON.stringify({ fleet: 'quarrel', machines }) });
    const quarrel = '  one: FAIL left and right: The leads differ, 2 and 3 mm';
    const dry = await call(cwd, ['fleet', 'fleet.yaml', '--dry-run', ...STL]);
    expect([dry.code, dry.stdout]).toEqual([1, expect.stringContaining(quarrel)]);
    const { pairs } = JSON.parse((await call(cwd, ['fleet', 'fleet.yaml', '--dry-run', '--json', ...STL])).stdout);
    expect(pairs).toMatchObject([{ machine: 'one', id: 'axis-pair', verdict: 'fail', roles: ['left', 'right'] }]);
    const run = await call(cwd, ['fleet', 'fleet.yaml', ...STL]);
    expect([run.code, run.stdout]).toEqual([1, expect.stringContaining(quarrel)]);
    // out of the store as well
    const again = await call(cwd, ['fleet', 'fleet.yaml', '--dry-run', ...STL]);
    expect([again.code, again.stdout]).toEqual([1, expect.stringContaining(quarrel)]);
    expect(again.stdout).toContain('0 parts to make, 2 to reuse, 0 refused');
  });

  it('tells what a limit of a sheet lets pass, before, when made and out of the store', async () => {
    const sheet = { ...(readYaml(startSheet('coupling')).value as object), mounting: 'motor-above' };
    const part = { ...sheet, limits: { 'coupling-axial': { max: 1000 } } };
    const machines = { one: { parts: { joint: { part } } } };
    const cwd = folderOf({ 'fleet.yaml': JSON.stringify({ fleet: 'own-limit', machines }) });
    const told = 'coupling-axial by a limit of the sheet: usually ≤ 0 N';
    const dry = async () =>
      (await call(cwd, ['fleet', 'fleet.yaml', '--dry-run', ...STL])).stdout.split('\n').slice(1, 3);
    expect(await dry()).toEqual([expect.stringMatching(/^ {2}make .*: one joint$/), `          ${told}`]);
    const { code, stdout } = await call(cwd, ['fleet', 'fleet.yaml', ...STL]);
    expect(code).toBe(0);
    expect(stdout.split('\n').filter((line) => line.includes('by a limit'))).toEqual([`  one joint: ${told}`]);
    expect(await dry()).toEqual([expect.stringMatching(/^ {2}reuse .*: one joint$/), `          ${told}`]);
  });

  it('tells which failed checks are accepted, before, when made and out of the store', async () => {
    // a screw that hangs in its jaws
    const sheet = { ...(readYaml(startSheet('coupling')).value as object), mounting: 'motor-above' };
    const accept = { 'coupling-axial': 'an own bearing carries the screw' };
    const machines = { one: { parts: { joint: { part: sheet, accept } } } };
    const cwd = folderOf({ 'fleet.yaml': JSON.stringify({ fleet: 'stood-by', machines }) });
    const told = 'coupling-axial accepted: an own bearing carries the screw';
    const dry = async () =>
      (await call(cwd, ['fleet', 'fleet.yaml', '--dry-run', ...STL])).stdout.split('\n').slice(1, 3);
    expect(await dry()).toEqual([expect.stringMatching(/^ {2}make .*: one joint$/), `          ${told}`]);
    const { code, stdout } = await call(cwd, ['fleet', 'fleet.yaml', ...STL]);
    expect(code).toBe(0);
    expect(stdout.split('\n').filter((line) => line.includes('accepted'))).toEqual([`  one joint: ${told}`]);
    expect(await dry()).toEqual([expect.stringMatching(/^ {2}reuse .*: one joint$/), `          ${told}`]);
  });

  it('a share of some machines holds their parts alone, and no folder of a whole run', async () => {
    const { machines, ...fleet } = JSON.parse(smallFleet(2));
    const { n0 } = machines.two.parts;
    const cwd = folderOf({
      'fleet.yaml': JSON.stringify({ ...fleet, machines: { ...machines, three: { parts: { n0 } } } }),
    });
    const parts = async (more: readonly string[]) =>
      /: (\d+) parts?, /.exec(
        (await call(cwd, ['fleet', 'fleet.yaml', '--shard', '1/1', ...STL, ...more])).stdout,
      )?.[1];
    expect((await call(cwd, ['fleet', 'fleet.yaml', ...STL])).code).toBe(0);
    expect([await parts([]), await parts(['--only', 'three'])]).toEqual(['2', '1']);
    expect(readdirSync(join(cwd, 'out')).filter((name) => !name.startsWith('.')).length).toBe(2);
    expect(readdirSync(join(cwd, 'out')).filter((name) => name.endsWith('-share-1-of-1'))).toHaveLength(1);
  });

  it('tells every mistake of the file with its place, and writes nothing', async () => {
    const cwd = folderOf({ 'fleet.yaml': 'fleet: f\nmachines:\n  a/b: {}\n  c: {kind: 3}\n  d: {part: {}}\n' });
    const { code, stderr } = await call(cwd, ['fleet', 'fleet.yaml']);
    expect(code).toBe(2);
    expect(stderr).toContain('fleet.yaml:4:13 machines.c.kind: 3; must be the name of a kind');
    expect(stderr).toContain('fleet.yaml:5:');
    expect(readdirSync(cwd)).toEqual(['fleet.yaml']);
  });

  it('exits 1 where a part is refused, and gives everything as JSON', async () => {
    const cwd = folderOf({ 'fleet.yaml': smallFleet(2).replaceAll('"length":14.1', '"length":-1') });
    const { code, stdout } = await call(cwd, ['fleet', 'fleet.yaml', '--json', ...STL]);
    const answer: { verdict: string; run: object; parts: { verdict: string; reasons: string[] }[] } =
      JSON.parse(stdout);
    expect([code, answer.verdict, answer.run]).toEqual([
      1,
      'wrong',
      { made: 1, reused: 0, refused: 1, stopped: false },
    ]);
    expect(answer.parts[1]).toMatchObject({
      verdict: 'wrong',
      reasons: [expect.stringMatching(/^fleet\.yaml:1:\d+ body\.length: -1; must be above 0$/)],
    });
  });

  it('escapes what it shows of the fleet in its page', async () => {
    const cwd = folderOf({
      'fleet.yaml': 'fleet: f\nmachines: {a: {parts: {p: {sheet: "<img src=x onerror=alert(1)>.yaml"}}}}\n',
    });
    expect((await call(cwd, ['fleet', 'fleet.yaml', ...STL])).code).toBe(1);
    const page = readFileSync(join(cwd, 'out/f/index.html'), 'utf8');
    expect(page).toContain('&lt;img src=x onerror=alert(1)&gt;');
    expect(page).not.toContain('<img src=x');
  });
});

describe('schema fleet', () => {
  it('accepts the start fleet', async () => {
    const schema: object = JSON.parse((await call(callFolder(), ['schema', 'fleet'])).stdout);
    const validate = new Ajv2020({ strict: false }).compile(schema);
    expect(validate(readYaml(startSheet('fleet')).value)).toBe(true);
    expect(validate({ fleet: 'f', machine: {} })).toBe(false);
  });
});

describe('progress', () => {
  const step = (done: number) => ({ done, total: 40, made: done, reused: 0, refused: 0, current: ['z-nut'] });

  it('tells parts, rate, time left and what is in hand', () => {
    expect(progressText(step(10), 4)).toBe('10 of 40 parts, 2.5 a second, 12 s left: z-nut');
    expect(progressText({ done: 0, total: 40, made: 0, reused: 0, refused: 0, current: [] }, 0)).toBe('0 of 40 parts');
  });

  it('writes one line anew on a terminal, and plain lines now and then elsewhere', () => {
    const written = (stderrColumns: number | undefined, times: readonly number[]) => {
      const texts: string[] = [];
      const clock = [0, ...times];
      const lines = progressLines(
        { stderr: { write: (text) => texts.push(text) }, stderrColumns },
        () => clock.shift() ?? 0,
      );
      for (const [i] of times.entries()) lines.tell(step(i + 1));
      lines.end();
      return texts;
    };
    expect(written(undefined, [100, 5100, 5200])).toEqual([
      '2 of 40 parts, 0.4 a second, 97 s left: z-nut\n'.replace('97 s', '2 min'),
    ]);
    const anew = written(30, [100, 150, 400]);
    expect(anew.slice(0, 2).every((text) => text.startsWith('\r') && text.length <= 30)).toBe(true);
    expect(anew.at(-1)).toBe(`\r${' '.repeat(29)}\r`);
  });
});
