// Mutation testing over mechanics, the check engine and the checks of the kinds, a folder at a time:
//   npm run mutants                 all of them
//   npm run mutants -- mechanics/shaft parts/nut/checks
// Prints the share of mutants that a test noticed, and each that none did; ends with 1 below the wanted share.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';

const WANTED = 85;

/** What is mutated, with the tests that must notice. */
const FOLDERS = {
  fit: ['test/fit/**/*.test.ts'],
  judge: ['test/judge/**/*.test.ts'],
  'mechanics/strength': ['test/mechanics/strength/*.test.ts', 'test/docs-examples.test.ts'],
  'mechanics/bolt': ['test/mechanics/bolt/*.test.ts', 'test/parts/common/{joints,bolting}.test.ts'],
  'mechanics/coupling': ['test/mechanics/coupling/*.test.ts', 'test/docs-examples.test.ts'],
  'mechanics/flange': ['test/mechanics/flange/*.test.ts', 'test/parts/common/slab.test.ts'],
  'mechanics/power-screw': ['test/mechanics/power-screw/*.test.ts', 'test/docs-examples.test.ts'],
  'mechanics/print': ['test/mechanics/print/*.test.ts', 'test/docs-examples.test.ts'],
  'mechanics/shaft': ['test/mechanics/shaft/*.test.ts', 'test/docs-examples.test.ts'],
  'mechanics/thread': ['test/mechanics/{thread,print}/*.test.ts', 'test/docs-examples.test.ts'],
  'mechanics/*.ts': ['test/mechanics/*.test.ts', 'test/docs-examples.test.ts'],
  'parts/common/{grip,axial-path,clamp-ring,grip-demand,grip-checks,hold-figures}.ts': [
    'test/parts/common/{grip,axial-path,clamp,grip-demand,grip-checks,hold-figures}.test.ts',
    'test/parts/coupling/checks/*.test.ts',
    'test/parts/{sleeve,coupling}/{checks,verdicts}.test.ts',
  ],
  'parts/common/{held-slab,slab,bolting,load-cases,stall-force}.ts': [
    'test/parts/common/{slab,bolting,bolting-words,load-cases,material-at}.test.ts',
    'test/parts/nut/{flange,strength,verdicts}.test.ts',
    'test/parts/adapter/{strength,verdicts}.test.ts',
  ],
  'parts/common/{held-checks,checks,profile-checks,pattern-fit,joints,residual}.ts': [
    'test/parts/common/{profile-checks,pattern-fit,joints,held-checks}.test.ts',
    'test/parts/{nut,sleeve,adapter}/verdicts.test.ts',
  ],
  'parts/common/{float,teeth,bore-play,axial-grip,held,grip-cure,hub-walls,walls}.ts': [
    'test/parts/common/{float,grip,grip-checks,axial-path,held-checks}.test.ts',
    'test/parts/nut/float.test.ts',
    'test/parts/collar/by-hand.test.ts',
    'test/parts/coupling/checks/*.test.ts',
    'test/parts/sleeve/{by-hand,checks}.test.ts',
    'test/parts/{adapter,sleeve}/verdicts.test.ts',
  ],
  'parts/nut/{flange-bending,engagement,float,drive}.ts': [
    'test/parts/nut/{checks,strength,flange,float,drive,messages,family,by-hand,stack}.test.ts',
  ],
  'parts/adapter/{bending,cutouts}.ts': ['test/parts/adapter/{adapter,strength,messages,verdicts,cutouts}.test.ts'],
  'parts/coupling/{jaw-load,misalignment,peak-torque,temperatures}.ts': [
    'test/parts/coupling/checks/*.test.ts',
    'test/parts/coupling/{coupling,jaw-load,misalignment}.test.ts',
  ],
  'parts/collar/{pin,seat}.ts': ['test/parts/collar/{by-hand,messages}.test.ts'],
  'parts/nut/checks': [
    'test/parts/nut/{checks,messages,strength,stack,flange,float,bore-cures,verdicts}.test.ts',
    'test/parts/nut/checks/*.test.ts',
    'test/parts/common/{slab,bolting,profile-checks}.test.ts',
  ],
  'parts/nut/variants/{checks,split-hold,nut-seat,anti-backlash,borne-share}.ts': [
    'test/parts/nut/{family,verdicts,by-hand}.test.ts',
    'test/parts/nut/variants/by-hand.test.ts',
  ],
  'parts/adapter/checks': [
    'test/parts/adapter/{adapter,messages,strength,verdicts}.test.ts',
    'test/parts/common/{bolting,pattern-fit}.test.ts',
  ],
  'parts/coupling/checks': [
    'test/parts/coupling/checks/*.test.ts',
    'test/parts/coupling/{coupling,verdicts}.test.ts',
    'test/parts/common/{grip,axial-path}.test.ts',
  ],
  'parts/sleeve/checks.ts': [
    'test/parts/sleeve/{by-hand,checks,sleeve,verdicts}.test.ts',
    'test/parts/common/axial-path.test.ts',
  ],
  'parts/collar/checks': ['test/parts/collar/{by-hand,messages,verdicts}.test.ts'],
  'parts/end-holder/checks': ['test/parts/end-holder/*.test.ts'],
  'parts/motor-plate/checks': ['test/parts/motor-plate/{messages,motor-plate,verdicts}.test.ts'],
  'parts/gauge/checks.ts': ['test/parts/gauge/*.test.ts'],
  'parts/coupon/checks.ts': ['test/parts/coupon/{coupon,verdicts}.test.ts'],
};

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => FOLDERS[name] === undefined);
if (unknown.length > 0) {
  console.error(`mutants: unknown folder ${unknown.join(', ')}; known: ${Object.keys(FOLDERS).join(', ')}`);
  process.exit(2);
}

const rows = (asked.length > 0 ? asked : Object.keys(FOLDERS)).map(mutate);
console.log('\nfolder                     noticed   of   share');
for (const { folder, noticed, all } of rows) console.log(line(folder, noticed, all));
const sum = (key) => rows.reduce((total, row) => total + row[key], 0);
console.log(line('all', sum('noticed'), sum('all')));
process.exit(share(sum('noticed'), sum('all')) >= WANTED ? 0 : 1);

/** Runs one folder and tells its survivors. */
function mutate(folder) {
  const report = `.mutants/${folder.replaceAll(/[^a-z]/g, '-')}.json`;
  mkdirSync('.mutants', { recursive: true });
  rmSync(report, { force: true });
  const sources = folder.endsWith('.ts') ? `src/${folder}` : `src/${folder}/**/*.ts`;
  const env = { ...process.env, MUTANTS: sources, MUTANT_TESTS: FOLDERS[folder].join(' '), MUTANT_REPORT: report };
  const { status } = spawnSync('npx', ['stryker', 'run', '--logLevel', 'warn'], { env, stdio: 'inherit' });
  if (status !== 0 || !existsSync(report)) {
    console.error(`mutants: ${folder}: the run did not end`);
    process.exit(3);
  }
  const { files } = JSON.parse(readFileSync(report, 'utf8'));
  const mutants = Object.entries(files).flatMap(([file, { mutants: found }]) => found.map((one) => ({ ...one, file })));
  const counted = mutants.filter(({ status: how }) => !['Ignored', 'CompileError'].includes(how));
  const left = counted.filter(({ status: how }) => how === 'Survived' || how === 'NoCoverage');
  for (const { file, location, mutatorName, replacement, status: how } of left)
    console.log(
      `${file}:${location.start.line}:${location.start.column} ${mutatorName} → ${brief(replacement)} (${how})`,
    );
  return { folder, noticed: counted.length - left.length, all: counted.length };
}

function brief(text = '') {
  const flat = text.replaceAll(/\s+/g, ' ');
  return flat.length > 60 ? `${flat.slice(0, 59)}…` : flat;
}

function share(noticed, all) {
  return all === 0 ? 100 : (100 * noticed) / all;
}

function line(folder, noticed, all) {
  return `${folder.padEnd(26)} ${String(noticed).padStart(7)} ${String(all).padStart(4)} ${share(noticed, all).toFixed(1).padStart(7)} %`;
}
