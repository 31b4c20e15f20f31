#!/usr/bin/env node
import * as engine from 'node:module';
import { diskReason } from '../work/disk-reason.js';
import { compiledFolder } from './compiled-folder.js';
import { EXIT } from './exit-codes.js';

// a reader that went away early, such as head, is no fault; a full disk is not ours
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit();
  process.stderr.write(`leadwright: stdout cannot be written: ${diskReason(error)}\n`);
  process.exit(EXIT.wrong);
});
// nobody is left to tell
process.stderr.on('error', () => undefined);

// engines from 22.8 on keep what they compiled of all that is loaded from here on
const { enableCompileCache } = engine as { enableCompileCache?: (folder: string) => unknown };
const folder = compiledFolder(process.env, process.platform);
if (folder !== undefined) enableCompileCache?.(folder);

const { run } = await import('./run.js');
process.exitCode = await run(process.argv.slice(2), {
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
