/** What a command may touch of the outside world. */
export interface Io {
  readonly stdout: { write(text: string): unknown };
  readonly stderr: { write(text: string): unknown };
  readonly stdin: () => AsyncIterable<Uint8Array>;
  readonly cwd: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** whether stdout is a terminal */
  readonly isTty: boolean;
  /** columns of the terminal behind stderr, where there is one: a line there may be written anew */
  readonly stderrColumns?: number | undefined;
  /** calls back when a person interrupts; what it returns ends that */
  readonly onInterrupt?: (stop: () => void) => () => void;
}

/** Colour only on a terminal that wants it. */
export function wantsColour({ isTty, env }: Io): boolean {
  return isTty && (env.NO_COLOR ?? '') === '' && env.TERM !== 'dumb';
}
