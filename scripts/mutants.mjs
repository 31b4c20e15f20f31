// Mutation testing over mechanics, the check engine and the checks of the kinds, a folder at a time:
//   npm run mutants                 all of them
//   npm run mutants -- mechanics/shaft parts/nut/checks
// Prints the share of mutants that a test noticed, and each that none did; ends with 1 below the wanted share, or where one lives
// without a reason in test/mutants-left.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { FOLDERS, sourcesOf } from './mutants/groups.mjs';
import { withoutReason } from './mutants/reasons.mjs';

const WANTED = 85;

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => FOLDERS[name] === undefined);
if (unknown.length > 0) {
  console.error(`mutants: unknown folder ${unknown.join(', ')}; known: ${Object.keys(FOLDERS).join(', ')}`);
  process.exit(2);
}

const rows = (asked.length > 0 ? asked : Object.keys(FOLDERS)).map(mutate);
console.log('\nfolder                     noticed   of   share   no reason');
for (const row of rows) console.log(line(row));
const sum = (key) => rows.reduce((total, row) => total + row[key], 0);
const total = { folder: 'all', noticed: sum('noticed'), all: sum('all'), bare: sum('bare') };
console.log(line(total));
process.exit(share(total) >= WANTED && total.bare === 0 ? 0 : 1);

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
  const bare = withoutReason(folder, left);
  for (const one of left) console.log(told(one, bare.includes(one)));
  return { folder, noticed: counted.length - left.length, all: counted.length, bare: bare.length };
}

function told({ file, location, mutatorName, replacement, status }, isBare) {
  const place = `${file}:${location.start.line}:${location.start.column}`;
  return `${place} ${mutatorName} → ${brief(replacement)} (${status}${isBare ? ', no reason listed' : ''})`;
}

function brief(text = '') {
  const flat = text.replaceAll(/\s+/g, ' ');
  return flat.length > 60 ? `${flat.slice(0, 59)}…` : flat;
}

function share({ noticed, all }) {
  return all === 0 ? 100 : (100 * noticed) / all;
}

function line(row) {
  const { folder, noticed, all, bare } = row;
  const figures = [String(noticed).padStart(7), String(all).padStart(4), `${share(row).toFixed(1).padStart(7)} %`];
  return `${folder.padEnd(26)} ${figures.join(' ')} ${String(bare).padStart(9)}`;
}
