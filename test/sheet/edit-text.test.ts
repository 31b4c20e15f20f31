import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { startSheet } from '../../src/pipeline/start-sheets.js';
import { editText, putSection, textFields } from '../../src/sheet/edit-text.js';

const SHEET = `# a nut
part: nut   # the kind
body: {diameter: 14, length: 16}
flange:
  diameter: 31 # over all

  thickness: 3.5
fit: running
duty:
`;

describe('editText', () => {
  it.each([
    ['part', 'sleeve', 'part: nut', 'part: sleeve'],
    ['body.diameter', '14.2', 'diameter: 14,', 'diameter: 14.2,'],
    ['flange.diameter', '30', 'diameter: 31', 'diameter: 30'],
    ['flange.thickness', '', 'thickness: 3.5', 'thickness: '],
  ])('%s: %s changes these letters and no other', (path, value, from, to) => {
    expect(editText(SHEET, path.split('.'), value)).toBe(SHEET.replace(from, to));
  });

  it.each([
    ['body.shape', 'round', '16}', '16, shape: round}'],
    ['flange.shape', 'square', 'thickness: 3.5\n', 'thickness: 3.5\n  shape: square\n'],
    ['duty', 'x', 'duty:\n', 'duty: x\n'],
  ])('%s is added at the end of its section', (path, value, from, to) => {
    expect(editText(SHEET, path.split('.'), value)).toBe(SHEET.replace(from, to));
  });

  it('adds a section at the end of the sheet, also where no line ends', () => {
    expect(editText('part: nut', ['body', 'length'], '8')).toBe('part: nut\nbody: {length: 8}\n');
    expect(editText('', ['part'], 'nut')).toBe('part: nut\n');
    expect(editText('a:   # one\nb: {c: }\n', ['a'], '1')).toBe('a: 1   # one\nb: {c: }\n');
    expect(editText('a:   # one\nb: {c: }\n', ['b', 'c'], '1')).toBe('a:   # one\nb: {c: 1 }\n');
  });

  it('keeps what a short form stands for', () => {
    expect(parse(editText(SHEET, ['fit', 'axial'], '0.2', { fit: 'class' })).fit).toEqual({
      class: 'running',
      axial: 0.2,
    });
    expect(parse(editText(SHEET, ['fit', 'axial'], '0.2')).fit).toEqual({ axial: 0.2 });
    expect(parse(editText(SHEET, ['duty', 'load'], '20')).duty).toEqual({ load: 20 });
  });

  it.each(['a, b', '{x', 'a: b', 'x # y', '- a', '!tag', '*star', '"quoted', 'wide\nline', '@home'])(
    'holds any letters as letters: %j',
    (value) => {
      for (const path of [['part'], ['body', 'diameter'], ['new'], ['body', 'new']]) {
        const back = path.reduce((tree, key) => tree[key], parse(editText(SHEET, path, value)));
        expect(String(back)).toBe(value);
      }
    },
  );

  it('writes a list, and changes one that stands in one line', () => {
    expect(editText('part: nut\n', ['duty', 'layer_heights'], ['0.1', '0.2 mm'])).toBe(
      'part: nut\nduty: {layer_heights: [0.1, 0.2 mm]}\n',
    );
    expect(editText('a: [1, 2] # two\n', ['a'], '3, 4 mm,')).toBe('a: [3, 4 mm] # two\n');
    expect(editText('a: [1, 2] # two\n', ['a'], ['3'])).toBe('a: [3] # two\n');
    expect(parse(editText('a: [1, 2]\n', ['a'], 'x: y, [z')).a).toEqual(['x: y', '[z']);
    expect(editText('a: [ 1,2 ]\n', ['a'], '1,2')).toBe('a: [ 1,2 ]\n');
  });

  it('leaves a longer list, an alias and a text that is no map alone', () => {
    expect(editText('a: [[1, 2]]\n', ['a'], '3')).toBe('a: [[1, 2]]\n');
    expect(editText('a:\n  - 1\n', ['a'], '3')).toBe('a:\n  - 1\n');
    expect(editText('a: [1, 2]\n', ['a', 'b'], '3')).toBe('a: [1, 2]\n');
    expect(editText('a: &x 1\nb: *x\n', ['b'], '3')).toBe('a: &x 1\nb: *x\n');
    expect(editText('- 1\n', ['b'], '3')).toBe('- 1\n');
  });
});

describe('putSection', () => {
  const block = 'screw:\n  designation: Tr8x2\n  major: 7.92 ± 0.03 mm\n';

  it.each([
    ['short', 'screw: M8 # old\nname: a\n', `${block}name: a\n`],
    ['flow', 'name: a\nscrew: {designation: M8}\n', `name: a\n${block}`],
    ['block', 'screw:\n  designation: M8\n  inner:\n    a: 1\n\n# next\nname: a\n', `${block}\n# next\nname: a\n`],
    ['missing', 'name: a', `name: a\n${block}`],
  ])('takes the place of a section, %s', (_, text, wanted) => {
    expect(putSection(text, 'screw', block)).toBe(wanted);
  });

  it('leaves a text alone that is no map', () => {
    expect(putSection('- 1\n', 'screw', block)).toBe('- 1\n');
  });
});

describe('textFields', () => {
  it('shows a list without its brackets', () => {
    expect(textFields('a: [1 mm, 2]\nb: [[1]]\nc: [{d: 1}]\n')).toEqual([{ path: ['a'], value: '1 mm, 2' }]);
  });

  it('names every field with one value, as it is written', () => {
    expect(textFields(SHEET).map(({ path, value }) => `${path.join('.')}=${value}`)).toEqual([
      'part=nut',
      'body.diameter=14',
      'body.length=16',
      'flange.diameter=31',
      'flange.thickness=3.5',
      'fit=running',
      'duty=',
    ]);
  });

  it.each(['nut', 'adapter', 'coupling', 'sleeve', 'collar', 'end-holder', 'motor-plate', 'coupon', 'gauge'])(
    'of the start sheet of a %s: each put in again leaves the text as it is',
    (kind) => {
      const sheet = startSheet(kind);
      const fields = textFields(sheet);
      expect(fields.length).toBeGreaterThan(3);
      for (const { path, value } of fields) expect(editText(sheet, path, value)).toBe(sheet);
    },
  );
});

describe('a section that is cleared', () => {
  it.each([
    ['a: {b: 1, c: 2} # one\nd: 3\n', 'a: # one\nd: 3\n'],
    ['a:\n  b: 1\n  c: {e: 2}\nd: 3\n', 'a:\nd: 3\n'],
    ['a: &x {b: 1}\nd: *x\n', 'a: &x {b: 1}\nd: *x\n'],
  ])('goes with its fields, its name and remark stay: %j', (text, made) => {
    expect(editText(text, ['a'], '').replace(/a: +#/, 'a: #')).toBe(made);
  });
});
