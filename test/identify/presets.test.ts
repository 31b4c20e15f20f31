import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { candidates } from '../../src/identify/candidates.js';
import { identify } from '../../src/identify/identify.js';
import { parseDesignation } from '../../src/standards/threads/designation.js';
import { Bench } from './bench.js';

const FOLDER = join(import.meta.dirname, '../../presets/screws');
const ROUNDS = 20;

const designations = readdirSync(FOLDER)
  .sort()
  .map((file) => parseDesignation(/^designation: (.+)$/m.exec(readFileSync(join(FOLDER, file), 'utf8'))![1]!).text);

describe('screws that ship as presets, read with calipers good for ± 0.03 mm', () => {
  it('there are some', () => {
    expect(designations.length).toBeGreaterThan(20);
  });

  it.each(designations)('%s is named, or named together with those it cannot be told from', (designation) => {
    const one = candidates().find(({ row }) => row.designation === designation)!;
    const found = Array.from({ length: ROUNDS }, (_, round) => identify(new Bench(one, 104_729 * round + 7).first()));
    const named = found.filter(
      ({ candidates: [first], twins }) => first!.designation === designation || twins.includes(designation),
    );
    expect(named.length / ROUNDS).toBeGreaterThanOrEqual(0.95);
    const unsure = found.filter(({ separable }) => !separable);
    expect(unsure.filter(({ nextMeasurement }) => nextMeasurement === null)).toEqual([]);
  });
});
