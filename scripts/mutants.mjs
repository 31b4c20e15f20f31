// Mutation testing over mechanics, the check engine and the checks of the kinds, a folder at a time:
//   npm run mutants                 all of them
//   npm run mutants -- mechanics/shaft parts/nut/checks
// Prints the share of mutants that a test noticed, and each that none did; ends with 1 below the wanted share.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { FOLDERS, sourcesOf } from './mutants/groups.mjs';

const WANTED = 85;

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
  const env = {
    ...process.env,
    MUTANTS: sourcesOf(folder),
    MUTANT_TESTS: FOLDERS[folder].join(' '),
    MUTANT_REPORT: report,
  };
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
