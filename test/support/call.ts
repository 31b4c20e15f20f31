import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { run } from '../../src/cli/run.js';

/** What a call of the command line answered. */
export interface Answer {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** A folder of its own to call the command line in. */
export function callFolder(): string {
  return mkdtempSync(join(tmpdir(), 'call-'));
}

/** Calls the command line in this process. */
export async function call(
  cwd: string,
  argv: readonly string[],
  more: {
    readonly stdin?: string;
    readonly env?: Record<string, string>;
    readonly isTty?: boolean;
    readonly columns?: number;
    readonly stderrColumns?: number;
  } = {},
): Promise<Answer> {
  const texts = { stdout: '', stderr: '' };
  const stream = (name: keyof typeof texts) => ({
    write: (text: string) => {
      texts[name] += text;
    },
  });
  const code = await run(argv, {
    stdout: stream('stdout'),
    stderr: stream('stderr'),
    stdin: async function* () {
      yield new TextEncoder().encode(more.stdin ?? '');
    },
    cwd,
    env: more.env ?? {},
    isTty: more.isTty ?? false,
    columns: more.columns,
    stderrColumns: more.stderrColumns,
  });
  return { code, ...texts };
}
