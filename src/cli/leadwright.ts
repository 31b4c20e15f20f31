#!/usr/bin/env node
import { join } from 'node:path';
import { cachedDataVersionTag, setFlagsFromString } from 'node:v8';
import { crc32 } from 'node:zlib';
import { diskReason } from '../work/disk-reason.js';
import { readKept } from '../work/kept-code.js';
import { patientFlags } from '../work/patient-flags.js';
import { compiledFolder } from './compiled-folder.js';
import { EXIT } from './exit-codes.js';
import { loadProgram } from './load-program.js';

// a reader that went away early, such as head, is no fault; a full disk is not ours
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit();
  process.stderr.write(`leadwright: stdout cannot be written: ${diskReason(error)}\n`);
  process.exit(EXIT.wrong);
});
// nobody is left to tell
process.stderr.on('error', () => undefined);

// before anything is loaded: compiled code is kept for engines with the same flags
for (const flag of patientFlags(process.versions.v8)) setFlagsFromString(flag);

const call = process.argv.slice(2);
const folder = compiledFolder(process.env, process.platform);
// each command loads files of its own; the tag tells engines and their switches apart, the sum installs of several versions
const word = /^[a-z]{1,20}$/.test(call[0] ?? '') ? call[0] : 'help';
const place = crc32(import.meta.dirname).toString(16);
const file = folder && join(folder, `${word}-${cachedDataVersionTag().toString(16)}-${place}`);
const program = loadProgram(file === undefined ? new Map() : await readKept(file));
const piece = (name: string) => program.load(join(import.meta.dirname, 'command', name));
const { run } = piece('run.cjs') as typeof import('./run.js');
const code = await run(call, {
  stdout: process.stdout,
  stderr: process.stderr,
  stdin: () => process.stdin,
  cwd: process.cwd(),
  env: process.env,
  isTty: process.stdout.isTTY === true,
  columns: process.stdout.isTTY === true ? process.stdout.columns : undefined,
  stderrColumns: process.stderr.isTTY === true ? process.stderr.columns : undefined,
  onInterrupt: (stop) => {
    // a second Ctrl-C ends the process at once, which leaves whole files too
    process.once('SIGINT', stop).once('SIGTERM', stop);
    return () => process.off('SIGINT', stop).off('SIGTERM', stop);
  },
});
process.exitCode = code;
const compiled = file !== undefined && code <= EXIT.failed ? program.compiled() : undefined;
if (file !== undefined && compiled)
  (piece('keep-code.cjs') as typeof import('../work/keep-code.js')).keepCode(file, compiled);
