import { isMap, isScalar, isSeq, type Node, parseDocument } from 'yaml';
import { FELT } from '../../../src/calibrate/ladder.js';
import { GOES, SINCE, TIGHT } from '../../../src/calibrate/trial.js';
import { editText } from '../../../src/sheet/edit-text.js';
import { SLICER_ANSWERS, STATES } from '../../../src/sheet/sections/profile.js';

/** A blank of a form: what is looked at, how, and what was answered so far. */
export interface Blank {
  readonly path: readonly string[];
  readonly label: string;
  readonly how: string;
  readonly value: string;
  /** what may be answered, where it is no figure */
  readonly choices?: readonly string[];
}

const CHOICES: Readonly<Record<string, readonly string[]>> = {
  felt: FELT,
  goes: GOES,
  tight: TIGHT,
  since: SINCE,
  run_in: ['no', 'yes'],
  state: STATES,
  slicer_compensates: SLICER_ANSWERS,
};

/** Features of a coupon: each has its answer beside its size. */
const ANSWERS = ['read', 'felt'] as const;

/**
 * What a form asks: the lines that have a remark of their own, and what was read and felt of each feature. All else was
 * filled in when the part was made.
 *
 * @param text the form of a coupon or of a finished nut
 * @returns in the order of the form
 */
export function blanksOf(text: string): Blank[] {
  const { contents } = parseDocument(text);
  if (!isMap(contents)) return [];
  return contents.items.flatMap(({ key, value }): Blank[] => {
    if (!isScalar(key)) return [];
    const name = String(key.value);
    if (isMap(value)) return name === 'readings' || name === 'tried' ? features(value, name, text) : [];
    const how = remark(text, key.range![0]);
    if (how === undefined || (value !== null && !isScalar(value))) return [];
    return [blank([name], words(name), how, source(value, text))];
  });
}

/** The form with one blank filled in; figures of a feature may be several, apart by blanks. */
export function filled(text: string, { path }: Blank, typed: string): string {
  const node = parseDocument(text).getIn(path, true);
  if (!isSeq(node)) return editText(text, path, comma(typed));
  const [from, to] = node.range!;
  const figures = typed.split(/[;\s]+/).flatMap((word) => (word === '' ? [] : [comma(word)]));
  return `${text.slice(0, from)}[${figures.join(', ')}]${text.slice(to)}`;
}

function features(map: Node, section: string, text: string): Blank[] {
  if (!isMap(map)) return [];
  return map.items.flatMap(({ key, value }) => {
    if (!isScalar(key) || !isMap(value)) return [];
    const mark = String(key.value);
    const asked = ANSWERS.find((name) => value.has(name));
    if (asked === undefined) return [];
    const answer = (value.get(asked, true) ?? null) as Node | null;
    const how = remark(text, key.range![0]) ?? sizes(source(value, text));
    const shown = isSeq(answer)
      ? source(answer, text)
          .slice(1, -1)
          .replaceAll(/[,\s]+/g, ' ')
          .trim()
      : source(answer, text);
    return [blank([section, mark, asked], mark, how, shown)];
  });
}

function blank(path: readonly string[], label: string, how: string, value: string): Blank {
  const choices = CHOICES[path.at(-1)!];
  return { path, label, how, value, ...(choices ? { choices } : {}) };
}

/** What stands in a feature's line beside the answer. */
function sizes(row: string): string {
  return row
    .slice(1, -1)
    .replace(/,?\s*felt:.*$/, '')
    .replaceAll(/[{}]/g, '');
}

/** The remark at the end of the line that begins here. */
function remark(text: string, from: number): string | undefined {
  const end = text.indexOf('\n', from);
  return /#\s*(.*)$/.exec(text.slice(from, end < 0 ? undefined : end))?.[1];
}

function source(node: unknown, text: string): string {
  const range = (node as Node | null)?.range;
  return range ? text.slice(range[0], range[1]).trim() : '';
}

function comma(typed: string): string {
  return typed.trim().replaceAll(/(\d),(?=\d)/g, '$1.');
}

function words(name: string): string {
  return name.replaceAll('_', ' ');
}
