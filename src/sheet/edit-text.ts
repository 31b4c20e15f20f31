import {
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  parseDocument,
  type Scalar,
  stringify,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml';

/** A field of a sheet that holds one value, or a short list of them. */
export interface TextField {
  readonly path: readonly string[];
  /** as it is written; a list without its brackets */
  readonly value: string;
}

/** Fields that may be written short, and the field that the short form stands for. */
export type ShortForms = Readonly<Record<string, string>>;

/**
 * Every field of a sheet's text that holds one value or a list in one line, in the order of the text; lists of anything
 * else are left out.
 *
 * @param text a sheet, whether its values are right or not
 * @returns none where the text is no map
 */
export function textFields(text: string): TextField[] {
  const { contents } = parseDocument(text);
  return isMap(contents) ? fieldsIn(contents, [], text) : [];
}

/**
 * Puts a value into one field of a sheet's text; comments, order and layout of all else stay as they are. A field that is
 * not there is added at the end of its section, a section at the end of the sheet; a short form in its way becomes the
 * field that it stands for.
 *
 * @param text a sheet
 * @param path the field
 * @param value as a person writes it, a list's apart by commas where a list stands; empty clears the field, or all of a section, and keeps its
 *   place
 * @param short what short forms stand for
 * @returns the text with the field changed; the same text where a longer list or an alias stands in the way
 * @example editText('a: 1 # one\n', ['a'], '2') // 'a: 2 # one\n'
 */
export function editText(
  text: string,
  path: readonly string[],
  value: string | readonly string[],
  short: ShortForms = {},
): string {
  const { contents } = parseDocument(text);
  if (!isMap(contents)) return contents === null ? `${text}${line(path, value)}\n` : text;
  return editIn(contents, { text, path, value, short, at: 0 });
}

/**
 * Puts a whole section in place of the one of its name, or at the end of the sheet.
 *
 * @param text a sheet
 * @param key the section's name
 * @param section its lines, beginning with the name
 * @returns the text with the section changed; the same text where it is no map
 * @example putSection('screw: M8\nname: a\n', 'screw', 'screw: Tr8x2') // 'screw: Tr8x2\nname: a\n'
 */
export function putSection(text: string, key: string, section: string): string {
  const { contents } = parseDocument(text);
  if (contents !== null && !isMap(contents)) return text;
  const pair = contents?.items.find((item) => isScalar(item.key) && String(item.key.value) === key);
  const lines = section.trimEnd();
  if (!pair) return `${text}${text === '' || text.endsWith('\n') ? '' : '\n'}${lines}\n`;
  const [start] = (pair.key as Scalar).range!;
  const value = pair.value as Node | null;
  const end = isMap(value) && !value.flow ? lastEnd(value) : (value ?? (pair.key as Scalar)).range![1];
  const stop = text.indexOf('\n', end);
  return `${text.slice(0, start)}${lines}${stop < 0 ? '\n' : text.slice(stop)}`;
}

interface Edit {
  readonly text: string;
  readonly path: readonly string[];
  readonly value: string | readonly string[];
  readonly short: ShortForms;
  /** how much of the path leads to the map */
  readonly at: number;
}

function editIn(map: YAMLMap, edit: Edit): string {
  const { text, path, value, short, at } = edit;
  const key = path[at]!;
  const pair = map.items.find((item) => isScalar(item.key) && String(item.key.value) === key);
  if (!pair) return added(map, path.slice(at), edit);
  const node = isBlank(pair.value) ? null : (pair.value as Node | null);
  if (isMap(node)) return at + 1 < path.length ? editIn(node, { ...edit, at: at + 1 }) : emptied(pair, node, edit);
  if (isListOfOne(node)) return at + 1 < path.length ? text : inList(node, edit);
  if (node !== null && (isAlias(node) || !isScalar(node))) return text;
  if (at + 1 === path.length) return replaced(pair, node, text, written(value));
  const rest = path.slice(at + 1);
  const old = node === null ? '' : sourceOf(node, text);
  const kept = old !== '' && short[key] !== undefined ? `${short[key]}: ${old}, ` : '';
  return replaced(pair, node, text, `{${kept}${line(rest, value)}}`);
}

/** A section without its fields, its name in place; one that is named elsewhere stays. */
function emptied({ key }: Pair, map: YAMLMap, { text, value }: Edit): string {
  if (value !== '' || map.anchor) return text;
  const from = text.indexOf(':', (key as Scalar).range![1]) + 1;
  return `${text.slice(0, from)}${text.slice(map.flow ? map.range![1] : lastEnd(map))}`;
}

/** A list in one line that holds nothing but values. */
function isListOfOne(node: unknown): node is YAMLSeq {
  return isSeq(node) && node.flow === true && node.items.every((item) => isScalar(item) && !item.anchor);
}

function inList(node: YAMLSeq, { text, value }: Edit): string {
  if (value === insideOf(node, text)) return text;
  const items = typeof value === 'string' ? value.split(',') : value;
  const [from, to] = node.range!;
  return `${text.slice(0, from)}${written(items.map((item) => item.trim()).filter((item) => item !== ''))}${text.slice(to)}`;
}

/** What stands between the brackets. */
function insideOf(node: YAMLSeq, text: string): string {
  const [from, to] = node.range!;
  return text.slice(from + 1, to - 1).trim();
}

/** A field without a value; where a remark follows, its place would be behind that. */
function isBlank(value: unknown): boolean {
  return isScalar(value) && value.source === '';
}

function replaced(pair: Pair, node: Scalar | null, text: string, value: string): string {
  const { range } = (node ?? (pair.key as Scalar)) as { range?: readonly [number, number, number] | null };
  if (!range) return text;
  const [from, to] = node === null ? [text.indexOf(':', range[1]) + 1, text.indexOf(':', range[1]) + 1] : range;
  const gap = value !== '' && /\S/.test(text[from - 1] ?? '') ? ' ' : '';
  return `${text.slice(0, from)}${gap}${value}${text.slice(to)}`;
}

function added(map: YAMLMap, rest: readonly string[], { text, value }: Edit): string {
  const [start, end] = map.range!;
  const new_ = line(rest, value);
  if (map.flow) {
    const close = text.lastIndexOf('}', end - 1);
    const before = text.slice(0, close).trimEnd();
    return `${before}${map.items.length > 0 && !before.endsWith(',') ? ', ' : ''}${new_}${text.slice(close)}`;
  }
  const indent = ' '.repeat(start - (text.lastIndexOf('\n', start - 1) + 1));
  const last = lastEnd(map);
  const stop = text.indexOf('\n', last);
  const to = stop < 0 ? text.length : stop;
  return `${text.slice(0, to)}\n${indent}${new_}${stop < 0 ? '\n' : text.slice(to)}`;
}

/** Where the last value of a block map ends. */
function lastEnd(map: YAMLMap): number {
  const pair = map.items.at(-1)!;
  const node = (pair.value ?? pair.key) as Node;
  return isMap(node) && !node.flow ? lastEnd(node) : node.range![1];
}

function fieldsIn(map: YAMLMap, above: readonly string[], text: string): TextField[] {
  return map.items.flatMap(({ key, value }): TextField[] => {
    if (!isScalar(key)) return [];
    const path = [...above, String(key.value)];
    if (isMap(value)) return fieldsIn(value, path, text);
    if (value === null) return [{ path, value: '' }];
    if (isListOfOne(value)) return [{ path, value: insideOf(value, text) }];
    return isScalar(value) ? [{ path, value: sourceOf(value, text) }] : [];
  });
}

function sourceOf(node: Scalar, text: string): string {
  const [from, to] = node.range!;
  return text.slice(from, to);
}

/** `body: {diameter: 14}` of a path and a value. */
function line([key = '', ...rest]: readonly string[], value: Edit['value']): string {
  return rest.length === 0 ? `${key}: ${written(value)}`.trimEnd() : `${key}: {${line(rest, value)}}`;
}

/** A value that stands in a map of either form. */
function written(value: Edit['value']): string {
  if (typeof value !== 'string') return `[${value.map(written).join(', ')}]`;
  const plain = value.trim();
  if (plain === '' || !/[,[\]{}]|^[?:-]\s|^[!&*@%`]|[:#]\s|\s#|\n/.test(plain)) return plain === '' ? '' : safe(plain);
  return JSON.stringify(plain);
}

/** Quoted where YAML would read something else than these letters. */
function safe(plain: string): string {
  const back = parseDocument(`a: ${plain}`);
  return back.errors.length === 0 && isScalar(back.get('a', true)) ? plain : stringify(plain).trim();
}
