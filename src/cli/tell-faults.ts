import { type Fault, faultLine, InputError } from '../units/faults.js';
import { EXIT } from './exit-codes.js';
import type { Io } from './io.js';

/**
 * Tells mistakes on stderr, one line each: those of a file with its name and the place, others as the command's own.
 * @returns the exit code of wrong input
 * @throws whatever is no mistake of the input
 */
export function tellFaults(error: unknown, io: Io, file?: string): number {
  if (!(error instanceof InputError)) throw error;
  for (const fault of error.faults) io.stderr.write(`${lineOf(fault, file)}\n`);
  return EXIT.wrong;
}

function lineOf(fault: Fault, file: string | undefined): string {
  if (file === undefined || fault.path.startsWith('--')) return `leadwright: ${faultLine(fault)}`;
  return fault.at ? faultLine(fault, file) : `${file}: ${faultLine(fault)}`;
}
