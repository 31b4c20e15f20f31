import { rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { settleAll } from '../../src/work/writer/settle.js';
import { type Blow, struck } from './failing-disk.js';
import { copied, hiddenBelow, prepared, stateOf, type Writer } from './written-folders.js';

/** What a run came to: the disk calls of an undisturbed one, and what is wrong after runs that were struck. */
export interface Struck {
  readonly calls: number;
  readonly faults: readonly string[];
}

/**
 * Runs a command again and again, each time from the same folder, and strikes one of its disk calls: the first time call
 * `first`, then each `step` further on. After each the folder is old or new, and whole after the next run.
 */
export async function strikeCalls(
  writer: Writer,
  blow: (call: string, at: number) => Blow,
  { first = 1, step = 1 } = {},
): Promise<Struck> {
  const states = await statesOf(writer);
  const faults: string[] = [...states.faults];
  for (let at = first; at <= states.calls.length; at += step)
    faults.push(...(await faultsAfter(writer, states, at, blow(states.calls[at - 1]!, at))));
  rmSync(states.from, { recursive: true });
  return { calls: states.calls.length, faults };
}

/** Ends the process before a call, or in the middle of a write. */
export function kills(call: string): Blow {
  return { kill: call === 'write' ? 'in' : 'before' };
}

interface States {
  readonly from: string;
  readonly old: readonly string[];
  readonly whole: readonly string[];
  readonly calls: readonly string[];
  readonly faults: readonly string[];
}

async function statesOf(writer: Writer): Promise<States> {
  const from = await prepared(writer);
  const cwd = copied(from);
  const { calls, thrown } = await struck(0, { code: '' }, () => writer.run(cwd));
  const states = (folder: string) => writer.targets.map((target) => stateOf(folder, target));
  const whole = states(cwd);
  const faults = thrown === undefined ? hiddenBelow(cwd) : [`an undisturbed run fails: ${String(thrown)}`];
  rmSync(cwd, { recursive: true });
  return { from, old: states(from), whole, calls, faults };
}

async function faultsAfter(writer: Writer, { from, old, whole }: States, at: number, blow: Blow): Promise<string[]> {
  const cwd = copied(from);
  const faults: string[] = [];
  const { thrown, calls } = await struck(at, blow, () => writer.run(cwd));
  const what = `${JSON.stringify(blow)} at call ${at}, ${calls.at(-1)}`;
  // the next command looks after what was left before anything else
  for (const target of writer.targets) settleAll(dirname(join(cwd, target)));
  for (const [i, target] of writer.targets.entries()) {
    const now = stateOf(cwd, target);
    const allowed = 'kill' in blow ? [old[i], whole[i]] : thrown === undefined ? [whole[i]] : [old[i]];
    if (!allowed.includes(now)) faults.push(`${what}: ${target} is neither old nor new: ${now.slice(0, 400)}`);
  }
  const isWhole = () => writer.targets.every((target, i) => stateOf(cwd, target) === whole[i]);
  if (writer.isOnce !== true || !isWhole())
    await writer.run(cwd).catch((error: unknown) => faults.push(`${what}: the next run fails: ${String(error)}`));
  if (!isWhole()) faults.push(`${what}: not whole after the next run`);
  const left = hiddenBelow(cwd);
  if (left.length > 0) faults.push(`${what}: left ${left.join(', ')}`);
  rmSync(cwd, { recursive: true });
  return faults;
}
