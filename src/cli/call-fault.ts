import { nearest } from '../sheet/nearest.js';
import { fault, type InputError } from '../units/faults.js';
import { COMMANDS } from './commands/index.js';

/** A call that the parser refused, in one line of our own. */
export function callFault(message: string, argv: readonly string[]): InputError {
  const [unknown] = /(?<=^Unknown (?:argument|command)s?: )[^,]+/.exec(message) ?? [];
  if (unknown !== undefined) return unknownArgument(unknown, argv);
  const [missing] = /(?<=^Not enough arguments following: ).+/.exec(message) ?? [];
  if (missing !== undefined) return fault(`--${missing}`, '', 'wants a value');
  const choice = /Argument: (.+), Given: "?(.*?)"?, Choices: (.+)/.exec(message);
  if (choice) return fault(`--${choice[1]}`, choice[2], `must be one of ${choice[3]!.replaceAll('"', '')}`);
  const help = `leadwright ${argv[0] ?? ''} --help shows what it wants`;
  if (message.startsWith('Not enough non-option arguments')) return fault('', '', `an argument is missing; ${help}`);
  if (message.startsWith('Too many non-option arguments')) return fault('', '', `too many arguments; ${help}`);
  return fault('', '', message.replaceAll('\n', ' '));
}

function unknownArgument(name: string, argv: readonly string[]): InputError {
  const typed = argv.find((word) => word.replace(/=.*$/s, '').replace(/^--?/, '') === name && word.startsWith('-'));
  return typed === undefined
    ? fault('', name, 'one argument too many')
    : unknownOption(typed.replace(/=.*$/s, ''), argv);
}

/** An option that the command does not have. */
export function unknownOption(typed: string, [command]: readonly string[]): InputError {
  const own = COMMANDS.find(({ name }) => name === command);
  const known = [...Object.keys(own?.options ?? {}), 'help', ...(own ? [] : ['version'])];
  const near = nearest(typed.replace(/^-+/, ''), known);
  const list = known.map((name) => `--${name}`).join(', ');
  return fault(typed, '', near ? `unknown option; did you mean --${near}?` : `unknown option; known: ${list}`);
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

/** No command at all. */
export function missingCommand(): InputError {
  return fault('', '', `a command is missing: ${COMMANDS.map(({ name }) => name).join(', ')}; --help tells more`);
}

/**
 * Refuses an option that is given twice, or given without anything in it.
 * @throws InputError naming the option
 */
export function requireSingleValues(args: Readonly<Record<string, unknown>>, [command]: readonly string[]): void {
  const own = COMMANDS.find(({ name }) => name === command);
  for (const [name, { array }] of Object.entries(own?.options ?? {})) {
    const value = args[name];
    if (array !== true && Array.isArray(value)) throw fault(`--${name}`, value.join(', '), 'must be given once');
    if (value === '') throw fault(`--${name}`, '', 'wants a value');
  }
}
