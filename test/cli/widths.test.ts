import { cpSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { startSheet } from '../../src/pipeline/start-sheets.js';
import { call, callFolder } from '../support/call.js';

const cwd = callFolder();
cpSync('presets', join(cwd, 'presets'), { recursive: true });
writeFileSync(join(cwd, 'start.yaml'), startSheet('nut'));
const KINDS = ['nut', 'adapter', 'coupling', 'sleeve', 'coupon'] as const;
const demo = (kind: string) => `presets/sheets/demo-${kind}.yaml`;
const DEMOS = KINDS.map(demo);
const FAILING = startSheet('nut')
  .replace('my-nut', 'thin')
  .replace('diameter: 16 mm, length: 17 mm', 'diameter: 9 mm, length: 7 mm');
writeFileSync(join(cwd, 'failing.yaml'), FAILING);
const UNTOLD = startSheet('nut')
  .replace('my-nut', 'untold')
  .replace(/^duty:\n(?:[ #].*\n)+/m, '');
writeFileSync(join(cwd, 'untold.yaml'), UNTOLD);

const CALLS = {
  check: ['check', ...DEMOS, 'failing.yaml', 'untold.yaml'],
  'check --all': ['check', '--all', ...DEMOS, 'failing.yaml', 'untold.yaml'],
  'make --all': ['make', demo('sleeve'), '--formats', 'stl', '--all'],
  identify: ['identify', '--major', '9.94', '--crests', '10=20.05', '--minor', '7.4', '--crest-flat', '0.6'],
  'identify, one reading': ['identify', '--major', '7.9'],
  'identify --how': ['identify', '--how'],
  drive: ['drive', 'Tr8x8(P2)', 'Tr8x2', 'Tr10x2', 'M8', '--load', '30', '--motor-speed', '300', '--from', 'Tr8x8(P2)'],
  'drive of a sheet': ['drive', demo('nut')],
  'drive, a wrong travel': ['drive', 'Tr8x2', '--commanded', '100', '--measured', '400'],
  'fleet --dry-run': ['fleet', 'presets/fleets/demo-fleet.yaml', '--dry-run'],
  calibrate: ['calibrate', 'presets/results/demo-coupon-results.yaml', '--dry-run'],
  presets: ['presets'],
  help: ['--help'],
  'help check': ['help', 'check'],
  'help drive': ['help', 'drive'],
} as const satisfies Record<string, readonly string[]>;

describe.each([60, 80, 120, 160])('a terminal of %d columns', (columns) => {
  it.each(Object.entries(CALLS))('holds every line of %s', async (_, argv: readonly string[]) => {
    const { code, stdout } = await call(cwd, argv, { columns });
    expect(code).toBe(argv.includes('failing.yaml') ? 1 : 0);
    const lines = stdout.split('\n');
    expect(lines.length).toBeGreaterThan(5);
    // a path is never broken
    expect(lines.filter((line) => line.length > columns && !/^ {2}written: \S+$/.test(line))).toEqual([]);
  });
});

describe('the answer', () => {
  it.each([...DEMOS, 'failing.yaml', 'untold.yaml', 'start.yaml'])('of %s takes at most 24 lines', async (sheet) => {
    const { stdout } = await call(cwd, ['check', sheet], { columns: 80 });
    expect(stdout.trimEnd().split('\n').length).toBeLessThanOrEqual(24);
  });

  it.each([...DEMOS, 'start.yaml'])('of %s names what each question hangs on in full', async (sheet) => {
    const { stdout } = await call(cwd, ['check', sheet], { columns: 80 });
    expect(stdout).toContain('? ');
    expect(stdout).not.toMatch(/ …: /);
  });

  it.each(['nut', 'sleeve'])('of a %s that is made takes at most 24 lines', async (kind) => {
    const { code, stdout } = await call(cwd, ['make', demo(kind), '--formats', 'stl,drawing'], { columns: 80 });
    expect(code).toBe(0);
    expect(stdout).toMatch(/^ {2}written /m);
    expect(stdout.trimEnd().split('\n').length).toBeLessThanOrEqual(24);
  });

  it('of a part of two bodies with all its files takes at most 24 lines too', async () => {
    writeFileSync(join(cwd, 'spring.yaml'), startSheet('anti-backlash-nut'));
    const { code, stdout } = await call(cwd, ['make', 'spring.yaml'], { columns: 80 });
    expect(code).toBe(0);
    expect(stdout).toContain('-follower.stl');
    expect(stdout.trimEnd().split('\n').length).toBeLessThanOrEqual(24);
  });

  it('shows tables whole: what stands in a row of a wide terminal stands in the narrow one too', async () => {
    const words = async (columns: number) => {
      const { stdout } = await call(cwd, CALLS['check --all'], { columns });
      return stdout.replaceAll(/[─,\s]+/g, ' ').trim();
    };
    expect(await words(60)).toBe(await words(160));
  });
});
