import { howMany } from '../units/format.js';
import type { Progress } from '../work/fleet/gather.js';
import type { Io } from './io.js';

/** Lines that tell how far a run is: one that is written anew on a terminal, plain ones now and then elsewhere. */
export interface ProgressLines {
  readonly tell: (progress: Progress) => void;
  readonly end: () => void;
}

const ANEW_EVERY = 100;
const PLAIN_EVERY = 5000;

/** @param now milliseconds of a steady clock */
export function progressLines(
  { stderr, stderrColumns }: Pick<Io, 'stderr' | 'stderrColumns'>,
  now: () => number,
): ProgressLines {
  const start = now();
  const every = stderrColumns === undefined ? PLAIN_EVERY : ANEW_EVERY;
  let last = stderrColumns === undefined ? start : Number.NEGATIVE_INFINITY;
  let shown = 0;
  const write = (text: string) => {
    if (stderrColumns === undefined) stderr.write(`${text}\n`);
    else {
      const line = text.slice(0, Math.max(20, stderrColumns - 1));
      stderr.write(`\r${line.padEnd(shown)}`);
      shown = line.length;
    }
  };
  return {
    tell: (progress) => {
      const time = now();
      if (time - last < every || progress.total === 0) return;
      last = time;
      write(progressText(progress, (time - start) / 1000));
    },
    end: () => {
      if (shown > 0) stderr.write(`\r${' '.repeat(shown)}\r`);
    },
  };
}

/**
 * @param seconds since the start
 * @example progressText({ done: 10, total: 40, made: 8, reused: 2, current: ['z-nut'] }, 4) // '10 of 40 parts, 2.0 a second, 15 s left: z-nut'
 */
export function progressText({ done, total, made, current }: Progress, seconds: number): string {
  const rate = seconds > 0 ? made / seconds : 0;
  const pace = rate > 0 ? `, ${rate.toFixed(1)} a second, ${timeLeft((total - done) / rate)} left` : '';
  return `${done} of ${howMany(total, 'part')}${pace}${current.length > 0 ? `: ${current.join(', ')}` : ''}`;
}

function timeLeft(seconds: number): string {
  if (seconds < 90) return `${Math.ceil(seconds)} s`;
  return seconds < 5400 ? `${Math.round(seconds / 60)} min` : `${(seconds / 3600).toFixed(1)} h`;
}
