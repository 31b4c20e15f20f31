import Papa from 'papaparse';

/** A cell to be written. */
export type Cell = string | number | null;

/**
 * Rows as CSV (RFC 4180, CR LF line ends). A text that a spreadsheet would take for a formula gets an apostrophe
 * before it; numbers stay numbers.
 * @example csvText([['part', 'mass'], ['=1+1', -2]]) // 'part,mass\r\n"\'=1+1",-2\r\n'
 */
export function csvText(rows: readonly (readonly Cell[])[]): string {
  const cells = rows.map((row) => row.map((cell) => (typeof cell === 'string' ? plainCell(cell) : cell)));
  return `${Papa.unparse(cells, { newline: '\r\n' })}\r\n`;
}

function plainCell(text: string): string {
  return /^\s*[=+\-@]|^[\t\r\n]/.test(text) ? `'${text}` : text;
}
