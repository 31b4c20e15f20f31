import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { startSheet } from '../../src/pipeline/start-sheets.js';
import { call, callFolder } from '../support/call.js';

const GOOD = startSheet('nut');
const named = (name: string, text = GOOD) => text.replace('name: my-nut', `name: ${name}`);
/** The wall left outside the thread is 0.3 mm or so. */
const lineOf = (text: string, start: string) => text.split('\n').findIndex((line) => line.startsWith(start)) + 1;
const THIN = GOOD.replace('diameter: 16 mm, length', 'diameter: 9.4 mm, length');

function folderWith(files: Readonly<Record<string, string | Uint8Array>>): string {
  const folder = callFolder();
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return folder;
}

describe('make', () => {
  it('writes every kind of file and the report, and prints the report', async () => {
    const cwd = folderWith({ 'nut.yaml': GOOD });
    const { code, stdout, stderr } = await call(cwd, ['make', 'nut.yaml']);
    expect([code, stderr]).toEqual([0, '']);
    expect(readdirSync(join(cwd, 'out/my-nut')).sort()).toEqual([
      'drawing.svg',
      'my-nut.3mf',
      'my-nut.stl',
      'report.html',
      'report.json',
    ]);
    expect(stdout).toContain(`written   ${join('out', 'my-nut', 'x').slice(0, -1)} my-nut.stl, my-nut.3mf`);
    const all = await call(cwd, ['make', 'nut.yaml', '--all']);
    expect(all.stdout).toContain(`written: ${join('out', 'my-nut', 'my-nut.stl')}`);
    expect(stdout.split('\n').filter((line) => line.length > 80)).toEqual([]);
    expect(stdout).not.toContain('\u001b');
  });

  it('keeps to 80 columns where much is assumed and much is said', async () => {
    const bare = 'part: nut\nname: bare\nscrew: {form: acme, major: 3/8 in, crests: {count: 10, length: 1 in}}\n';
    const cwd = folderWith({ 'nut.yaml': `${bare}body: {diameter: 20 mm, length: 20 mm}\n` });
    for (const more of [[], ['--all'], ['--advise']]) {
      const { stdout } = await call(cwd, ['check', 'nut.yaml', ...more]);
      expect(stdout.split('\n').filter((line) => line.length > 80)).toEqual([]);
    }
  });

  it('--json gives the same report as the file, and nothing else', async () => {
    const cwd = folderWith({ 'nut.yaml': GOOD });
    const { stdout } = await call(cwd, ['make', 'nut.yaml', '--json', '--out', 'here']);
    expect(stdout).toBe(readFileSync(join(cwd, 'here/my-nut/report.json'), 'utf8'));
  });

  it('gives the same bytes twice', async () => {
    const cwd = folderWith({ 'nut.yaml': GOOD });
    await call(cwd, ['make', 'nut.yaml', '--out', 'a']);
    await call(cwd, ['make', 'nut.yaml', '--out', 'b']);
    for (const name of readdirSync(join(cwd, 'a/my-nut'))) {
      expect(readFileSync(join(cwd, 'a/my-nut', name)).equals(readFileSync(join(cwd, 'b/my-nut', name))), name).toBe(
        true,
      );
    }
  });

  it('draws by third angle where that is asked for, in the file and in the page', async () => {
    const cwd = folderWith({ 'nut.yaml': GOOD });
    const { code } = await call(cwd, ['make', 'nut.yaml', '--projection', 'third', '--formats', 'drawing,page']);
    expect(code).toBe(0);
    for (const name of ['drawing.svg', 'report.html'])
      expect(readFileSync(join(cwd, 'out/my-nut', name), 'utf8').includes('id="projection-third"'), name).toBe(true);
    expect((await call(cwd, ['make', 'nut.yaml', '--projection', 'second'])).code).toBe(2);
  });

  it('writes nothing where a check fails, exits 1, and says so of earlier files', async () => {
    const cwd = folderWith({ 'nut.yaml': THIN });
    const first = await call(cwd, ['make', 'nut.yaml']);
    expect([first.code, first.stderr, existsSync(join(cwd, 'out'))]).toEqual([1, '', false]);
    expect(first.stdout).toMatch(/^FAIL {2}my-nut/);
    writeFileSync(join(cwd, 'nut.yaml'), GOOD);
    await call(cwd, ['make', 'nut.yaml']);
    const before = readFileSync(join(cwd, 'out/my-nut/my-nut.stl'));
    writeFileSync(join(cwd, 'nut.yaml'), THIN);
    const later = await call(cwd, ['make', 'nut.yaml']);
    expect(later.code).toBe(1);
    expect(later.stderr).toBe(
      `nut.yaml: ${join('out', 'my-nut')} still holds files of an earlier make; they do not belong to this sheet\n`,
    );
    expect(readFileSync(join(cwd, 'out/my-nut/my-nut.stl'))).toEqual(before);
    writeFileSync(join(cwd, 'nut.yaml'), GOOD.replace('thickness: 7 mm', 'thickness: -4 mm'));
    expect((await call(cwd, ['make', 'nut.yaml'])).stderr).toContain('still holds files of an earlier make');
  });

  it('neither offers nor takes what cannot be modelled: holes that run out of the edge', async () => {
    const cwd = folderWith({ 'nut.yaml': GOOD.replace(/circle: [\d.]+/, 'circle: 36') });
    const told = await call(cwd, ['check', 'nut.yaml']);
    expect(told.stdout).toMatch(/^FAIL .*Do not print it yet/);
    expect(told.stdout).toMatch(/Mounts\? +no +Holes to edge/);
    expect(told.stdout).not.toContain('--accept hole-edge');
    const { code, stderr } = await call(cwd, ['make', 'nut.yaml', '--accept', 'hole-edge=open slots']);
    expect([code, stderr]).toEqual([2, expect.stringContaining('hole-edge; cannot be accepted below 0 mm')]);
    expect(existsSync(join(cwd, 'out'))).toBe(false);
  });

  it('makes a part whose failing checks are accepted, and says so first', async () => {
    const cwd = folderWith({ 'nut.yaml': THIN });
    const failed: { checks: { id: string; verdict: string }[] } = JSON.parse(
      (await call(cwd, ['check', 'nut.yaml', '--json'])).stdout,
    );
    const ids = failed.checks.filter(({ verdict }) => verdict === 'fail').map(({ id }) => id);
    expect(ids).toContain('wall');
    const accepts = ids.flatMap((id) => ['--accept', `${id}=a trial piece only`]);
    const { code, stdout } = await call(cwd, ['make', 'nut.yaml', ...accepts]);
    expect(code).toBe(0);
    expect(stdout).toMatch(/^CAUTION {2}my-nut .* only as far as you stand by what you\s+accepted/);
    expect(stdout).toContain('! accepted although it fails: wall — a trial piece only');
    const all = await call(cwd, ['check', 'nut.yaml', ...accepts, '--all']);
    expect(
      all.stdout
        .split('\n')
        .slice(0, 4 + ids.length)
        .join('\n'),
    ).toContain('accepted although it fails: wall — a trial piece only');
    expect(JSON.parse(readFileSync(join(cwd, 'out/my-nut/report.json'), 'utf8'))).toMatchObject({ verdict: 'caution' });
  });

  it('takes each sheet on its own; the highest code wins', async () => {
    const cwd = folderWith({
      'a.yaml': named('a'),
      'b.yaml': named('b', THIN),
      'c.yaml': named('c').replace('thickness: 7 mm', 'thickness: -2 mm'),
    });
    const { code, stdout, stderr } = await call(cwd, ['make', 'a.yaml', 'b.yaml', 'c.yaml', '--json']);
    const answers: Record<string, unknown>[] = JSON.parse(stdout);
    expect(code).toBe(2);
    expect(answers.map(({ name, verdict }) => [name, verdict])).toEqual([
      ['a', expect.stringMatching(/pass|caution/)],
      ['b', 'fail'],
      ['c.yaml', undefined],
    ]);
    expect(answers[2]).toEqual({
      name: 'c.yaml',
      error: [
        {
          path: 'flange.thickness',
          line: lineOf(GOOD, 'flange:'),
          column: 52,
          value: '-2 mm',
          allowed: 'must be above 0',
        },
      ],
    });
    expect(stderr).toBe(`c.yaml:${lineOf(GOOD, 'flange:')}:52 flange.thickness: -2 mm; must be above 0\n`);
    expect(readdirSync(join(cwd, 'out'))).toEqual(['a']);
  });

  it('refuses two sheets of one name, letters’ case aside, and makes the others', async () => {
    const cwd = folderWith({ 'a.yaml': named('Same'), 'b.yaml': named('same'), 'c.yaml': named('other') });
    const { code, stderr } = await call(cwd, ['make', 'a.yaml', 'b.yaml', 'c.yaml']);
    expect(code).toBe(2);
    expect(stderr).toContain('a.yaml: name: Same; must differ from that of b.yaml');
    expect(stderr).toContain('b.yaml: name: same; must differ from that of a.yaml');
    expect(readdirSync(join(cwd, 'out'))).toEqual(['other']);
  });

  it('reads stdin as -', async () => {
    const cwd = callFolder();
    expect((await call(cwd, ['make', '-'], { stdin: GOOD })).code).toBe(0);
    expect(existsSync(join(cwd, 'out/my-nut/my-nut.stl'))).toBe(true);
  });

  it('says in one line that the folder cannot be written', async () => {
    const cwd = folderWith({ 'nut.yaml': GOOD, out: 'a file' });
    const { code, stdout, stderr } = await call(cwd, ['make', 'nut.yaml']);
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    expect(stderr).toContain('a file is in the way of a folder');
  });

  it('colours a terminal, unless NO_COLOR says no', async () => {
    const cwd = folderWith({ 'nut.yaml': GOOD });
    expect((await call(cwd, ['check', 'nut.yaml'], { isTty: true })).stdout).toContain('\u001b[');
    expect((await call(cwd, ['check', 'nut.yaml'], { isTty: true, env: { NO_COLOR: '1' } })).stdout).not.toContain(
      '\u001b[',
    );
  });
});

describe('bad sheets', () => {
  const deep = `part: nut\nbody: ${'['.repeat(20_000)}`;
  const aliases = `a: &a [x, x, x]\n${Array.from({ length: 9 }, (_, i) => `${'bcdefghij'[i]}: &${'bcdefghij'[i]} [${Array(9).fill(`*${'abcdefghij'[i]}`).join(', ')}]`).join('\n')}\n`;
  it.each<[string, string | Uint8Array]>([
    ['empty', ''],
    ['blank', ' \n\n'],
    ['only comments', '# nothing\n'],
    ['not YAML', 'part: [nut\nname: }'],
    ['binary', Uint8Array.from({ length: 5000 }, (_, i) => (i * 37) % 256)],
    ['10 MB long', 'x'.repeat(10_000_000)],
    ['deeply nested', deep],
    ['full of aliases', aliases],
    ['a list', '- part: nut\n'],
    ['one word', 'nut\n'],
    ['a name that climbs', named('../../etc')],
    ['a name with a slash', named('a/b')],
    ['a name with a control character', named('"a\\u0007"')],
    ['a proto key', `${GOOD}\n__proto__: {a: 1}\n`],
    ['NaN', GOOD.replace('thickness: 7 mm', 'thickness: .nan')],
    ['infinite', GOOD.replace('thickness: 7 mm', 'thickness: .inf')],
    ['huge', GOOD.replace('thickness: 7 mm', 'thickness: 1e300')],
    ['zero', GOOD.replace('thickness: 7 mm', 'thickness: 0')],
    ['without unit', GOOD.replace('thickness: 7 mm', 'thickness: "4"')],
    ['in a wrong unit', GOOD.replace('thickness: 7 mm', 'thickness: 4 N')],
    ['unknown key', GOOD.replace('thickness: 7 mm', 'thicknes: 4 mm')],
  ])('%s: one line a mistake, exit 2, nothing written', async (_, text) => {
    const cwd = folderWith({ 'nut.yaml': text });
    for (const command of ['make', 'check']) {
      const { code, stdout, stderr } = await call(cwd, [command, 'nut.yaml']);
      expect([code, stdout]).toEqual([2, '']);
      expect(stderr).toMatch(/^(nut\.yaml(:\d+:\d+|:) [^\n]{1,300}\n){1,8}$/);
      expect(stderr).not.toMatch(/\bat .*:\d+:\d+\)/);
    }
    expect(readdirSync(cwd)).toEqual(['nut.yaml']);
  });

  it('a folder and a missing file', async () => {
    const cwd = callFolder();
    mkdirSync(join(cwd, 'dir.yaml'));
    expect((await call(cwd, ['make', 'dir.yaml', 'none.yaml'])).stderr).toBe(
      'dir.yaml: is a folder, not a sheet\nnone.yaml: no such file or folder\n',
    );
  });
});

describe('new', () => {
  it('prints a sheet, or writes it to a new file only', async () => {
    const cwd = callFolder();
    expect((await call(cwd, ['new', 'nut'])).stdout).toBe(GOOD);
    expect((await call(cwd, ['new', 'nut', '--to', 'my-nut.yaml'])).code).toBe(0);
    expect(readFileSync(join(cwd, 'my-nut.yaml'), 'utf8')).toBe(GOOD);
    writeFileSync(join(cwd, 'my-nut.yaml'), 'mine');
    const again = await call(cwd, ['new', 'nut', '--to', 'my-nut.yaml']);
    expect([again.code, again.stderr]).toEqual([
      2,
      'leadwright: my-nut.yaml: is already there, and is not overwritten\n',
    ]);
    expect(readFileSync(join(cwd, 'my-nut.yaml'), 'utf8')).toBe('mine');
  });
});

describe('presets and schema', () => {
  it('lists what ships, as text and as JSON', async () => {
    const { stdout } = await call(callFolder(), ['presets', 'screw']);
    expect(stdout).toMatch(/^ {2}screw: tr8x2 – .*\n(?: {2}\S.*\n)* {6}designation Tr8x2/m);
    expect(stdout.split('\n').filter((line) => line.length > 80)).toEqual([]);
    const rows: { kind: string }[] = JSON.parse((await call(callFolder(), ['presets', 'materials', '--json'])).stdout);
    expect(new Set(rows.map(({ kind }) => kind))).toEqual(new Set(['material']));
    const all = (await call(callFolder(), ['presets'])).stdout;
    for (const line of [
      'material: pa12',
      'printer: nozzle-0.4-layer-0.12',
      'screw: tr8x8-p2',
      'flange: two-flat-12',
      'motor: frame-17',
    ])
      expect(all).toMatch(new RegExp(`^ {2}${line} – `, 'm'));
    expect(all).not.toMatch(/source:|bolt_square/);
    expect((await call(callFolder(), ['presets', 'materal'])).stderr).toBe(
      'leadwright: materal; unknown kind of preset; did you mean material?\n',
    );
  });

  it('prints a JSON Schema of a kind', async () => {
    const schema: Record<string, unknown> = JSON.parse((await call(callFolder(), ['schema', 'nut'])).stdout);
    expect(schema).toMatchObject({ title: 'nut sheet', type: 'object', properties: { screw: {}, body: {} } });
    expect((await call(callFolder(), ['schema', 'nutt'])).code).toBe(2);
    const results: object = JSON.parse((await call(callFolder(), ['schema', 'results'])).stdout);
    expect(results).toMatchObject({ title: 'results', type: 'object', additionalProperties: false });
    expect((await call(callFolder(), ['schema', 'bolt'])).stderr).toContain('coupon, gauge, axis, results, fleet');
  });
});
