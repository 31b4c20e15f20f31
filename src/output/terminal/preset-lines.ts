import type { PresetRow } from '../../presets/list-presets.js';
import { wrapped } from './layout.js';

/** Presets by kind, with an example of their use: how each is called, what it is, its figures and where they come from. */
export function presetLines(rows: readonly PresetRow[], width?: number): string[] {
  const kinds = [...new Set(rows.map(({ kind }) => kind))];
  return kinds.flatMap((kind, i) => {
    const own = rows.filter((row) => row.kind === kind);
    const head = wrapped(`${kind}, in a sheet: ${own[0]!.example}`, 0, width);
    return [...(i === 0 ? [] : ['']), ...head, ...own.flatMap((row) => rowLines(row, width))];
  });
}

function rowLines({ id, title, summary, source }: PresetRow, width?: number): string[] {
  return [
    ...wrapped(`${id} – ${title}`, 2, width),
    ...wrapped(summary, 6, width),
    ...(source === '' ? [] : wrapped(`source: ${source}`, 6, width)),
  ];
}
