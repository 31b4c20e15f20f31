import type { PresetRow } from '../../presets/list-presets.js';
import { wrapped } from './layout.js';

/** Presets by kind: how each is called, what it is, its figures and where they come from. */
export function presetLines(rows: readonly PresetRow[]): string[] {
  const kinds = [...new Set(rows.map(({ kind }) => kind))];
  return kinds.flatMap((kind, i) => [
    ...(i === 0 ? [] : ['']),
    kind,
    ...rows.filter((row) => row.kind === kind).flatMap(rowLines),
  ]);
}

function rowLines({ id, title, summary, source }: PresetRow): string[] {
  return [
    ...wrapped(`${id} – ${title}`, 2),
    ...wrapped(summary, 6),
    ...(source === '' ? [] : wrapped(`source: ${source}`, 6)),
  ];
}
