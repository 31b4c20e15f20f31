import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LONGEST_SHEET, readYaml } from '../../src/sheet/read-yaml.js';
import { faultLine, InputError } from '../../src/units/faults.js';

function refused(text: string): string[] {
  try {
    readYaml(text);
  } catch (error) {
    if (error instanceof InputError) return error.faults.map((one) => faultLine(one));
    throw error;
  }
  throw new Error('nothing was refused');
}

describe('readYaml', () => {
  it('gives plain values, and the place of each field', () => {
    const { value, locate } = readYaml('part: nut\nbody:\n  length: 15 mm\nlayer_heights: [0.1, 0.2]\n');
    expect(value).toEqual({ part: 'nut', body: { length: '15 mm' }, layer_heights: [0.1, 0.2] });
    expect(locate(['body', 'length'])).toEqual({ line: 3, column: 11 });
    expect(locate(['layer_heights', 1])).toEqual({ line: 4, column: 22 });
    expect(locate(['body', 'diameter'])).toEqual({ line: 3, column: 3 });
    expect(locate(['nothing'])).toEqual({ line: 1, column: 1 });
  });

  it('takes files with a byte order mark, with CRLF, with comments, as JSON', () => {
    expect(readYaml('\ufeffpart: nut\r\nname: a\r\n').value).toEqual({ part: 'nut', name: 'a' });
    expect(readYaml('# a sheet\npart: nut # of brass\n').value).toEqual({ part: 'nut' });
    expect(readYaml('{"part": "nut", "body": {"length": 15}}').value).toEqual({ part: 'nut', body: { length: 15 } });
  });

  it.each([
    ['nothing', '', 'the sheet is empty'],
    ['blanks', ' \n\t\n ', 'the sheet is empty'],
    ['comments alone', '# to do\n', 'the sheet is empty'],
    ['a bare document mark', '---\n', 'the sheet is empty'],
    ['a binary file', 'PK\u0003\u0004\u0000\u0000', 'must be UTF-8 text; this looks like a binary file'],
    ['a file that is not UTF-8', 'name: \ufffd', 'must be UTF-8 text; this looks like a binary file'],
    [
      'two documents',
      'part: nut\n---\npart: nut\n',
      '2:1 not YAML: one sheet a file; a second one starts here, after ---',
    ],
    ['a key twice', 'part: nut\nbody:\n  length: 1\n  width: 2\n  length: 3\n', '5:3 body.length: is given twice'],
    ['a key twice in a list', 'a: [{b: 1, b: 2}]', '1:12 a[0].b: is given twice'],
    ['a tab', 'body:\n\tlength: 1\n', '2:1 not YAML: Tabs are not allowed as indentation'],
    [
      'a map as a key',
      '? {a: 1}\n: 2\n',
      '1:3 not YAML: a field must have a plain name; is a brace or bracket too many here?',
    ],
    [
      'an alias of nothing',
      'a: *b\n',
      'not usable YAML: Unresolved alias (the anchor must be set before the alias): b',
    ],
  ])('refuses %s', (_, text, message) => {
    expect(refused(text)).toEqual([message]);
  });

  it('names every slip of the text, at most twenty', () => {
    expect(refused('a: "x\nb: [1\n').length).toBeGreaterThan(0);
    const many = Array.from({ length: 50 }, (_, i) => `k${i}: 1\nk${i}: 2`).join('\n');
    expect(refused(many)).toHaveLength(20);
  });

  it('reads keys that look like numbers as names', () => {
    expect(readYaml('1: a\ntrue: b\nnull: c').value).toEqual({ 1: 'a', true: 'b', null: 'c' });
  });

  it('gives a key that every object has no power', () => {
    expect(refused('part: nut\nlimits: {__proto__: {polluted: 1}}')).toEqual([
      '2:10 limits.__proto__: no field has this name',
    ]);
    const { value } = readYaml('constructor: {prototype: {polluted: 1}}');
    expect(Object.keys(value as object)).toEqual(['constructor']);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  it('merges nothing', () => {
    expect(readYaml('<<: {a: 1}').value).toEqual({ '<<': { a: 1 } });
  });

  it.each([
    'duty: !!omap\n  - load: 25',
    'duty: !!set {load, feed}',
    'duty: !!map {load: 25}',
    'b: !!js/function "x"',
    'c: !foo y',
    'd: !!str 12',
    '!!str e: 1',
    'f: [!!float 1]',
  ])('refuses the tag of %j', (text) => {
    expect(refused(text)).toEqual([
      expect.stringMatching(/^\d+:\d+ \w+(?:\[0\])?: the tag .+ is not read here; leave it out$/),
    ]);
  });

  it('finds the places of many fields in linear time', () => {
    const many = 20_000;
    const { value, locate } = readYaml(Array.from({ length: many }, (_, i) => `k${i}: x`).join('\n'), 1e6);
    expect(Object.keys(value as object).map((key) => locate([key])?.line)).toEqual(
      Array.from({ length: many }, (_, i) => i + 1),
    );
  });

  it('takes no more anchors and aliases than can be looked through', () => {
    const named = (count: number) => {
      const anchors = Array.from({ length: count / 2 }, (_, i) => `  - &a${i} x`).join('\n');
      const aliases = Array.from({ length: count / 2 }, (_, i) => `  - *a${i}`).join('\n');
      return `b:\n${anchors}\nc:\n${aliases}\n`;
    };
    expect(readYaml(named(2000)).value).toHaveProperty('c');
    expect(refused(named(10_000))).toEqual(['1:1 10000 anchors and aliases; must be at most 2000']);
  });

  it('refuses a sheet of 10 MB at once', () => {
    expect(refused('a'.repeat(10 * 1024 * 1024))[0]).toMatch(`must be at most ${LONGEST_SHEET} characters`);
  });

  it.each([
    ['lists', '['.repeat(LONGEST_SHEET)],
    ['maps', '{a: '.repeat(60_000)],
    ['list marks', '- '.repeat(130_000)],
    ['key marks', '? '.repeat(130_000)],
    ['marks of both', '- ? '.repeat(60_000)],
    ['value marks', ': '.repeat(130_000)],
    ['closed lists', '['.repeat(5000) + ']'.repeat(5000)],
    ['lines', Array.from({ length: 700 }, (_, i) => `${' '.repeat(i)}a:`).join('\n')],
  ])('refuses %s nested too deeply, at once', (_, text) => {
    expect(refused(text)).toEqual(['nested too deeply']);
  });

  it('takes a long sheet of many fields', () => {
    const text = Array.from({ length: 20_000 }, (_, i) => `k${i}: 1`).join('\n');
    expect(Object.keys(readYaml(text).value as object)).toHaveLength(20_000);
  });

  it('refuses aliases that multiply', () => {
    const lines = [...'bcdefghi'].map((c, i) => `${c}: &${c} [${Array(9).fill(`*${'abcdefgh'[i]}`).join(', ')}]`);
    expect(refused(['a: &a [x, x, x, x, x, x, x, x, x]', ...lines].join('\n'))[0]).toMatch(
      /^not usable YAML: Excessive alias/,
    );
  });

  it('takes an alias that a person would write, and survives one that holds itself', () => {
    expect(readYaml('a: &size 3 mm\nb: *size').value).toEqual({ a: '3 mm', b: '3 mm' });
    expect(() => readYaml('a: &a {b: *a}')).not.toThrow();
  });

  it('throws nothing but input errors', () => {
    const piece = fc.constantFrom(
      'a',
      ': ',
      '- ',
      '[',
      ']',
      '{',
      '}',
      '\n',
      '  ',
      '"',
      "'",
      '&a',
      '*a',
      '!',
      '|',
      '>',
      '#',
      '---',
      '%',
      '? ',
      '\t',
      '1',
    );
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(piece, { maxLength: 40 }).map((all) => all.join('')),
    );
    fc.assert(
      fc.property(text, (typed) => {
        try {
          const { locate } = readYaml(typed);
          const place = locate(['a', 0, 'b']);
          if (place) expect(Math.min(place.line, place.column)).toBeGreaterThan(0);
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
        }
      }),
      { numRuns: 2000 },
    );
  });
});
