import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { SOURCES } from '../../src/standards/sources.js';

interface Documented {
  readonly name: string;
  readonly comment: string;
}

/**
 * Tests every doc comment of a folder: it names a known source, a formula has its unit, source and example, and
 * examples are true to the digits they show. `scope` holds names of other folders that examples use.
 */
export function testDocComments(folder: string, scope: Readonly<Record<string, unknown>> = {}): void {
  const root = join(import.meta.dirname, '../../src', folder);
  const files = readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .filter((file) =>
      documented(readFileSync(join(root, file), 'utf8')).some(({ comment }) => /@source|@example/.test(comment)),
    );
  describe.each(files)(`${folder}/%s`, async (file) => {
    const module: Readonly<Record<string, unknown>> = await import(join(root, file));
    for (const entry of documented(readFileSync(join(root, file), 'utf8'))) {
      testSource(entry);
      testCompleteness(entry);
      testExample(entry, { ...scope, ...module });
    }
  });
}

function documented(text: string): readonly Documented[] {
  const found = text.matchAll(/\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*export function (\w+)/g);
  return Array.from(found, (match) => ({ name: match[2]!, comment: match[1]! }));
}

function testSource({ name, comment }: Documented): void {
  const source = /@source\s+([\w.-]+)/.exec(comment)?.[1];
  if (source === undefined) return;
  it(`${name} names a source of the bibliography`, () => expect(Object.keys(SOURCES)).toContain(source));
}

function testCompleteness({ name, comment }: Documented): void {
  if (!comment.includes('@param p.')) return;
  it(`${name} has its returns, faults, source, example and units`, () => {
    for (const tag of ['@returns', '@throws', '@source', '@example', '[']) expect(comment).toContain(tag);
  });
}

function testExample({ name, comment }: Documented, scope: Readonly<Record<string, unknown>>): void {
  const example = /@example (.*?) \/\/ (.*)/.exec(comment);
  if (example === null) return;
  const [, call, shown] = example;
  it(`${name} keeps its example`, () => {
    const value: unknown = new Function(...Object.keys(scope), `return ${call}`)(...Object.values(scope));
    const wanted: unknown = new Function(`return ${shown}`)();
    expect(agrees(value, wanted, shown!), `${call} gave ${JSON.stringify(value)}`).toBe(true);
  });
}

/** Numbers agree to half a unit of the last digit shown, anything else exactly. */
function agrees(value: unknown, wanted: unknown, shown: string): boolean {
  if (typeof wanted !== 'number' || typeof value !== 'number') return JSON.stringify(value) === JSON.stringify(wanted);
  const decimals = shown.trim().split('.')[1]?.length ?? 0;
  return Math.abs(value - wanted) <= 0.51 * 10 ** -decimals;
}
