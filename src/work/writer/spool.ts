import { removeAll, tryTo, writeAll } from './basics.js';
import { beside, randomDigits } from './beside.js';
import { disk } from './disk.js';

/** Things one after the other, as many as there are: they are kept as lines of JSON. */
export interface Spool<T> extends Iterable<T> {
  readonly push: (item: T) => void;
}

/** Where spools lie, and how their end is told. */
export interface Spools {
  readonly begin: <T>() => Spool<T>;
  readonly end: () => void;
}

/** Signs that a spool holds in memory; what is beyond goes to a file. */
const MOST_HELD = 4_000_000;
const BLOCK = 1 << 18;

/**
 * Spools for some work on a file or folder. One that grows long goes into a file beside it, under a name that nobody can foresee.
 * @param path the file or folder, whose lock is held: what a killed run leaves is cleared with all else beside it
 * @param most signs that each holds in memory
 */
export function spoolsBeside(path: string, most = MOST_HELD): Spools {
  const ends: (() => void)[] = [];
  return {
    begin: <T>() => {
      const { end, ...spool } = spoolAt<T>(beside(path, 'rows', randomDigits()), most);
      ends.push(end);
      return spool;
    },
    end: () => {
      for (const end of ends.splice(0)) end();
    },
  };
}

function spoolAt<T>(path: string, most: number): Spool<T> & { readonly end: () => void } {
  let lines: string[] = [];
  let held = 0;
  let handle: number | undefined;
  const spill = (): number => {
    handle ??= disk.createRows(path);
    writeAll(handle, Buffer.from(lines.join('')));
    lines = [];
    held = 0;
    return handle;
  };
  return {
    push: (item) => {
      const line = `${JSON.stringify(item)}\n`;
      lines.push(line);
      held += line.length;
      if (held > most) spill();
    },
    *[Symbol.iterator]() {
      const all = handle === undefined ? lines : linesIn(spill());
      for (const line of all) yield JSON.parse(line);
    },
    end: () => {
      if (handle === undefined) return;
      const open = handle;
      handle = undefined;
      tryTo(() => disk.close(open));
      tryTo(() => removeAll(path));
    },
  };
}

function* linesIn(handle: number): Iterable<string> {
  const block = Buffer.alloc(BLOCK);
  let rest: Buffer = Buffer.alloc(0);
  for (let at = 0; ; ) {
    const count = disk.readAt(handle, block, at);
    if (count === 0) return;
    at += count;
    const bytes = Buffer.concat([rest, block.subarray(0, count)]);
    const end = bytes.lastIndexOf('\n') + 1;
    yield* bytes.toString('utf8', 0, end).split('\n').slice(0, -1);
    rest = bytes.subarray(end);
  }
}
