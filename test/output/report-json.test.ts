import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonPieces, jsonText } from '../../src/output/report-json.js';

describe('jsonText', () => {
  it('rounds to nine digits and ends its last line', () => {
    expect(jsonText({ a: [1 / 3, -1e-12], b: null })).toBe(
      '{\n  "a": [\n    0.333333333,\n    0\n  ],\n  "b": null\n}\n',
    );
  });

  it.each([Number.NaN, Infinity, -Infinity])('says where %s stands, and writes no null for it', (wrong) => {
    const report = { part: 'nut', checks: [{ value: 1 }, { value: wrong }] };
    expect(() => jsonText(report)).toThrow(`a number is not finite: checks[1].value is ${wrong}`);
    expect(() => [...jsonPieces({ rows: new Set([report]) })]).toThrow('is not finite: checks[1].value');
  });
});

describe('jsonPieces', () => {
  it('gives the text of the whole, whatever its lists hold', () => {
    const json = fc.jsonValue({ noUnicodeString: false });
    fc.assert(
      fc.property(fc.dictionary(fc.string(), json), fc.array(json), (fields, list) => {
        // a set of distinct things is no array, and is gone through
        const items = list.map((item, i) => ({ i, item }));
        const pieces = [...jsonPieces({ ...fields, list: new Set(items), last: 1 })].join('');
        expect(pieces).toBe(jsonText({ ...fields, list: items, last: 1 }));
      }),
      { numRuns: 40 },
    );
    expect([...jsonPieces({})].join('')).toBe('{}\n');
    expect([...jsonPieces({ none: new Set() })].join('')).toBe(jsonText({ none: [] }));
  });
});
