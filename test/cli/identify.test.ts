import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { HOW_TO_MEASURE } from '../../src/identify/guide.js';
import { parseDesignation } from '../../src/standards/threads/designation.js';
import { call, callFolder } from '../support/call.js';

const TR8 = ['--major', '7.92,7.94,7.91', '--crests', '10=20.05'];

function folderWith(files: Readonly<Record<string, string>>): string {
  const folder = callFolder();
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return folder;
}

const cwd = folderWith({
  'screw.yaml': `# a screw of four starts
major: [7.92 mm, 7.94 mm, 0.3118 in]
crests: {count: 10, length: 20.05 ± 0.05 mm}
travel: {turns: 10, length: 80.1 mm}
crest: flat
hand: left
`,
  'wrong.yaml': 'major: 7.9\nminor: 9\ncrest: bent\nwire: 1\n',
  'crossed.yaml': 'major: 7.9\nminor: 9\n',
  'list.yaml': '- 7.9\n',
});
const identify = (...argv: string[]) => call(cwd, ['identify', ...argv]);

describe('identify', () => {
  it('names a screw and says what it is', async () => {
    const { code, stdout, stderr } = await identify(...TR8, '--travel', '10=80.1', '--hand', 'right');
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout).toMatch(/^Tr8x8\(P2\), >99 % likely\n/);
    expect(stdout).toMatch(/pitch 2 mm, 4 starts, so a turn travels\s+8 mm, right-hand/);
    expect(stdout).toContain('For a part sheet\n  screw:\n    designation: Tr8x8(P2)\n    major: 7.923 ± 0.03 mm\n');
    expect(stdout).not.toMatch(/Measure next|Does not go together/);
  });

  it('says which cannot be told apart, and the measurement that would', async () => {
    const { stdout } = await identify(...TR8);
    expect(stdout).toMatch(/^Tr8x2, Tr8x4\(P2\) or Tr8x8\(P2\): these readings cannot tell them apart\.\n/);
    expect(stdout).toMatch(/Measure next\n {2}the threads that begin .*1 for Tr8x2, 2 for Tr8x4\(P2\),\s+4 for Tr8x8/);
    expect(stdout).toContain('Then add --starts N');
    expect(stdout).toMatch(/For a part sheet\n {2}screw:\n {4}form: trapezoidal/);
    expect(stdout).not.toContain('designation:');
  });

  it('gives an odd screw as a block that a sheet takes', async () => {
    const { stdout } = await identify('--major', '8.6', '--crests', '10=23', '--crest', 'flat', '--hand', 'right');
    expect(stdout).toMatch(/^An odd screw: none of the series fits/);
    const block = /For a part sheet\n((?: {2}.*\n)+)/.exec(stdout)![1]!.replace(/^ {2}/gm, '');
    writeFileSync(join(cwd, 'odd.yaml'), block);
    const { code, stdout: drive } = await call(cwd, ['drive', 'odd.yaml', '--json']);
    expect(code).toBe(0);
    expect(JSON.parse(drive).screws[0]).toMatchObject({ major: 8.6, pitch: 2.3, starts: 1, form: 'trapezoidal' });
  });

  it('names the slip before the screw', async () => {
    const { stdout } = await identify('--major', '0.312', '--crests', '10=0.789');
    expect(stdout).toMatch(/^None of the series fits these readings as they are/);
    expect(stdout).toMatch(/looks like inches typed as millimetres; read so it is\s+Tr8x2/);
  });

  it.each([
    [['--major', '0.3122in', '--crests', '10=0.556in'], '5/16-18 UNC'],
    [['--major', '5/16 in', '--crests', '10=14.1'], '5/16-18 UNC'],
    [['--major', '7.95 ± 0.02 mm', '--crests', '10=20', '--travel=10=20.01'], 'Tr8x2'],
    [['--major=12.6', '--crests=10=1in', '--starts', '2'], 'Acme 1/2-10-2start'],
  ])('reads units: %j', async (argv, designation) => {
    const { stdout } = await identify(...argv, '--json');
    expect(JSON.parse(stdout).candidates[0].designation).toBe(designation);
  });

  it('an uncertainty in place counts for its reading alone', async () => {
    // 20.1 / 10 lies 0.008 above 2 · 1.001, the most that the pitch may be; σ is half of 0.03 / 10, or of 0.2 / 10
    const sigma = async (crests: string) => {
      const { stdout } = await identify('--major', '7.9', '--crests', crests, '--json');
      return JSON.parse(stdout).candidates[0].residuals[1].sigma;
    };
    expect(await sigma('10=20.1')).toBeCloseTo(0.008 / 0.0015, 2);
    expect(await sigma('10=20.1 ± 0.2 mm')).toBeCloseTo(0.008 / 0.01, 2);
  });

  it('reads a file, from stdin too, and lets options go before it', async () => {
    const { code, stdout } = await identify('screw.yaml');
    expect(code).toBe(0);
    expect(stdout).toMatch(/^Tr8x8\(P2\)-LH, >99 % likely\n.*\n?.*left-hand/);
    const right = JSON.parse((await identify('screw.yaml', '--hand', 'right', '--json')).stdout);
    expect(right.candidates[0]).toMatchObject({ designation: 'Tr8x8(P2)', hand: 'right' });
    const piped = await call(cwd, ['identify', '-', '--starts', '1'], {
      stdin: 'major: 7.9\ncrests: {count: 10, length: 20}\n',
    });
    expect(piped.stdout).toMatch(/^Tr8x2, /);
  });

  it('has the fields that scripts rely on', async () => {
    const { stdout } = await identify(...TR8, '--json');
    const answer = JSON.parse(stdout);
    expect(Object.keys(answer)).toEqual(
      expect.arrayContaining(['candidates', 'separable', 'next_measurement', 'contradictions', 'screw']),
    );
    expect(answer.candidates[0]).toMatchObject({
      designation: 'Tr8x2',
      form: 'trapezoidal',
      major: 8,
      pitch: 2,
      starts: 1,
      hand: 'right',
      probability: expect.any(Number),
      residuals: [
        { what: 'major', mm: expect.any(Number), sigma: expect.any(Number) },
        { what: 'pitch', mm: expect.any(Number), sigma: expect.any(Number) },
      ],
    });
    expect(answer).toMatchObject({ separable: false, contradictions: [] });
    expect(answer.next_measurement).toMatchObject({ what: 'starts', why: expect.any(String) });
    expect(answer.screw).toMatchObject({ form: 'trapezoidal', major: 7.923, pitch: 2.005, starts: 1, hand: 'right' });
    expect(() => parseDesignation(answer.candidates[0].designation)).not.toThrow();
  });

  it('shows how to measure, in 80 columns', async () => {
    const { code, stdout } = await identify('--how');
    expect([code, stdout]).toEqual([0, HOW_TO_MEASURE]);
    expect(stdout.split('\n').filter((line) => line.length > 80)).toEqual([]);
    expect(JSON.parse((await identify('--how', '--json')).stdout)).toEqual({ how: HOW_TO_MEASURE });
  });

  it.each([
    [[...TR8]],
    [['--crests', '10=20.05']],
    [['--major', '12.6', '--crests', '10=25.4']],
    [
      [
        '--major',
        '7.9',
        '--crests',
        '10=20',
        '--minor',
        '5.4',
        '--crest-flat',
        '0.35',
        '--wires',
        '1.0=7.6',
        '--travel',
        '10=33',
      ],
    ],
  ])('fits 80 columns, without colour: %j', async (argv) => {
    const { code, stdout } = await identify(...argv);
    expect(code).toBe(0);
    expect(stdout.split('\n').filter((line) => line.length > 80)).toEqual([]);
    expect(stdout).not.toContain('\u001b');
  });
});

describe('identify refuses', () => {
  it.each([
    [[], 'leadwright: readings are missing: a file, or some of --major, --crests, --travel, --minor, --wires, '],
    [['--hand', 'left'], 'leadwright: needs at least one of major, crests, travel, minor, wires, nut_bore'],
    [['--major', 'abc'], 'leadwright: --major: abc; must be a finite number or a quantity such as 12 mm or 0.5 in'],
    [['--major', '7.9,,8'], 'leadwright: --major: must be a finite number'],
    [['--major', '1/4'], 'leadwright: --major: 1/4; needs a unit: mm, cm, m, µm, in, ft'],
    [
      ['--major', '7,92'],
      'leadwright: --major: 7, 92; must be readings of one diameter; a decimal is written with a point',
    ],
    [['--major', '-8'], 'leadwright: --major: -8; must be above 0'],
    [['--crests', '20.05'], 'leadwright: --crests: 20.05; must be two values such as 10=20.05'],
    [['--crests', '9.5=20'], 'leadwright: --crests: 9.5; must be a whole number from 1 to 1000'],
    [['--travel', '10=far'], 'leadwright: --travel: far; must be a finite number'],
    [['--wires', '1.0='], 'leadwright: --wires: 1.0=; must be two values such as 1.0=8.31'],
    [['--major', '8', '--starts', '0'], 'leadwright: --starts: 0; must be a whole number from 1 to 12'],
    [['--major', '8', '--hand', 'up'], 'leadwright: --hand: up; must be one of right, left'],
    [['--major', '8', '--crest', 'bent'], 'leadwright: --crest: bent; must be one of flat, sharp, round'],
    [['--major', '8', '--hand', 'RH'], 'leadwright: --hand: RH; must be one of right, left; did you mean right?'],
    [['--nut-bore', '6.3=6'], 'leadwright: --nut-bore: 6; must not be below the shank that goes in'],
    [['--major', '8', '--minor', '9'], 'leadwright: --minor: 9; must be below the major diameter'],
    [['--major', '8', '--uncertainty', '0'], 'leadwright: --uncertainty: 0; must be above 0'],
    [['--major', '8', '--major', '9'], 'leadwright: --major: 8, 9; must be given once'],
    [['--mayor', '8'], 'leadwright: --mayor: unknown option; did you mean --major?'],
    [['none.yaml'], 'none.yaml: no such file'],
    [['crossed.yaml'], 'crossed.yaml:2:8 minor: 9; must be below the major diameter'],
    [['list.yaml'], 'list.yaml:1:1 '],
  ])('%j', async (argv, line) => {
    const { code, stdout, stderr } = await identify(...argv);
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr.startsWith(line), stderr).toBe(true);
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
  });

  it('all mistakes of a file and of the options at once', async () => {
    const { code, stderr } = await identify('wrong.yaml', '--starts', 'x');
    expect(code).toBe(2);
    expect(stderr.trimEnd().split('\n').sort()).toEqual([
      'leadwright: --starts: x; must be a whole number from 1 to 12',
      'wrong.yaml:3:8 crest: bent; must be one of flat, sharp, round',
      'wrong.yaml:4:7 wire: unknown field; did you mean wires?',
    ]);
  });
});
