import { WIDTH } from '../output/terminal/layout.js';

const LEAST_COLUMNS = 60;
const MOST_COLUMNS = 160;

/** What a command may touch of the outside world. */
export interface Io {
  readonly stdout: { write(text: string): unknown };
  readonly stderr: { write(text: string): unknown };
  readonly stdin: () => AsyncIterable<Uint8Array>;
  readonly cwd: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** whether stdout is a terminal */
  readonly isTty: boolean;
  /** columns of the terminal behind stdout, where there is one */
  readonly columns?: number | undefined;
  /** columns of the terminal behind stderr, where there is one: a line there may be written anew */
  readonly stderrColumns?: number | undefined;
  /** calls back when a person interrupts; what it returns ends that */
  readonly onInterrupt?: (stop: () => void) => () => void;
}

/** Colour on a terminal that wants it, and wherever `FORCE_COLOR` asks for it; `NO_COLOR` goes before all. */
export function wantsColour({ isTty, env }: Pick<Io, 'isTty' | 'env'>): boolean {
  if ((env.NO_COLOR ?? '') !== '') return false;
  const forced = env.FORCE_COLOR ?? '';
  if (forced !== '') return forced !== '0' && forced !== 'false';
  return isTty && env.TERM !== 'dumb';
}

/** Columns to write in: the terminal's own, between 60 and 160; 80 where there is none. */
export function widthOf({ columns }: Pick<Io, 'columns'>): number {
  return columns === undefined || columns <= 0 ? WIDTH : Math.min(MOST_COLUMNS, Math.max(LEAST_COLUMNS, columns));
}
