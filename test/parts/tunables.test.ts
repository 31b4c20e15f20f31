import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { flatSizes } from '../../src/output/flat-sizes.js';
import { changedSheet } from '../../src/pipeline/advice/changed-sheet.js';
import { isFigure } from '../../src/pipeline/advice/knob.js';
import { design } from '../../src/pipeline/design.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';

const shipped = (kind: string): object =>
  parse(readFileSync(join(import.meta.dirname, `../../presets/sheets/demo-${kind}.yaml`), 'utf8'));

const FIELDS = ['nut', 'coupling', 'sleeve', 'collar', 'end-holder', 'motor-plate', 'adapter'].flatMap((kind) => {
  const made = design(shipped(kind));
  return kindOfDesign(KINDS, made)
    .tunables(made)
    .map((knob) => ({ kind, knob, path: knob.path }));
});
const FIGURES = FIELDS.flatMap(({ kind, knob, path }) => (isFigure(knob) ? [{ kind, path, knob }] : []));
const WORDS = FIELDS.flatMap(({ kind, knob, path }) => (isFigure(knob) ? [] : [{ kind, path, knob }]));

describe('fields that advice may change', () => {
  it.each(FIELDS)('$kind: $path given as it is now changes nothing', ({ kind, path, knob: { now } }) => {
    const before = flatSizes(design(shipped(kind)).dimensions.finished);
    const after = new Map(flatSizes(design(changedSheet(shipped(kind), { [path]: now })).dimensions.finished));
    for (const [name, size] of before) expect(after.get(name), name).toBeCloseTo(size, 6);
  });

  it.each(WORDS)('$kind: $path takes each of its words', ({ kind, path, knob: { words, now } }) => {
    expect(words).toContain(now);
    for (const word of words) expect(() => design(changedSheet(shipped(kind), { [path]: word }))).not.toThrow();
  });

  it.each(FIGURES)('$kind: $path lies in its own range', ({ knob: { now, least, most } }) => {
    expect(now).toBeGreaterThanOrEqual(least);
    expect(now).toBeLessThanOrEqual(most);
  });
});
