import type { Mark } from './marks.js';
import { type Joining, joinedSpans, NONE, type Spans } from './spans.js';

/** What lines along Z meet over one y of the plan, from one x to another. */
export interface Row {
  readonly from: number;
  readonly to: number;
  readonly at: (x: number) => Spans;
}

/** What a line along Z over a place of the plan meets, row by row; undefined where none meets anything. */
export interface Probe {
  readonly row: (y: number) => Row | undefined;
  readonly marks: readonly Mark[];
}

/** Probes of several parts as one. */
export function joinedProbe(kind: Joining, parts: readonly Probe[]): Probe {
  return {
    marks: parts.flatMap(({ marks }) => marks),
    row: (y) =>
      joinedRow(
        kind,
        parts.map(({ row }) => row(y)),
      ),
  };
}

/** Rows of several parts as one; what a row does not reach is not asked. */
function joinedRow(kind: Joining, rows: readonly (Row | undefined)[]): Row | undefined {
  const found = rows.flatMap((row) => (row ? [row] : []));
  const [first] = rows;
  if (kind === 'union' ? found.length === 0 : !first) return undefined;
  if (kind === 'intersection' && found.length < rows.length) return undefined;
  if (found.length === 1) return found[0];
  const [start, ...others] = found as [Row, ...Row[]];
  const reached = (row: Row, x: number) => (x < row.from || x > row.to ? NONE : row.at(x));
  return {
    from: kind === 'union' ? Math.min(...found.map(({ from }) => from)) : start.from,
    to: kind === 'union' ? Math.max(...found.map(({ to }) => to)) : start.to,
    at: (x) => {
      let spans = reached(start, x);
      for (const row of others) {
        if (spans.length === 0 && kind !== 'union') return NONE;
        spans = joinedSpans(kind, spans, reached(row, x));
      }
      return spans;
    },
  };
}
