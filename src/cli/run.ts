import { faultLine, InputError } from '../units/faults.js';
import { missingCommand, unknownCommand, unknownOption } from './call-fault.js';
import { STDIN_MARK } from './command.js';
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
    const asked = helpAsked(argv);
    requireKnownCommand(asked);
    let work: (() => Promise<number>) | undefined;
    const cli = parser(asked, io, (chosen) => {
      work = chosen;
    });
    let help = '';
    const words = asked.map((word) => (word === '-' ? STDIN_MARK : word));
    await cli.parseAsync(words, {}, (_error: unknown, _args: unknown, output: string) => {
      help = output;
    });
    if (help !== '')
      io.stdout.write(`${asked[0] === 'completion' ? withoutRemarks(help) : withoutEmptyDefaults(help)}\n`);
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

/** Asked for by the script that the shell completes with. */
const COMPLETIONS = '--get-yargs-completions';
const ALONE = ['--help', '--version', COMPLETIONS];

/** `help`, `help COMMAND` and `-h` are other words for `--help`. */
function helpAsked(argv: readonly string[]): readonly string[] {
  const [first, ...rest] = argv;
  if (first === COMPLETIONS) return argv;
  return (first === 'help' ? [...rest, '--help'] : argv).map((word) => (word === '-h' ? '--help' : word));
}

function requireKnownCommand(argv: readonly string[]): void {
  const [first] = argv;
  if (first === undefined) throw missingCommand();
  if (first.startsWith('-')) {
    if (!ALONE.includes(first)) throw unknownOption(first, []);
  } else if (!COMMANDS.some(({ name }) => name === first)) throw unknownCommand(first);
}

/** The library's remarks on a script are not for our users. */
function withoutRemarks(script: string): string {
  return script.replace(/^#(?: .*)?\n/gm, '');
}

/** The parser shows an empty list as the default of arguments that must be given. */
function withoutEmptyDefaults(help: string): string {
  return help.replace(/(\S.*\S)( +)(\[[^\n]*\]) \[default: \[\]\]/g, (_, text: string, gap: string, tags: string) => {
    return `${text}${gap}${' '.repeat(' [default: []]'.length)}${tags}`;
  });
}
