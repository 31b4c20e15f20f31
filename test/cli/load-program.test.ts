import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { crc32 } from 'node:zlib';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { loadProgram } from '../../src/cli/load-program.js';
import { packCode, unpackCode } from '../../src/work/kept-code.js';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'leadwright-program-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('the loader of the program', () => {
  const program = (greeting: string) => {
    writeFileSync(
      join(folder, 'run.cjs'),
      `"use strict";const path=require("node:path");const other=require("./other.cjs");
exports.run=async()=>[other.greet("you"),path.basename(__filename),(await module.import("node:os")).EOL.length>0];`,
    );
    writeFileSync(join(folder, 'other.cjs'), `"use strict";exports.greet=(who)=>${JSON.stringify(greeting)}+who;`);
  };
  const started = async (kept: Parameters<typeof loadProgram>[0]) => {
    const { load, compiled } = loadProgram(kept);
    const { run } = load(join(folder, 'run.cjs')) as { run: () => Promise<unknown> };
    return { said: await run(), compiled: compiled() };
  };

  it('runs files that ask for each other, and knows what it compiled', async () => {
    program('hello ');
    const { said, compiled } = await started(new Map());
    expect(said).toEqual(['hello you', 'run.cjs', true]);
    expect([...compiled!.keys()]).toEqual(['other.cjs', 'run.cjs'].reverse());
  });

  it('takes what was kept, and has nothing to keep then', async () => {
    program('hello ');
    const { compiled } = await started(new Map());
    const again = await started(unpackCode(packCode(compiled!)));
    expect(again.said).toEqual(['hello you', 'run.cjs', true]);
    expect(again.compiled).toBeUndefined();
  });

  it('takes nothing that was compiled from another source, however alike', async () => {
    program('hello ');
    const { compiled } = await started(new Map());
    program('howdy ');
    const changed = await started(compiled!);
    expect(changed.said).toEqual(['howdy you', 'run.cjs', true]);
    expect(changed.compiled).toBeDefined();
  });

  it('keeps what other calls loaded of this program, and nothing that another version left', async () => {
    program('hello ');
    const { compiled } = await started(new Map());
    writeFileSync(join(folder, 'seldom.cjs'), '"use strict";');
    const seldom = { source: 1, code: new Uint8Array(8) };
    const left = new Map([...compiled!, ['seldom.cjs', seldom], ['other-OF1999.cjs', seldom]] as const);
    program('good day ');
    const { compiled: anew } = await started(left);
    expect([...anew!.keys()].sort()).toEqual(['other.cjs', 'run.cjs', 'seldom.cjs']);
    expect(anew!.get('seldom.cjs')).toEqual(seldom);
  });

  it('does without code that the engine refuses', async () => {
    // a text that this engine has not met: what it compiled just now it does not ask for
    program('good morning ');
    const spoilt = new Map(
      ['run.cjs', 'other.cjs'].map((name) => {
        const source = crc32(readFileSync(join(folder, name)));
        return [name, { source, code: Buffer.alloc(64) }] as const;
      }),
    );
    const { said, compiled: anew } = await started(spoilt);
    expect(said).toEqual(['good morning you', 'run.cjs', true]);
    expect(anew).toBeDefined();
  });

  it('gives a file the same exports each time', () => {
    program('hello ');
    const { load } = loadProgram(new Map());
    expect(load(join(folder, 'other.cjs'))).toBe(load(join(folder, 'other.cjs')));
    expect(readFileSync(join(folder, 'other.cjs'), 'latin1')).toContain('greet');
  });
});
