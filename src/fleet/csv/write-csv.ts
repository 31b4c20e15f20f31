import Papa from 'papaparse';

/** A cell to be written. */
export type Cell = string | number | null;

/** Rows that are written in one go. */
const BATCH = 500;

/**
 * Rows as CSV (RFC 4180, CR LF line ends). A text that a spreadsheet would take for a formula gets an apostrophe
 * before it; numbers stay numbers.
 * @example csvText([['part', 'mass'], ['=1+1', -2]]) // 'part,mass\r\n"\'=1+1",-2\r\n'
 */
export function csvText(rows: Iterable<readonly Cell[]>): string {
  return [...csvPieces(rows)].join('');
}

/** The same, piece by piece. */
export function* csvPieces(rows: Iterable<readonly Cell[]>): Iterable<string> {
  let batch: Cell[][] = [];
  for (const row of rows) {
    batch.push(row.map((cell) => (typeof cell === 'string' ? plainCell(cell) : cell)));
    if (batch.length < BATCH) continue;
    yield linesOf(batch);
    batch = [];
  }
  if (batch.length > 0) yield linesOf(batch);
}

function linesOf(rows: Cell[][]): string {
  return `${Papa.unparse(rows, { newline: '\r\n' })}\r\n`;
}

function plainCell(text: string): string {
  return /^\s*[=+\-@]|^[\t\r\n]/.test(text) ? `'${text}` : text;
}
