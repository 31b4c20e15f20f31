import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { SOURCES } from '../../src/standards/sources.js';

/** Every doc comment of a formula must name a known source and give an example that is true to the digits it shows. */
const root = join(import.meta.dirname, '../../src/mechanics');
const files = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'));

interface Documented {
  readonly name: string;
  readonly comment: string;
}

function documented(text: string): readonly Documented[] {
  const found = text.matchAll(/\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*export function (\w+)/g);
  return Array.from(found, (match) => ({ name: match[2]!, comment: match[1]! }));
}

/** `value` agrees with `shown` to within one unit of the last digit shown. */
function agrees(value: unknown, shown: unknown, digits: string): boolean {
  if (typeof shown === 'number' && typeof value === 'number') {
    const decimals = digits.split('.')[1]?.length ?? 0;
    return Math.abs(value - shown) <= 0.51 * 10 ** -decimals;
  }
  return JSON.stringify(value) === JSON.stringify(shown);
}

describe.each(files)('%s', async (file) => {
  const text = readFileSync(join(root, file), 'utf8');
  const module: Readonly<Record<string, unknown>> = await import(join(root, file));

  for (const { name, comment } of documented(text)) {
    const source = /@source\s+([\w.-]+)/.exec(comment)?.[1];
    if (source !== undefined) {
      it(`${name} names a source of the bibliography`, () => {
        expect(Object.keys(SOURCES)).toContain(source);
      });
    }
    const example = /@example (.*?) \/\/ (.*)/.exec(comment);
    if (example === null) continue;
    it(`${name} keeps its example`, () => {
      const call = new Function(...Object.keys(module), `return ${example[1]}`);
      const shown = new Function(`return ${example[2]}`)();
      const value: unknown = call(...Object.values(module));
      expect(agrees(value, shown, example[2]!), `${example[1]} gave ${JSON.stringify(value)}`).toBe(true);
    });
  }

  it('documents every formula with unit, source and example', () => {
    for (const { name, comment } of documented(text)) {
      if (!comment.includes('@param p.')) continue;
      for (const tag of ['@returns', '@throws', '@source', '@example', '[']) expect(comment, name).toContain(tag);
    }
  });
});
