// Loads TypeScript as it stands, and gives test files the tests of `test-tree.mjs` in place of vitest's.
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { transform } from 'esbuild';

const TEST_TREE = new URL('./test-tree.mjs', import.meta.url).href;

export async function resolve(specifier, context, next) {
  if (specifier === 'vitest' && context.parentURL !== TEST_TREE) return { url: TEST_TREE, shortCircuit: true };
  if (/^\.{1,2}\/.*\.js$/.test(specifier) && context.parentURL?.endsWith('.ts')) {
    const source = new URL(specifier.replace(/\.js$/, '.ts'), context.parentURL);
    if (existsSync(source)) return { url: source.href, shortCircuit: true };
  }
  return next(specifier, context);
}

export async function load(url, context, next) {
  if (!url.endsWith('.ts')) return next(url, context);
  const text = await readFile(fileURLToPath(url), 'utf8');
  const { code } = await transform(text, { loader: 'ts', format: 'esm', target: 'node20' });
  return { format: 'module', source: code, shortCircuit: true };
}
