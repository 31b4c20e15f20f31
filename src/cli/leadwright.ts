#!/usr/bin/env node
import { run } from './run.js';

// a reader that went away early, such as head, is no fault
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

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
