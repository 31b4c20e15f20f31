import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, dirname, join } from 'node:path';
import { Script } from 'node:vm';
import { crc32 } from 'node:zlib';
import type { CompiledFiles } from '../work/kept-code.js';

/** Files of the program, loaded with code that was compiled before. */
export interface LoadedProgram {
  /** what a file exports, the files that it asks for loaded with it */
  readonly load: (file: string) => unknown;
  /** what is compiled by now of all files that were loaded; undefined where all of it was kept already */
  readonly compiled: () => CompiledFiles | undefined;
}

type Wrapped = (exports: object, require: (path: string) => unknown, module: ProgramModule, file: string) => void;

/** What a file knows as its module. */
interface ProgramModule {
  exports: object;
  /** code that is kept cannot import packages by itself */
  readonly import: (path: string) => Promise<unknown>;
}

/**
 * Loads the program's own files, which the bundler writes as scripts for `require` in plain ASCII. The engine takes code
 * that was compiled from the very same source by an engine of the same kind, and compiles itself otherwise. What is found
 * out while the program runs, functions compiled when they are first called, is kept too.
 *
 * @param kept what an earlier start left
 * @returns what loads files, and what is worth keeping afterwards
 */
export function loadProgram(kept: CompiledFiles): LoadedProgram {
  const modules = new Map<string, ProgramModule>();
  const scripts = new Map<string, { readonly source: number; readonly script: Script; readonly isNew: boolean }>();
  const load = (file: string): unknown => {
    const known = modules.get(file);
    if (known) return known.exports;
    const bytes = readFileSync(file);
    const source = crc32(bytes);
    const one = kept.get(basename(file));
    const cachedData = one?.source === source ? (one.code as Buffer) : undefined;
    const script = new Script(`(function (exports, require, module, __filename) {${bytes.toString('latin1')}\n})`, {
      filename: file,
      ...(cachedData ? { cachedData } : {}),
    });
    scripts.set(basename(file), {
      source,
      script,
      isNew: cachedData === undefined || script.cachedDataRejected === true,
    });
    const module: ProgramModule = { exports: {}, import: (path) => import(path) };
    modules.set(file, module);
    const others = createRequire(file);
    const run = script.runInThisContext() as Wrapped;
    run(
      module.exports,
      (path) => (path.startsWith('./') ? load(join(dirname(file), path)) : others(path)),
      module,
      file,
    );
    return module.exports;
  };
  const compiled = () => {
    if (![...scripts.values()].some(({ isNew }) => isNew)) return undefined;
    const folders = new Set([...modules.keys()].map(dirname));
    // what another version left is read at each start and never used
    const own = [...kept].filter(([name]) => [...folders].some((folder) => existsSync(join(folder, name))));
    const files = [...scripts].map(([name, { source, script }]) => [name, { source, code: script.createCachedData() }]);
    return new Map([...own, ...(files as [string, { source: number; code: Uint8Array }][])]);
  };
  return { load, compiled };
}
