// The laws that checks call, found by following what their code names, with the formula that stands above each law.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { parse } from '@babel/parser';

/** A law as its own comment tells it. */
export interface Law {
  readonly name: string;
  /** from the root of the sources */
  readonly file: string;
  /** what it gives, in words */
  readonly what: string;
  /** the lines of its equation */
  readonly formula: readonly string[];
  /** symbols, units, range, source: the tags as they are written */
  readonly tags: readonly string[];
}

/** Laws by check. */
export type Laws = ReadonlyMap<string, readonly Law[]>;

/** Laws that a check is told with, the nearest first. */
const MOST_LAWS = 3;
/** Steps from a check to a law: through what its kind, and all kinds, work out on the way. */
const MOST_STEPS = 6;
const LAWFUL = /^(?:mechanics|standards|fit|drive|parts)\//;

/** A piece of code, as the parser gives it. */
interface Node {
  readonly type: string;
  readonly [field: string]: unknown;
}

interface Declared {
  readonly node: Node;
  readonly comment: string;
}

interface Source {
  readonly file: string;
  readonly declared: ReadonlyMap<string, Declared>;
  /** where a name comes from, and what it is called there */
  readonly imported: ReadonlyMap<string, { readonly file: string; readonly name: string }>;
  /** checks by their id */
  readonly checks: ReadonlyMap<string, Node>;
}

/** Laws by check, of the checks below a folder; they go before those that kinds of parts share. */
export function lawsOf(root: string, folder: string): Laws {
  const src = join(root, 'src');
  const sources = reader(src);
  const files = ['parts/common', folder].flatMap((one) => filesBelow(join(src, one)));
  const laws = files
    .map(sources)
    .flatMap((source) =>
      [...source.checks].map(([id, node]) => [id, lawsFrom({ source, node }, sources, src)] as const),
    );
  return new Map(laws);
}

/** Every law once, by name: what it gives, its equation, symbols with units and range, source. */
export function lawPage(laws: readonly Law[]): string[] {
  const byName = new Map(laws.map((law) => [law.name, law]));
  const sorted = [...byName.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
  return sorted.map(({ name, file, what, formula, tags }) =>
    [`## ${name}`, what, `\`\`\`text\n${formula.join('\n')}\n\`\`\``, tagLines(tags), `\`src/${file}\``]
      .filter((part) => part !== '')
      .join('\n\n'),
  );
}

/** Symbols, units, what comes back, where it holds, source; as list items. */
function tagLines(tags: readonly string[]): string {
  const whole = tags.reduce<string[]>((all, line) => {
    if (line.startsWith('@')) all.push(line);
    else if (line !== '' && all.length > 0) all.push(`${all.pop()} ${line.trim()}`);
    return all;
  }, []);
  return whole
    .filter((line) => !/^@(?:example|throws)/.test(line))
    .map(
      (line) =>
        `- ${line.replace(/^@(\w+)\s*/, (_, tag: string) => (tag === 'param' ? '' : `${tag}: `)).replace(/\s+/g, ' ')}`,
    )
    .join('\n');
}

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .sort()
    .map((file) => join(folder, file));
}

interface Place {
  readonly source: Source;
  readonly node: Node;
}

/** Breadth first, so that what a check calls itself comes before what that calls. */
function lawsFrom(start: Place, sources: (file: string) => Source, src: string): Law[] {
  const found: Law[] = [];
  const seen = new Set<string>();
  let places: readonly Place[] = [start];
  for (let step = 0; step < MOST_STEPS && found.length < MOST_LAWS; step++) {
    const next: Place[] = [];
    for (const { source, node } of places)
      for (const name of namesIn(node)) {
        const there = lookUp(source, name, sources);
        const key = there && `${there.source.file} ${there.name}`;
        if (!there || seen.has(key!)) continue;
        seen.add(key!);
        const law = lawAt(there, src);
        if (law) found.push(law);
        else next.push({ source: there.source, node: there.declared.node });
      }
    places = next;
  }
  return found.slice(0, MOST_LAWS);
}

function lawAt({ source, name, declared }: Looked, src: string): Law | undefined {
  const file = relative(src, source.file);
  const lines = declared.comment.split('\n').map((line) => line.replace(/^\s*\* ?/, '').trimEnd());
  const firstTag = lines.findIndex((line) => line.startsWith('@'));
  const [body, tags] = firstTag < 0 ? [lines, []] : [lines.slice(0, firstTag), lines.slice(firstTag)];
  const formula = body.filter((line) => /^ {3,}\S/.test(line)).map((line) => line.trim());
  if (!LAWFUL.test(file) || !formula.some((line) => line.includes('='))) return undefined;
  const what = body.filter((line) => /^\S/.test(line)).join(' ');
  return { name, file, what, formula, tags };
}

interface Looked {
  readonly source: Source;
  readonly name: string;
  readonly declared: Declared;
}

function lookUp(source: Source, name: string, sources: (file: string) => Source): Looked | undefined {
  const declared = source.declared.get(name);
  if (declared) return { source, name, declared };
  const from = source.imported.get(name);
  return from && lookUp(sources(from.file), from.name, sources);
}

/** Names that a piece of code uses, those of fields and types aside. */
function namesIn(node: Node): Set<string> {
  const names = new Set<string>();
  visit(node, (at) => {
    if (
      at.type.startsWith('TS') &&
      at.type !== 'TSAsExpression' &&
      at.type !== 'TSNonNullExpression' &&
      at.type !== 'TSSatisfiesExpression'
    )
      return false;
    if (at.type === 'Identifier') names.add(String(at.name));
    return true;
  });
  return names;
}

/** Goes through a piece of code while it is told to go deeper; the names of fields are no code. */
function visit(node: Node, see: (node: Node) => boolean): void {
  if (!see(node)) return;
  for (const [field, value] of Object.entries(node)) {
    if (field.endsWith('Comments') || isFieldName(node, field)) continue;
    for (const one of Array.isArray(value) ? value : [value]) if (isNode(one)) visit(one, see);
  }
}

function isFieldName({ type, computed }: Node, field: string): boolean {
  if (computed === true) return false;
  return (
    (field === 'property' && /MemberExpression$/.test(type)) ||
    (field === 'key' && /^Object(?:Property|Method)$/.test(type))
  );
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';
}

/** Reads each source once. */
function reader(src: string): (file: string) => Source {
  const known = new Map<string, Source>();
  return (file) => {
    const there = known.get(file);
    if (there) return there;
    const source = readSource(file, src);
    known.set(file, source);
    return source;
  };
}

function readSource(file: string, src: string): Source {
  const tree = parse(readFileSync(file, 'utf8'), {
    sourceType: 'module',
    plugins: ['typescript'],
    attachComment: true,
  });
  const declared = new Map<string, Declared>();
  const imported = new Map<string, { file: string; name: string }>();
  const checks = new Map<string, Node>();
  for (const statement of tree.program.body) {
    const comment = statement.leadingComments?.filter(({ value }) => value.startsWith('*')).at(-1)?.value ?? '';
    const inner = statement.type === 'ExportNamedDeclaration' ? (statement.declaration ?? statement) : statement;
    if (inner.type === 'FunctionDeclaration' && inner.id)
      declared.set(inner.id.name, { node: inner as unknown as Node, comment });
    if (inner.type === 'VariableDeclaration')
      for (const one of inner.declarations)
        if (one.id.type === 'Identifier') declared.set(one.id.name, { node: one as unknown as Node, comment });
    if ((inner.type === 'ImportDeclaration' || inner.type === 'ExportNamedDeclaration') && inner.source) {
      const from = resolve(dirname(file), inner.source.value.replace(/\.js$/, '.ts'));
      if (!from.startsWith(src) || !existsSync(from)) continue;
      for (const one of inner.specifiers) {
        const [here, there] =
          one.type === 'ImportSpecifier'
            ? [one.local, one.imported]
            : one.type === 'ExportSpecifier'
              ? [one.exported, one.local]
              : [];
        if (here?.type === 'Identifier' && there?.type === 'Identifier')
          imported.set(here.name, { file: from, name: there.name });
      }
    }
  }
  visit(tree.program as unknown as Node, (node) => {
    for (const [id, own] of idsIn(node)) checks.set(id, own);
    return true;
  });
  return { file, declared, imported, checks };
}

/** The `id` of a check, with the object that it stands in. */
function idsIn(node: Node): [string, Node][] {
  if (node.type !== 'ObjectExpression') return [];
  return (node.properties as readonly Node[]).flatMap(({ type, key, value }): [string, Node][] => {
    const isId = type === 'ObjectProperty' && (key as Node).name === 'id' && (value as Node).type === 'StringLiteral';
    return isId ? [[String((value as Node).value), node]] : [];
  });
}
