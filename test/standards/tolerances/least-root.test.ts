import { describe, expect, it } from 'vitest';
import { parseDesignation } from '../../../src/standards/threads/designation.js';
import { leastRoot, leastRootOf } from '../../../src/standards/tolerances/least-root.js';

describe('the thinnest root of a class', () => {
  it.each([
    // by hand from ISO 2903, 7e: d3 − (1.25·Td2·k + |es|), rolled 0.15·P less
    ['Tr8x2', 5.5 - (1.25 * 0.19 + 0.071), 0.3],
    ['Tr8x8(P2)', 5.5 - (1.25 * 0.19 * 1.4 + 0.071), 0.3],
  ])('%s', (name, cut, less) => {
    const root = leastRoot(parseDesignation(name));
    expect(root.cut).toBeCloseTo(cut, 3);
    expect(root.rolled).toBeCloseTo(cut - less, 3);
  });

  it.each(['Acme 1/2-10', 'M8', '5/16-18'])('%s is not thinner for being rolled', (name) => {
    const named = parseDesignation(name);
    const { cut, rolled } = leastRoot(named);
    expect(rolled).toBe(cut);
    expect(cut).toBeLessThan(named.minor);
  });

  it('without a class it is about what grade 7 gives: within 0.03 mm for Tr8x2, Tr10x2 and Tr16x4', () => {
    for (const name of ['Tr8x2', 'Tr10x2', 'Tr16x4']) {
      const named = parseDesignation(name);
      const { cut } = leastRootOf({ root: named.minor, pitch: named.pitch, form: 'free' });
      expect(Math.abs(cut - leastRoot(named).cut)).toBeLessThan(0.03);
    }
  });

  it('a size without a range in its standard still has a thinner root', () => {
    const small = parseDesignation('Tr5x1');
    expect(leastRoot(small).cut).toBeLessThan(small.minor);
    expect(leastRoot(small).cut).toBeGreaterThan(0);
  });
});
