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

/** Rows set in columns as wide as their widest cell; columns named in `right` are aligned to the right. */
export function columns(rows: readonly (readonly string[])[], right: readonly number[] = [], gap = 2): string[] {
  const count = Math.max(0, ...rows.map((row) => row.length));
  const widths = Array.from({ length: count }, (_, i) => Math.max(0, ...rows.map((row) => row[i]?.length ?? 0)));
  return rows.map((row) =>
    row
      .map((cell, i) => (right.includes(i) ? cell.padStart(widths[i]!) : cell.padEnd(widths[i]!)))
      .join(' '.repeat(gap))
      .trimEnd(),
  );
}

/** `thread_pitch_diameter` as words. */
export function words(key: string): string {
  return key.replaceAll('_', ' ');
}
