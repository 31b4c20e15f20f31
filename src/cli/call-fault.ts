import { nearest } from '../sheet/nearest.js';
import { fault, type InputError } from '../units/faults.js';
import { COMMANDS } from './commands/index.js';

/** A call that the parser refused, in one line of our own. */
export function callFault(message: string): InputError {
  const [unknown] = /(?<=^Unknown (?:argument|command)s?: )[^,]+/.exec(message) ?? [];
  if (unknown !== undefined) return unknownOption(unknown);
  const [missing] = /(?<=^Not enough arguments following: ).+/.exec(message) ?? [];
  if (missing !== undefined) return fault(`--${missing}`, '', 'wants a value');
  const choice = /Argument: (.+), Given: "?(.*?)"?, Choices: (.+)/.exec(message);
  if (choice) return fault(`--${choice[1]}`, choice[2], `must be one of ${choice[3]!.replaceAll('"', '')}`);
  if (message.startsWith('Not enough non-option arguments'))
    return fault('', '', 'an argument is missing; --help shows what the command wants');
  if (message.startsWith('Too many non-option arguments'))
    return fault('', '', 'too many arguments; --help shows what the command wants');
  return fault('', '', message.replaceAll('\n', ' '));
}

function unknownOption(name: string): InputError {
  const known = [...new Set(COMMANDS.flatMap(({ options }) => Object.keys(options))), 'help', 'version'];
  const near = nearest(name, known);
  return fault(`--${name}`, '', near ? `unknown option; did you mean --${near}?` : 'unknown option; --help lists them');
}

/** A word in the place of a command that is none. */
export function unknownCommand(name: string): InputError {
  const names = COMMANDS.map((command) => command.name);
  const near = nearest(name, names);
  return fault(
    '',
    name,
    near ? `unknown command; did you mean ${near}?` : `unknown command; known: ${names.join(', ')}`,
  );
}
