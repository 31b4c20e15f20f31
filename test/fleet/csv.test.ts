import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { cellValue } from '../../src/fleet/csv/cell-value.js';
import { readTable } from '../../src/fleet/csv/read-table.js';
import { rowMachines } from '../../src/fleet/csv/row-machines.js';
import { csvText } from '../../src/fleet/csv/write-csv.js';
import { InputError } from '../../src/units/faults.js';

function faultsOf(text: string) {
  try {
    rowMachines(text, 'rows.csv');
  } catch (error) {
    if (error instanceof InputError) return error.faults;
    throw error;
  }
  return [];
}

describe('readTable', () => {
  it.each([
    ['commas', 'machine,sheet\na,b.yaml\n'],
    ['semicolons and a byte order mark', '\uFEFFmachine;sheet\r\na;b.yaml\r\n'],
    ['tabs', 'machine\tsheet\na\tb.yaml'],
    ['a line that tells the separator', 'sep=;\r\nmachine;sheet\r\na;b.yaml\r\n'],
    ['old line ends', 'machine,sheet\ra,b.yaml\r'],
    ['quoted cells', '"machine","sheet"\n"a","b.yaml"\n'],
    ['empty columns and rows', 'machine;sheet;;\n;;;\na;b.yaml;;\n;;;\n'],
  ])('reads %s', (_, text) => {
    const { columns, rows } = readTable(text);
    expect(columns).toEqual(['machine', 'sheet']);
    expect(rows.map(({ cells }) => cells.slice(0, 2))).toEqual([['a', 'b.yaml']]);
  });

  it('keeps separators, quotes and line ends inside quoted cells', () => {
    const { rows } = readTable('machine,screw.major\r\n"a","7,95 ""worn""\r\nat one end"\r\nb,8\r\n');
    expect(rows.map(({ number, cells }) => [number, ...cells])).toEqual([
      [2, 'a', '7,95 "worn"\r\nat one end'],
      [3, 'b', '8'],
    ]);
  });

  it.each([
    ['', 'the file is empty'],
    ['machine,sheet\na,"b', 'a quoted cell does not end here'],
    ['machine\na,b\n', 'more cells than the header'],
  ])('refuses %j', (text, told) => {
    expect(() => readTable(text)).toThrow(told);
  });
});

describe('tables without end', () => {
  it.each([
    [
      `machine,${Array.from({ length: 4000 }, (_, i) => `a.b${i}`).join(',')}\nx\n`,
      '4001 columns; must be at most 500',
    ],
    [`machine,${Array(5000).fill('a').join('.')}\nx,1\n`, 'a column is named by one of'],
    [`machine,a${'.b'.repeat(9)}\nx,1\n`, 'a column is named by one of'],
    ['machine,size\nx,1e999\n', 'must be a finite number'],
    ['machine,role,size\nx,y,"[!!omap 1]"\n', 'is not a list'],
    [`${'"'.repeat(100_001)}`, 'a quoted cell does not end'],
  ])('are told in a line (%#)', (text, told) => {
    expect(() => rowMachines(text, 'rows.csv')).toThrow(told);
  });
});

describe('a table with decimal commas', () => {
  const rows = (...cells: string[]) =>
    `machine;role;duty.load\n${cells.map((cell, i) => `m${i};p;${cell}`).join('\n')}\n`;

  // beside a decimal comma a point may part thousands
  it.each(['1.200', '1.200 N', '12.000.000'])('is asked what %s means', (cell) => {
    expect(() => rowMachines(rows('150,5', cell), 'rows.csv')).toThrow(
      `may mean ${cell.replace('.', ',')} or ${cell.replaceAll('.', '')}`,
    );
    expect(() => rowMachines(rows('150.5', cell), 'rows.csv')).not.toThrow();
  });

  it.each(['0.125', '1.20', '1.2345', '7.95 mm'])('takes %s as it stands', (cell) => {
    expect(() => rowMachines(rows('150,5', cell), 'rows.csv')).not.toThrow();
  });
});

describe('cellValue', () => {
  it.each<[string, boolean, unknown]>([
    ['8', false, 8],
    ['7.95', true, 7.95],
    ['7,95', true, 7.95],
    ['7,95', false, 7.95],
    ['-0,5', true, -0.5],
    ['1,250', true, 1.25],
    ['7,95 mm', true, '7.95 mm'],
    ['7,95 ± 0,02 mm', true, '7.95 ± 0.02 mm'],
    ['7 ± 0,02 mm', true, '7 ± 0.02 mm'],
    ['5/16 in', false, '5/16 in'],
    ['Tr8x8(P2)', false, 'Tr8x8(P2)'],
    ['[0.1 mm, 0.2 mm]', false, ['0.1 mm', '0.2 mm']],
    ['{plane: 1 %}', true, { plane: '1 %' }],
  ])('%s (decimal comma: %s) is %j', (cell, comma, value) => {
    expect(cellValue(cell, comma)).toEqual({ value });
  });

  it.each([
    ['1,250', false, '1.250 or 1250'],
    ['1.250,5', true, 'one decimal sign'],
    ['=A1*2', true, 'formula'],
    ['@SUM(A1)', false, 'formula'],
    ['+cmd', false, 'formula'],
    ['[1, 2', false, 'not a list'],
  ])('refuses %s (decimal comma: %s)', (cell, comma, told) => {
    expect(cellValue(cell, comma)).toEqual({ allowed: expect.stringContaining(told) });
  });
});

describe('rowMachines', () => {
  it('takes the own columns, and every other as a field by its path', () => {
    const text =
      'machine;kind;role;sheet;quantity;axis;screw.major;screw.hand;name\nd-1;dibber;z-left;nuts/z.yaml;2;z;7,93 ± 0,02 mm;left;007\n';
    const [machine] = rowMachines(text, 'rows.csv');
    expect(machine).toMatchObject({ name: 'd-1', kind: 'dibber' });
    expect(machine?.parts.get('z-left')).toMatchObject({
      sheet: 'nuts/z.yaml',
      quantity: 2,
      axis: 'z',
      with: { fields: { screw: { major: '7.93 ± 0.02 mm', hand: 'left' }, name: '007' } },
    });
    expect(machine?.parts.get('z-left')?.find(['screw', 'major'])).toEqual({
      file: 'rows.csv',
      at: { line: 2, column: 7 },
    });
  });

  it('names a part by its role, its sheet or its name, and takes a row without a sheet as a part of its own', () => {
    const text = 'machine,sheet,name,part,screw\na,x/z-nut.yaml,,,\na,,plain,nut,Tr8x2\n';
    const [machine] = rowMachines(text, 'rows.csv');
    expect([...(machine?.parts.keys() ?? [])]).toEqual(['z-nut', 'plain']);
    expect(machine?.parts.get('plain')?.own?.fields).toEqual({ name: 'plain', part: 'nut', screw: 'Tr8x2' });
  });

  it('tells all mistakes at once, by row and column', () => {
    const text = 'machine,sheet,quantity,screw.major\n,n.yaml,1,8\nb,n.yaml,many,=1+1\nb,n.yaml,1,8\nb,n.yaml,1,8\n';
    expect(faultsOf(text).map(({ path, at }) => [path, at?.line, at?.column])).toEqual([
      ['machine', 2, 1],
      ['screw.major', 3, 4],
      ['quantity', 3, 3],
      ['role', 5, 1],
    ]);
  });

  it.each([
    ['machine,sheet,sheet\n', 'twice'],
    ['machin,sheet\n', 'machin comes near'],
    ['machine,__proto__.x\n', 'a column is named by'],
    ['machine,screw major\n', 'a column is named by'],
  ])('refuses the header %j', (text, told) => {
    expect(
      faultsOf(text)
        .map(({ allowed }) => allowed)
        .join(),
    ).toContain(told);
  });

  it('wants one machine to be of one kind', () => {
    const text = 'machine,kind,role,sheet\na,x,one,n.yaml\na,y,two,n.yaml\n';
    expect(faultsOf(text)).toMatchObject([{ path: 'kind', value: 'y', at: { line: 3, column: 2 } }]);
  });
});

describe('csvText', () => {
  it('never writes a text that a spreadsheet would take for a formula', () => {
    const nasty = ['=1+1', '+1', '-1', '@A1', '\tx', ' =1', '\r=1', "=cmd|' /C calc'!A0", 'fine', '7 - 2'];
    const { data } = Papa.parse<string[]>(csvText(nasty.map((cell) => [cell, -2])), { skipEmptyLines: true });
    for (const [i, [cell, number]] of data.entries()) {
      expect(cell).not.toMatch(/^\s*[=+\-@]/);
      expect(cell?.replace(/^'/, '')).toBe(nasty[i]);
      expect(number).toBe('-2');
    }
  });

  it('quotes what must be quoted, and ends its lines as spreadsheets do', () => {
    expect(csvText([['a,b', 'say "x"', null, 1.5]])).toBe('"a,b","say ""x""",,1.5\r\n');
  });
});
