import { wrap } from 'comlink';
import type { Remote } from './worker.js';

/** The engine in another thread: every answer comes later. */
export type Far = {
  readonly [Call in keyof Remote]: (...given: Parameters<Remote[Call]>) => Promise<Awaited<ReturnType<Remote[Call]>>>;
};

/** One engine in a thread of its own. */
export interface Thread {
  /** asks, and gives up what was asked before and is not answered: then it is undefined */
  ask<Answer>(question: (engine: Far) => Promise<Answer>): Promise<Answer | undefined>;
  stop(): void;
}

/** How a thread is begun. */
export interface ThreadOptions {
  readonly wasm?: ArrayBuffer;
  readonly patience: number;
  readonly fault: (message: string) => void;
}

/**
 * A thread that answers the newest question alone. One that has not been answered for a while is not waited for: the
 * thread is ended and another begun.
 *
 * @param url where the worker's script is
 * @param wasm the kernel's bytes, where this thread makes solids
 * @param patience how long an answer may hold up the next question [ms]
 * @param fault told where an answer failed, which is a fault of the program
 */
export function startThread(url: string, { wasm, patience, fault }: ThreadOptions): Thread {
  let running: { worker: Worker; engine: Far } | undefined;
  let newest = 0;
  let busySince: number | undefined;
  const start = () => {
    const worker = new Worker(url);
    const engine = wrap<Remote>(worker) as unknown as Far;
    if (wasm) void engine.take(wasm);
    return { worker, engine };
  };
  const stop = () => {
    running?.worker.terminate();
    running = undefined;
    busySince = undefined;
  };
  return {
    ask: async (question) => {
      const own = ++newest;
      if (busySince !== undefined && performance.now() - busySince > patience) stop();
      running ??= start();
      busySince = performance.now();
      const at = running;
      const ended = new Promise<undefined>((resolve) => {
        const watch = setInterval(() => {
          if (running === at && newest === own) return;
          clearInterval(watch);
          resolve(undefined);
        }, 50);
      });
      const asked = question(at.engine).catch((error: unknown) => {
        fault(error instanceof Error ? error.message : String(error));
        return undefined;
      });
      const answer = await Promise.race([asked, ended]);
      if (newest !== own) return undefined;
      busySince = undefined;
      return answer;
    },
    stop,
  };
}
