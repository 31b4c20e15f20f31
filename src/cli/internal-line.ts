import type { Io } from './io.js';

/** A fault of ours in one line; the stack only where LEADWRIGHT_DEBUG asks for it. */
export function internalLine(error: unknown, { env }: Pick<Io, 'env'>): string {
  const told = error instanceof Error ? error.message : String(error);
  const line = `internal error, please report: ${told.split('\n')[0]}`;
  return env.LEADWRIGHT_DEBUG === '1' && error instanceof Error ? `${line}\n${error.stack}` : line;
}
