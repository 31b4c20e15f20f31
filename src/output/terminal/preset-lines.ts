import type { PresetRow } from '../../presets/list-presets.js';
import { wrapped } from './layout.js';

/**
 * Presets by kind: where they may be named, then each as it is written in a sheet, and what it is.
 *
 * @param withFigures also the figures of each, and where they come from
 */
export function presetLines(rows: readonly PresetRow[], withFigures: boolean, width?: number): string[] {
  const kinds = [...new Set(rows.map(({ kind }) => kind))];
  return kinds.flatMap((kind, i) => {
    const own = rows.filter((row) => row.kind === kind);
    const head = wrapped(`${kind}, ${own[0]!.where}`, 0, width);
    return [...(i === 0 ? [] : ['']), ...head, ...own.flatMap((row) => rowLines(row, withFigures, width))];
  });
}

function rowLines({ example, title, summary, source }: PresetRow, withFigures: boolean, width?: number): string[] {
  const told = wrapped(`${example} – ${title}`, 2, width);
  if (!withFigures) return told;
  return [...told, ...wrapped(summary, 6, width), ...(source === '' ? [] : wrapped(`source: ${source}`, 6, width))];
}
