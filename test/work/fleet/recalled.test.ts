import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recalled } from '../../../src/work/fleet/recalled.js';

describe('recalled', () => {
  it('answers as the function does, whatever is asked and in whatever order', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom('a', 'b', 'c', 'd', 'e')), fc.integer({ min: 1, max: 4 }), (asked, most) => {
        const find = recalled((key) => `answer to ${key}`, most);
        expect(asked.map(find)).toEqual(asked.map((key) => `answer to ${key}`));
      }),
    );
  });

  it('asks once while it remembers, and again for what is beyond', () => {
    const asked: string[] = [];
    const find = recalled((key) => asked.push(key), 2);
    for (const key of ['a', 'b', 'a', 'b', 'c', 'c', 'a']) find(key);
    expect(asked).toEqual(['a', 'b', 'c', 'a']);
  });
});
