import { type Fault, faultLine, InputError } from '../units/faults.js';
import { EXIT } from './exit-codes.js';
import type { Io } from './io.js';

/**
 * Runs a step that reads a file. Mistakes go to stderr, one line each: those of the file with its name and the place,
 * those of options as the command's own.
 * @returns the step's exit code, or that of wrong input
 */
export async function tellingFaults(file: string, io: Io, step: () => Promise<number>): Promise<number> {
  try {
    return await step();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    for (const fault of error.faults) io.stderr.write(`${faultIn(file, fault)}\n`);
    return EXIT.wrong;
  }
}

function faultIn(file: string, fault: Fault): string {
  if (fault.path.startsWith('--')) return `leadwright: ${faultLine(fault)}`;
  return fault.at ? faultLine(fault, file) : `${file}: ${faultLine(fault)}`;
}
