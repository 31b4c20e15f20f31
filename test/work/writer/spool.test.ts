import { mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { disk } from '../../../src/work/writer/disk.js';
import { spoolsBeside } from '../../../src/work/writer/spool.js';

afterEach(() => vi.restoreAllMocks());

describe('a spool', () => {
  it('gives back what was put in, in memory or in a file beside, as often as it is gone through', () => {
    const folder = mkdtempSync(join(tmpdir(), 'spool-'));
    const item = fc.record({ text: fc.string({ unit: 'grapheme', maxLength: 40 }), list: fc.array(fc.integer()) });
    fc.assert(
      fc.property(fc.array(item), fc.array(item), fc.constantFrom(0, 1, 100, 1e6), (first, more, most) => {
        const spools = spoolsBeside(join(folder, 'out'), most);
        const spool = spools.begin<(typeof first)[number]>();
        for (const one of first) spool.push(one);
        expect([...spool]).toEqual(first);
        for (const one of more) spool.push(one);
        expect([...spool]).toEqual([...first, ...more]);
        expect([...spool]).toEqual([...first, ...more]);
        spools.end();
        expect(readdirSync(folder)).toEqual([]);
      }),
      { numRuns: 50 },
    );
  });

  it('reads lines that are longer than a block, and several spools at a time', () => {
    const spools = spoolsBeside(join(mkdtempSync(join(tmpdir(), 'spool-')), 'out'), 0);
    const [one, two] = [spools.begin<string>(), spools.begin<string>()];
    const long = 'ä'.repeat(400_000);
    for (const text of [long, 'short', long]) {
      one.push(text);
      two.push(`${text}!`);
    }
    const seen: boolean[] = [];
    for (const text of one) for (const other of two) seen.push(other === `${text}!`);
    expect(seen).toEqual([true, false, true, false, true, false, true, false, true]);
    spools.end();
  });

  it('holds no more than it may in memory', () => {
    const folder = mkdtempSync(join(tmpdir(), 'spool-'));
    const spools = spoolsBeside(join(folder, 'out'), 1000);
    const spool = spools.begin<number>();
    const written: number[] = [];
    const write = disk.write;
    vi.spyOn(disk, 'write').mockImplementation((handle, bytes, from) => {
      written.push(bytes.length);
      return write(handle, bytes, from);
    });
    for (let i = 0; i < 10_000; i++) spool.push(i);
    expect(Math.max(...written)).toBeLessThan(1010);
    expect(written.reduce((a, b) => a + b)).toBeGreaterThan(40_000);
    expect(readdirSync(folder)).toHaveLength(1);
    spools.end();
  });
});
