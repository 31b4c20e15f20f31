import yargs, { type Argv } from 'yargs';
import { InputError } from '../units/faults.js';
import { callFault } from './call-fault.js';
import type { Start } from './command.js';
import { COMMANDS } from './commands/index.js';
import type { Io } from './io.js';
import { VERSION } from './version.js';

/** The parser with every command, silent and without an exit of its own. */
export function parser(io: Io, start: Start): Argv {
  const cli = yargs()
    .scriptName('leadwright')
    .usage('leadwright COMMAND: from caliper readings to printable parts that fit')
    .locale('en')
    .version(VERSION)
    .help('help')
    .wrap(80)
    .strict()
    .demandCommand(1, 'a command is missing')
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
    .fail((message: string, error: Error | undefined) => {
      throw error instanceof InputError ? error : callFault(message);
    })
    .epilogue('Exit codes: 0 done, 1 a check failed, 2 wrong input or call, 3 our own fault.');
  return COMMANDS.reduce((all, command) => command.add(all, io, start), cli as Argv);
}
