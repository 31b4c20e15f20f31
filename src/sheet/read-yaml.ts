import {
  isMap,
  isNode,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  type Pair,
  parseDocument,
  type YAMLError,
  type YAMLMap,
} from 'yaml';
import { type Fault, fault, InputError, type Place, shown } from '../units/faults.js';
import { duplicateKeys } from './duplicate-keys.js';
import { type Forbidden, forbiddenIn } from './forbidden.js';
import { isNestedTooDeeply } from './nesting.js';
import { dotted } from './path.js';

/** A parsed text: its plain value, and where each field stands. */
export interface SheetText {
  readonly value: unknown;
  /** the place of a field, or of the nearest thing around it */
  readonly locate: (path: readonly PropertyKey[]) => Place | undefined;
}

/** A sheet longer than this is not a sheet. */
export const LONGEST_SHEET = 262_144;

/**
 * Reads a YAML text into a plain value, and keeps the places of its fields.
 * @throws InputError empty, too long, binary, not YAML, nested too deeply, with tags, or more aliases than a person would use
 */
export function readYaml(text: string, longest: number = LONGEST_SHEET): SheetText {
  if (text.length > longest) throw fault('', `${text.length} characters`, `must be at most ${longest} characters`);
  if (text.includes('\u0000') || text.includes('\ufffd'))
    throw fault('', '', 'must be UTF-8 text; this looks like a binary file');
  if (text.trim() === '') throw fault('', '', 'the sheet is empty');
  if (isNestedTooDeeply(text)) throw fault('', '', 'nested too deeply');
  const lines = new LineCounter();
  const document = parseNested(text, lines);
  if (document.errors.length > 0) throw new InputError(yamlFaults(document.errors, lines));
  const twice = duplicateKeys(document.contents);
  if (twice.length > 0) throw new InputError(twice.slice(0, MOST_FAULTS).map((key) => repeated(key, lines)));
  const forbidden = forbiddenIn(document.contents);
  if (forbidden.length > 0) throw new InputError(forbidden.slice(0, MOST_FAULTS).map((one) => refused(one, lines)));
  const value = plainValue(document);
  if (value === null) throw fault('', '', 'the sheet is empty');
  const finder: Finder = { lines, pairs: new Map() };
  return { value, locate: (path) => locate(document.contents, path, finder) };
}

const MOST_FAULTS = 20;

/** One slip often breaks several rules at one place; the first names it. */
function yamlFaults(errors: readonly YAMLError[], lines: LineCounter): Fault[] {
  const first = new Map(errors.toReversed().map((error) => [error.pos[0], error]));
  const told = errors.filter((error) => first.get(error.pos[0]) === error);
  return told.slice(0, MOST_FAULTS).map((error) => ({
    path: '',
    value: '',
    allowed: `not YAML: ${TOLD[error.code] ?? firstLine(error.message)}`,
    at: placeOf(lines, error.pos[0]),
  }));
}

/** Where the reader's own words would not help a person who writes a sheet. */
const TOLD: Readonly<Partial<Record<YAMLError['code'], string>>> = {
  MULTIPLE_DOCS: 'one sheet a file; a second one starts here, after ---',
  NON_STRING_KEY: 'a field must have a plain name; is a brace or bracket too many here?',
};

function refused({ path, offset, allowed }: Forbidden, lines: LineCounter): Fault {
  return {
    path: dotted(path.map((key) => (typeof key === 'number' ? key : shown(key)))),
    value: '',
    allowed,
    at: placeOf(lines, offset),
  };
}

function repeated({ path, offset }: ReturnType<typeof duplicateKeys>[number], lines: LineCounter): Fault {
  return {
    path: dotted(path.map((key) => (typeof key === 'number' ? key : shown(key)))),
    value: '',
    allowed: 'is given twice',
    at: placeOf(lines, offset),
  };
}

// keys are compared here, not by the parser, which compares each with each
function parseNested(text: string, lines: LineCounter) {
  try {
    return parseDocument(text, { lineCounter: lines, prettyErrors: false, stringKeys: true, uniqueKeys: false });
  } catch (error) {
    if (error instanceof RangeError) throw fault('', '', 'nested too deeply');
    throw error;
  }
}

function plainValue(document: ReturnType<typeof parseDocument>): unknown {
  try {
    return document.toJS({ maxAliasCount: 50 });
  } catch (error) {
    if (error instanceof RangeError) throw fault('', '', 'nested too deeply');
    throw fault('', '', `not usable YAML: ${firstLine(error instanceof Error ? error.message : String(error))}`);
  }
}

/** What places are found with. The keys of a map are looked through but once, however many of its fields are asked for. */
interface Finder {
  readonly lines: LineCounter;
  readonly pairs: Map<YAMLMap, ReadonlyMap<string, Pair>>;
}

function pairsOf(map: YAMLMap, { pairs }: Finder): ReadonlyMap<string, Pair> {
  const known = pairs.get(map);
  if (known) return known;
  const found = new Map<string, Pair>();
  for (const item of map.items) if (isScalar(item.key)) found.set(String(item.key.value), item);
  pairs.set(map, found);
  return found;
}

function locate(root: Node | null, path: readonly PropertyKey[], finder: Finder): Place | undefined {
  let node: unknown = root;
  let offset = root?.range?.[0];
  for (const key of path) {
    const next = child(node, key, finder);
    if (next === undefined) break;
    node = next.value;
    offset = next.offset ?? offset;
  }
  return offset === undefined ? undefined : placeOf(finder.lines, offset);
}

function child(
  node: unknown,
  key: PropertyKey,
  finder: Finder,
): { value: unknown; offset: number | undefined } | undefined {
  if (isMap(node)) {
    const pair = pairsOf(node, finder).get(String(key));
    if (!pair) return undefined;
    const place = isNode(pair.value) && pair.value.range ? pair.value : pair.key;
    return { value: pair.value, offset: isNode(place) ? place.range?.[0] : undefined };
  }
  if (isSeq(node)) {
    const item = node.items[Number(key)];
    return item === undefined ? undefined : { value: item, offset: isNode(item) ? item.range?.[0] : undefined };
  }
  return undefined;
}

function placeOf(lines: LineCounter, offset: number): Place {
  const { line, col } = lines.linePos(offset);
  return { line: Math.max(1, line), column: Math.max(1, col) };
}

function firstLine(message: string): string {
  return message.split('\n')[0]!.slice(0, 120);
}
