import type { Drawn, PaperPoint } from './drawn.js';
import { joined, type Span, without } from './hidden-spans.js';

/** A straight piece on the paper. */
export interface LinePiece {
  readonly from: PaperPoint;
  readonly to: PaperPoint;
  readonly hidden: boolean;
}

/** Pieces whose ends lie so near to a line lie on it, and gaps and pieces shorter than this are none, mm. */
const ON_LINE = 3e-4;
const GAP = 5e-4;
/** Ends nearer than this are one corner, mm. */
const CORNER = 1e-3;
const BUCKETS = 180;

interface Line {
  readonly at: PaperPoint;
  readonly along: PaperPoint;
  readonly seen: Span[];
  readonly unseen: Span[];
}

/** Pieces on the same lines joined, what is seen not drawn hidden as well, and what meets end to end made one path. */
export function mergeLines(pieces: readonly LinePiece[]): { readonly visible: Drawn[]; readonly hidden: Drawn[] } {
  const lines = linesThrough(pieces);
  const visible: LinePiece[] = [];
  const hidden: LinePiece[] = [];
  for (const line of lines) {
    const shown = joined(line.seen, GAP);
    const padded = shown.map(([from, to]): Span => [from - GAP, to + GAP]);
    visible.push(...onLine(line, shown));
    hidden.push(...onLine(line, without(joined(line.unseen, GAP), padded)));
  }
  return { visible: chained(visible), hidden: chained(hidden) };
}

function linesThrough(pieces: readonly LinePiece[]): Line[] {
  const lines: Line[] = [];
  const buckets = new Map<number, Line[]>();
  const length = ({ from, to }: LinePiece) => Math.hypot(to[0] - from[0], to[1] - from[1]);
  for (const piece of [...pieces].sort((a, b) => length(b) - length(a))) {
    const { from, to, hidden } = piece;
    const far = length(piece);
    if (far === 0) continue;
    const along: PaperPoint = [(to[0] - from[0]) / far, (to[1] - from[1]) / far];
    const bucket = bucketOf(along);
    const near = [bucket - 1, bucket, bucket + 1].flatMap((one) => buckets.get((one + BUCKETS) % BUCKETS) ?? []);
    let line = near.find((one) => isOn(one, from) && isOn(one, to));
    if (!line) {
      line = { at: from, along, seen: [], unseen: [] };
      lines.push(line);
      const known = buckets.get(bucket);
      if (known) known.push(line);
      else buckets.set(bucket, [line]);
    }
    const [a, b] = [place(line, from), place(line, to)];
    (hidden ? line.unseen : line.seen).push([Math.min(a, b), Math.max(a, b)]);
  }
  return lines;
}

function bucketOf([x, y]: PaperPoint): number {
  const angle = Math.atan2(y, x) / Math.PI;
  return Math.floor((((angle % 1) + 1) % 1) * BUCKETS) % BUCKETS;
}

function isOn({ at, along }: Line, [x, y]: PaperPoint): boolean {
  return Math.abs((x - at[0]) * along[1] - (y - at[1]) * along[0]) < ON_LINE;
}

function place({ at, along }: Line, [x, y]: PaperPoint): number {
  return (x - at[0]) * along[0] + (y - at[1]) * along[1];
}

function onLine({ at, along }: Line, spans: readonly Span[]): LinePiece[] {
  const point = (place: number): PaperPoint => [at[0] + place * along[0], at[1] + place * along[1]];
  return spans
    .filter(([from, to]) => to - from > GAP)
    .map(([from, to]) => ({ from: point(from), to: point(to), hidden: false }));
}

/** Pieces joined where just two of them meet. */
function chained(pieces: readonly LinePiece[]): Drawn[] {
  const corners = new Corners();
  const ends = pieces.map(({ from, to }) => [corners.of(from), corners.of(to)] as const);
  const at = new Map<number, number[]>();
  ends.forEach((pair, i) => {
    for (const end of pair) at.set(end, [...(at.get(end) ?? []), i]);
  });
  const used = new Set<number>();
  const follow = (start: number, corner: number): number[] => {
    const path: number[] = [];
    let [piece, end]: [number | undefined, number] = [start, corner];
    while (piece !== undefined && !used.has(piece)) {
      used.add(piece);
      const [a, b]: readonly [number, number] = ends[piece]!;
      end = a === end ? b : a;
      path.push(end);
      const next: number[] = at.get(end)!;
      const last: number = piece;
      piece = next.length === 2 ? next.find((one) => one !== last) : undefined;
    }
    return path;
  };
  const made: Drawn[] = [];
  const add = (numbers: readonly number[]) => {
    const closed = numbers.length > 3 && numbers[0] === numbers.at(-1);
    const points = (closed ? numbers.slice(1) : numbers).map((corner) => corners.at(corner));
    made.push({ kind: 'path', points, ...(closed ? { closed } : {}) });
  };
  for (const [corner, pieces] of at) {
    if (pieces.length === 2) continue;
    for (const piece of pieces) if (!used.has(piece)) add([corner, ...follow(piece, corner)]);
  }
  ends.forEach(([from], i) => {
    if (!used.has(i)) add([from, ...follow(i, from)]);
  });
  return made;
}

/** Numbers places on the paper, those that lie together by one number. */
class Corners {
  private readonly points: PaperPoint[] = [];
  private readonly cells = new Map<string, number[]>();

  of(point: PaperPoint): number {
    const [x, y] = [Math.round(point[0] / CORNER), Math.round(point[1] / CORNER)];
    for (let i = -1; i <= 1; i++)
      for (let k = -1; k <= 1; k++)
        for (const one of this.cells.get(`${x + i},${y + k}`) ?? []) {
          const [u, v] = this.points[one]!;
          if (Math.hypot(u - point[0], v - point[1]) < CORNER) return one;
        }
    const made = this.points.push(point) - 1;
    const key = `${x},${y}`;
    this.cells.set(key, [...(this.cells.get(key) ?? []), made]);
    return made;
  }

  at(number: number): PaperPoint {
    return this.points[number]!;
  }
}
