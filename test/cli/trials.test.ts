import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { call, callFolder } from '../support/call.js';

it('goes from a coupon over a printed nut to a finer profile', async () => {
  const cwd = callFolder();
  expect((await call(cwd, ['new', 'demo-results', '--to', 'r.yaml'])).code).toBe(0);
  expect((await call(cwd, ['calibrate', 'r.yaml'])).code).toBe(0);
  writeFileSync(
    join(cwd, 'nut.yaml'),
    'part: nut\nname: n\nscrew: Tr8x2\nbody: {diameter: 15, length: 20}\nprofile: pa12-workshop\nfit: running\n',
  );
  const form = (await call(cwd, ['new', 'trial', 'nut.yaml'])).stdout;
  expect(form).toContain('profile: pa12-workshop');
  const fill = (goes: string, more: string) =>
    form.replace(/^goes:[^#]*/m, `goes: ${goes} `).replace(/^jams_after:[^#]*/m, more);
  writeFileSync(join(cwd, 't.yaml'), fill('jams', 'jams_after: 6 ').replace(/^length:[^#]*/m, 'length: 19.8 mm '));
  const told = await call(cwd, ['calibrate', 't.yaml']);
  expect(told.stdout).toMatch(/jams after 6 turns: a pitch error/);
  expect(told.stdout).toMatch(/Change this one number[\s\S]*material\.shrink\.axial: [\d.]+ %, it was/);
  expect(told.stderr).toContain('--refine puts this into profile pa12-workshop');
  const refined = await call(cwd, ['calibrate', 't.yaml', '--refine']);
  expect(refined.stderr).toContain('written, revision 2');
  const text = readFileSync(join(cwd, 'profiles/pa12-workshop.yaml'), 'utf8');
  expect(text).toMatch(/source: finished nuts n/);
  expect((await call(cwd, ['check', 'nut.yaml', '--json'])).code).toBeLessThan(2);
  const axialOf = (profile: string) => /axial: ([\d.]+) ±/.exec(profile)?.[1];

  // the same nut does not count twice
  const twice = await call(cwd, ['calibrate', 't.yaml', '--refine']);
  expect([twice.code, twice.stderr]).toEqual([2, expect.stringMatching(/nut: n; is in the profile already/)]);

  // a further coupon keeps what the nut told
  const coupon = readFileSync(join(cwd, 'r.yaml'), 'utf8').replace(/^coupon: .*$/m, 'coupon: another');
  writeFileSync(join(cwd, 'r2.yaml'), coupon);
  expect((await call(cwd, ['calibrate', 'r2.yaml', '--refine'])).stderr).toContain('written, revision 3');
  const again = readFileSync(join(cwd, 'profiles/pa12-workshop.yaml'), 'utf8');
  expect(again).toMatch(/source: finished nuts n/);
  expect(Number(axialOf(again))).toBeCloseTo(Number(axialOf(text)), 0);

  // and a further nut is joined to the first
  writeFileSync(
    join(cwd, 't2.yaml'),
    fill('by-hand', 'jams_after: ')
      .replace(/^play:[^#]*/m, 'play: 0.15 mm ')
      .replace('nut: n', 'nut: second'),
  );
  const joined = await call(cwd, ['calibrate', 't2.yaml', '--refine']);
  expect(joined.stdout).toMatch(/^n, second: 2 trials/);
  expect(joined.stderr).toContain('written, revision 4');
});

it('refuses a trial in which nothing is filled in', async () => {
  const cwd = callFolder();
  await call(cwd, ['new', 'trial', '--to', 't.yaml']);
  const { code, stderr } = await call(cwd, ['calibrate', 't.yaml']);
  expect(code).toBe(2);
  expect(stderr).toMatch(/^t\.yaml:\d+:\d+ .*needs how the nut goes, or a reading/);
});
