import type { PresetRow } from '../../presets/list-presets.js';
import { wrapped } from './layout.js';

/** Presets by kind, with an example of their use: how each is called, what it is, its figures and where they come from. */
export function presetLines(rows: readonly PresetRow[]): string[] {
  const kinds = [...new Set(rows.map(({ kind }) => kind))];
  return kinds.flatMap((kind, i) => {
    const own = rows.filter((row) => row.kind === kind);
    return [...(i === 0 ? [] : ['']), `${kind}, in a sheet: ${own[0]!.example}`, ...own.flatMap(rowLines)];
  });
}

function rowLines({ id, title, summary, source }: PresetRow): string[] {
  return [
    ...wrapped(`${id} – ${title}`, 2),
    ...wrapped(summary, 6),
    ...(source === '' ? [] : wrapped(`source: ${source}`, 6)),
  ];
}
