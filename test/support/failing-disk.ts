import { closeSync } from 'node:fs';
import { vi } from 'vitest';
import { disk } from '../../src/work/writer/disk.js';

/** What happens at one disk call of a run. */
export type Blow =
  /** the process ends before the call; nothing after it happens */
  | { readonly kill: 'before' }
  /** the process ends while it writes: half of the bytes are there. Other calls are done, and nothing after them. */
  | { readonly kill: 'in' }
  /** the call fails, and the run goes on as it can */
  | { readonly code: string };

/** Thrown at the end of a process that is only played. */
export class Killed extends Error {}

const NO_CALLS = ['self', 'lives', 'here'] as const;
type Name = Exclude<keyof typeof disk, (typeof NO_CALLS)[number]>;
const NAMES = Object.keys(disk).filter((name): name is Name => !NO_CALLS.some((one) => one === name));
/** Calls that open what the end of a process closes. */
const OPENING: readonly Name[] = ['create', 'createRows', 'openFolder'];
/** No system counts so far, so that nobody takes a played process for one that lives. */
const DEAD = 2 ** 30;

/** The disk calls that a run made, in order. */
export interface Struck {
  readonly calls: readonly string[];
}

/**
 * Does some work whose `at`-th disk call is struck; 0 strikes none.
 * @returns the calls that it made, and what it threw
 */
export async function struck(
  at: number,
  blow: Blow,
  work: () => Promise<unknown>,
): Promise<Struck & { readonly thrown?: unknown }> {
  const calls: string[] = [];
  const handles = new Set<number>();
  let isDead = false;
  const spies = NAMES.map((name) => {
    const real: (...given: never[]) => unknown = disk[name];
    const strike = (...given: never[]): unknown => {
      if (isDead) throw new Killed();
      calls.push(name);
      if (calls.length !== at) {
        if (name === 'close') handles.delete(given[0]! as number);
        return remember(name, real(...given), handles);
      }
      if ('code' in blow) throw Object.assign(new Error(`${blow.code} at ${name}`), { code: blow.code });
      isDead = true;
      if (blow.kill === 'in') remember(name, real(...(name === 'write' ? halved(given) : given)), handles);
      throw new Killed();
    };
    return vi.spyOn(disk, name).mockImplementation(strike as never);
  });
  const self = vi.spyOn(disk, 'self').mockReturnValue({ ...disk.self(), pid: DEAD });
  try {
    await work();
    return { calls };
  } catch (thrown) {
    return { calls, thrown };
  } finally {
    for (const spy of [...spies, self]) spy.mockRestore();
    for (const handle of handles) closeSync(handle);
  }
}

/** What is open when a process ends is closed by the system. */
function remember(name: Name, result: unknown, handles: Set<number>): unknown {
  if (typeof result !== 'number' || !OPENING.includes(name)) return result;
  handles.add(result);
  return result;
}

function halved([handle, bytes, from]: readonly unknown[]): never[] {
  const all = bytes as Uint8Array;
  return [handle, all.subarray(0, Math.floor(all.length / 2)), from] as never[];
}
