import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { startSheet } from '../../src/pipeline/start-sheets.js';
import { call, callFolder } from '../support/call.js';

function folderWith(files: Readonly<Record<string, string>>): string {
  const folder = callFolder();
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return folder;
}

const cwd = folderWith({
  'nut.yaml': startSheet('nut'),
  'fast.yaml': 'part: nut\nname: fast\nscrew: Tr8x8(P2)\nfit: {diametral: 0, axial: 0.2}\n',
  'wrong.yaml': 'part: nut\nname: x\nscrew: Tr8x2\nduty: {load: -4, spin: 3, axis: vertical}\n',
  'none.yaml': 'part: adapter\nname: x\n',
});
const drive = (...argv: string[]) => call(cwd, ['drive', ...argv]);
const json = async (...argv: string[]) => JSON.parse((await drive(...argv, '--json')).stdout);
const THREE = ['Tr8x2', 'Tr8x8(P2)', 'M5'];
const QUESTION = ['--axis', 'vertical', '--load', '25N', '--span', '320', '--layer-heights', '0.1,0.15,0.2'];

describe('drive', () => {
  it('answers in one screen', async () => {
    const { code, stdout, stderr } = await drive(...THREE, ...QUESTION);
    expect([code, stderr]).toEqual([0, '']);
    const lines = stdout.trimEnd().split('\n');
    expect(lines.length).toBeLessThanOrEqual(46);
    expect(lines.filter((line) => line.length > 80)).toEqual([]);
    expect(stdout).not.toContain('\u001b');
  });

  // Common practice, drive-train numbers: lead 2, 8 and 0.8; full step lead / 200; steps per mm 200 · 16 / lead; back-
  // driving below friction 0.088, 0.351, 0.049; whirl of a free 8 mm screw; 0.15 on the 0.04 grid is 3.75 steps.
  it.each([
    ['lead, mm a turn', '2 at 5.2° 8 at 20° 0.8 at 3.3°'],
    ['full step, mm', '0.01 0.04 0.004'],
    ['steps per mm', '1600 400 4000'],
    ['without power', 'may creep falls holds'],
    ['0.1 mm at one end', '18° of turn 4.5° of turn 45° of turn'],
    ['layer 0.15 mm, steps', '15 3.75, off 0.02 37.5, off 0.002'],
    ['feed up to, mm/s', '10, motor 40, motor 4, motor'],
  ])('%s', async (label, cells) => {
    const { stdout } = await drive(...THREE, ...QUESTION);
    const line = stdout.split('\n').find((one) => one.startsWith(`  ${label} `))!;
    expect(
      line
        .slice(label.length + 2)
        .trim()
        .replace(/ +/g, ' '),
    ).toBe(cells);
  });

  it('tells the error pattern, the order for each purpose, the controller, the pair and the fall', async () => {
    const { stdout } = await drive(...THREE, ...QUESTION);
    expect(stdout).toContain('Tr8x8(P2), 0.15  −0.01 −0.02 +0.01 0, every 4 layers; take 0.12 or 0.16');
    expect(stdout).toMatch(/speed +Tr8x8\(P2\), then Tr8x2, then M5/);
    expect(stdout).toMatch(/Tr8x8\(P2\) +400 steps per mm instead of 1600; forgotten, 100 mm become 400/);
    expect(stdout).toMatch(/Tr8x2 with Tr8x8\(P2\) or M5: no\./);
    expect(stdout).toMatch(/a vertical axis falls on Tr8x8\(P2\); it may creep, .*on Tr8x2\.\s+Block it/s);
    expect(stdout).toContain('Taken as given: 200 steps a turn, 16 microsteps');
  });

  it('has the fields that scripts rely on', async () => {
    const answer = await json('Tr8x8(P2)', ...QUESTION);
    expect(answer.screws).toHaveLength(1);
    expect(answer.screws[0]).toMatchObject({
      designation: 'Tr8x8(P2)',
      lead: 8,
      full_step: 0.04,
      steps_per_mm: 400,
      lead_angle: expect.closeTo(19.99, 2),
      efficiency: { low: expect.any(Number), nominal: expect.closeTo(0.589, 3), high: expect.any(Number) },
      torque_raise: { low: expect.any(Number), nominal: expect.any(Number), high: expect.any(Number) },
      holding: 'falls',
      feed_limit: { value: 40, set_by: 'motor' },
      whirl_rpm: expect.any(Number),
      column_load: expect.any(Number),
      layers: [
        { height: 0.1, full_steps: 2.5, on_grid: false, nearest: [0.08, 0.12] },
        { height: 0.15, full_steps: 3.75, on_grid: false, nearest: [0.12, 0.16] },
        { height: 0.2, full_steps: 5, on_grid: true, nearest: [0.2] },
      ],
    });
  });

  it('takes screw, fit and duty from a sheet; options and further screws go with it', async () => {
    const answer = await json('nut.yaml', 'Tr8x8(P2)', '--load', '50');
    expect(answer.screws.map(({ designation }: { designation: string }) => designation)).toEqual([
      'Tr8x2',
      'Tr8x8(P2)',
    ]);
    const alone = await json('nut.yaml');
    // twice the 25 N of the sheet
    expect(answer.screws[0].torque_raise.nominal).toBeCloseTo(2 * alone.screws[0].torque_raise.nominal, 4);
    expect(alone.screws[0].layers.map(({ height }: { height: number }) => height)).toEqual([0.1, 0.2]);
    expect(alone.screws[0].motor_rpm).toBe(300);
    expect((await json('fast.yaml')).screws[0].play.axial).toBe(0.2);
    expect((await json('fast.yaml', '--fit', '0,0.05')).screws[0].play.axial).toBe(0.05);
    const piped = await call(cwd, ['drive', '-', '--json'], { stdin: 'screw: M5\n' });
    expect(JSON.parse(piped.stdout).screws[0].designation).toBe('M5');
  });

  it('takes the running fit unless told, and lists it', async () => {
    // c·tan 15° + a with c 0.3, a 0.1
    const answer = await json('Tr8x2');
    expect(answer.screws[0].play.axial).toBeCloseTo(0.1804, 4);
    expect(answer.assumptions).toEqual([{ field: 'fit', value: 'running', why: expect.any(String) }]);
    expect((await json('Tr8x2', '--fit', 'loose')).assumptions).toEqual([]);
  });

  it('ranks for a purpose with reasons', async () => {
    const { stdout } = await drive(...THREE, ...QUESTION, '--purpose', 'holding');
    expect(stdout).toMatch(/Best for holding\n {2}1 M5 +normally holds without power; .*\n(?: {5,}.*\n)* {2}2 Tr8x2/);
    expect((await json(...THREE, '--purpose', 'speed')).ranking[0].designation).toBe('Tr8x8(P2)');
  });

  it('tells the controller after a swap', async () => {
    const { stdout } = await drive('Tr8x2', '--from', 'Tr8x8(P2)', '--old-steps-per-mm', '400');
    expect(stdout).toMatch(
      /in place of Tr8x8\(P2\)\n {2}Tr8x2 {2}1600 steps per mm instead of 400; forgotten, 100 mm become 25\n/,
    );
    expect(
      (await json('M8', 'Tr8x2', '--from', 'Tr8x8P2')).changes.map((one: { steps_per_mm: number }) => one.steps_per_mm),
    ).toEqual([2560, 1600]);
  });

  it('marks what is not enough for the duty', async () => {
    const { stdout } = await drive('Tr8x2', '--load', '400', '--span', '600', '--feed', '40', '--torque', '0.4');
    for (const label of ['share of motor', 'feed up to', 'whirl 80 %, column 50 %']) {
      expect(stdout).toMatch(new RegExp(`^ {2}${label}.* !$`, 'm'));
    }
    expect(stdout).toContain('! not enough for this duty');
    expect((await drive('Tr8x2', '--load', '4')).stdout).not.toContain('!');
  });

  it('a difference between two ends in degrees at each coupling', async () => {
    const { end_difference } = await json('Tr8x2', '--end-difference', '0.4mm');
    expect(end_difference).toMatchObject({ difference: 0.4, turns: [{ designation: 'Tr8x2', degrees: 72 }] });
  });

  it.each([
    [['Acme 1/4-16', '--layer-heights', '0.1,0.2,0.25', '--load', '60', '--torque', '0.05']],
    [['nut.yaml', 'Tr8x2', 'Tr10x2-LH', 'Acme 1/2-10-2start', '5/16-18', '--purpose', 'holding', '--load', '4000']],
    [['Tr8x2', 'Tr8x2-LH']],
    [['Tr8x8(P2)', '--axis', 'horizontal']],
    [['fast.yaml', '--commanded', '100', '--measured', '-401']],
  ])('fits 80 columns: %j', async (argv) => {
    const { code, stdout } = await drive(...argv);
    expect(code).toBe(0);
    expect(stdout.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });
});

describe('a travel that is wrong', () => {
  it('groups the slips by what the controller holds, with the right figure of each', async () => {
    const { stdout } = await drive('Tr8x8(P2)', '--commanded', '100mm', '--measured', '25.1mm');
    expect(stdout).toMatch(/^Tr8x8\(P2\) travels 0\.251 times what was asked/);
    expect(stdout).toMatch(/holds 100 steps per mm, set 400:\n {2}– The lead was taken for the pitch/);
    expect(stdout).toMatch(/holds 400 steps per mm, set 1600:\n(?:.*\n)*? {2}– The driver makes 64 microsteps/);
    expect(stdout).toContain('Either way, multiply what the controller holds by 4.');
  });

  it('gives one answer where the figure is known', async () => {
    const { stdout } = await drive(
      'Tr8x2',
      '--commanded',
      '100',
      '--measured',
      '25.1 ± 0.2 mm',
      '--steps-per-mm',
      '400',
    );
    expect(stdout).toContain('It holds 400 steps per mm: set 1600.');
    expect(stdout).not.toContain('set 6400');
  });

  it('knows the old screw, a wrong way, a reading in inches, and a ratio that is no slip', async () => {
    expect((await drive('M8', '--from', 'Tr8x8(P2)', '--commanded', '100', '--measured', '15.6')).stdout).toContain(
      'still set for the old screw',
    );
    expect((await drive('Tr8x2', '--commanded', '100', '--measured', '-25')).stdout).toContain('moved the wrong way');
    expect((await drive('Tr8x2', '--commanded', '100', '--measured', '3.94')).stdout).toMatch(/read\s+in inches/);
    expect((await drive('Tr8x2', '--commanded', '100', '--measured', '98.5')).stdout).toMatch(/too little off/);
    expect((await drive('Tr8x2', '--commanded', '100', '--measured', '100')).stdout).toMatch(/as told/);
  });

  it('stands in the answer for scripts', async () => {
    const { travel, screws } = await json('Tr8x2', '--commanded', '100', '--measured', '25.1');
    expect(screws[0].designation).toBe('Tr8x2');
    expect(travel).toMatchObject({ verdict: 'slip', factor: 4, steps_per_mm: 1600 });
    expect(travel.slips[0]).toMatchObject({ slip: 'old-screw', controller_has: 400, steps_per_mm: 1600 });
  });
});

describe('drive refuses', () => {
  it.each([
    [[], 'leadwright: an argument is missing; leadwright drive --help shows what it wants'],
    [['Tx8x2'], 'leadwright: Tx8x2; must be a thread such as Tr8x2, '],
    [['Tr8y2'], 'leadwright: Tr8y2; "y2" is not understood; '],
    [['Tr8x2', '--from', 'M7.5'], 'leadwright: --from: M7.5; '],
    [['Tr8x2', '--load', '-5'], 'leadwright: --load: -5; must be above 0'],
    [['Tr8x2', '--load', '5 kilo'], 'leadwright: --load: 5 kilo; unit must be one of N, kN, kgf, gf, lbf, ozf'],
    [['Tr8x2', '--steps', '2.5'], 'leadwright: --steps: 2.5; must be a whole number from 4 to 4000'],
    [['Tr8x2', '--microsteps', 'x'], 'leadwright: --microsteps: x; must be a whole number from 1 to 1024'],
    [['Tr8x2', '--gear', '0'], 'leadwright: --gear: 0; must be above 0'],
    [['Tr8x2', '--axis', 'up'], 'leadwright: --axis: up; must be one of vertical, horizontal'],
    [['Tr8x2', '--span', '1e9'], 'leadwright: --span: 1000000000; must be '],
    [['Tr8x2', '--ends', 'loose'], 'leadwright: --ends: loose; must be one of fixed-free, supported, '],
    [['Tr8x2', '--layer-heights', '0.1,x'], 'leadwright: --layer-heights: x; must be a finite number'],
    [['Tr8x2', '--fit', 'tight'], 'leadwright: --fit: tight; must be one of close, running, loose'],
    [['Tr8x2', '--fit', '1,2,3'], 'leadwright: --fit: 1,2,3; must be a class or two clearances'],
    [['Tr8x2', '--purpose', 'looks'], 'leadwright: --purpose: looks; must be one of fine-layers, speed, holding'],
    [['Tr8x2', '--old-steps-per-mm', '400'], 'leadwright: --old-steps-per-mm: 400; needs --from SCREW'],
    [['Tr8x2', '--commanded', '100'], 'leadwright: --commanded: 100; needs --measured LENGTH'],
    [['Tr8x2', '--measured', '25'], 'leadwright: --measured: 25; needs --commanded LENGTH'],
    [['Tr8x2', '--measured', '0', '--commanded', '1'], 'leadwright: --measured: 0; must be a length other than 0'],
    [['Tr8x2', 'M5', '--commanded', '100', '--measured', '25'], 'leadwright: --commanded: 100; goes with one screw'],
    [['Tr8x2', '--steps-per-mm', '400'], 'leadwright: --steps-per-mm: 400; goes with --commanded and --measured'],
    [['Tr8x2', '--end-difference', 'x'], 'leadwright: --end-difference: x; must be a finite number'],
    [['Tr8x2', '--loads', '5'], 'leadwright: --loads: unknown option; did you mean --load?'],
    [['no.yaml'], 'no.yaml: no such file'],
    [['none.yaml'], 'none.yaml:1:1 screw: is missing; a drive is worked out from it'],
  ])('%j', async (argv, line) => {
    const { code, stdout, stderr } = await drive(...argv);
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr.startsWith(line), stderr).toBe(true);
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
  });

  it('offers the nearest that is known', async () => {
    expect((await drive('Tx8x2')).stderr).toMatch(/; did you mean Tr8x2\?\n$/);
    expect((await drive('something else')).stderr).toMatch(/; a sheet ends in \.yaml\n$/);
  });

  it('every mistake at once, each where it stands', async () => {
    const { code, stderr } = await drive('wrong.yaml', '--axis', 'up');
    expect(code).toBe(2);
    expect(stderr.trimEnd().split('\n').sort()).toEqual([
      'leadwright: --axis: up; must be one of vertical, horizontal',
      'wrong.yaml:4:14 duty.load: -4; must be above 0',
      'wrong.yaml:4:24 duty.spin: unknown field; did you mean span?',
    ]);
    expect((await drive('no.yaml', 'none.yaml', 'Tz8')).stderr.trimEnd().split('\n')).toHaveLength(3);
  });
});

describe('after the swap', () => {
  const drive = async (...argv: string[]) => (await call(callFolder(), ['drive', ...argv])).stdout;

  it('tries the screws that are common before a swap: 2.5 times too far is an M5, 4000 held where 1600 is right', async () => {
    const text = await drive('Tr8x2', '--commanded', '100', '--measured', '250');
    expect(text).toContain('If the controller holds 4000 steps per mm, set 1600:');
    expect(text).toMatch(/0\.8 mm a turn is that of M5/);
    expect(text).not.toContain('640');
  });

  it('prints no figure that rests on what the controller is not known to hold', async () => {
    const text = await drive('Tr8x2', '--commanded', '100', '--measured', '173');
    expect(text).toMatch(/Multiply the controller's figure by 0\.578\./);
    expect(text).not.toMatch(/\d steps per mm/);
    expect(await drive('Tr8x2', '--commanded', '100', '--measured', '173', '--steps-per-mm', '1600')).toContain(
      '924.855',
    );
  });

  it('says that a screw of the other hand turns the direction round', async () => {
    expect((await drive('Tr10x2-LH', '--from', 'Tr10x2')).replaceAll(/\s+/g, ' ')).toContain(
      'the axis moves the other way',
    );
    expect(await drive('Tr10x2', '--from', 'Tr10x3')).not.toContain('the other way');
  });

  it('tells the new feed at the same motor speed, and the time that many lifts take', async () => {
    // 3 mm/s at lead 3 are 2 mm/s at lead 2: 10,000 lifts of 0.4 mm at 100 mm/s² take 1633 and 2200 s
    const lifts = ['--feed', '3', '--lifts', '10000', '--lift-height', '0.4', '--acceleration', '100'];
    const text = (await drive('Tr10x2', '--from', 'Tr10x3', ...lifts)).replaceAll(/\s+/g, ' ');
    expect(text).toContain('at the same motor speed 3 mm/s become 2 mm/s');
    expect(text).toContain('27 min 13 s with Tr10x3 and 36 min 40 s with Tr10x2: 9 min 27 s more');
  });

  it('levels: which end, which way, how far', async () => {
    const text = (await drive('Tr8x2', '--end-difference', '-0.35', '--motor', 'above')).replaceAll(/\s+/g, ' ');
    expect(text).toContain('The left end is 0.35 mm low');
    expect(text).toContain('63° clockwise as seen from above');
  });

  it.each([
    [['Tr8x2', '--lifts', '10'], '--lifts: 10; needs --lift-height, --acceleration, --feed too'],
    [['Tr8x2', '--motor', 'above'], '--motor: above; goes with --end-difference'],
  ])('%j is refused', async (argv, line) => {
    const { code, stderr } = await call(callFolder(), ['drive', ...argv]);
    expect(code).toBe(2);
    expect(stderr).toContain(line);
  });
});
