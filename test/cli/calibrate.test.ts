import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { call, callFolder } from '../support/call.js';

const DEMO = readFileSync(new URL('../../presets/results/demo-coupon-results.yaml', import.meta.url), 'utf8');
const NUT = 'part: nut\nname: n\nscrew: Tr8x2\nbody: {diameter: 16 mm, length: 15 mm}\n';

function folder(files: Readonly<Record<string, string>> = {}): string {
  const cwd = callFolder();
  for (const [name, text] of Object.entries(files)) writeFileSync(join(cwd, name), text);
  return cwd;
}

describe('coupon to nut', () => {
  it('goes as the help says', async () => {
    const cwd = folder({ 'nut.yaml': `${NUT}profile: pa12-workshop\n` });
    expect((await call(cwd, ['new', 'coupon', '--to', 'coupon.yaml'])).code).toBe(0);
    const asked = await call(cwd, ['new', 'results', 'coupon.yaml', '--to', 'results.yaml']);
    expect(asked).toMatchObject({ code: 0, stdout: '' });
    expect(asked.stderr).toMatch(/then: leadwright calibrate results.yaml/);
    const blank = await call(cwd, ['calibrate', 'results.yaml']);
    expect(blank.code).toBe(2);
    expect(blank.stderr).toMatch(/^results.yaml:\d+:\d+ slicer_compensates: .*must be one of no, shrink, holes, both/);

    writeFileSync(join(cwd, 'results.yaml'), DEMO);
    const done = await call(cwd, ['calibrate', 'results.yaml']);
    expect(done.code).toBe(0);
    expect(done.stdout).toMatch(/in-plane shrink +0\.9\d+ %/);
    expect(done.stderr).toBe(
      'profiles/pa12-workshop.yaml: written, revision 1; in a part sheet: profile: pa12-workshop\n',
    );
    const checked = await call(cwd, ['check', 'nut.yaml', '--all']);
    expect(checked.code).toBe(0);
    expect(checked.stdout.replace(/\s+/g, ' ')).toMatch(/measured: profile pa12-workshop, revision 1, by 63 readings/);
  });

  it('takes the answer from the demo results by --json', async () => {
    const { code, stdout } = await call(folder({ 'r.yaml': DEMO }), ['calibrate', 'r.yaml', '--json', '--dry-run']);
    expect(code).toBe(0);
    const answer: { estimates: { plane: { value: number } }; unknown: unknown[] } = JSON.parse(stdout);
    // the readings were invented for a shrink of 0.94 %
    expect(answer.estimates.plane.value).toBeCloseTo(0.0094, 3);
    expect(answer.unknown).toEqual([]);
  });
});

describe('an old profile', () => {
  async function withOld() {
    const cwd = folder({
      'r.yaml': DEMO,
      'other.yaml': DEMO.replace(/(X2 over: .*read: \[)[\d.]+/, (_, before: string) => `${before}54.54`),
    });
    await call(cwd, ['calibrate', 'r.yaml']);
    const path = join(cwd, 'profiles', 'pa12-workshop.yaml');
    return { cwd, path, text: readFileSync(path, 'utf8') };
  }

  it('is never written over in silence', async () => {
    const { cwd, path, text } = await withOld();
    const again = await call(cwd, ['calibrate', 'other.yaml']);
    expect(again.code).toBe(2);
    expect(again.stderr).toMatch(/^profiles\/pa12-workshop.yaml: is already there: --refine .*--replace/);
    expect(readFileSync(path, 'utf8')).toBe(text);
    expect(readdirSync(join(cwd, 'profiles'))).toEqual(['pa12-workshop.yaml']);
  });

  it('is refined by new readings, and keeps the old ones', async () => {
    const { cwd, path } = await withOld();
    expect(await call(cwd, ['calibrate', 'other.yaml', '--refine'])).toMatchObject({ code: 0 });
    const text = readFileSync(path, 'utf8');
    expect(text).toMatch(/^revision: 2$/m);
    expect(text.match(/results: coupon/g)).toHaveLength(2);
  });

  it('refuses the same readings twice, and keeps its text', async () => {
    const { cwd, path, text } = await withOld();
    const same = await call(cwd, ['calibrate', 'r.yaml', '--refine']);
    expect(same.code).toBe(2);
    expect(same.stderr).toMatch(/are in the profile already/);
    expect(readFileSync(path, 'utf8')).toBe(text);
  });

  it('is replaced when told', async () => {
    const { cwd, path } = await withOld();
    expect((await call(cwd, ['calibrate', 'other.yaml', '--replace'])).code).toBe(0);
    expect(readFileSync(path, 'utf8').match(/results: coupon/g)).toHaveLength(1);
    expect(readFileSync(path, 'utf8')).toMatch(/^revision: 2$/m);
  });

  it('is left alone by a half-written file of a killed run', async () => {
    const { cwd, text, path } = await withOld();
    writeFileSync(join(cwd, 'profiles', '.pa12-workshop.yaml.1.new'), 'id: pa12');
    writeFileSync(join(cwd, 'n.yaml'), `${NUT}profile: pa12-workshop\n`);
    expect((await call(cwd, ['check', 'n.yaml'])).code).toBe(0);
    expect(readFileSync(path, 'utf8')).toBe(text);
  });

  it('cannot be refined where there is none', async () => {
    const { code, stderr } = await call(folder({ 'r.yaml': DEMO }), ['calibrate', 'r.yaml', '--refine']);
    expect(code).toBe(2);
    expect(stderr).toMatch(/there is no profiles\/pa12-workshop.yaml to refine/);
  });
});

describe('where a profile is looked for', () => {
  it.each(['sheets', 'sheets/profiles', 'profiles'])('is found in %s', async (place) => {
    const cwd = folder({ 'r.yaml': DEMO });
    mkdirSync(join(cwd, 'sheets'));
    writeFileSync(join(cwd, 'sheets', 'n.yaml'), `${NUT}profile: pa12-workshop\n`);
    await call(cwd, ['calibrate', 'r.yaml', '--to', place]);
    expect((await call(cwd, ['check', 'sheets/n.yaml'])).code).toBe(0);
  });

  it('says so where it is nowhere, with the nearest name', async () => {
    const cwd = folder({ 'r.yaml': DEMO, 'n.yaml': `${NUT}profile: pa12-workshp\n` });
    await call(cwd, ['calibrate', 'r.yaml']);
    const { code, stderr } = await call(cwd, ['check', 'n.yaml']);
    expect(code).toBe(2);
    expect(stderr).toMatch(/^n.yaml:5:10 profile: pa12-workshp; no pa12-workshp.yaml .*did you mean pa12-workshop\?/);
  });
});

describe('calls that cannot be', () => {
  it.each([
    [['calibrate', 'r.yaml', '--refine', '--replace'], /refine/],
    [['calibrate', 'r.yaml', '--name', 'My Profile'], /--name: My Profile; must be small letters/],
    [['calibrate', 'none.yaml'], /^none.yaml: no such file/],
    [['new', 'nut', 'r.yaml'], /^leadwright: r.yaml; one argument too many; only new results/],
    [['new', 'results', 'r.yaml'], /part/],
  ])('%j', async (argv, message) => {
    const { code, stderr, stdout } = await call(folder({ 'r.yaml': DEMO }), argv);
    expect(code).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toMatch(message);
  });
});
