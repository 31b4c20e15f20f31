import { type Fault, InputError } from '../units/faults.js';
import { readTable } from './csv/read-table.js';
import { type Cell, csvText } from './csv/write-csv.js';
import type { FleetPlan } from './plan.js';

/** What people note of a part: a date, a name, a yes. */
const NOTED = ['printed', 'mounted', 'measured', 'note'] as const;
export type Noted = Readonly<Partial<Record<(typeof NOTED)[number], string>>>;

/** What is noted, by machine and part. */
export type Status = ReadonlyMap<string, Noted>;

const COLUMNS = ['machine', 'role', ...NOTED];

/** The key of a part in a status. */
export function statusKey(machine: string, role: string): string {
  return `${machine}.${role}`;
}

/**
 * Reads a status file: the columns machine, role, printed, mounted, measured, note, one row a part.
 * @param text the file's text, CSV
 * @throws InputError no table, a column that is none of these, a part noted twice
 */
export function readStatus(text: string): Status {
  const { columns, rows } = readTable(text);
  const faults: Fault[] = columns.flatMap((name, i) =>
    COLUMNS.includes(name)
      ? []
      : [{ path: '', value: name, allowed: `the columns are ${COLUMNS.join(', ')}`, at: { line: 1, column: i + 1 } }],
  );
  for (const name of ['machine', 'role'])
    if (!columns.includes(name))
      faults.push({ path: name, value: '', allowed: 'the column is missing', at: { line: 1, column: 1 } });
  if (faults.length > 0) throw new InputError(faults);
  const status = new Map<string, Noted>();
  for (const { number, cells } of rows) {
    const row = Object.fromEntries(columns.map((name, i) => [name, cells[i] ?? '']));
    const key = statusKey(row.machine ?? '', row.role ?? '');
    if (status.has(key)) faults.push({ ...TWICE, value: key, at: { line: number, column: 1 } });
    status.set(key, Object.fromEntries(NOTED.flatMap((name) => (row[name] ? [[name, row[name]]] : []))));
  }
  if (faults.length > 0) throw new InputError(faults.slice(0, MOST_FAULTS));
  return status;
}

const TWICE = { path: '', allowed: 'has a row already; note all of a part in one' };
const MOST_FAULTS = 20;

/** What a status says of parts that the fleet does not have, a line each. */
export function strayLines(status: Status, { parts }: FleetPlan): string[] {
  const known = new Set(parts.map(({ machine, role }) => statusKey(machine, role)));
  return [...status.keys()].filter((key) => !known.has(key)).map((key) => `${key}: the fleet has no such part`);
}

/** A status file to begin with: every part of every machine, nothing noted. */
export function emptyStatus({ parts }: FleetPlan): string {
  const rows = parts.map(({ machine, role }): Cell[] => [machine, role, ...NOTED.map(() => '')]);
  return csvText([COLUMNS, ...rows]);
}

/** What is noted of a part, in one line. */
export function statusWords(noted: Noted): string {
  return NOTED.flatMap((name) => (noted[name] ? [name === 'note' ? noted[name] : `${name} ${noted[name]}`] : [])).join(
    ', ',
  );
}
