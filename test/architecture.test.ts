import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize, relative } from 'node:path';
import { describe, expect, it } from 'vitest';

const SRC = join(import.meta.dirname, '../src');

const figures = ['units', 'standards', 'mechanics', 'judge', 'fit'];
const beforeParts = [...figures, 'identify', 'drive', 'solid', 'sheet', 'presets', 'calibrate'];
const beforePipeline = [...beforeParts, 'parts', 'output'];

/** What each layer may import, besides itself and packages. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  units: [],
  standards: ['units'],
  mechanics: ['units', 'standards'],
  fit: ['units', 'judge'],
  judge: ['units'],
  identify: figures,
  drive: figures,
  solid: ['units'],
  sheet: ['units', 'standards'],
  presets: ['units', 'standards', 'mechanics', 'sheet'],
  calibrate: [...figures, 'sheet', 'presets'],
  parts: beforeParts,
  output: [...beforeParts, 'parts'],
  pipeline: beforePipeline,
  axis: [...beforePipeline, 'pipeline'],
  fleet: [...beforePipeline, 'pipeline', 'axis'],
  work: [...beforePipeline, 'pipeline', 'axis', 'fleet'],
  cli: [...beforePipeline, 'pipeline', 'axis', 'fleet', 'work'],
};

/** Layers that may touch the disk, the clock and the terminal. */
const OUTSIDE = ['work', 'cli'];

interface Source {
  /** below src, with forward slashes */
  readonly file: string;
  readonly layer: string;
  readonly text: string;
  readonly imports: readonly string[];
}

const sources: readonly Source[] = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => /\.ts$/.test(file) && !file.endsWith('.d.ts'))
  .sort()
  .map((file) => {
    const text = readFileSync(join(SRC, file), 'utf8');
    return { file, layer: file.includes('/') ? file.split('/')[0]! : '', text, imports: importsOf(text) };
  });

function importsOf(text: string): string[] {
  const code = withoutComments(text);
  const found = code.matchAll(
    /(?:^|[\s;}])(?:import|export)\b[^'"`;]*?\bfrom\s*(['"])([^'"]+)\1|\bimport\s*\(?\s*(['"])([^'"]+)\3/g,
  );
  return [...found].map((match) => match[2] ?? match[4]!);
}

function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/^\s*\/\/.*$/gm, '');
}

/** Code alone: no comments and no texts. */
function codeOf(text: string): string {
  return withoutComments(text).replace(/'(?:[^'\\\n]|\\.)*'|"(?:[^"\\\n]|\\.)*"/g, "''");
}

/** The file below src that a relative import means. */
function target(from: string, name: string): string {
  return normalize(join(dirname(from), name)).replaceAll('\\', '/');
}

const relatives = sources.flatMap(({ file, layer, imports }) =>
  imports.filter((name) => name.startsWith('.')).map((name) => ({ file, layer, to: target(file, name) })),
);

function lines(found: readonly { readonly file: string; readonly to: string }[]): string[] {
  return found.map(({ file, to }) => `${file} → ${to}`);
}

describe('architecture', () => {
  it('reads a tree worth reading', () => {
    expect(sources.length).toBeGreaterThan(50);
    expect(relatives.length).toBeGreaterThan(100);
  });

  it('sees every form of import', () => {
    const text = `import a from './a.js';\nimport { b,\n  type C } from "./b.js";\nexport * from './c.js';\nconst d = await import('./d.js');\nimport './e.js';\n// import './no.js'`;
    expect(importsOf(text)).toEqual(['./a.js', './b.js', './c.js', './d.js', './e.js']);
  });

  it('knows every layer', () => {
    const layers = new Set(sources.map(({ layer }) => layer));
    layers.delete('');
    expect([...layers].filter((layer) => MAY_IMPORT[layer] === undefined)).toEqual([]);
    expect(sources.filter(({ layer, file }) => layer === '' && file !== 'index.ts')).toEqual([]);
  });

  it('imports only go up', () => {
    const wrong = relatives.filter(({ layer, to }) => {
      const other = to.split('/')[0]!;
      return layer !== '' && other !== layer && !MAY_IMPORT[layer]!.includes(other);
    });
    expect(lines(wrong)).toEqual([]);
  });

  it('part kinds never import each other', () => {
    const kindOf = (file: string) => /^parts\/([^/]+)\//.exec(file)?.[1];
    const wrong = relatives.filter(({ file, to }) => {
      const [from, other] = [kindOf(file), kindOf(to)];
      return from !== undefined && other !== undefined && other !== from && other !== 'common';
    });
    expect(lines(wrong)).toEqual([]);
  });

  it('no cycle between files, types included', () => {
    const next = new Map(sources.map(({ file }) => [file, [] as string[]]));
    for (const { file, to } of relatives) next.get(file)!.push(to.replace(/\.js$/, '.ts'));
    expect(cycleIn(next)).toEqual([]);
  });

  it('imports end in .js', () => {
    expect(lines(relatives.filter(({ to }) => !to.endsWith('.js')))).toEqual([]);
  });

  it('only work and cli touch node, the clock, chance and the console', () => {
    const inner = sources.filter(({ layer }) => !OUTSIDE.includes(layer));
    const nodeImports = inner.flatMap(({ file, imports }) =>
      imports.filter((name) => name.startsWith('node:')).map((to) => ({ file, to })),
    );
    expect(lines(nodeImports)).toEqual([]);
    const outside =
      /\bprocess\s*\.|\bconsole\s*\.|\bDate\s*\.\s*now\b|\bnew Date\s*\(|\bMath\s*\.\s*random\b|\bperformance\s*\./;
    expect(inner.filter(({ text }) => outside.test(codeOf(text))).map(({ file }) => file)).toEqual([]);
  });

  it('only the entry of the command line touches the process of the terminal', () => {
    const process = /\bprocess\s*\.\s*(?:std|exit|argv|env|cwd)|\bconsole\s*\./;
    const users = sources.filter(({ file, text }) => file !== 'cli/leadwright.ts' && process.test(codeOf(text)));
    expect(users.map(({ file }) => file)).toEqual([]);
  });

  it('only the writer changes the disk, through one object', () => {
    const asks = new Set([
      'readFile',
      'readdir',
      'stat',
      'open',
      'FileHandle',
      'readFileSync',
      'readdirSync',
      'statSync',
      'existsSync',
      'constants',
    ]);
    const changes = sources.flatMap(({ file, text }) => {
      const found = withoutComments(text).matchAll(
        /import\s+(?:type\s+)?([^;'"]+?)\s+from\s+'node:fs(?:\/promises)?'/g,
      );
      const names = [...found].flatMap(([, list = '']) => list.replace(/[{}]|\btype\b/g, '').split(','));
      return names.map((name) => ({ file, to: name.trim() })).filter(({ to }) => to !== '' && !asks.has(to));
    });
    expect(lines(changes)).toEqual(['work/writer/disk.ts → * as fs']);
  });

  it('only the kernel knows the boolean package', () => {
    const users = sources.filter(({ imports }) => imports.some((name) => name.startsWith('manifold-3d')));
    expect(users.map(({ file }) => file)).toEqual(['solid/kernel.ts']);
  });

  it('what builds exact bodies and what measures them by lines know nothing of each other', () => {
    const builds = /^solid\/exact\/(?:kernel\/|exact-kernel)/;
    const measures = /^solid\/exact\/line(?:s\/|-volume)/;
    const both = relatives.filter(
      ({ file, to }) => (builds.test(file) && measures.test(to)) || (measures.test(file) && builds.test(to)),
    );
    for (const side of [builds, measures])
      expect(relatives.filter(({ file }) => side.test(file)).length).toBeGreaterThan(10);
    expect(lines(both)).toEqual([]);
  });

  it('schemas come in as a namespace, so that bundling can shake them', () => {
    const whole = /import\s*\{[^}]*\bz\b[^}]*\}\s*from\s*'zod'/;
    const wrong = sources.filter(({ text }) => whole.test(withoutComments(text).replace(/import type[^;]*;/g, '')));
    expect(wrong.map(({ file }) => file)).toEqual([]);
  });

  it('nothing is exported that nothing in production uses, nor without need', () => {
    expect(needlessExports()).toEqual([]);
  });

  it('packages used are packages declared', () => {
    const { dependencies, devDependencies } = JSON.parse(readFileSync(join(SRC, '../package.json'), 'utf8'));
    const packages = sources.flatMap(({ imports }) => imports.filter((name) => !/^(?:\.|node:)/.test(name)));
    const names = new Set(packages.map((name) => /^(?:@[^/]+\/)?[^/]+/.exec(name)![0]));
    expect([...names].filter((name) => !(name in { ...devDependencies, ...dependencies }))).toEqual([]);
    // read at run time, or named by the library's declarations; all else is bundled
    expect(Object.keys(dependencies)).toEqual(['manifold-3d', 'tinypool', 'zod']);
  });
});

/**
 * What is exported without need: used nowhere in production but where it stands (a test may ask for it there), or used
 * there alone and asked for by no test. Types that stand in the signature of something exported are let be.
 */
function needlessExports(): string[] {
  const production = importedNames(['src', 'page', 'scripts', 'bench']);
  const tests = importedNames(['test']);
  return sources
    .filter(({ file }) => file !== 'index.ts' && !production.has(`${file} *`))
    .flatMap(({ file, text }) => {
      const code = withoutComments(text);
      const words = wordsOf(code);
      const found = code.matchAll(
        /^export\s+(?:async\s+)?(function|const|class|interface|type)\s+([A-Za-z_$][\w$]*)/gm,
      );
      return [...found].flatMap(([, sort, name]) => {
        if (production.has(`${file} ${name}`)) return [];
        const isUsedHere = (words.get(name!) ?? 0) > 1;
        const isType = sort === 'interface' || sort === 'type';
        return isUsedHere && (isType || tests.has(`${file} ${name}`)) ? [] : [`${file} ${name}`];
      });
    });
}

/** `file name` for each name that is imported from a file below src; `file *` where all of it is. */
function importedNames(folders: readonly string[]): Set<string> {
  const names = new Set<string>();
  for (const folder of folders) {
    const top = join(SRC, '..', folder);
    for (const file of readdirSync(top, { recursive: true, encoding: 'utf8' })) {
      if (!/\.(?:tsx?|mjs)$/.test(file)) continue;
      const code = readFileSync(join(top, file), 'utf8');
      const at = (name: string) =>
        relative(SRC, join(top, dirname(file), name))
          .replaceAll('\\', '/')
          .replace(/\.js$/, '.ts');
      for (const [, list = '', from] of code.matchAll(/\{([^{}]*)\}\s*from\s*'(\.[^']*)'/g))
        for (const name of list.split(',').map((one) => one.replace(/\btype\s|\sas\s.*/g, '').trim()))
          names.add(`${at(from!)} ${name}`);
      for (const [, from] of code.matchAll(/(?:\*(?:\s+as\s+\w+)?\s*from|import\()\s*'(\.[^']*)'/g))
        names.add(`${at(from!)} *`);
    }
  }
  return names;
}

function wordsOf(text: string): Map<string, number> {
  const counts = new Map<string, number>();
  for (const [word] of text.matchAll(/[A-Za-z_$][\w$]*/g)) counts.set(word, (counts.get(word) ?? 0) + 1);
  return counts;
}

/** The files of one cycle, or none. */
function cycleIn(next: ReadonlyMap<string, readonly string[]>): string[] {
  const done = new Set<string>();
  const visit = (file: string, trail: readonly string[]): string[] => {
    if (trail.includes(file)) return [...trail.slice(trail.indexOf(file)), file];
    if (done.has(file)) return [];
    done.add(file);
    for (const other of next.get(file) ?? []) {
      const cycle = visit(other, [...trail, file]);
      if (cycle.length > 0) return cycle;
    }
    return [];
  };
  for (const file of next.keys()) {
    const cycle = visit(file, []);
    if (cycle.length > 0) return cycle;
  }
  return [];
}
