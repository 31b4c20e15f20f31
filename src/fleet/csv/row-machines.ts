import type { Fields } from '../../sheet/fields-map.js';
import { nearest } from '../../sheet/nearest.js';
import { type Fault, InputError, type Place, shown } from '../../units/faults.js';
import type { BareMachine, Entry, Find } from '../machines.js';
import { cellValue, hasDecimalComma } from './cell-value.js';
import { readTable, type Table, type TableRow } from './read-table.js';

/** Columns that are about the machine, not fields of the part's sheet. */
const OWN = ['machine', 'kind', 'group', 'role', 'sheet', 'quantity', 'spare', 'axis'] as const;
type Own = (typeof OWN)[number];
const isOwn = (name: string): name is Own => OWN.some((own) => own === name);

/** Columns of reasons for failed checks that are accepted, such as `accept.thread-engagement`. */
const ACCEPT = 'accept.';

/** Columns that hold text even where it looks like a number. */
const TEXT_FIELDS: readonly string[] = ['part', 'name', 'profile', 'mark'];
const LONGEST_NAME = 200;
/** Fields of sheets lie no deeper. */
const DEEPEST = 8;
const PATH = /^[a-z_][a-z0-9_-]*(?:\.[a-z_][a-z0-9_-]*)*$/i;

/**
 * Reads machines and their parts from a spreadsheet, one row a part: the columns `machine`, `kind`, `group`, `role`,
 * `sheet`, `quantity`, `spare` and `axis`, `accept.CHECK` with a reason, and any field of a part sheet by its dotted path, such as
 * `screw.major`.
 *
 * @param text the file's text, CSV or TSV
 * @param file its path, for messages
 * @returns the machines in the order of their first rows
 * @throws InputError every mistake at once; line and column are the row and column of the spreadsheet
 */
export function rowMachines(text: string, file: string): BareMachine[] {
  const read = readTable(text);
  const table = { ...read, hasCommas: read.decimalComma && read.rows.some(({ cells }) => cells.some(hasDecimalComma)) };
  requireColumns(table.columns);
  const faults: Fault[] = [];
  const machines = new Map<string, BareMachine & { readonly parts: Map<string, Entry> }>();
  const fieldColumns = table.columns.filter((name) => !isOwn(name) && !name.startsWith(ACCEPT));
  for (const row of table.rows) {
    const one = readRow(row, table, fieldColumns, file, faults);
    if (!one) continue;
    const known = machines.get(one.machine);
    const machine = known ?? {
      name: one.machine,
      kind: one.kind,
      group: one.group,
      parts: new Map(),
      find: one.entry.find,
    };
    if (known) faults.push(...disagreements(known, one, row, table));
    if (machine.parts.has(one.role)) faults.push(twice(one, row, table));
    machine.parts.set(one.role, one.entry);
    machines.set(one.machine, machine);
  }
  if (faults.length > 0) throw new InputError(faults.slice(0, MOST_FAULTS));
  return [...machines.values()];
}

const MOST_FAULTS = 100;

/** A table of which is known whether any cell has a decimal comma. */
type CommaTable = Table & { readonly hasCommas: boolean };

interface ReadRow {
  readonly machine: string;
  readonly kind: string | undefined;
  readonly group: string | undefined;
  readonly role: string;
  readonly entry: Entry;
}

function requireColumns(columns: readonly string[]): void {
  const faults: Fault[] = columns.flatMap((name, i) => {
    const at: Place = { line: 1, column: i + 1 };
    if (columns.indexOf(name) !== i) return [{ path: name, value: '', allowed: 'the column is there twice', at }];
    const isField = name.length <= LONGEST_NAME && PATH.test(name) && isShallow(name);
    if (isOwn(name) || isField) return [];
    const allowed = `a column is named by one of ${OWN.join(', ')} or by a field such as screw.major`;
    return [{ path: '', value: shown(name), allowed, at }];
  });
  if (!columns.includes('machine')) {
    const near = nearest('machine', columns);
    const allowed = near ? `the column is missing; ${near} comes near` : 'the column is missing';
    faults.push({ path: 'machine', value: '', allowed, at: { line: 1, column: 1 } });
  }
  if (faults.length > 0) throw new InputError(faults.slice(0, MOST_FAULTS));
}

function isShallow(name: string): boolean {
  const keys = name.split('.');
  return keys.length <= DEEPEST && !keys.includes('__proto__');
}

function readRow(
  row: TableRow,
  { columns, decimalComma, hasCommas }: CommaTable,
  fieldColumns: readonly string[],
  file: string,
  faults: Fault[],
): ReadRow | undefined {
  const own: Partial<Record<Own, string>> = {};
  const accept: Record<string, string> = {};
  let fields: Fields = {};
  for (const [i, name] of columns.entries()) {
    const cell = row.cells[i] ?? '';
    if (cell === '') continue;
    if (isOwn(name)) own[name] = cell;
    else if (name.startsWith(ACCEPT)) accept[name.slice(ACCEPT.length)] = cell;
    else {
      const read = TEXT_FIELDS.includes(name) ? { value: cell } : cellValue(cell, decimalComma, hasCommas);
      if ('value' in read) fields = withField(fields, name.split('.'), read.value);
      else faults.push({ path: name, value: cell, allowed: read.allowed, at: { line: row.number, column: i + 1 } });
    }
  }
  const place = (name: string): Place => ({ line: row.number, column: columns.indexOf(name) + 1 || 1 });
  const wrong = (name: Own, value: string, allowed: string) => {
    faults.push({ path: name, value, allowed, at: place(name) });
    return undefined;
  };
  if (own.machine === undefined) return wrong('machine', '', 'is missing');
  const role = own.role ?? baseName(own.sheet) ?? textOf(fields.name);
  if (role === undefined) return wrong('role', '', 'is missing; give role, sheet or name');
  const [quantity, spare] = [countOf(own.quantity), countOf(own.spare)];
  if (quantity !== undefined && !(quantity >= 0 && quantity <= 10_000))
    return wrong('quantity', own.quantity ?? '', 'must be a whole number from 0 to 10000');
  if (spare !== undefined && !(spare >= 0 && spare <= 1000))
    return wrong('spare', own.spare ?? '', 'must be a whole number from 0 to 1000');
  const find: Find = (path) => ({ file, at: cellPlace(path, row, columns) });
  const given = { fields, find };
  const entry: Entry = {
    sheet: own.sheet,
    // without a kind of part the row changes the part that the machine's kind gives
    ...(own.sheet === undefined && fields.part !== undefined ? { own: given } : { with: given }),
    quantity,
    spare,
    columns: fieldColumns,
    axis: own.axis,
    accept,
    find,
  };
  return { machine: own.machine, kind: own.kind, group: own.group, role, entry };
}

/** A whole number, written with or without decimals; NaN for any other text. */
function countOf(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const count = Number(text.replace(/[.,]0+$/, ''));
  return Number.isInteger(count) ? count : Number.NaN;
}

function withField(fields: Fields, [key = '', ...rest]: readonly string[], value: unknown): Fields {
  if (rest.length === 0) return { ...fields, [key]: value };
  const inner = fields[key];
  const map = typeof inner === 'object' && inner !== null && !Array.isArray(inner) ? { ...inner } : {};
  return { ...fields, [key]: withField(map, rest, value) };
}

/** The cell of a field, of the nearest field around it that has a column, or the row. */
function cellPlace(path: readonly PropertyKey[], row: TableRow, columns: readonly string[]): Place {
  for (let length = path.length; length > 0; length--) {
    const name = path.slice(0, length).join('.');
    const exact = columns.indexOf(name);
    if (exact >= 0) return { line: row.number, column: exact + 1 };
    const inside = columns.findIndex((column, i) => column.startsWith(`${name}.`) && (row.cells[i] ?? '') !== '');
    if (inside >= 0) return { line: row.number, column: inside + 1 };
  }
  return { line: row.number, column: 1 };
}

function disagreements(known: BareMachine, read: ReadRow, row: TableRow, { columns }: Table): Fault[] {
  return (['kind', 'group'] as const).flatMap((name) => {
    const value = read[name];
    if (value === undefined || value === known[name]) return [];
    const allowed =
      known[name] === undefined
        ? 'an earlier row of this machine says none'
        : `an earlier row of this machine says ${known[name]}`;
    return [{ path: name, value, allowed, at: { line: row.number, column: columns.indexOf(name) + 1 } }];
  });
}

function twice({ machine, role }: ReadRow, row: TableRow, { columns }: Table): Fault {
  const column = columns.indexOf(columns.includes('role') ? 'role' : 'machine') + 1;
  return {
    path: 'role',
    value: role,
    allowed: `${machine} has a part of this name already`,
    at: { line: row.number, column },
  };
}

/** `nuts/z-left.yaml` → `z-left` */
function baseName(path: string | undefined): string | undefined {
  const name = path
    ?.split(/[/\\]/)
    .at(-1)
    ?.replace(/\.ya?ml$/i, '');
  return name === '' ? undefined : name;
}

function textOf(value: unknown): string | undefined {
  return typeof value === 'string' ? value : undefined;
}
