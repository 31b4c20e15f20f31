import { difference, exactly, larger, type Measured, sum } from '../units/measured.js';

/** A length that is known, or the fields of the sheet without which it is not. */
export type Known = { readonly value: Measured } | { readonly missing: readonly string[] };

/** A value that a field of the sheet tells. */
export function told(value: Measured | number | undefined, field: string): Known {
  if (value === undefined) return { missing: [field] };
  return { value: typeof value === 'number' ? exactly(value) : value };
}

/** A length, but no less than another one where that is known. */
export function noLess(length: Known, floor: Known): Known {
  return 'missing' in length || 'missing' in floor ? length : { value: larger(length.value, floor.value) };
}

export function missingOf(known: Known): readonly string[] {
  return 'missing' in known ? known.missing : [];
}

/** Their sum, as far as all are known. */
export function total(...terms: readonly Known[]): Known {
  return joined(terms, (values) => sum(...values));
}

/** What is left of one when others are taken away. */
export function left(from: Known, ...taken: readonly Known[]): Known {
  return joined([from, ...taken], ([first, ...rest]) => difference(first!, sum(...rest)));
}

/** The value, where it is known. */
export function figureOf(known: Known): Measured | undefined {
  return 'value' in known ? known.value : undefined;
}

function joined(terms: readonly Known[], work: (values: readonly Measured[]) => Measured): Known {
  const missing = [...new Set(terms.flatMap(missingOf))];
  if (missing.length > 0) return { missing };
  return { value: work(terms.flatMap((term) => figureOf(term) ?? [])) };
}
