import { execFile } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type BuiltCommand, builtCommand } from '../support/built-command.js';
import { HAS_EXACT, NEEDS_EXACT } from '../support/exact-kernel.js';

// One process writes one exact body after another. What it holds is looked at again and again, and of each body the least
// counts: what was held between two bodies. Windows of twenty bodies are compared. What may be collected is collected every
// second: when an engine does so by itself is chance, and moves more than what is kept.

const SHEETS = 100;
/** Bodies by when the kernel is compiled and the heap has found its size, and the last ones. */
const [EARLY, LATE] = [
  [30, 50],
  [80, 100],
] as const;
/** Held more in the later window, MB. Half a megabyte a body, kept, comes to this; chance moves a few. */
const MOST = 25;
/** Flags of an engine that collects what nobody holds. */
const COLLECTING = ['--expose-gc', '--import', 'data:text/javascript,setInterval(gc,1000).unref()'];

let command: BuiltCommand;
let folder: string;
beforeAll(() => {
  command = builtCommand();
  folder = mkdtempSync(join(tmpdir(), 'exact-memory-'));
}, 300_000);
afterAll(() => {
  command?.remove();
  rmSync(folder, { recursive: true, force: true });
});

it.skipIf(!HAS_EXACT)(`memory stays flat over a hundred exact bodies${NEEDS_EXACT}`, async () => {
  const sheets = Array.from({ length: SHEETS }, (_, i) => sheetFile(i));
  const held = await heldWhile(['make', ...sheets, '--formats', 'step', '--step-threads', 'plain', '--out', 'out']);
  const [early, late] = [mean(held, EARLY), mean(held, LATE)];
  expect(late - early, `${early} MB, then ${late}`).toBeLessThan(MOST);
});

/** A nut of its own length. */
function sheetFile(i: number): string {
  const name = `nut-${i}`;
  writeFileSync(
    join(folder, `${name}.yaml`),
    `part: nut
name: ${name}
screw: Tr8x2
body: {diameter: 22 mm, length: ${14 + i / 100} mm}
fit: running
material: pa12
printer: {nozzle: 0.4 mm, layer: 0.08 mm}
`,
  );
  return `${name}.yaml`;
}

/** The least that a call held while so many bodies were written, MB by their number. */
function heldWhile(args: readonly string[]): Promise<Map<number, number>> {
  const held = new Map<number, number>();
  return new Promise((resolve, reject) => {
    const child = execFile(
      process.execPath,
      [...COLLECTING, command.file, ...args],
      { cwd: folder, maxBuffer: 1e8 },
      (error) => {
        clearInterval(looking);
        if (error) reject(error);
        else resolve(held);
      },
    );
    const looking = setInterval(() => {
      const [done, now] = [written(), residentOf(child.pid!)];
      if (now !== undefined) held.set(done, Math.min(now, held.get(done) ?? now));
    }, 50);
  });
}

function written(): number {
  try {
    return readdirSync(join(folder, 'out')).length;
  } catch {
    return 0;
  }
}

/** Resident memory of a process, MB; undefined once it has ended. */
function residentOf(pid: number): number | undefined {
  try {
    const [, kilobytes] = /^VmRSS:\s+(\d+)/m.exec(readFileSync(`/proc/${pid}/status`, 'utf8')) ?? [];
    return kilobytes === undefined ? undefined : Number(kilobytes) / 1000;
  } catch {
    return undefined;
  }
}

function mean(held: ReadonlyMap<number, number>, [from, to]: readonly [number, number]): number {
  const own = [...held].flatMap(([done, value]) => (done >= from && done < to ? [value] : []));
  expect(own.length).toBeGreaterThan((to - from) / 2);
  return own.reduce((sum, value) => sum + value, 0) / own.length;
}
