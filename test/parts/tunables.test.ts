import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { flatSizes } from '../../src/output/flat-sizes.js';
import { changedSheet } from '../../src/pipeline/advice/changed-sheet.js';
import { design } from '../../src/pipeline/design.js';
import { kindOfDesign } from '../../src/pipeline/find-kind.js';
import { KINDS } from '../../src/pipeline/kinds.js';

const shipped = (kind: string): object =>
  parse(readFileSync(join(import.meta.dirname, `../../presets/sheets/demo-${kind}.yaml`), 'utf8'));

const FIELDS = ['nut', 'coupling', 'sleeve', 'collar', 'end-holder', 'adapter'].flatMap((kind) => {
  const made = design(shipped(kind));
  return kindOfDesign(KINDS, made)
    .tunables(made)
    .map(({ path, now, least, most }) => ({ kind, path, now, least, most }));
});

describe('fields that advice may change', () => {
  it.each(FIELDS)('$kind: $path given as it is now changes nothing', ({ kind, path, now }) => {
    const before = flatSizes(design(shipped(kind)).dimensions.finished);
    const after = new Map(flatSizes(design(changedSheet(shipped(kind), { [path]: now })).dimensions.finished));
    for (const [name, size] of before) expect(after.get(name), name).toBeCloseTo(size, 6);
  });

  it.each(FIELDS)('$kind: $path lies in its own range', ({ now, least, most }) => {
    expect(now).toBeGreaterThanOrEqual(least);
    expect(now).toBeLessThanOrEqual(most);
  });
});
