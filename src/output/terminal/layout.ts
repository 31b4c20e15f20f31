/** Columns of a terminal that everything fits into. */
export const WIDTH = 80;

/**
 * Breaks a text at blanks into lines of at most `width`, each set in by `indent`; a longer word stays whole.
 * @example wrapped('a short one', 2, 9) // ['  a short', '  one']
 */
export function wrapped(text: string, indent = 0, width = WIDTH): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter((part) => part !== '')) {
    if (line !== '' && indent + line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, ...(line === '' ? [] : [line])].map((part) => ' '.repeat(indent) + part);
}

/**
 * A label with a text beside it that wraps in its own column; below it where the label is too long.
 * @example beside('  count', 9, 'four') // ['  count  four']
 */
export function beside(label: string, column: number, text: string, width = WIDTH): string[] {
  const [first = '', ...rest] = wrapped(text, column, width);
  if (label.length >= column) return [label, first, ...rest];
  return [`${label}${first.slice(label.length)}`.trimEnd(), ...rest];
}

/** A paragraph whose further lines stand two columns further in. */
export function hung(text: string, width = WIDTH): string[] {
  const [first = '', ...rest] = wrapped(text, 2, width - 2);
  return [first, ...rest.map((line) => `  ${line}`)];
}

/** How columns are set. */
export interface ColumnLook {
  /** columns that are aligned to the right */
  readonly right?: readonly number[];
  /** blanks between columns; fewer where they would not fit else */
  readonly gap?: number;
  /** columns of the terminal */
  readonly width?: number;
}

/** Rows set in columns as wide as their widest cell; where they are too wide for the terminal the last one wraps. */
export function columns(
  rows: readonly (readonly string[])[],
  { right = [], gap = 2, width = Number.POSITIVE_INFINITY }: ColumnLook = {},
): string[] {
  const count = Math.max(0, ...rows.map((row) => row.length));
  const widths = Array.from({ length: count }, (_, i) => Math.max(0, ...rows.map((row) => row[i]?.length ?? 0)));
  const whole = (blanks: number) => widths.reduce((sum, own) => sum + own, blanks * (count - 1));
  if (gap > 1 && whole(gap) > width) return columns(rows, { right, gap: gap - 1, width });
  const set = (row: readonly string[]) =>
    row
      .map((cell, i) => (right.includes(i) ? cell.padStart(widths[i]!) : cell.padEnd(widths[i]!)))
      .join(' '.repeat(gap))
      .trimEnd();
  if (whole(gap) <= width) return rows.map(set);
  const column = whole(gap) - widths.at(-1)!;
  return rows.flatMap((row) => {
    const hasLast = row.length === count;
    return hasLast ? beside(set(row.slice(0, -1)), column, row.at(-1)!, width) : [set(row)];
  });
}

/** `thread_pitch_diameter` as words; `motor_hub.bore_diameter` as `motor hub: bore diameter`. */
export function words(key: string): string {
  return key.replaceAll('_', ' ').replaceAll('.', ': ');
}
