import type { Io } from './io.js';

/** One line that says what is being done, written anew on a terminal; nothing elsewhere. */
export function stepLine({ stderr, stderrColumns }: Pick<Io, 'stderr' | 'stderrColumns'>) {
  let shown = 0;
  const write = (text: string) => {
    if (stderrColumns === undefined) return;
    const line = text.slice(0, Math.max(20, stderrColumns - 1));
    stderr.write(`\r${line.padEnd(shown)}`);
    shown = line.length;
  };
  return {
    tell: write,
    end: () => {
      if (shown > 0) stderr.write(`\r${' '.repeat(shown)}\r`);
      shown = 0;
    },
  };
}
