import Papa from 'papaparse';
import { type Fault, fault, InputError } from '../../units/faults.js';

/** A spreadsheet as text: its column names, and the cells of every row that holds something. */
export interface Table {
  readonly columns: readonly string[];
  readonly rows: readonly TableRow[];
  /** whether a comma between digits is a decimal comma, since another sign parts the cells */
  readonly decimalComma: boolean;
}

export interface TableRow {
  /** as the spreadsheet counts, the header being row 1 where it stands on top */
  readonly number: number;
  readonly cells: readonly string[];
}

const MOST_ROWS = 1_000_000;
const MOST_COLUMNS = 500;
const SEPARATORS = [',', ';', '\t', '|'] as const;

/**
 * Reads a CSV or TSV text as spreadsheets write it: with or without a byte order mark and a `sep=` line, parted by
 * comma, semicolon, tab or bar, cells quoted where need be, any line ends. The header decides what parts the cells.
 *
 * @param text the file's text
 * @returns the table; cells are trimmed and not yet interpreted
 * @throws InputError empty, too many rows or columns, a quote that does not end, a row longer than the header
 */
export function readTable(text: string): Table {
  const { body, told, skipped } = withoutHead(text);
  const header = firstLine(body);
  if (header.trim() === '') throw fault('', '', 'the file is empty; its first row must name the columns');
  const separator = told ?? mostFrequent(header);
  const { data, errors } = Papa.parse<string[]>(body, { delimiter: separator });
  if (data.length > MOST_ROWS) throw fault('', `${data.length} rows`, `must be at most ${MOST_ROWS}`);
  const rows = data.map((cells, i) => ({ number: i + 1 + skipped, cells: cells.map((cell) => cell.trim()) }));
  const [head, ...below] = rows;
  const columns = withoutEmptyEnd(head?.cells ?? []);
  if (columns.length > MOST_COLUMNS) throw fault('', `${columns.length} columns`, `must be at most ${MOST_COLUMNS}`);
  const full = below.filter(({ cells }) => cells.some((cell) => cell !== ''));
  const faults = [
    ...errors.filter(({ type }) => type === 'Quotes').map(({ row = 0 }) => badQuote(row + 1 + skipped)),
    ...full.flatMap((row) => tooLong(row, columns.length)),
  ];
  if (faults.length > 0) throw new InputError(faults.slice(0, 20));
  return { columns, rows: full, decimalComma: separator !== ',' };
}

/** The text up to the first line end that stands outside quotes. */
function firstLine(text: string): string {
  let quoted = false;
  for (let i = 0; i < text.length; i++) {
    const sign = text[i];
    if (sign === '"') quoted = !quoted;
    else if (!quoted && (sign === '\n' || sign === '\r')) return text.slice(0, i);
  }
  return text;
}

/** The text below a byte order mark, blank lines and a line that tells the separator. */
function withoutHead(text: string): { body: string; told: string | undefined; skipped: number } {
  const [blank = ''] = /^\uFEFF?(?:[ \t]*\r?\n)*/.exec(text) ?? [];
  const rest = text.slice(blank.length);
  const hint = /^"?sep=([,;\t|])"?\r?\n/i.exec(rest);
  const lines = (blank.match(/\n/g)?.length ?? 0) + (hint ? 1 : 0);
  return { body: rest.slice(hint?.[0].length ?? 0), told: hint?.[1], skipped: lines };
}

function mostFrequent(header: string): string {
  const plain = header.replace(/"(?:[^"]|"")*"/g, '');
  const counts = SEPARATORS.map((sign) => ({ sign, count: plain.split(sign).length }));
  return counts.reduce((best, one) => (one.count > best.count ? one : best)).sign;
}

/** Spreadsheets leave empty cells where a column was once used. */
function withoutEmptyEnd(cells: readonly string[]): readonly string[] {
  return cells.slice(0, cells.findLastIndex((cell) => cell !== '') + 1);
}

function badQuote(line: number): Fault {
  return { path: '', value: '', allowed: 'a quoted cell does not end here as it should', at: { line, column: 1 } };
}

function tooLong({ number, cells }: TableRow, length: number): Fault[] {
  const beyond = cells.findIndex((cell, i) => i >= length && cell !== '');
  if (beyond < 0) return [];
  const allowed = `the row has more cells than the header, which names ${length} columns`;
  return [{ path: '', value: cells[beyond] ?? '', allowed, at: { line: number, column: beyond + 1 } }];
}
