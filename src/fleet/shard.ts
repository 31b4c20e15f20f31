import { fault } from '../units/faults.js';

/** One of several equal shares of a run, counted from 1. */
export interface Shard {
  readonly index: number;
  readonly count: number;
}

const MOST = 100_000;

/**
 * Reads `3/16`, the third of sixteen shares.
 * @throws InputError not of that form, or no such share
 * @example parseShard('3/16') // { index: 3, count: 16 }
 */
export function parseShard(text: string): Shard {
  const [, index, count] = (/^\s*(\d{1,6})\s*\/\s*(\d{1,6})\s*$/.exec(text) ?? []).map(Number);
  const isShare = index !== undefined && count !== undefined && index >= 1 && index <= count && count <= MOST;
  if (!isShare) throw fault('--shard', text, 'must be a share such as 3/16, the third of sixteen');
  return { index, count };
}

/**
 * Whether a part belongs to a share, by its address alone: every machine that knows the fleet file cuts it alike.
 * @example inShard('00000010ff', { index: 1, count: 16 }) // true
 */
export function inShard(address: string, { index, count }: Shard): boolean {
  return Number.parseInt(address.slice(0, 8), 16) % count === index - 1;
}
