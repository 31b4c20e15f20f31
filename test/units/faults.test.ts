import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fault, faultLine, InputError, shown } from '../../src/units/faults.js';

describe('faultLine', () => {
  it.each([
    [
      { path: 'flange.thickness', value: '-2 mm', allowed: 'must be above 0', at: { line: 7, column: 11 } },
      'nut.yaml',
      'nut.yaml:7:11 flange.thickness: -2 mm; must be above 0',
    ],
    [{ path: 'body', value: '', allowed: 'is missing' }, '', 'body: is missing'],
    [{ path: '', value: '', allowed: 'the sheet is empty' }, 'nut.yaml', 'nut.yaml the sheet is empty'],
    [{ path: '', value: 'x', allowed: 'must be a map', at: { line: 1, column: 1 } }, '', '1:1 x; must be a map'],
  ])('is %#', (one, file, line) => {
    expect(faultLine(one, file)).toBe(line);
  });
});

describe('shown', () => {
  it.each<[unknown, string]>([
    ['8 mm', '8 mm'],
    [8, '8'],
    [Number.NaN, 'NaN'],
    [Number.NEGATIVE_INFINITY, '-Infinity'],
    [8n, '8'],
    [null, 'null'],
    [undefined, 'undefined'],
    [{ a: [1] }, '{"a":[1]}'],
    ['a\nb\u001b[31m', 'a\\x0ab\\x1b[31m'],
    ['a\u202eb', 'a\\x202eb'],
  ])('%#', (value, text) => {
    expect(shown(value)).toBe(text);
  });

  it('survives a value that holds itself', () => {
    const loop: Record<string, unknown> = {};
    loop.loop = loop;
    expect(shown(loop)).toBe('a value that holds itself');
    expect(fault('a', loop, 'must be a map')).toBeInstanceOf(InputError);
  });

  it('fits one line of 60 characters, whatever it is given', () => {
    fc.assert(
      fc.property(fc.oneof(fc.anything(), fc.string({ unit: 'binary', maxLength: 500 })), (value) => {
        const line = shown(value);
        expect(line.length).toBeLessThanOrEqual(60);
        expect(line).not.toMatch(/[\n\r\u2028\u2029]/);
        expect(line).not.toMatch(/\p{Surrogate}/u);
      }),
    );
  });
});
