import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { SOURCES } from '../src/standards/sources.js';

// Doc comments are checked by running them: every example must be true. In the layers of formulas and figures each
// exported function also names the unit of each number it takes and a source that stands in the bibliography, unless it
// is marked @internal: shared by the files of its folder, not offered to others.

const ROOT = join(import.meta.dirname, '..');
const WITH_EXAMPLES = ['src/standards', 'src/mechanics', 'src/identify', 'src/drive', 'src/calibrate'];
const WITH_SOURCES = ['src/standards', 'src/mechanics'];

interface DocumentedFunction {
  readonly name: string;
  readonly doc: string;
  readonly parameters: string;
}

function filesOf(folder: string): string[] {
  if (!existsSync(join(ROOT, folder))) return [];
  const names = readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' });
  return names
    .filter((name) => name.endsWith('.ts'))
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .sort();
}

function functionsOf(text: string): DocumentedFunction[] {
  return [...text.matchAll(/^export (?:async )?function (\w+)/gm)].map((match) => {
    const before = text.slice(0, match.index).trimEnd();
    const doc = before.endsWith('*/') ? before.slice(before.lastIndexOf('/**')) : '';
    return { name: match[1]!, doc, parameters: parametersAt(text, match.index) };
  });
}

/** The text between the brackets of a function's parameters. */
function parametersAt(text: string, from: number): string {
  const start = text.indexOf('(', from);
  let depth = 0;
  for (let i = start; i < text.length; i += 1) {
    if (text[i] === '(') depth += 1;
    if (text[i] === ')') depth -= 1;
    if (depth === 0) return text.slice(start + 1, i);
  }
  return '';
}

/** The lines of a doc comment under each tag, joined: `@param a … [mm]`. */
function tagsOf(doc: string, tag: string): string[] {
  const plain = doc.replace(/^\s*\/?\*+\/? ?/gm, '').replace(/\s*\*\/$/, '');
  return plain
    .split(/\n(?=\s*@)/)
    .map((part) => part.trim().replace(/\s+/g, ' '))
    .filter((part) => part.startsWith(`@${tag} `));
}

/** Numbers a function takes that no comment gives a unit. */
function withoutUnit(fn: DocumentedFunction, text: string): string[] {
  const params = tagsOf(fn.doc, 'param');
  const told = (name: string) =>
    params.some((line) => new RegExp(`\\b${name}\\b`).test(line) && /\[[^\]]+\]/.test(line));
  const inline = [...fn.parameters.matchAll(/(\w+)\??: (?:readonly )?number\b/g)].map((match) => match[1]!);
  const missing = inline.filter((name) => !told(name));
  for (const [, type] of fn.parameters.matchAll(/: (?:readonly )?([A-Z]\w+)/g)) {
    const shape = new RegExp(`(/\\*\\*(?:(?!\\*/)[\\s\\S])*\\*/\\s*)?export interface ${type}[^{]*\\{([^}]*)\\}`).exec(
      text,
    );
    if (shape === null || /\[[^\]]+\]/.test(shape[1] ?? '')) continue;
    for (const [, comment, name] of shape[2]!.matchAll(
      /(\/\*\*(?:(?!\*\/)[\s\S])*\*\/)?\s*readonly (\w+)\??: number\b/g,
    )) {
      const counted = /^(starts|count|turns)$/.test(name!);
      if (!counted && !/\[[^\]]+\]/.test(comment ?? '') && !told(name!)) missing.push(`${type}.${name}`);
    }
  }
  return missing;
}

/** Compares with what an example promises, to half of its last decimal. */
function expectAlike(actual: unknown, expected: unknown, within: number): void {
  if (typeof expected === 'number') {
    expect(typeof actual).toBe('number');
    expect(Math.abs((actual as number) - expected)).toBeLessThanOrEqual(within);
  } else if (typeof expected === 'object' && expected !== null) {
    const fields = actual as Record<string, unknown>;
    if (Array.isArray(expected)) expect(fields).toHaveLength(expected.length);
    for (const [key, value] of Object.entries(expected)) expectAlike(fields[key], value, within);
  } else expect(actual).toEqual(expected);
}

function expectedOf(text: string): { value: unknown; within: number } {
  const plain = text.trim().replace(/^−/, '-');
  const decimals = Math.max(0, ...[...plain.matchAll(/\d\.(\d+)/g)].map((match) => match[1]!.length));
  const within = 0.5 * 10 ** -decimals * 1.000001;
  const number = /^-?\d+(?:\.\d+)?(?:e-?\d+)?/.exec(plain);
  if (number !== null) return { value: Number(number[0]), within };
  const literal = /^(\[.*\]|\{.*\}|'[^']*'|"[^"]*"|true|false|null|undefined)/s.exec(plain)?.[1];
  if (literal === undefined) throw new Error(`an example promises what cannot be read: ${text}`);
  return { value: new Function(`return (${literal})`)(), within };
}

const MODULES = new Map<string, Record<string, unknown>>();
for (const file of WITH_EXAMPLES.flatMap(filesOf)) {
  MODULES.set(file, (await import(/* @vite-ignore */ join(ROOT, file))) as Record<string, unknown>);
}
const EVERYTHING: Record<string, unknown> = Object.assign({}, ...MODULES.values());

describe.each([...MODULES.keys()])('%s', (file) => {
  const text = readFileSync(join(ROOT, file), 'utf8');
  const functions = functionsOf(text).filter((fn) => !/@internal\b/.test(fn.doc));
  const strict = WITH_SOURCES.some((folder) => file.startsWith(`${folder}/`));

  it('keeps what its doc comments promise', () => {
    const scope: Record<string, unknown> = { ...EVERYTHING, ...MODULES.get(file) };
    for (const fn of functions) {
      for (const example of tagsOf(fn.doc, 'example')) {
        const parts = /^@example (.*?) \/\/ (.*)$/s.exec(example);
        if (parts === null) throw new Error(`${fn.name}: an example has the form "@example call // value"`);
        const { value, within } = expectedOf(parts[2]!);
        const actual: unknown = new Function(...Object.keys(scope), `return (${parts[1]})`)(...Object.values(scope));
        try {
          expectAlike(actual, value, within);
        } catch (error) {
          throw new Error(`${example}\nis ${JSON.stringify(actual)}`, { cause: error });
        }
      }
    }
  });

  it.runIf(strict)('gives units, sources and examples', () => {
    const found = functions.flatMap((fn) => [
      ...withoutUnit(fn, text).map((name) => `${fn.name}: no unit for ${name}`),
      ...(tagsOf(fn.doc, 'source').length === 0 ? [`${fn.name}: no source`] : []),
      ...(tagsOf(fn.doc, 'example').length === 0 ? [`${fn.name}: no example`] : []),
      ...tagsOf(fn.doc, 'source')
        .map((line) => /^@source ([\w.-]+)/.exec(line)?.[1] ?? line)
        .filter((key) => !Object.hasOwn(SOURCES, key))
        .map((key) => `${fn.name}: source ${key} is not in the bibliography`),
    ]);
    expect(found).toEqual([]);
  });
});
