import { type Bounds, type Verdict, WORDS, type Word } from '../../judge/check.js';
import { rounded, worked } from '../../units/format.js';
import { boundsText } from '../figures.js';
import { flatSizes } from '../flat-sizes.js';
import { type StoredReport, wordOf } from './stored-report.js';

/** A report with the files beside it. */
export interface ComparedPart {
  readonly report: StoredReport;
  readonly files: readonly { readonly name: string; readonly bytes: Uint8Array }[];
}

/** A value before and after; null where there is none. */
export interface Change<T> {
  readonly before: T | null;
  readonly after: T | null;
}

/** A check that is not as it was. */
export interface CheckChange {
  readonly id: string;
  /** what it asks */
  readonly title: string;
  readonly unit: string;
  readonly verdict: Change<Verdict>;
  readonly word: Change<Word>;
  readonly went: 'worse' | 'better' | 'neither';
  readonly value: Change<number>;
  readonly limit: Change<Bounds>;
  /** what the later one says, or the earlier one where it is gone */
  readonly message: string;
}

/** What differs between two reports; lists hold only what changed. */
export interface Comparison {
  /** the parts by their names; where both have one, the earlier and the later */
  readonly a: string;
  readonly b: string;
  readonly same: boolean;
  readonly part: Change<string>;
  readonly verdict: Change<Verdict>;
  readonly applied: Change<string>;
  readonly sizes: readonly ({ readonly name: string; readonly of: 'finished' | 'printed' } & Change<number>)[];
  /** those that went worse first, then those that went better, then those whose figures moved */
  readonly checks: readonly CheckChange[];
  readonly bodies: readonly {
    readonly body: string;
    readonly mass: Change<number>;
    readonly volume: Change<number>;
    readonly material: Change<string>;
  }[];
  /** every file; `equal` where all its bytes are */
  readonly files: readonly { readonly file: string; readonly bytes: Change<number>; readonly equal: boolean }[];
}

/** Bytes of an STL before its facets. */
const STL_HEADER = 80;

/** Sizes and masses closer than half of the last place that is shown are the same [mm, g]. */
const SAME = { size: 0.0005, mass: 0.005, volume: 0.5 };

/**
 * Compares two made parts: sizes, checks, mass and files. Files pair by what they are, whatever the parts are called.
 * @example compareReports(part, part).same // true
 */
export function compareReports(a: ComparedPart, b: ComparedPart): Comparison {
  const sizes = (['finished', 'printed'] as const).flatMap((of) =>
    sizeChanges(a.report.dimensions[of], b.report.dimensions[of]).map((change) => ({ of, ...change })),
  );
  const checks = checkChanges(a.report, b.report);
  const bodies = bodyChanges(a.report, b.report);
  const files = fileChanges(a, b);
  const one = { part: change(a.report.part, b.report.part), verdict: change(a.report.verdict, b.report.verdict) };
  const applied = change(a.report.applied, b.report.applied);
  const same =
    [one.part, one.verdict, applied].every(({ before, after }) => before === after) &&
    sizes.length + checks.length + bodies.length === 0 &&
    files.every(({ file, equal }) => equal || !/\.(?:stl|3mf)$/.test(file));
  return { ...namesOfBoth(a.report.name, b.report.name), same, ...one, applied, sizes, checks, bodies, files };
}

function namesOfBoth(a: string, b: string): { readonly a: string; readonly b: string } {
  return a === b ? { a: `${a}, earlier`, b: `${b}, later` } : { a, b };
}

function change<T>(before: T | undefined, after: T | undefined): Change<T> {
  return { before: before ?? null, after: after ?? null };
}

function sizeChanges(a: StoredReport['dimensions']['finished'], b: StoredReport['dimensions']['finished']) {
  const [before, after] = [new Map(flatSizes(a)), new Map(flatSizes(b))];
  return namesOf(before, after)
    .map((name) => ({ name, ...change(before.get(name), after.get(name)) }))
    .filter((row) => row.before === null || row.after === null || Math.abs(row.after - row.before) >= SAME.size);
}

function checkChanges(a: StoredReport, b: StoredReport): CheckChange[] {
  const [before, after] = [byKey(a.checks, ({ id }) => id), byKey(b.checks, ({ id }) => id)];
  const rows = namesOf(before, after).flatMap((id): CheckChange[] => {
    const [was, is] = [before.get(id), after.get(id)];
    const told = is ?? was!;
    const row = {
      id,
      title: told.title ?? id,
      unit: told.unit,
      verdict: change(was?.verdict, is?.verdict),
      word: change(was && wordOf(was), is && wordOf(is)),
      went: wentTo(was && wordOf(was), is && wordOf(is)),
      value: change(was?.value ?? undefined, is?.value ?? undefined),
      limit: change(boundsOf(was?.limit), boundsOf(is?.limit)),
      message: told.message,
    };
    const kept =
      row.word.before === row.word.after &&
      shown(row.value.before, row.unit) === shown(row.value.after, row.unit) &&
      limitShown(row.limit.before) === limitShown(row.limit.after);
    return kept ? [] : [row];
  });
  return rows.sort((x, y) => rank(x) - rank(y));
}

/** A check that is new, or gone, is no worse by that, unless it says so. */
function wentTo(before: Word = 'yes', after: Word = 'yes'): CheckChange['went'] {
  const step = WORDS.indexOf(after) - WORDS.indexOf(before);
  return step === 0 ? 'neither' : step > 0 ? 'worse' : 'better';
}

/** Worse before better before what only moved; within each, the worst word it has now. */
function rank({ went, word }: CheckChange): number {
  const now = WORDS.length - WORDS.indexOf(word.after ?? 'yes');
  return { worse: 0, better: 10, neither: 20 }[went] + now;
}

/** A value as people see it: what differs beyond that is rounding. */
function shown(value: number | null, unit: string): string {
  return value === null ? '' : worked(value, unit);
}

function limitShown(limit: Bounds | null): string {
  return limit === null ? '' : boundsText(limit);
}

function boundsOf(limit: StoredReport['checks'][number]['limit'] | undefined): Bounds | undefined {
  if (!limit) return undefined;
  const { min, max } = limit;
  return { ...(min === undefined ? {} : { min }), ...(max === undefined ? {} : { max }) };
}

function near({ before, after }: Change<number>, same: number): boolean {
  return before === null || after === null ? before === after : Math.abs(after - before) < same;
}

function bodyChanges(a: StoredReport, b: StoredReport): Comparison['bodies'] {
  const [before, after] = [byKey(a.bodies, bodyKey(a)), byKey(b.bodies, bodyKey(b))];
  return namesOf(before, after).flatMap((body) => {
    const [was, is] = [before.get(body), after.get(body)];
    const row = {
      body,
      mass: change(was?.mass, is?.mass),
      volume: change(was?.volume, is?.volume),
      material: change(was?.material, is?.material),
    };
    return near(row.mass, SAME.mass) && near(row.volume, SAME.volume) && row.material.before === row.material.after
      ? []
      : [row];
  });
}

/** A body's file without the part's name: `motor-hub.stl`, or `.stl` for the only one. */
function bodyKey({ name }: StoredReport): (body: { readonly file: string }) => string {
  return ({ file }) => nameless(file, name);
}

function nameless(file: string, name: string): string {
  if (!file.startsWith(name)) return file;
  const rest = file.slice(name.length).replace(/^-/, '');
  return rest.startsWith('.') ? `part${rest}` : rest;
}

function fileChanges(a: ComparedPart, b: ComparedPart): Comparison['files'] {
  const before = byKey(a.files, ({ name }) => nameless(name, a.report.name));
  const after = byKey(b.files, ({ name }) => nameless(name, b.report.name));
  return namesOf(before, after).map((file) => {
    const [was, is] = [before.get(file)?.bytes, after.get(file)?.bytes];
    return {
      file,
      bytes: change(was?.length, is?.length),
      equal: was !== undefined && is !== undefined && equal(bodyOf(file, was), bodyOf(file, is)),
    };
  });
}

function equal(a: Uint8Array, b: Uint8Array): boolean {
  return a.length === b.length && a.every((byte, i) => byte === b[i]);
}

/** An STL names its part in its first bytes, which says nothing of the body. */
function bodyOf(file: string, bytes: Uint8Array): Uint8Array {
  return file.endsWith('.stl') ? bytes.subarray(STL_HEADER) : bytes;
}

function byKey<T>(rows: readonly T[], key: (row: T) => string): Map<string, T> {
  return new Map(rows.map((row) => [key(row), row]));
}

function namesOf(a: ReadonlyMap<string, unknown>, b: ReadonlyMap<string, unknown>): string[] {
  return [...new Set([...a.keys(), ...b.keys()])];
}

/** How far a value moved, or undefined where one of both is missing. */
export function moved({ before, after }: Change<number>): number | undefined {
  return before === null || after === null ? undefined : rounded(after - before);
}
