import { faultLine, InputError } from '../units/faults.js';
import { unknownCommand } from './call-fault.js';
import { COMMANDS } from './commands/index.js';
import { EXIT } from './exit-codes.js';
import { internalLine } from './internal-line.js';
import type { Io } from './io.js';
import { parser } from './parser.js';

/**
 * Runs one call of the command line.
 *
 * @param argv what was typed after the program's name
 * @param io where text goes, and where files are looked for
 * @returns the exit code
 */
export async function run(argv: readonly string[], io: Io): Promise<number> {
  try {
    requireKnownCommand(argv);
    let work: (() => Promise<number>) | undefined;
    const cli = parser(io, (chosen) => {
      work = chosen;
    });
    let help = '';
    await cli.parseAsync([...argv], {}, (_error: unknown, _args: unknown, output: string) => {
      help = output;
    });
    if (help !== '') io.stdout.write(`${help}\n`);
    return work ? await work() : EXIT.done;
  } catch (error) {
    if (!(error instanceof InputError)) {
      io.stderr.write(`leadwright: ${internalLine(error, io)}\n`);
      return EXIT.internal;
    }
    for (const fault of error.faults) io.stderr.write(`leadwright: ${faultLine(fault)}\n`);
    return EXIT.wrong;
  }
}

function requireKnownCommand([first]: readonly string[]): void {
  if (first === undefined || first.startsWith('-') || COMMANDS.some(({ name }) => name === first)) return;
  throw unknownCommand(first);
}
