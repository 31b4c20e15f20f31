import { randomBytes } from 'node:crypto';
import { basename, dirname, join } from 'node:path';

/**
 * What may stand beside a file or folder while it is written: what it will be, what it was, a list of what of that is
 * ours, rows that do not fit into memory, a claim to its lock, a lock set aside.
 */
const SORTS = ['new', 'old', 'list', 'rows', 'claim', 'stale'] as const;
export type Sort = (typeof SORTS)[number];

const BESIDE = /^\.(.+)\.([0-9a-f]{16})\.(new|old|list|rows|claim|stale)$/s;
const LOCK = /^\.(.+)\.lock$/s;

/** Digits that nobody can foresee. */
export function randomDigits(): string {
  return randomBytes(8).toString('hex');
}

/** A name beside a file or folder. */
export function beside(path: string, sort: Sort, digits: string): string {
  return join(dirname(path), `.${basename(path)}.${digits}.${sort}`);
}

/** The lock of a file or folder. */
export function lockOf(path: string): string {
  return join(dirname(path), `.${basename(path)}.lock`);
}

/** What a name beside something belongs to; undefined for any other name. */
export function ownerOf(
  name: string,
): { readonly of: string; readonly digits?: string; readonly sort?: Sort } | undefined {
  const [, of, digits, sort] = BESIDE.exec(name) ?? [];
  if (of !== undefined && digits !== undefined) return { of, digits, sort: SORTS.find((one) => one === sort)! };
  const [, locked] = LOCK.exec(name) ?? [];
  return locked === undefined ? undefined : { of: locked };
}
