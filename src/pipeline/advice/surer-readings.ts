import { room, type Trial, type Try } from './trial.js';

/** Taken as sure: a hundredth of what calipers read, in the unit of the reading. */
const SURE = 0.0003;

/**
 * Readings that decide a check whose likely value keeps its limit while its doubt does not: taken surely, each of them alone
 * lets it pass.
 *
 * @param check which one
 * @param sheet as it was typed
 * @param before what the sheet is found to be
 * @param attempt tries changes of it
 * @returns fields of the sheet, in the order in which the check names them
 */
export function surerReadings(check: string, sheet: object, before: Trial, attempt: Try): readonly string[] {
  const row = before.get(check);
  if (!row || row.verdict === 'fail' || !(room(before, check) < 0) || !isLikelyInside(row)) return [];
  return row.moves.split(', ').filter((path) => {
    const typed = valueAt(sheet, path.split('.'));
    const sure = typed === undefined ? undefined : surely(typed);
    return sure !== undefined && attempt({ [path]: sure })?.get(check)?.verdict === 'pass';
  });
}

function isLikelyInside({ value, limit }: NonNullable<ReturnType<Trial['get']>>): boolean {
  const { min = -Infinity, max = Infinity } = limit ?? {};
  return typeof value === 'number' && value >= min && value <= max;
}

function valueAt(sheet: object, path: readonly string[]): unknown {
  return path.reduce<unknown>(
    (at, key) => (typeof at === 'object' && at !== null && Object.hasOwn(at, key) ? Reflect.get(at, key) : undefined),
    sheet,
  );
}

/** `14.1 ± 0.15 mm` read without doubt; undefined where it is no single figure. */
function surely(typed: unknown): string | undefined {
  if (typeof typed !== 'number' && typeof typed !== 'string') return undefined;
  const [, figure, unit = ''] = /^\s*([\d.]+)\s*(?:±\s*[\d.]+\s*)?([a-z"]*)\s*$/i.exec(String(typed)) ?? [];
  return figure === undefined ? undefined : `${figure} ± ${SURE} ${unit}`.trim();
}
