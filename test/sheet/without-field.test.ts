import { describe, expect, it } from 'vitest';
import { withoutField } from '../../src/sheet/without-field.js';

describe('withoutField', () => {
  const sheet = { a: { b: 1, c: [{ d: 1, e: 2 }, { d: 3 }] }, f: 4 };

  it('takes one field out of a copy, inside maps and lists', () => {
    expect(withoutField(sheet, ['a', 'b'])).toEqual({ a: { c: [{ d: 1, e: 2 }, { d: 3 }] }, f: 4 });
    expect(withoutField(sheet, ['a', 'c', 0, 'd'])).toEqual({ a: { b: 1, c: [{ e: 2 }, { d: 3 }] }, f: 4 });
    expect(sheet.a.b).toBe(1);
  });

  it('leaves all as it is where there is no such field', () => {
    expect(withoutField(sheet, ['x', 'y'])).toEqual(sheet);
    expect(withoutField(sheet, [])).toEqual(sheet);
  });
});
