import * as z from 'zod';
import { map, word } from '../sheet/fields.js';
import { SOURCES } from '../standards/sources.js';
import type { Fault } from '../units/faults.js';

/** How a figure came to be known. */
const ORIGIN_TYPES = ['standard', 'datasheet', 'measured', 'derived', 'assumption'] as const;

const text = z.string('must be text').min(1, 'must not be empty').max(400);

const originSection = map({
  type: word(ORIGIN_TYPES),
  source: text.describe('a key of the bibliography; for a measured figure, what was measured'),
  where: text.describe('the place in the source, or how the figure follows from it'),
  tolerance: text.optional().describe('how far the figure may be off, where it does not carry a ± itself'),
}).superRefine((origin, context) => {
  if (origin.type === 'measured' || Object.hasOwn(SOURCES, origin.source)) return;
  const message = `must be a key of the bibliography: ${Object.keys(SOURCES).join(', ')}`;
  context.addIssue({ code: 'custom', path: ['source'], message });
});

/** Where the figures of a file come from: by field, by the map around it, or by `*` for all that is left. */
export const provenanceSection = z.record(z.string(), originSection, { error: 'must be a map of fields' });

/** Where one figure, or a group of them, comes from. */
export type Origin = z.output<typeof originSection>;
export type Provenance = Readonly<Record<string, Origin>>;

/** A figure as it was typed, with its dotted path. */
export interface Figure {
  readonly path: string;
  readonly typed: string | number;
}

/** Every figure below a value: each number, and each text that holds a digit. */
export function figuresOf(value: unknown, path = ''): Figure[] {
  if (typeof value === 'number' || (typeof value === 'string' && /\d/.test(value))) return [{ path, typed: value }];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => figuresOf(inner, path === '' ? key : `${path}.${key}`));
}

/** The origin that covers a figure: its own, its nearest parent's, or that of `*`. */
export function originOf(path: string, provenance: Provenance): Origin | undefined {
  const key = coveringKey(path, provenance);
  return key === undefined ? undefined : provenance[key];
}

/** What is wrong with the provenance of a file's figures; empty when every figure is covered. */
export function provenanceFaults(figures: readonly Figure[], provenance: Provenance): Fault[] {
  const uncovered = figures
    .filter(({ path }) => originOf(path, provenance) === undefined)
    .map(({ path, typed }) => ({
      path,
      value: String(typed),
      allowed: 'needs a provenance: its own, or its parent’s',
    }));
  const loose = figures.filter((figure) => !carriesTolerance(figure, provenance)).map(withoutTolerance);
  return [...uncovered, ...loose, ...idle(figures, provenance)];
}

function idle(figures: readonly Figure[], provenance: Provenance): Fault[] {
  const used = new Set(figures.map(({ path }) => coveringKey(path, provenance)));
  return Object.keys(provenance)
    .filter((key) => !used.has(key))
    .map((key) => ({ path: `provenance.${key}`, value: '', allowed: 'covers no figure' }));
}

function withoutTolerance({ path, typed }: Figure): Fault {
  return { path, value: String(typed), allowed: 'read off an instrument or a datasheet: needs a ± or a tolerance' };
}

function carriesTolerance({ path, typed }: Figure, provenance: Provenance): boolean {
  const origin = originOf(path, provenance);
  if (origin === undefined || (origin.type !== 'datasheet' && origin.type !== 'measured')) return true;
  return origin.tolerance !== undefined || /±|\+\/?-/.test(String(typed));
}

function coveringKey(path: string, provenance: Provenance): string | undefined {
  const parts = path.split('.');
  const own = parts.map((_, i) => parts.slice(0, parts.length - i).join('.'));
  return [...own, '*'].find((key) => Object.hasOwn(provenance, key));
}
