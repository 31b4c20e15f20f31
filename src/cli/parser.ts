import yargs, { type Argv } from 'yargs';
import { InputError } from '../units/faults.js';
import { callFault, requireSingleValues } from './call-fault.js';
import type { Start } from './command.js';
import { COMMANDS } from './commands/index.js';
import { type Io, widthOf } from './io.js';
import { VERSION } from './version.js';

/** The parser with every command; it writes nothing and ends nothing by itself. */
export function parser(argv: readonly string[], io: Io, start: Start): Argv {
  const isCommand = COMMANDS.some(({ name }) => name === argv[0]);
  const cli: Argv = yargs()
    .scriptName('leadwright')
    .usage('leadwright COMMAND: from caliper readings to printable parts that fit')
    .locale('en')
    .help('help')
    .describe('help', 'show this help')
    .wrap(widthOf(io))
    .strict()
    .exitProcess(false)
    .parserConfiguration({
      'boolean-negation': false,
      'camel-case-expansion': false,
      'dot-notation': false,
      'greedy-arrays': false,
      'parse-numbers': false,
      'parse-positional-numbers': false,
      'short-option-groups': false,
    })
    .check((args) => {
      requireSingleValues(args, argv);
      return true;
    })
    .fail((message: string, error: Error | undefined) => {
      throw error instanceof InputError ? error : callFault(message, argv);
    })
    .epilogue('Exit codes: 0 done, 1 a check failed, 2 wrong input or call, 3 our own fault.');
  const versioned = isCommand ? cli.version(false) : cli.version(VERSION).describe('version', 'show the version');
  return COMMANDS.reduce((all, command) => command.add(all, io, start), versioned);
}
