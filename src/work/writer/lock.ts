import { basename } from 'node:path';
import { fault } from '../../units/faults.js';
import { createFile, knowsNoLinks, tryTo } from './basics.js';
import { beside, lockOf, randomDigits } from './beside.js';
import { codeOf, disk, type Owner } from './disk.js';

/** A lock that is held. */
export interface Lock {
  /** whether nobody has taken it for dead in the meantime */
  readonly isHeld: () => boolean;
  readonly release: () => void;
}

/** Milliseconds that a run waits for another one: a folder is held only while it is put in place. */
const LONGEST_WAIT = 120_000;
const POLL = { first: 5, most: 250 };

/**
 * Takes the lock of a file or folder, whose own folder must be there. The lock is a file beside it that names its owner; it
 * appears with its content whole, and that of a process that no longer lives is taken over.
 *
 * @param path what is locked
 * @param wait how long to wait for another run  [ms]
 * @throws InputError another run still holds it then; the disk refuses
 */
export async function lock(path: string, wait = LONGEST_WAIT): Promise<Lock> {
  const name = lockOf(path);
  const text = JSON.stringify({ ...disk.self(), token: randomDigits() });
  let pause = POLL.first;
  for (let waited = 0; ; ) {
    if (claim(path, name, text)) return held(name, text);
    const seen = textAt(name);
    if (seen === undefined) continue;
    const owner = ownerIn(seen);
    if (owner === undefined || !disk.lives(owner)) {
      setAside(path, name, seen);
      continue;
    }
    if (waited >= wait) throw inUse(name, owner);
    await new Promise((resolve) => setTimeout(resolve, pause));
    waited += pause;
    pause = Math.min(POLL.most, pause * 2);
  }
}

/** The same at once or not at all. */
export function tryLock(path: string): Lock | undefined {
  const name = lockOf(path);
  const text = JSON.stringify({ ...disk.self(), token: randomDigits() });
  const seen = textAt(name);
  if (seen !== undefined) {
    const owner = ownerIn(seen);
    if (owner !== undefined && disk.lives(owner)) return undefined;
    setAside(path, name, seen);
  }
  return claim(path, name, text) ? held(name, text) : undefined;
}

/** Puts a whole lock in place in one step; false where there is one. */
function claim(path: string, name: string, text: string): boolean {
  const draft = beside(path, 'claim', randomDigits());
  createFile(draft, text, false);
  try {
    disk.link(draft, name);
    return true;
  } catch (error) {
    // a draft that is gone was cleared by another run: it is written again
    if (['EEXIST', 'ENOENT'].includes(codeOf(error))) return false;
    if (!knowsNoLinks(error)) throw error;
    return created(name, text);
  } finally {
    tryTo(() => disk.unlink(draft));
  }
}

function created(name: string, text: string): boolean {
  try {
    createFile(name, text, false);
    return true;
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return false;
    throw error;
  }
}

/** What a lock says; nothing for what is no file, such as a pipe, which nobody may ever fill. */
function textAt(name: string): string | undefined {
  try {
    const about = disk.about(name);
    if (about?.isDirectory()) throw fault('', '', `a folder ${basename(name)} beside it is in the way of its lock`);
    if (about?.isFile() === false) return '';
    return disk.read(name).toString('utf8');
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return undefined;
    throw error;
  }
}

function ownerIn(text: string): Owner | undefined {
  try {
    const { pid, host, started }: Partial<Owner> = JSON.parse(text);
    return typeof pid === 'number' && typeof host === 'string' && typeof started === 'string'
      ? { pid, host, started }
      : undefined;
  } catch {
    return undefined;
  }
}

/** Takes away the lock of a dead run. One that was taken anew between the look and the grasp is put back. */
function setAside(path: string, name: string, seen: string): void {
  const aside = beside(path, 'stale', randomDigits());
  try {
    disk.rename(name, aside);
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return;
    throw error;
  }
  if (textAt(aside) !== seen) tryTo(() => disk.link(aside, name));
  tryTo(() => disk.unlink(aside));
}

function held(name: string, text: string): Lock {
  const isHeld = () => textAt(name) === text;
  return {
    isHeld,
    release: () =>
      tryTo(() => {
        if (isHeld()) disk.unlink(name);
      }),
  };
}

function inUse(name: string, { pid, host }: Owner) {
  const cure = `wait for it, or remove ${basename(name)} beside it if nothing runs`;
  return fault('', '', `is in use by another run, process ${pid} on ${host}; ${cure}`);
}
