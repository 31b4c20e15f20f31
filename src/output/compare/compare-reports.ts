import type { Bounds, Verdict } from '../../fit/check.js';
import { rounded } from '../../units/format.js';
import { flatSizes } from '../flat-sizes.js';
import type { StoredReport } from './stored-report.js';

/** A report with the files beside it. */
export interface ComparedPart {
  /** as the reader named it */
  readonly from: string;
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
  readonly unit: string;
  readonly verdict: Change<Verdict>;
  readonly value: Change<number>;
  readonly limit: Change<Bounds>;
  /** what the later one says, or the earlier one where it is gone */
  readonly message: string;
}

/** What differs between two reports; lists hold only what changed. */
export interface Comparison {
  readonly a: string;
  readonly b: string;
  readonly same: boolean;
  readonly part: Change<string>;
  readonly verdict: Change<Verdict>;
  readonly applied: Change<string>;
  readonly sizes: readonly ({ readonly name: string; readonly of: 'finished' | 'printed' } & Change<number>)[];
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

/** Sizes closer than this are the same [mm]. */
const SAME = 5e-7;

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
  return { a: a.from, b: b.from, same, ...one, applied, sizes, checks, bodies, files };
}

function change<T>(before: T | undefined, after: T | undefined): Change<T> {
  return { before: before ?? null, after: after ?? null };
}

function sizeChanges(a: StoredReport['dimensions']['finished'], b: StoredReport['dimensions']['finished']) {
  const [before, after] = [new Map(flatSizes(a)), new Map(flatSizes(b))];
  return namesOf(before, after)
    .map((name) => ({ name, ...change(before.get(name), after.get(name)) }))
    .filter((row) => row.before === null || row.after === null || Math.abs(row.after - row.before) > SAME);
}

function checkChanges(a: StoredReport, b: StoredReport): CheckChange[] {
  const [before, after] = [byKey(a.checks, ({ id }) => id), byKey(b.checks, ({ id }) => id)];
  return namesOf(before, after).flatMap((id): CheckChange[] => {
    const [was, is] = [before.get(id), after.get(id)];
    const told = is ?? was!;
    const row = {
      id,
      unit: told.unit,
      verdict: change(was?.verdict, is?.verdict),
      value: change(was?.value ?? undefined, is?.value ?? undefined),
      limit: change(boundsOf(was?.limit), boundsOf(is?.limit)),
      message: told.message,
    };
    const kept =
      row.verdict.before === row.verdict.after &&
      near(row.value) &&
      JSON.stringify(row.limit.before) === JSON.stringify(row.limit.after);
    return kept ? [] : [row];
  });
}

function boundsOf(limit: StoredReport['checks'][number]['limit'] | undefined): Bounds | undefined {
  if (!limit) return undefined;
  const { min, max } = limit;
  return { ...(min === undefined ? {} : { min }), ...(max === undefined ? {} : { max }) };
}

function near({ before, after }: Change<number>): boolean {
  return before === null || after === null ? before === after : Math.abs(after - before) <= SAME;
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
    return near(row.mass) && near(row.volume) && row.material.before === row.material.after ? [] : [row];
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
