import { describe, expect, it } from 'vitest';
import { beside, columns, wrapped } from '../../src/output/terminal/layout.js';

describe('layout', () => {
  it('wraps at blanks', () => {
    expect(wrapped('a short one', 2, 9)).toEqual(['  a short', '  one']);
    expect(wrapped('', 2)).toEqual([]);
  });

  it('sets a text beside its label, or below one that is too long', () => {
    expect(beside('  count', 9, 'four')).toEqual(['  count  four']);
    expect(beside('  a long label', 9, 'four')).toEqual(['  a long label', '         four']);
  });

  it('aligns columns', () => {
    expect(
      columns(
        [
          ['a', '1'],
          ['bcd', '22'],
        ],
        { right: [1] },
      ),
    ).toEqual(['a     1', 'bcd  22']);
  });

  it('sets columns closer where they would not fit, then wraps the last one', () => {
    const rows = [
      ['first', '12', 'a word or two'],
      ['b', '3'],
    ];
    expect(columns(rows, { gap: 3, width: 24 })).toEqual(['first  12  a word or two', 'b      3']);
    expect(columns(rows, { gap: 3, width: 15 })).toEqual(['first 12 a word', '         or two', 'b     3']);
  });
});
