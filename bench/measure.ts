import { spawnSync } from 'node:child_process';
import { performance } from 'node:perf_hooks';

/** The middle one of several figures. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
}

/** Median milliseconds of a piece of work; the first runs, which compile it, are not counted. */
export async function timed(work: () => unknown, { rounds = 9, warm = 2 } = {}): Promise<number> {
  const times: number[] = [];
  for (let i = 0; i < warm + rounds; i++) {
    const start = performance.now();
    await work();
    if (i >= warm) times.push(performance.now() - start);
  }
  return median(times);
}

/** Whole processes: milliseconds and peak memory. */
export interface ProcessFigures {
  readonly ms: number;
  readonly peakMb: number;
}

/** Median of several runs of `node ARGS`, with the highest peak of memory. */
export function timedProcess(args: readonly string[], rounds = 7): ProcessFigures {
  const times: number[] = [];
  let peak = 0;
  // the first round leaves compiled code behind
  for (let round = 0; round <= rounds; round++) {
    const start = performance.now();
    const { stderr, status, error } = spawnSync(process.execPath, ['-r', './bench/peak-memory.cjs', ...args], {
      encoding: 'utf8',
    });
    const ms = performance.now() - start;
    if (error || status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}: ${stderr}`);
    if (round === 0) continue;
    times.push(ms);
    peak = Math.max(peak, Number(/peak-kb (\d+)/.exec(stderr)?.[1] ?? 0));
  }
  return { ms: median(times), peakMb: peak / 1024 };
}

/** Median milliseconds of several whole programs, each with its words, run in turns, so that all meet the same computer. */
export function timedInTurns(calls: readonly (readonly string[])[], rounds = 9): number[] {
  const times = calls.map((): number[] => []);
  // the first round leaves compiled code behind
  for (let round = 0; round <= rounds; round++) {
    for (const [i, [program = '', ...args]] of calls.entries()) {
      const start = performance.now();
      const { status, error, stderr } = spawnSync(program, args, { encoding: 'utf8' });
      if (error || status !== 0) throw new Error(`${program} ${args.join(' ')} ended with ${status}: ${stderr}`);
      if (round > 0) times[i]!.push(performance.now() - start);
    }
  }
  return times.map(median);
}
