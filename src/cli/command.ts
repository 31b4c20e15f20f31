import type { Argv, Options } from 'yargs';
import type { Io } from './io.js';

/** Sets a command's work going; its number is the exit code. */
export type Start = (work: () => Promise<number>) => void;

/** A command of the command line: a file under commands/ exports one, and commands/index.ts lists it. */
export interface Command {
  readonly name: string;
  /** its options by name, for suggestions */
  readonly options: Readonly<Record<string, Options>>;
  /** declares itself to the parser; heavy modules are imported inside the work */
  readonly add: (cli: Argv, io: Io, start: Start) => Argv;
}

/** Options that several commands share. */
export const SHARED = {
  all: { type: 'boolean', describe: 'show everything that was found, and not only the answer' },
  json: { type: 'boolean', describe: 'print the result as JSON' },
  accept: {
    type: 'string',
    array: true,
    requiresArg: true,
    describe: 'let one failed check pass: CHECK=REASON',
  },
} as const satisfies Readonly<Record<string, Options>>;

/** Stands for `-` while the parser is at work, which drops a lone hyphen; no real argument can hold it. */
export const STDIN_MARK = '\u0000stdin';

/** The sheets of a call, one or more; `-` is stdin. */
export const SHEETS = {
  describe: 'part sheets; - is stdin',
  demandOption: true,
  coerce: (given: string | readonly string[]): string[] =>
    [given].flat().map((sheet) => (sheet === STDIN_MARK ? '-' : sheet)),
} as const;
