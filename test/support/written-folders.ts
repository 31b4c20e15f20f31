import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startSheet } from '../../src/pipeline/start-sheets.js';
import { calibrateFiles } from '../../src/work/calibrate-files.js';
import { localMaker } from '../../src/work/fleet/makers.js';
import { noMaker } from '../../src/work/fleet/no-maker.js';
import { runShare } from '../../src/work/fleet/share.js';
import { makeSheets } from '../../src/work/make-sheets.js';
import { replaceFile, writeNewFile } from '../../src/work/writer/files.js';
import { replaceFolder } from '../../src/work/writer/replace-folder.js';
import { call } from './call.js';
import { CUBES } from './cube-kind.js';
import { filesBelow, kernel, openCubes, runCubes } from './fleet-folder.js';

/** A command that writes, over what an earlier call of it left. */
export interface Writer {
  readonly name: string;
  /** what lies in the working folder before */
  readonly before: (cwd: string) => Promise<unknown>;
  readonly run: (cwd: string) => Promise<unknown>;
  /** what it writes to: folders and files in the working folder, each old or new as one */
  readonly targets: readonly string[];
  /** whether it refuses to do the same again, or says that it was done again */
  readonly isOnce?: boolean;
  /** whether it makes hundreds of disk calls */
  readonly isLong?: boolean;
}

const CUBE = (size: number, name = 'c') => `part: cube\nname: ${name}\nsize: ${size}\nhole: 1\n`;
const place = (cwd: string) => ({ cwd, stdin: async function* () {} });

async function makeCube(cwd: string, size: number, bodies: number): Promise<void> {
  writeFileSync(join(cwd, 'c.yaml'), `${CUBE(size)}bodies: ${bodies}\n`);
  const results = await makeSheets(['c.yaml'], place(cwd), { out: 'out', kernel, kinds: CUBES, formats: ['stl'] });
  for (const result of results) if ('error' in result) throw result.error;
}

async function makeCubeAxis(cwd: string, sizes: Readonly<Record<string, number>>): Promise<void> {
  const parts = Object.entries(sizes).map(([role, size]) => `  ${role}: {part: cube, size: ${size}, hole: 1}\n`);
  writeFileSync(join(cwd, 'a.yaml'), `part: axis\nname: a\nscrew: Tr8x2\nparts:\n${parts.join('')}`);
  const results = await makeSheets(['a.yaml'], place(cwd), { out: 'out', kernel, kinds: CUBES, formats: ['stl'] });
  for (const result of results) if ('error' in result) throw result.error;
}

const FLEET = (size: number) => `fleet: f
machines:
  a: {parts: {foot: {part: {part: cube, name: foot, size: 10, hole: 1}}}}
  b: {parts: {foot: {part: {part: cube, name: foot, size: 10, hole: 1}}, head: {part: {part: cube, size: ${size}}}}}
`;

async function share(cwd: string, index: number): Promise<void> {
  const { plan } = await openCubes(cwd);
  await runShare(
    plan!,
    { index, count: 2 },
    {
      out: join(cwd, `s${index}`),
      stores: [{ folder: join(cwd, 'cache') }],
      maker: () => localMaker({ kernel, kinds: CUBES }),
      formats: ['stl'],
      onProgress: () => undefined,
      stopped: () => false,
    },
  );
}

/** Files of others, which every write has to leave as they are. */
function strangers(folder: string): void {
  mkdirSync(join(folder, 'mine', 'deep'), { recursive: true });
  mkdirSync(join(folder, 'empty'));
  writeFileSync(join(folder, 'notes.txt'), 'mine');
  writeFileSync(join(folder, 'mine/deep/more.txt'), 'mine too');
}

/** A folder whose one file is written from rows of a million signs each. */
function writeFolder(cwd: string, rows: number): Promise<void> {
  return replaceFolder(join(cwd, 'out'), {
    earlier: () => ['rows.txt'],
    fill: (stage) => {
      const spool = stage.spool<string>();
      for (let i = 0; i < rows; i++) spool.push(String(i).repeat(1_000_000));
      stage.write('rows.txt', spool);
    },
  });
}

const RESULTS = startSheet('demo-results');
const TRIED =
  'part: nut\nname: n\nscrew: Tr8x2\nbody: {diameter: 15, length: 20}\nprofile: pa12-workshop\nfit: running\n';

export const WRITERS: readonly Writer[] = [
  { name: 'make, new', before: async () => undefined, run: (cwd) => makeCube(cwd, 10, 1), targets: ['out/c'] },
  {
    name: 'make, again',
    before: async (cwd) => {
      await makeCube(cwd, 8, 2);
      strangers(join(cwd, 'out/c'));
    },
    run: (cwd) => makeCube(cwd, 10, 1),
    targets: ['out/c'],
  },
  {
    name: 'a folder with more rows than fit into memory',
    before: async (cwd) => writeFolder(cwd, 1),
    run: (cwd) => writeFolder(cwd, 5),
    isLong: true,
    targets: ['out'],
  },
  {
    name: 'calibrate --replace',
    before: async (cwd) => {
      writeFileSync(join(cwd, 'r.yaml'), RESULTS);
      await calibrateFiles(['r.yaml'], place(cwd), { to: 'profiles', whenThere: 'keep', writes: true });
    },
    run: (cwd) => calibrateFiles(['r.yaml'], place(cwd), { to: 'profiles', whenThere: 'replace', writes: true }),
    targets: ['profiles/pa12-workshop.yaml'],
    isOnce: true,
  },
  {
    name: 'calibrate --refine',
    before: async (cwd) => {
      writeFileSync(join(cwd, 'r.yaml'), RESULTS);
      await call(cwd, ['calibrate', 'r.yaml']);
      writeFileSync(join(cwd, 'nut.yaml'), TRIED);
      const { stdout } = await call(cwd, ['new', 'trial', 'nut.yaml']);
      const filled = stdout.replace(/^goes:[^#]*/m, 'goes: by-hand ').replace(/^play:[^#]*/m, 'play: 0.15 mm ');
      writeFileSync(join(cwd, 't.yaml'), filled);
    },
    run: async (cwd) => {
      const { code, stderr } = await call(cwd, ['calibrate', 't.yaml', '--refine']);
      if (code !== 0) throw new Error(stderr);
    },
    targets: ['profiles/pa12-workshop.yaml'],
    isOnce: true,
  },
  {
    name: 'new --to',
    before: async () => undefined,
    run: (cwd) => writeNewFile('n.yaml', CUBE(4), cwd),
    targets: ['n.yaml'],
    isOnce: true,
  },
  {
    name: 'compare --page',
    before: async (cwd) => writeFileSync(join(cwd, 'p.html'), 'old'),
    run: (cwd) => replaceFile('--page', 'p.html', 'new '.repeat(1000), cwd),
    targets: ['p.html'],
  },
  {
    name: 'make of an axis, over one with other parts',
    before: async (cwd) => {
      await makeCubeAxis(cwd, { foot: 10, head: 12 });
      strangers(join(cwd, 'out/a'));
      strangers(join(cwd, 'out/a/foot'));
    },
    run: (cwd) => makeCubeAxis(cwd, { foot: 11, top: 12 }),
    targets: ['out/a'],
  },
  {
    name: 'fleet, new',
    before: async (cwd) => writeFileSync(join(cwd, 'fleet.yaml'), FLEET(12)),
    run: (cwd) => runCubes(cwd, { zip: true }),
    isLong: true,
    targets: ['out'],
  },
  {
    name: 'fleet, edited',
    before: async (cwd) => {
      writeFileSync(join(cwd, 'fleet.yaml'), FLEET(12));
      await runCubes(cwd, { zip: true });
      strangers(join(cwd, 'out'));
      strangers(join(cwd, 'out/machines/b'));
      writeFileSync(join(cwd, 'fleet.yaml'), FLEET(14));
    },
    run: (cwd) => runCubes(cwd),
    isLong: true,
    targets: ['out'],
  },
  {
    name: 'fleet --shard',
    before: async (cwd) => writeFileSync(join(cwd, 'fleet.yaml'), FLEET(12)),
    run: async (cwd) => {
      await share(cwd, 1);
      await share(cwd, 2);
    },
    isLong: true,
    targets: [],
  },
  {
    name: 'merge',
    before: async (cwd) => {
      writeFileSync(join(cwd, 'fleet.yaml'), FLEET(12));
      await share(cwd, 1);
      await share(cwd, 2);
      rmSync(join(cwd, 'cache'), { recursive: true });
    },
    run: (cwd) =>
      runCubes(cwd, {
        stores: [{ folder: join(cwd, 'none') }, { folder: join(cwd, 's1') }, { folder: join(cwd, 's2') }],
        maker: () => noMaker(CUBES),
      }),
    isLong: true,
    targets: ['out'],
  },
];

/** In memory where there is such a disk: what is played here hundreds of times need not reach a real one. */
function quickFolder(): string {
  const memory = '/dev/shm';
  return mkdtempSync(join(existsSync(memory) ? memory : tmpdir(), 'written-'));
}

/** A working folder as it is before a command, to be copied as often as need be. */
export async function prepared(writer: Writer): Promise<string> {
  const cwd = quickFolder();
  await writer.before(cwd);
  return cwd;
}

export function copied(cwd: string): string {
  const copy = quickFolder();
  cpSync(cwd, copy, { recursive: true, preserveTimestamps: true });
  return copy;
}

/** A file or folder as one text, nothing where there is none. */
export function stateOf(cwd: string, target: string): string {
  const path = join(cwd, target);
  if (!existsSync(path)) return 'nothing';
  try {
    return JSON.stringify([filesBelow(path), readdirSync(path, { recursive: true, encoding: 'utf8' }).sort()]);
  } catch {
    return readFileSync(path, 'utf8');
  }
}

/** Hidden names anywhere below a folder. */
export function hiddenBelow(cwd: string): string[] {
  return readdirSync(cwd, { recursive: true, encoding: 'utf8' }).filter((name) => /(?:^|[/\\])\./.test(name));
}
